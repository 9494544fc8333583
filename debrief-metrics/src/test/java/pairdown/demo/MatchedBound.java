package pairdown.demo;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import pairdown.attempt.MatchedSettings;
import pairdown.motion.Trajectory;
import pairdown.motion.VelocityErrorDraw;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * How far off matched totals must be for anyone who has these logs: the truth's rates with the
 * error of an efficient estimator added, judged by the truth's rules. Errors of the lead's turning,
 * of clocks and of attitudes are left out, so a debrief can at best come near it.
 */
final class MatchedBound {
    private static final int DRAWS = 10;

    /** Rates are means over twice this. */
    private static final double REACH_S = 0.5;

    private static final int REACH_STEPS = 5;

    private final TruePair truth;
    private final Map<Long, Vec3> trueRate_mps = new HashMap<>();

    MatchedBound(TruePair truth) {
        this.truth = truth;
    }

    /** Adds, draw by draw, whether the total is off by more than 5 % and 0.5 s. */
    void add(
            Tally off,
            Trajectory lead,
            Trajectory flyer,
            double ahead_s,
            MatchedSettings tolerance,
            double true_s) {
        Span flight =
                new Span(
                        Math.max(
                                truth.exit_s(),
                                Math.max(lead.start_s(), flyer.start_s()) - ahead_s + REACH_S),
                        Math.min(
                                truth.opening_s(),
                                Math.min(lead.end_s(), flyer.end_s()) - ahead_s - REACH_S));
        Span onAxis = new Span(flight.start_s() + ahead_s, flight.end_s() + ahead_s);
        for (int draw = 0; draw < DRAWS; draw++) {
            Random random = new Random(31L * draw + Math.round(1e3 * true_s));
            VelocityErrorDraw ofLead = new VelocityErrorDraw(lead, onAxis, random);
            VelocityErrorDraw ofFlyer = new VelocityErrorDraw(flyer, onAxis, random);
            Map<Long, Vec3> errors_mps = new HashMap<>();
            TrueMatch seen =
                    new TrueMatch(
                            t ->
                                    rate_mps(t)
                                            .plus(
                                                    meanError_mps(
                                                            ofLead,
                                                            ofFlyer,
                                                            t,
                                                            ahead_s,
                                                            errors_mps)),
                            tolerance.horizontal_mps(),
                            tolerance.vertical_mps());
            double seen_s =
                    seen.windows(flight.start_s(), flight.end_s()).stream()
                            .mapToDouble(Span::duration_s)
                            .sum();
            off.add(DebriefErrors.isOff(seen_s, true_s) ? 1 : 0);
        }
    }

    private Vec3 rate_mps(double t_s) {
        return trueRate_mps.computeIfAbsent(step(t_s), k -> truth.rate_mps(t_s));
    }

    /** Mean over a second, as the rates are. */
    private static Vec3 meanError_mps(
            VelocityErrorDraw lead,
            VelocityErrorDraw flyer,
            double t_s,
            double ahead_s,
            Map<Long, Vec3> known_mps) {
        Vec3 sum = Vec3.ZERO;
        for (int k = -REACH_STEPS; k <= REACH_STEPS; k++) {
            double at_s = t_s + k * TrueMatch.STEP_S;
            sum =
                    sum.plus(
                            known_mps.computeIfAbsent(
                                    step(at_s),
                                    i -> flyer.at(at_s + ahead_s).minus(lead.at(at_s + ahead_s))));
        }
        return sum.times(1.0 / (2 * REACH_STEPS + 1));
    }

    private static long step(double t_s) {
        return Math.round(t_s / TrueMatch.STEP_S);
    }
}
