/**
 * What a person has set once and finds again: colours, units, which strips and panel are open, what
 * was opened last. Kept in the person's own configuration folder, never beside an attempt.
 */
@NullMarked
package pairdown.settings;

import org.jspecify.annotations.NullMarked;
