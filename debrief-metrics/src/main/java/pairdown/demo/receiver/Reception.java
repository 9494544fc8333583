package pairdown.demo.receiver;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/** What befell one receiver's signal: losses, shadow, bursts and biases after re-acquiring. */
final class Reception {
    /** Loss at exit (s); its chance and these are common practice, no published source. */
    private static final double LEAST_EXIT_LOSS_S = 2;

    private static final double MOST_EXIT_LOSS_S = 8;

    /** Bias after re-acquiring (m), and how fast it goes (s). */
    private static final double LEAST_REACQUIRE_M = 5;

    private static final double MOST_REACQUIRE_M = 15;
    private static final double REACQUIRE_TIME_S = 8;

    /** Mean stretches with and without fixes of an antenna in shadow (s): a fifth is lost. */
    private static final double SEEN_S = 4;

    private static final double UNSEEN_S = 1;
    private static final double SHADOW_FACTOR = 2.5;
    private static final double SHADOW_RAMP_S = 2;

    /**
     * Bursts: length (s) and how much larger the white parts are; reflections spoil positions more
     * than velocities.
     */
    private static final double LEAST_BURST_S = 1;

    private static final double MOST_BURST_S = 3;
    private static final double BURST_FACTOR = 4;
    private static final double VELOCITY_BURST_FACTOR = 2;

    /** A bias met on re-acquiring. */
    private record Reacquired(double time_s, Vec3 bias_m) {}

    private final Sight sight;
    private final List<Span> lost = new ArrayList<>();
    private final List<Span> bursts = new ArrayList<>();
    private final List<Reacquired> reacquired = new ArrayList<>();

    Reception(Sight sight, OptionalDouble exit_s, Span logged, Draws draws) {
        this.sight = sight;
        boolean loses = draws.chance(sight.exitLossShare());
        double drawn_s = draws.between(LEAST_EXIT_LOSS_S, MOST_EXIT_LOSS_S);
        if (loses && exit_s.isPresent()) {
            double from_s = exit_s.getAsDouble() + draws.between(0, 0.5);
            lose(new Span(from_s, from_s + sight.exitLoss_s().orElse(drawn_s)), draws);
        }
        sight.inverted().forEach(span -> shade(span, draws));
        burst(logged, draws);
    }

    private void lose(Span span, Draws draws) {
        lost.add(span);
        Vec3 bias_m = draws.direction().times(draws.between(LEAST_REACQUIRE_M, MOST_REACQUIRE_M));
        if (sight.reacquired()) {
            reacquired.add(new Reacquired(span.end_s(), bias_m));
        }
    }

    private void shade(Span span, Draws draws) {
        double at_s = span.start_s() + draws.exponential(SEEN_S);
        while (at_s < span.end_s()) {
            double until_s = Math.min(span.end_s(), at_s + draws.exponential(UNSEEN_S));
            lost.add(new Span(at_s, until_s));
            at_s = until_s + draws.exponential(SEEN_S);
        }
    }

    private void burst(Span logged, Draws draws) {
        if (!Double.isFinite(sight.burstEvery_s())) {
            return;
        }
        double at_s = logged.start_s() + draws.exponential(sight.burstEvery_s());
        while (at_s < logged.end_s()) {
            bursts.add(new Span(at_s, at_s + draws.between(LEAST_BURST_S, MOST_BURST_S)));
            at_s += MOST_BURST_S + draws.exponential(sight.burstEvery_s());
        }
    }

    List<Span> lost() {
        return List.copyOf(lost);
    }

    boolean isLost(double time_s) {
        return lost.stream().anyMatch(s -> s.contains(time_s));
    }

    boolean isFrozen(double time_s) {
        return sight.frozen().stream().anyMatch(s -> s.contains(time_s));
    }

    /** How much larger the receiver's own errors are than in the open. */
    double shadow(double time_s) {
        double most = 0;
        for (Span span : sight.inverted()) {
            double inside_s = Math.min(time_s - span.start_s(), span.end_s() - time_s);
            most = Math.max(most, Math.min(1, inside_s / SHADOW_RAMP_S + 1));
        }
        return 1 + (SHADOW_FACTOR - 1) * Math.max(0, most);
    }

    /** How much larger the white part of a position is than usual. */
    double burst(double time_s) {
        return isBurst(time_s) ? BURST_FACTOR : 1;
    }

    /** How much larger the white part of a velocity is than usual. */
    double velocityBurst(double time_s) {
        return isBurst(time_s) ? VELOCITY_BURST_FACTOR : 1;
    }

    private boolean isBurst(double time_s) {
        return bursts.stream().anyMatch(s -> s.contains(time_s));
    }

    /** What is left of biases met on re-acquiring (m, east-north-up). */
    Vec3 reacquireBias_m(double time_s) {
        Vec3 sum = Vec3.ZERO;
        for (Reacquired r : reacquired) {
            if (time_s >= r.time_s) {
                double left = StrictMath.exp(-(time_s - r.time_s) / REACQUIRE_TIME_S);
                sum = sum.plus(r.bias_m.times(left));
            }
        }
        return sum;
    }
}
