package pairdown.demo.receiver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.LeverArm;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.Truth;
import pairdown.time.Span;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;
import pairdown.vector.Vec3;

/**
 * A satellite receiver on one body: what it logs of the truth under a sky. Its own draws depend on
 * the seed, the participant and the file's name alone.
 */
final class Receiver {
    private static final int OPEN_SATELLITES = 14;

    private final Truth truth;
    private final GnssPlan plan;
    private final Sky sky;
    private final BodyPoint antenna;
    private final Draws draws;
    private final Span logged;
    private final double latency_s;
    private final double offset_s;
    private final double velocityLag_s;
    private final Reception reception;

    private Receiver(Truth truth, GnssPlan plan, LeverArm arm, Sky sky, long seed) {
        TrueBody body = truth.body(plan.participant());
        this.truth = truth;
        this.plan = plan;
        this.sky = sky;
        this.antenna = new BodyPoint(body, arm);
        this.draws = Draws.of(seed, plan.participant(), plan.file(), "fixes");
        Draws clock = Draws.of(seed, plan.participant(), plan.file(), "clock");
        Draws model = Draws.of(seed, "model", plan.model());
        this.latency_s = model.between(0, plan.clock().mostLatency_s());
        this.offset_s =
                plan.clock().shift_s() + plan.clock().sigma_s() * clock.gaussian() - latency_s;
        this.velocityLag_s =
                model.between(
                        plan.errors().leastVelocityLag_s(), plan.errors().mostVelocityLag_s());
        Span whole = new Span(body.motion().start_s(), body.motion().end_s());
        Span kept = plan.kept().orElse(whole);
        this.logged =
                new Span(
                        Math.max(whole.start_s(), kept.start_s()),
                        Math.min(whole.end_s(), kept.end_s()));
        Draws sight = Draws.of(seed, plan.participant(), plan.file(), "sight");
        this.reception = new Reception(plan.sight(), body.exit_s(), logged, sight);
    }

    static Recorded log(Truth truth, GnssPlan plan, LeverArm arm, Sky sky, long seed) {
        return new Receiver(truth, plan, arm, sky, seed).log();
    }

    private Recorded log() {
        FixRows rows = new FixRows(truth.frame(), plan);
        List<Fix> fixes = fixes();
        fixes.forEach(rows::add);
        LogReport report = LogReport.whole(plan.file(), plan.format());
        Track track = rows.build(truth.start(), report);
        return new Recorded(track, faults());
    }

    private List<Fix> fixes() {
        List<Fix> fixes = new ArrayList<>();
        double step_s = 1 / plan.rate_Hz();
        long first = (long) Math.ceil((logged.start_s() - offset_s) / step_s - 1e-9);
        Vec3 own = plan.errors().own().first(draws);
        for (long k = first; k * step_s + offset_s <= logged.end_s(); k++) {
            own = plan.errors().own().next(own, step_s, draws);
            Fix fix = fix(k * step_s, own);
            if (reception.isFrozen(k * step_s + offset_s) && !fixes.isEmpty()) {
                fixes.add(fixes.get(fixes.size() - 1).at(k * step_s));
            } else if (!reception.isLost(k * step_s + offset_s)) {
                fixes.add(fix);
            }
        }
        return fixes;
    }

    private Fix fix(double logged_s, Vec3 own_m) {
        ReceiverErrors e = plan.errors();
        double true_s = logged_s + offset_s;
        double shadow = reception.shadow(true_s);
        double burst = reception.burst(true_s) * shadow;
        double velocityBurst = reception.velocityBurst(true_s) * shadow;
        Vec3 reacquire_m = reception.reacquireBias_m(true_s);
        Vec3 position_m =
                antenna.position_m(true_s)
                        .plus(sky.error_m(true_s, e.common()))
                        .plus(own_m.times(shadow))
                        .plus(draws.gaussian(e.levelWhite_m(), e.verticalWhite_m()).times(burst))
                        .plus(reacquire_m);
        Vec3 velocity_mps =
                antenna.velocity_mps(true_s - velocityLag_s)
                        .plus(
                                draws.gaussian(e.levelVelocity_mps(), e.verticalVelocity_mps())
                                        .times(velocityBurst));
        double axis_m = reacquire_m.norm() / Math.sqrt(3);
        return new Fix(
                logged_s,
                position_m,
                velocity_mps,
                stated(Math.hypot(e.level_m() * shadow, axis_m)),
                stated(Math.hypot(e.vertical_m() * shadow, axis_m)),
                stated(e.velocity_mps() * velocityBurst),
                Math.max(4, Math.round(OPEN_SATELLITES / shadow + 1.5 * draws.gaussian())));
    }

    /** What a receiver says of its own error: right in the mean square, loose from fix to fix. */
    private double stated(double sigma) {
        double spread = 0.15;
        return sigma * StrictMath.exp(spread * draws.gaussian() - spread * spread);
    }

    private InjectedFaults faults() {
        GnssPlan.HeightPlan heights = plan.heights();
        double bias_m =
                heights.separationLogged() || heights.datum() == HeightDatum.ELLIPSOID
                        ? 0
                        : -heights.geoidError_m();
        return new InjectedFaults(
                plan.participant(),
                plan.file(),
                OptionalDouble.of(offset_s),
                Optional.empty(),
                0,
                latency_s,
                velocityLag_s,
                0,
                heights.datum(),
                bias_m,
                reception.lost(),
                plan.sight().inverted(),
                plan.sight().frozen(),
                List.of());
    }
}
