package pairdown.demo.physics;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.Role;
import pairdown.pair.ClosingLimit;
import pairdown.vector.Vec3;

/**
 * A flyer's eyes and judgement from the opening of the suit to the break-off: which place to go to,
 * how fast, and the acceleration to ask of the body. Sees everything 0.4 s late; follows the lead's
 * own acceleration; wanders about its aim by 0.35 m/s, less when very near. Asks no more than 1.2
 * along, 2 up and 3 m/s² sideways of the lead's path, but dives for speed when far too slow. Common
 * practice, no published source.
 */
final class FlyerPilot {
    private static final double ALONG_MPS2 = 1.2;
    private static final double UP_MPS2 = 2;

    /** Far too slow, a flyer dives for speed: down by up to this. */
    private static final double DIVE_MPS2 = 4.5;

    /** Far from steady flight it pulls harder, by this share of what is wanted beyond … */
    private static final double FAR_SHARE = 0.4;

    /** … this. */
    private static final double FAR_MPS2 = 4;

    private static final double SIDE_MPS2 = 3;
    private static final double SPEED_PERS = 0.9;
    private static final double PLACE_PERS = 0.25;
    private static final double DELAY_S = 0.4;
    private static final double WANDER_MPS = 0.35;
    private static final double WANDER_S = 1.5;

    /** Share of the closing limit that is used. */
    private static final double CARE = 0.75;

    private static final double MOST_CLOSING_MPS = 12;

    private static final double LEARNS_NEAR_M = 8;
    private static final double LEARNS_WITHIN_M = 2.5;
    private static final double LEARNS_UNDER_MPS = 0.7;
    private static final double LEARNING_PERS2 = 0.05;
    private static final double MOST_LEARNED_MPS = 0.5;
    private static final double CALMEST = 0.15;
    private static final double CALM_M = 20;

    /** The last metre is flown at no less than this. */
    private static final double REACHING_MPS = 0.4;

    /** Further off than this a flyer reaching for the tip has missed it and begins again (m). */
    private static final double MISSED_M = 4.2;

    /** A hand reaches up to the tip: the flyer comes a little below it and hangs on it (m). */
    private static final double BELOW_M = 0.42;

    /**
     * How fast a flyer gathers speed along a level line, and how much longer the last of it takes.
     */
    private static final double GATHERING_MPS2 = 0.6;

    private static final double GATHERING_S = 3;

    /** Beside the lead a flyer hurries no more to close on it. */
    private static final double LEAST_SHARE = 0.7;

    /** Too fast for the slot, a flyer passes this far outside it (m). */
    private static final double BESIDE_M = 10;

    private static final double OUTWARD_MPS = 1.5;
    private static final double INBOARD_M = 0.35;

    /** While gripping, the flyer leans on the hand by this much (m/s²). */
    private static final Vec3 LEAN_MPS2 = new Vec3(-0.35, 0, -1.2);

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
    private Vec3 learned_mps = Vec3.ZERO;
    private boolean passing;
    private boolean passed;
    private boolean done;

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

    /** Whether it has done what it came for and waits for those further out to leave. */
    boolean isDone() {
        return done;
    }

    boolean gripsNow() {
        return task == Task.JOIN && !done && step < steps.size() && steps.get(step).grips();
    }

    /** Breaks off. */
    void leave(double time_s) {
        if (task == Task.JOIN) {
            task = Task.LEAVE;
            left_s = time_s;
        }
    }

    /** The acceleration asked for (m/s², east, north, up), as decided a reaction time ago. */
    Vec3 wanted_mps2(
            FlyerBody body, LeadView lead, Grip grip, Vec3 clear_mps, double time_s, double dt_s) {
        for (Wander w : wander) {
            w.step(dt_s);
        }
        Vec3 now =
                switch (task) {
                    case JOIN -> join(body, lead, grip, clear_mps, time_s, dt_s);
                    case LEAVE -> leaving(body, lead, clear_mps, time_s);
                    case GONE -> Vec3.ZERO;
                };
        seen.addLast(now);
        return seen.size() * dt_s > DELAY_S ? seen.removeFirst() : seen.getFirst();
    }

