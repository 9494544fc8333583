/**
 * The standard atmosphere: pressure, height, temperature and density. Airspeeds are left to the
 * {@code air} package of the metrics.
 */
@NullMarked
package pairdown.atmosphere;

import org.jspecify.annotations.NullMarked;
