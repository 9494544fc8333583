package pairdown.demo.physics;

import pairdown.attempt.ClosureSettings;
import pairdown.attempt.Role;
import pairdown.pair.ClosingLimit;
import pairdown.vector.Vec3;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Random;

/**
 * A flyer's eyes and judgement from the opening of the suit to the break-off: which place to go to,
 * how fast, and the acceleration to ask of the body. Sees everything 0.4 s late; follows the lead's
 * own acceleration; wanders about its aim by 0.35 m/s, less when very near. Asks no more than 1.2
 * along, 2 up and 3 m/s² sideways of the lead's path. Common practice, no published source.
 */
final class FlyerPilot {
    private static final double ALONG_MPS2 = 1.2;
    private static final double UP_MPS2 = 2;
    private static final double SIDE_MPS2 = 3;
    private static final double SPEED_PERS = 0.9;
    private static final double PLACE_PERS = 0.25;
    private static final double DELAY_S = 0.4;
    private static final double WANDER_MPS = 0.35;
    private static final double WANDER_S = 1.5;

    /** Share of the closing limit that is used. */
    private static final double CARE = 0.75;

    private static final double MOST_CLOSING_MPS = 12;

    /** While gripping, the flyer leans on the hand by this much (m/s²). */
    private static final Vec3 LEAN_MPS2 = new Vec3(-0.35, 0, -0.9);

    private static final ClosingLimit LIMIT = new ClosingLimit(ClosureSettings.DEFAULT);

    /** What the flyer is about. */
    enum Task {
        JOIN,
        LEAVE,
        GONE
    }

    private final FlyerPlan plan;
    private final List<Steps.Step> steps;
    private final Wander[] wander = new Wander[3];
    private final Deque<Vec3> seen = new ArrayDeque<>();
    private Task task = Task.JOIN;
    private int step;
    private double reached_s = Double.NaN;
    private double left_s = Double.NaN;
    private boolean passing;
    private boolean passed;

    FlyerPilot(FlyerPlan plan, Random random) {
        this.plan = plan;
        this.steps = Steps.of(plan);
        for (int i = 0; i < wander.length; i++) {
            wander[i] = new Wander(random, WANDER_S);
        }
    }

    Task task() {
        return task;
    }

    boolean gripsNow() {
        return task == Task.JOIN && step < steps.size() && steps.get(step).grips();
    }

    /** Breaks off. */
    void leave(double time_s) {
        if (task == Task.JOIN) {
            task = Task.LEAVE;
            left_s = time_s;
        }
    }

    /** The acceleration asked for (m/s², east, north, up), as decided a reaction time ago. */
    Vec3 wanted_mps2(FlyerBody body, LeadView lead, Grip grip, double time_s, double dt_s) {
        for (Wander w : wander) {
            w.step(dt_s);
        }
        Vec3 now =
                switch (task) {
                    case JOIN -> join(body, lead, grip, time_s);
                    case LEAVE -> leaving(body, lead, time_s);
                    case GONE -> Vec3.ZERO;
                };
        seen.addLast(now);
        return seen.size() * dt_s > DELAY_S ? seen.removeFirst() : seen.getFirst();
    }

    private Vec3 join(FlyerBody body, LeadView lead, Grip grip, double time_s) {
        if (plan.behaviour() instanceof Behaviour.Through t) {
            return through(body, lead, t, time_s);
        }
        Steps.Step now = steps.get(step);
        Vec3 aim_m = aim_m(lead, now.gap_m());
        Vec3 off_m = aim_m.minus(body.place_m);
        Vec3 relative_mps = body.velocity_mps.minus(lead.velocity_mps());
        progress(now, off_m.norm(), relative_mps.norm(), grip, time_s);
        double gap_m = lead.slot_m(plan.side()).minus(body.place_m).norm();
        double most_mps = Math.min(MOST_CLOSING_MPS, CARE * LIMIT.at(gap_m));
        Vec3 closing = toward(off_m, most_mps, gap_m);
        double calm = Math.min(1, (0.3 + gap_m / 20)) * (grip.isHolding() ? 0.3 : 1);
        Vec3 lean =
                grip.isHolding()
                        ? lead.level(LEAN_MPS2.x(), LEAN_MPS2.y(), LEAN_MPS2.z())
                        : Vec3.ZERO;
        Vec3 base_mps = now.gap_m() < 4 ? lead.slotVelocity_mps(plan.side()) : lead.velocity_mps();
        return asked(body, lead, base_mps.plus(closing).plus(wandering(calm))).plus(lean);
    }