    private Vec3 join(
            FlyerBody body, LeadView lead, Grip grip, Vec3 clear_mps, double time_s, double dt_s) {
        if (plan.behaviour() instanceof Behaviour.Through t) {
            return through(body, lead, t);
        }
        Steps.Step now = steps.get(step);
        Vec3 outward_m = outward_m(body, lead);
        Vec3 below_m = new Vec3(0, 0, now.grips() ? -BELOW_M : 0);
        Vec3 off_m = aim_m(lead, now.gap_m()).plus(outward_m).plus(below_m).minus(body.place_m);
        Vec3 relative_mps = body.velocity_mps.minus(lead.velocity_mps());
        progress(now, off_m.norm(), relative_mps.norm(), grip, time_s);
        double gap_m = lead.slot_m(plan.side()).minus(body.place_m).norm();
        double most_mps =
                outward_m.normSquared() > 0
                        ? OUTWARD_MPS
                        : Math.min(MOST_CLOSING_MPS, CARE * LIMIT.at(gap_m));
        Vec3 closing = toward(off_m, most_mps, gap_m);
        if (now.grips() && !grip.isHolding() && closing.norm() < REACHING_MPS) {
            closing = off_m.unit().times(REACHING_MPS);
        }
        learn(off_m, relative_mps.norm(), now.gap_m(), grip, dt_s);
        double calm = Math.min(1, CALMEST + gap_m / CALM_M) * (grip.isHolding() ? 0.3 : 1);
        Vec3 lean =
                grip.isHolding()
                        ? lead.level(LEAN_MPS2.x(), LEAN_MPS2.y(), LEAN_MPS2.z())
                        : Vec3.ZERO;
        Vec3 base_mps = now.gap_m() < 4 ? lead.slotVelocity_mps(plan.side()) : lead.velocity_mps();
        return asked(
                        body,
                        lead,
                        base_mps.plus(closing)
                                .plus(learned_mps)
                                .plus(clear_mps)
                                .plus(wandering(calm)))
                .plus(lean);
    }

