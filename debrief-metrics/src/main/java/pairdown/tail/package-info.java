/** Power and tail: retarding force, control effectiveness, and the episodes in which it fades. */
@NullMarked
package pairdown.tail;

import org.jspecify.annotations.NullMarked;
