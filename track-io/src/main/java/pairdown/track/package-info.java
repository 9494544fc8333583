/** What one log says, as immutable columns, together with the report of how it was read. */
@NullMarked
package pairdown.track;

import org.jspecify.annotations.NullMarked;
