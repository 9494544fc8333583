package pairdown.demo;

import java.util.Objects;
import java.util.stream.IntStream;
import pairdown.air.Airspeed;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Attempt;
import pairdown.attempt.Target;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.Truth;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/**
 * How the lead's descent truly met the target, by other code than a season's: airspeed through the
 * mean air, sink over the ground.
 */
final class TrueDive {
    private static final double STEP_S = 0.2;
    private static final double STABLE_S = 5;
    private static final double BEHIND_IDLE_PCT = -1;

    private final Truth truth;
    private final TrueBody lead;
    private final Target target;
    private final Span descent;

    /**
     * @param descent seconds from the truth's start
     */
    TrueDive(Truth truth, Attempt attempt, Span descent) {
        this.truth = truth;
        this.lead = truth.body(attempt.lead().orElseThrow().id());
        this.target = attempt.target().orElseThrow();
        this.descent = descent;
    }

    private int size() {
        return (int) Math.floor(descent.duration_s() / STEP_S) + 1;
    }

    private double time_s(int i) {
        return descent.start_s() + i * STEP_S;
    }

    /** Whether both are within tolerance, with the tolerances this much wider (m/s). */
    private boolean within(int i, double airspeedWider_mps, double sinkWider_mps) {
        Vec3 v_mps = lead.motion().velocityAt_mps(time_s(i));
        return Math.abs(airspeed_mps(time_s(i)) - target.airspeed_mps())
                        <= target.airspeedTolerance_mps() + airspeedWider_mps
                && Math.abs(-v_mps.z() - target.sink_mps())
                        <= target.sinkTolerance_mps() + sinkWider_mps;
    }

    private double airspeed_mps(double time_s) {
        double msl_m =
                truth.frame().toGeodetic(lead.motion().positionAt_m(time_s)).height_m()
                        - truth.air().undulation_m();
        double true_mps =
                lead.motion()
                        .velocityAt_mps(time_s)
                        .minus(truth.air().meanWind_mps().apply(msl_m))
                        .norm();
        return target.kind() == AirspeedKind.TRUE
                ? true_mps
                : Airspeed.calibrated_mps(
                        true_mps,
                        truth.air().atmosphere().pressure_hPa(msl_m),
                        truth.air().atmosphere().temperature_C(msl_m));
    }

    /** Whether it was within both tolerances for the target's hold. */
    boolean held() {
        int best = 0;
        int run = 0;
        for (int i = 0; i < size(); i++) {
            run = within(i, 0, 0) ? run + 1 : 0;
            best = Math.max(best, run);
        }
        return (best - 1) * STEP_S >= target.hold_s() - STEP_S / 2;
    }

    /**
     * From the lever behind idle to the first five seconds within both tolerances (s), infinite if
     * they never came.
     *
     * @param airspeedWider_mps were the airspeed's tolerance so much wider
     * @param sinkWider_mps the same of sink
     */
    double stabilise_s(double airspeedWider_mps, double sinkWider_mps) {
        int trigger =
                IntStream.range(0, size())
                        .filter(i -> lever_pct(time_s(i)) < BEHIND_IDLE_PCT)
                        .findFirst()
                        .orElse(0);
        int need = (int) Math.round(STABLE_S / STEP_S);
        int run = 0;
        for (int i = trigger; i < size(); i++) {
            run = within(i, airspeedWider_mps, sinkWider_mps) ? run + 1 : 0;
            if (run > need) {
                return (i - need - trigger) * STEP_S;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private double lever_pct(double time_s) {
        double row = (time_s - lead.motion().start_s()) / lead.motion().step_s();
        double[] lever_pct = Objects.requireNonNull(lead.systems().get(Channel.POWER_LEVER));
        return lever_pct[(int) Math.max(0, Math.min(lever_pct.length - 1, Math.rint(row)))];
    }
}
