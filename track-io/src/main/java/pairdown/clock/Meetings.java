package pairdown.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.attempt.Role;
import pairdown.time.TimeAxis;

/**
 * Doubts the time of a lead that rode with nobody where it meets no flyer as told, but would meet
 * one if its times were GPS time or local time written as UTC. No ride tests such a clock, and a
 * flyer elsewhere at that hour does not fall beside another's path with its speed for seconds. It
 * is not shifted: that is a person's to say.
 */
final class Meetings {
    /** Level distance of two that meet (m), and of two that surely do not. */
    private static final double NEAR_M = 60;

    private static final double APART_M = 200;

    /** Difference in velocity of two that meet, and how fast both fall (m/s). */
    private static final double ALIKE_MPS = 5;

    private static final double FALL_MPS = 8;

    /** For so long (s). */
    private static final double LEAST_S = 5;

    private final List<Mover> movers;
    private final List<ClockResult> results;
    private final TimeAxis rough;

    /**
     * @param results by log's index
     */
    Meetings(List<Mover> movers, List<ClockResult> results, TimeAxis rough) {
        this.movers = movers;
        this.results = results;
        this.rough = rough;
    }

    /** The results, a lead's clock doubted where it must be. */
    List<ClockResult> doubted() {
        List<ClockResult> out = new ArrayList<>(results);
        for (Mover lead : movers) {
            ClockResult r = results.get(lead.index());
            if (lead.role() == Role.LEAD && r.method() == ClockMethod.GNSS_TIME) {
                OptionalDouble error_s = error_s(lead);
                if (error_s.isPresent()) {
                    double e = error_s.getAsDouble();
                    out.set(lead.index(), r.doubted(Math.abs(e), words(e)));
                }
            }
        }
        return out;
    }

    private static List<String> words(double error_s) {
        List<String> words = new ArrayList<>();
        words.add(
                "as told it flies past every flyer, but "
                        + Told.seconds(error_s)
                        + " would bring it beside one: if so, pin its clock by hand");
        Told.words(error_s).ifPresent(words::add);
        return words;
    }

    private OptionalDouble error_s(Mover lead) {
        List<Mover> flyers = movers.stream().filter(m -> isFlyerOfOthers(lead, m)).toList();
        if (flyers.stream().anyMatch(f -> meeting(lead, f, 0).nearest_m < APART_M)) {
            return OptionalDouble.empty();
        }
        for (double error_s : RideSearch.candidates()) {
            if (flyers.stream().anyMatch(f -> meeting(lead, f, error_s).together_s >= LEAST_S)) {
                return OptionalDouble.of(error_s);
            }
        }
        return OptionalDouble.empty();
    }

    private boolean isFlyerOfOthers(Mover lead, Mover m) {
        ClockResult r = results.get(m.index());
        return m.role() == Role.FLYER
                && r.isUsable()
                && r.doubt().group() != results.get(lead.index()).doubt().group();
    }

    /**
     * How two fall beside each other.
     *
     * @param nearest_m least level distance while both fall
     * @param together_s for how long they are near and alike
     */
    private record Meeting(double nearest_m, double together_s) {}

    /** With the lead's clock shifted. */
    private Meeting meeting(Mover lead, Mover flyer, double shift_s) {
        double kernel_s = Math.max(lead.kernel_s(), flyer.kernel_s());
        RideMotion a = lead.motion(kernel_s);
        RideMotion b = flyer.motion(kernel_s);
        double a_s = a.start_s + toRough_s(lead) + shift_s;
        double b_s = b.start_s + toRough_s(flyer);
        int shift = (int) Math.round((b_s - a_s) / b.step_s);
        double nearest_m = Double.POSITIVE_INFINITY;
        int together = 0;
        for (int k = Math.max(0, -shift); k < Math.min(b.size(), a.size() - shift); k++) {
            int l = k + shift;
            boolean fall = -a.velocity[2][l] > FALL_MPS && -b.velocity[2][k] > FALL_MPS;
            double apart_m =
                    Math.hypot(
                            b.position[0][k] - a.position[0][l],
                            b.position[1][k] - a.position[1][l]);
            if (fall && apart_m >= 0) {
                nearest_m = Math.min(nearest_m, apart_m);
                together += apart_m < NEAR_M && differ_mps(a, l, b, k) < ALIKE_MPS ? 1 : 0;
            }
        }
        return new Meeting(nearest_m, together * b.step_s);
    }

    private double toRough_s(Mover m) {
        return m.toRough_s(results.get(m.index()), rough);
    }

    private static double differ_mps(RideMotion a, int l, RideMotion b, int k) {
        double sum = 0;
        for (int axis = 0; axis < 3; axis++) {
            double d = b.velocity[axis][k] - a.velocity[axis][l];
            sum += d * d;
        }
        return Math.sqrt(sum);
    }
}
