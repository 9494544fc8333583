package pairdown.demo.physics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import pairdown.demo.receiver.BodyPoint;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueContact;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/**
 * Whether flights fly what they were asked for, over many seeds and in rough air: {@code
 * FormationStudy [SEEDS]}. Prints the least, the median and the largest of each figure.
 */
public final class FormationStudy {
    private final Map<String, List<Double>> figures = new TreeMap<>();

    private FormationStudy() {}

    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        for (GustLevel gusts : new GustLevel[] {GustLevel.SMOOTH, GustLevel.LIGHT}) {
            FormationStudy study = new FormationStudy();
            for (int seed = 1; seed <= seeds; seed++) {
                study.fly(seed, gusts);
            }
            System.out.println(gusts + ", " + seeds + " seeds\n" + study);
        }
    }

    private void fly(long seed, GustLevel gusts) {
        Scenario standard = Scenario.standard(seed).withAir(AirPlan.USUAL.withGusts(gusts));
        hold(Simulation.run(standard));
        touch(Simulation.run(standard.withFlyers(touching("blue"), touching("amber"))));
        through(
                Simulation.run(
                        standard.withFlyers(
                                FlyerPlan.hold("blue", Side.LEFT, 30)
                                        .withBehaviour(new Behaviour.Through(2.5)))));
        LeadPlan tooMuch = LeadPlan.USUAL.withEvents(new DiveEvent.OverReverse(25, 1.35, 2.5));
        Scenario practice = Scenario.practice(seed).withAir(AirPlan.USUAL.withGusts(gusts));
        add("episodes of a plain dive", Simulation.run(practice).episodes().size());
        add(
                "episodes of a dive with too much reverse",
                Simulation.run(practice.withLead(tooMuch)).episodes().size());
    }

    private static FlyerPlan touching(String id) {
        return FlyerPlan.hold(id, id.equals("blue") ? Side.LEFT : Side.RIGHT, 2)
                .withBehaviour(new Behaviour.Touch(6));
    }

    private void add(String figure, double value) {
        figures.computeIfAbsent(figure, f -> new ArrayList<>()).add(value);
    }

    private static double gap_m(Truth truth, TrueBody flyer, double time_s) {
        Side side = flyer.id().equals("blue") ? Side.LEFT : Side.RIGHT;
        BodyPoint slot = new BodyPoint(truth.body("lead"), side.slot());
        return flyer.motion().positionAt_m(time_s).minus(slot.position_m(time_s)).norm();
    }

    private static List<TrueBody> jumpers(Truth truth) {
        return truth.bodies().stream().filter(b -> b.role().isJumper()).toList();
    }

    private void hold(Truth truth) {
        List<TrueBody> jumpers = jumpers(truth);
        for (TrueBody flyer : jumpers) {
            double held_s = 0;
            for (double t = flyer.exit_s().orElseThrow(); t < flyer.opening_s().orElseThrow(); ) {
                held_s += Math.abs(gap_m(truth, flyer, t) - 30) < 4 ? 0.2 : 0;
                t += 0.2;
            }
            add("within 4 m of a gate of 30 m (s)", held_s);
        }
        TrueBody one = jumpers.get(0);
        TrueBody other = jumpers.get(1);
        double least_m = Double.POSITIVE_INFINITY;
        double end_s = Math.min(one.opening_s().orElseThrow(), other.opening_s().orElseThrow());
        for (double t = other.exit_s().orElseThrow() + 4; t < end_s; t += 0.1) {
            Vec3 off_m = one.motion().positionAt_m(t).minus(other.motion().positionAt_m(t));
            least_m = Math.min(least_m, off_m.norm());
        }
        add("least distance between two flyers (m)", least_m);
    }

    private void touch(Truth truth) {
        for (TrueBody flyer : jumpers(truth)) {
            List<TrueContact> its =
                    truth.contacts().stream().filter(c -> c.flyer().equals(flyer.id())).toList();
            add("hands on the tip, of one asked", its.size());
            for (TrueContact c : its) {
                add("hand held, 6 s asked (s)", c.end_s() - c.start_s());
                add("hand on after the exit (s)", c.start_s() - flyer.exit_s().orElseThrow());
                add("roll rate's step toward the hand (°/s)", rollStep_dps(truth, c));
            }
        }
    }

    /** Mean of 0.3 s after the hand came on, from 0.1 s on, less that of half a second before. */
    private static double rollStep_dps(Truth truth, TrueContact c) {
        TrueBody lead = truth.body("lead");
        double[] roll = Objects.requireNonNull(lead.systems().get(Channel.ROLL_RATE));
        int at = (int) Math.rint(c.start_s() / lead.motion().step_s());
        double before = Arrays.stream(roll, at - 25, at).average().orElseThrow();
        double after = Arrays.stream(roll, at + 5, at + 20).average().orElseThrow();
        return (after - before) * (c.slot().equals(Side.LEFT.key()) ? -1 : 1);
    }

    private void through(Truth truth) {
        TrueBody blue = truth.body("blue");
        TrueMotion lead = truth.body("lead").motion();
        double t = blue.exit_s().orElseThrow() + 8;
        while (gap_m(truth, blue, t) > 30 && t < blue.opening_s().orElseThrow()) {
            t += 0.1;
        }
        Vec3 r = blue.motion().positionAt_m(t).minus(lead.positionAt_m(t));
        Vec3 v = blue.motion().velocityAt_mps(t).minus(lead.velocityAt_mps(t));
        add("over the limit at a gate of 30 m, 2.5 asked (m/s)", -r.dot(v) / r.norm() - 4.84);
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder();
        figures.forEach(
                (figure, values) -> {
                    List<Double> s = values.stream().sorted().toList();
                    out.append(
                            String.format(
                                    Locale.ROOT,
                                    "  %-52s %7.2f %7.2f %7.2f of %d%n",
                                    figure,
                                    s.get(0),
                                    s.get(s.size() / 2),
                                    s.get(s.size() - 1),
                                    s.size()));
                });
        return out.toString();
    }
}
