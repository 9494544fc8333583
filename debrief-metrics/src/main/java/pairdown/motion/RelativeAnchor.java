package pairdown.motion;

import java.util.function.DoubleFunction;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * A stretch in which the flyer's place relative to the lead is known: a touch at the slot, a ride
 * in one vehicle.
 *
 * @param span when
 * @param relative_m flyer minus lead (reference points), east, north, up at the lead, by instant
 * @param sigma_m one standard deviation per axis; the same error over the whole stretch, however
 *     long
 */
public record RelativeAnchor(Span span, DoubleFunction<Vec3> relative_m, double sigma_m) {
    public RelativeAnchor {
        if (!(sigma_m > 0)) {
            throw new IllegalArgumentException("sigma_m must be > 0, not " + sigma_m);
        }
    }

    /** A place that stays as it is in east-north-up axes. */
    public static RelativeAnchor fixed(Span span, Vec3 relative_m, double sigma_m) {
        return new RelativeAnchor(span, t -> relative_m, sigma_m);
    }
}
