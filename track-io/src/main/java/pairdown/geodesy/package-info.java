/**
 * The figure of the Earth: geodetic, earth-centred and local frames on WGS 84, and the EGM96 geoid.
 */
@NullMarked
package pairdown.geodesy;

import org.jspecify.annotations.NullMarked;
