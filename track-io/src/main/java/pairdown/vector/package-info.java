/**
 * Three-component vectors and 3 × 3 matrices in double precision. Which frame a vector is in is
 * said by whoever holds it.
 */
@NullMarked
package pairdown.vector;

import org.jspecify.annotations.NullMarked;
