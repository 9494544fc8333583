/** A lead and a flyer: relative motion, closure, matched windows, gate, touch evidence. */
@NullMarked
package pairdown.pair;

import org.jspecify.annotations.NullMarked;
