package pairdown.air;

import java.util.List;
import java.util.Optional;
import pairdown.vector.Vec3;

/**
 * The wind by height layer.
 *
 * @param method what it was found from, {@code none} where nothing served
 * @param layers by rising height above the ellipsoid; empty where nothing served
 * @param notes refusals and warnings, in words
 */
public record Wind(String method, List<Layer> layers, List<String> notes) {
    public Wind {
        layers = List.copyOf(layers);
        notes = List.copyOf(notes);
    }

    public static Wind none(List<String> why) {
        return new Wind("none", List.of(), why);
    }

    /**
     * One layer.
     *
     * @param bottom_m above the ellipsoid
     * @param top_m above the ellipsoid
     * @param towardEast_mps the direction the air moves towards
     * @param towardNorth_mps the direction the air moves towards
     * @param sigma_mps one standard deviation per axis
     */
    public record Layer(
            double bottom_m,
            double top_m,
            double towardEast_mps,
            double towardNorth_mps,
            double sigma_mps) {
        double middle_m() {
            return (bottom_m + top_m) / 2;
        }

        Vec3 vector_mps() {
            return new Vec3(towardEast_mps, towardNorth_mps, 0);
        }
    }

    public boolean isKnown() {
        return !layers.isEmpty();
    }

    /**
     * The air's velocity (east, north, 0) at a height above the ellipsoid: linear between layer
     * middles, the nearest layer's outside; empty where no wind is known.
     */
    public Optional<Vec3> at(double height_m) {
        if (layers.isEmpty()) {
            return Optional.empty();
        }
        Layer below = layers.get(0);
        for (Layer above : layers) {
            if (above.middle_m() > height_m) {
                return Optional.of(between(below, above, height_m));
            }
            below = above;
        }
        return Optional.of(below.vector_mps());
    }

    private static Vec3 between(Layer below, Layer above, double height_m) {
        double span_m = above.middle_m() - below.middle_m();
        if (!(span_m > 0)) {
            return above.vector_mps();
        }
        double share = Math.max(0, (height_m - below.middle_m()) / span_m);
        return below.vector_mps().times(1 - share).plus(above.vector_mps().times(share));
    }

    /**
     * One standard deviation per axis at a height, that of the nearest layer; NaN where unknown.
     */
    public double sigma_mps(double height_m) {
        double best_m = Double.POSITIVE_INFINITY;
        double sigma_mps = Double.NaN;
        for (Layer layer : layers) {
            double away_m = Math.abs(layer.middle_m() - height_m);
            if (away_m < best_m) {
                best_m = away_m;
                sigma_mps = layer.sigma_mps();
            }
        }
        return sigma_mps;
    }
}