    /** What the air beside the wing does all the time is learned, near the aim. */
    private void learn(Vec3 off_m, double relative_mps, double gap_m, Grip grip, double dt_s) {
        boolean calm = off_m.norm() < LEARNS_WITHIN_M && relative_mps < LEARNS_UNDER_MPS;
        if (grip.isHolding() || !calm || gap_m > LEARNS_NEAR_M) {
            return;
        }
        Vec3 more = learned_mps.plus(off_m.times(LEARNING_PERS2 * dt_s));
        double size = more.norm();
        learned_mps = size > MOST_LEARNED_MPS ? more.times(MOST_LEARNED_MPS / size) : more;
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

    /** Nobody stays behind the wing: from inboard of the slot a flyer goes out first. */
    private Vec3 outward_m(FlyerBody body, LeadView lead) {
        int sign = plan.side().sign();
        Vec3 off_m = body.place_m.minus(lead.slot_m(plan.side()));
        boolean behindWing = sign * off_m.dot(lead.right()) < -INBOARD_M && off_m.norm() < 15;
        return behindWing ? lead.level(0, sign * 3, 0) : Vec3.ZERO;
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
        if (now.grips() && !grip.isHolding() && away_m > MISSED_M) {
            step--;
            learned_mps = Vec3.ZERO;
            return;
        }
        if (time_s - reached_s >= now.hold_s()) {
            reached_s = step < steps.size() - 1 ? Double.NaN : reached_s;
            if (step < steps.size() - 1) {
                step++;
            } else {
                done = true;
            }
        }
    }

    /** In too fast, past the slot on its outer side and out ahead. */
    private Vec3 through(FlyerBody body, LeadView lead, Behaviour.Through t) {
        int sign = plan.side().sign();
        Vec3 slot_m = lead.slot_m(plan.side());
        double gap_m = slot_m.minus(body.place_m).norm();
        double fast_mps = LIMIT.at(Math.min(gap_m, plan.gate_m())) + t.excess_mps();
        double away_m = plan.gate_m() + runIn_m(LIMIT.at(plan.gate_m()) + t.excess_mps());
        Vec3 start_m = slot_m.plus(lead.level(-0.9 * away_m, sign * 0.44 * away_m, 2));
        Vec3 end_m = slot_m.plus(lead.level(70, sign * 40, 6));
        Vec3 beside_m = slot_m.plus(lead.level(2, sign * BESIDE_M, 4));
        passing |= start_m.minus(body.place_m).norm() < 15 || gap_m < plan.gate_m() + 15;
        passed |= passing && beside_m.minus(body.place_m).dot(lead.ahead()) < 0;
        Vec3 aim_m = passed ? end_m : passing ? beside_m : start_m;
        Vec3 off_m = aim_m.minus(body.place_m);
        done |= passed && off_m.norm() < 20;
        Vec3 closing =
                passing
                        ? off_m.unit().times(hurried_mps(body, lead, off_m, fast_mps))
                        : toward(off_m, Math.min(8, CARE * LIMIT.at(gap_m)), gap_m);
        return asked(body, lead, lead.velocity_mps().plus(closing).plus(wandering(1)));
    }

    /** Room in which a flyer gathers a closing speed. */
    private static double runIn_m(double fast_mps) {
        return fast_mps * fast_mps / (2 * GATHERING_MPS2) + GATHERING_S * fast_mps;
    }

    /** The speed toward an aim that closes on the lead itself so fast. */
    private static double hurried_mps(
            FlyerBody body, LeadView lead, Vec3 off_m, double closing_mps) {
        Vec3 onto = lead.place_m().minus(body.place_m).unit();
        return closing_mps / Math.max(LEAST_SHARE, off_m.unit().dot(onto));
    }

    /** Outward, slower and higher than the lead, until well clear. */
    private Vec3 leaving(FlyerBody body, LeadView lead, Vec3 clear_mps, double time_s) {
        double gap_m = lead.slot_m(plan.side()).minus(body.place_m).norm();
        if ((time_s - left_s > 5 && gap_m > 45) || time_s - left_s > 12) {
            task = Task.GONE;
        }
        Vec3 away = lead.level(-2, 11 * plan.side().sign(), 2.5);
        return asked(body, lead, lead.velocity_mps().plus(away).plus(clear_mps));
    }

    private Vec3 wandering(double share) {
        return new Vec3(wander[0].value(), wander[1].value(), wander[2].value())
                .times(WANDER_MPS * share);
    }

    /** The acceleration toward a velocity, the lead's own added. */
    private static Vec3 asked(FlyerBody body, LeadView lead, Vec3 velocity_mps) {
        Vec3 want = velocity_mps.minus(body.velocity_mps).times(SPEED_PERS);
        return limited(want, lead.velocity_mps()).plus(lead.acceleration_mps2());
    }

    /** What of a wanted acceleration the pose gives, about steady flight along a path. */
    static Vec3 limited(Vec3 want, Vec3 path_mps) {
        Vec3 along = path_mps.unit();
        Vec3 right = new Vec3(along.y(), -along.x(), 0).unit();
        Vec3 up = right.cross(along).unit();
        double slow = Math.max(0, want.dot(along) - ALONG_MPS2);
        double down_mps2 = Math.min(DIVE_MPS2, UP_MPS2 + slow);
        double up_mps2 = UP_MPS2 + FAR_SHARE * Math.max(0, want.norm() - FAR_MPS2);
        return along.times(LeadPilot.bounded(want.dot(along), -ALONG_MPS2, ALONG_MPS2))
                .plus(right.times(LeadPilot.bounded(want.dot(right), -SIDE_MPS2, SIDE_MPS2)))
                .plus(up.times(LeadPilot.bounded(want.dot(up) - slow, -down_mps2, up_mps2)));
    }
}
