package pairdown.pair;

import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * A stretch over which a flyer's true offset from its lead is known.
 *
 * @param offset_m ahead, right, above in the lead's axes
 * @param sigma_m one standard deviation per axis, the same over the whole stretch
 */
public record Anchor(Span span, Vec3 offset_m, double sigma_m) {}
