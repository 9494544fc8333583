/**
 * When who was aboard, flying, under canopy or on the ground, and the instants that bound those.
 */
@NullMarked
package pairdown.phase;

import org.jspecify.annotations.NullMarked;