    /** Speed toward an aim: in proportion near it, no more than a limit far from it. */
    private static Vec3 toward(Vec3 off_m, double most_mps, double gap_m) {
        double away_m = off_m.norm();
        double perS = gap_m < 5 ? 1.6 * PLACE_PERS : PLACE_PERS;
        return away_m < 1e-6 ? Vec3.ZERO : off_m.times(Math.min(perS * away_m, most_mps) / away_m);
    }

    private Vec3 aim_m(LeadView lead, double gap_m) {
        Vec3 slot_m = lead.slot_m(plan.side());
        int sign = plan.side().sign();
        return plan.role() == Role.CAMERA
                ? slot_m.plus(lead.level(-0.64 * gap_m, sign * 0.32 * gap_m, 0.7 * gap_m))
                : slot_m.plus(lead.level(-0.707 * gap_m, sign * 0.707 * gap_m, 0));
    }

    private void progress(
            Steps.Step now, double away_m, double relative_mps, Grip grip, double time_s) {
        boolean there =
                now.grips()
                        ? grip.isHolding()
                        : away_m < Math.max(1.0, 0.06 * now.gap_m()) && relative_mps < 1;
        if (Double.isNaN(reached_s) && there) {
            reached_s = time_s;
        }
        if (time_s - reached_s >= now.hold_s()) {
            reached_s = Double.NaN;
            if (step == steps.size() - 1) {
                leave(time_s);
            } else {
                step++;
            }
        }
    }

    /** In too fast, past the slot on its outer side and out ahead. */
    private Vec3 through(FlyerBody body, LeadView lead, Behaviour.Through t, double time_s) {
        int sign = plan.side().sign();
        Vec3 slot_m = lead.slot_m(plan.side());
        Vec3 start_m =
                slot_m.plus(
                        lead.level(
                                -1.2 * plan.gate_m() - 20, sign * (0.5 * plan.gate_m() + 14), 2));
        Vec3 end_m = slot_m.plus(lead.level(70, sign * 40, 6));
        Vec3 beside_m = slot_m.plus(lead.level(2, sign * 13, 4));
        double gap_m = slot_m.minus(body.place_m).norm();
        passing |= start_m.minus(body.place_m).norm() < 15 || gap_m < plan.gate_m() + 15;
        passed |= passing && beside_m.minus(body.place_m).dot(lead.ahead()) < 0;
        Vec3 aim_m = passed ? end_m : passing ? beside_m : start_m;
        Vec3 off_m = aim_m.minus(body.place_m);
        double fast_mps = LIMIT.at(plan.gate_m()) + t.excess_mps();
        double most_mps = passing ? fast_mps : Math.min(8, CARE * LIMIT.at(gap_m));
        if (passed && off_m.norm() < 20) {
            leave(time_s);
        }
        Vec3 closing = passing ? off_m.unit().times(fast_mps) : toward(off_m, most_mps, gap_m);
        return asked(body, lead, lead.velocity_mps().plus(closing).plus(wandering(1)));
    }

    /** Outward, slower and higher than the lead, until well clear. */
    private Vec3 leaving(FlyerBody body, LeadView lead, double time_s) {
        double gap_m = lead.slot_m(plan.side()).minus(body.place_m).norm();
        if ((time_s - left_s > 5 && gap_m > 45) || time_s - left_s > 12) {
            task = Task.GONE;
        }
        Vec3 away = lead.level(-2, 11 * plan.side().sign(), 2.5);
        return asked(body, lead, lead.velocity_mps().plus(away));
    }

    private Vec3 wandering(double share) {
        return new Vec3(wander[0].value(), wander[1].value(), wander[2].value())
                .times(WANDER_MPS * share);
    }

    /** The acceleration toward a velocity, within what the pose gives about the lead's own. */
    private static Vec3 asked(FlyerBody body, LeadView lead, Vec3 velocity_mps) {
        Vec3 want = velocity_mps.minus(body.velocity_mps).times(SPEED_PERS);
        Vec3 along = lead.velocity_mps().unit();
        Vec3 right = lead.right();
        Vec3 up = right.cross(along).unit();
        Vec3 kept =
                along.times(LeadPilot.bounded(want.dot(along), -ALONG_MPS2, ALONG_MPS2))
                        .plus(
                                right.times(
                                        LeadPilot.bounded(want.dot(right), -SIDE_MPS2, SIDE_MPS2)))
                        .plus(up.times(LeadPilot.bounded(want.dot(up), -UP_MPS2, UP_MPS2)));
        return kept.plus(lead.acceleration_mps2());
    }
}
