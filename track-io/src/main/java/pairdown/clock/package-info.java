/**
 * Maps every log onto UTC, from its own time, from rides shared with other logs, and from air data;
 * says how well each is known, and refuses where the evidence is too weak.
 */
@NullMarked
package pairdown.clock;

import org.jspecify.annotations.NullMarked;
