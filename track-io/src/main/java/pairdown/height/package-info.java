/**
 * Maps every log onto heights above the ellipsoid and measures the constant bias left between logs.
 */
@NullMarked
package pairdown.height;

import org.jspecify.annotations.NullMarked;
