package pairdown.phase;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairdown.motion.AxisFilter;

/** What a log says of one axis of its motion, in order of time: places and velocities. */
final class Sights {
    /**
     * A sample this many sigmas off is not believed, and counts no more than this against what
     * expected another: a receiver's errors have longer tails than the normal law.
     */
    private static final double MOST_SIGMAS = 4.5;

    /** One sample; its sigma is that of what is white in it. */
    record Sight(double time_s, double value, boolean isVelocity, double sigma) {}

    /** No samples. */
    static final Sights NONE = new Sights(List.of());

    private final List<Sight> sights;

    private Sights(List<Sight> sights) {
        this.sights = new ArrayList<>(sights);
        this.sights.sort(Comparator.comparingDouble(Sight::time_s));
    }

    /** Gathers samples of a stretch of time. */
    static final class Builder {
        private final double from_s;
        private final double to_s;
        private final List<Sight> sights = new ArrayList<>();

        Builder(double from_s, double to_s) {
            this.from_s = from_s;
            this.to_s = to_s;
        }

        void add(Motion.Columns columns, Course.Axis axis, double sigma, boolean velocity) {
            for (int i = columns.firstFrom(from_s);
                    i < columns.size() && columns.time_s(i) <= to_s;
                    i++) {
                double value = axis.on(columns.first(i), columns.second(i));
                add(columns.time_s(i), value, sigma, velocity);
            }
        }

        void add(double time_s, double value, double sigma, boolean velocity) {
            if (Double.isFinite(value)) {
                sights.add(new Sight(time_s, value, velocity, sigma));
            }
        }

        Sights build() {
            return new Sights(sights);
        }
    }

    int size() {
        return sights.size();
    }

    double time_s(int i) {
        return sights.get(i).time_s;
    }

    /** The first sample after an instant. */
    int firstAfter(double t_s) {
        int i = 0;
        while (i < sights.size() && sights.get(i).time_s <= t_s) {
            i++;
        }
        return i;
    }

    /** The first place, or velocity; 0 without one. */
    double first(boolean velocity) {
        return sights.stream()
                .filter(s -> s.isVelocity == velocity)
                .mapToDouble(Sight::value)
                .findFirst()
                .orElse(0);
    }

    boolean isEmpty() {
        return sights.isEmpty();
    }

    /** These and others in one order of time. */
    Sights with(Sights more) {
        List<Sight> all = new ArrayList<>(sights);
        all.addAll(more.sights);
        return new Sights(all);
    }

    /** With sigmas as many times as large: {@code place} for places, {@code velocity} likewise. */
    Sights scaled(double place, double velocity) {
        return new Sights(
                sights.stream()
                        .map(
                                s ->
                                        new Sight(
                                                s.time_s,
                                                s.value,
                                                s.isVelocity,
                                                s.sigma * (s.isVelocity ? velocity : place)))
                        .toList());
    }

    boolean isVelocity(int i) {
        return sights.get(i).isVelocity;
    }

    /** Square of a sample's innovation over its expected variance. */
    double square(int i, AxisFilter filter) {
        Sight s = sights.get(i);
        double nu =
                s.isVelocity
                        ? filter.velocityInnovation(s.value)
                        : filter.positionInnovation(s.value);
        return nu * nu / variance(s, filter);
    }

    private static double variance(Sight s, AxisFilter filter) {
        double expected = s.isVelocity ? filter.velocityVariance() : filter.positionVariance();
        return expected + s.sigma * s.sigma;
    }

    /** Takes a sample into a filter that stands at its time. Returns its log likelihood. */
    double absorb(int i, AxisFilter filter) {
        Sight s = sights.get(i);
        double most = MOST_SIGMAS * MOST_SIGMAS;
        double square = square(i, filter);
        double likelihood = -0.5 * (Math.min(most, square) + Math.log(variance(s, filter)));
        if (square < most) {
            double noise = s.sigma * s.sigma;
            if (s.isVelocity) {
                filter.updateVelocity(s.value, noise);
            } else {
                filter.updatePosition(s.value, noise);
            }
        }
        return likelihood;
    }
}
