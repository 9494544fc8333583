package pairdown.demo;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Role;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.Simulation;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.Truth;
import pairdown.time.Span;
import pairdown.units.Unit;

/**
 * In how many seasons of other seeds each lesson is true: {@code LessonStudy [SEEDS]}. The shipped
 * season's lessons are asserted in the build.
 */
public final class LessonStudy {
    private final Map<String, Integer> kept = new TreeMap<>();
    private int seasons;

    private LessonStudy() {}

    public static void main(String[] args) {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        LessonStudy study = new LessonStudy();
        for (long seed = 1; seed <= seeds; seed++) {
            study.fly(seed);
        }
        study.kept.forEach((l, n) -> System.out.println(l + ": " + n + " of " + study.seasons));
    }

    private void fly(long seed) {
        seasons++;
        for (DemoAttempt demo : DemoJoins.of(seed)) {
            Flown flown = new Flown(Simulation.run(demo.scenario()));
            count(demo.id(), isTrue(demo.id(), flown));
        }
        long episodes =
                DemoDives.practice(seed).stream()
                        .filter(d -> !Simulation.run(d.scenario()).episodes().isEmpty())
                        .count();
        count("practice dives: three of twenty with an episode", episodes == 3);
    }

    private void count(String lesson, boolean isTrue) {
        kept.merge(lesson, isTrue ? 1 : 0, Integer::sum);
    }

    private static boolean isTrue(String id, Flown f) {
        return switch (id) {
            case "2031-05-12-01" ->
                    f.both(p -> f.longest_s(p) >= 7 && Math.abs(f.leastGap_m(p) - 150) < 20);
            case "2031-05-12-02" -> f.both(p -> Math.abs(f.leastGap_m(p) - 60) < 5);
            case "2031-05-13-01" ->
                    f.over_mps("blue") > 1.5
                            && f.leastGap_m("blue") < 24
                            && Math.abs(f.leastGap_m("amber") - 30) < 4;
            case "2031-05-13-02" ->
                    f.both(p -> f.longest_s(p) >= 8 && Math.abs(f.leastGap_m(p) - 30) < 4);
            case "2031-05-14-01" ->
                    Math.abs(f.separation_m("blue") - 22) < 5 && f.longest_s("blue") < 6;
            case "2031-05-14-02" -> f.both(p -> f.longest_s(p) >= 14);
            case "2031-05-15-01" -> f.both(p -> Math.abs(f.leastGap_m(p) - 8) < 3);
            case "2031-05-15-02" ->
                    f.truth.contacts().isEmpty() && Math.abs(f.leastGap_m("blue") - 4) < 2;
            case "2031-05-16-01" -> f.truth.contacts().size() == 1;
            default ->
                    f.truth.contacts().size() == 2
                            && Math.abs(f.leavingMsl_m("amber") - Unit.FOOT.toBase(6460)) < 12;
        };
    }

    /** An attempt's truth, asked about its flyers. */
    private record Flown(Truth truth) {
        private TruePair pair(String flyer) {
            LeverArm slot = flyer.equals("blue") ? Scenario.LEFT_SLOT : Scenario.RIGHT_SLOT;
            return new TruePair(truth, "lead", flyer, slot);
        }

        boolean both(Predicate<String> holds) {
            List<TrueBody> flyers =
                    truth.bodies().stream().filter(b -> b.role() == Role.FLYER).toList();
            return flyers.size() == 2 && flyers.stream().allMatch(b -> holds.test(b.id()));
        }

        double longest_s(String flyer) {
            return pair(flyer).matched(1.5, 1.0).stream()
                    .mapToDouble(Span::duration_s)
                    .max()
                    .orElse(0);
        }

        double leastGap_m(String flyer) {
            return pair(flyer).gap_m(pair(flyer).leastGap_s());
        }

        double separation_m(String flyer) {
            return pair(flyer).separation_m(pair(flyer).closest_s());
        }

        double leavingMsl_m(String flyer) {
            return pair(flyer).msl_m(pair(flyer).leaving_s(1.5, 1.0));
        }

        double over_mps(String flyer) {
            TruePair p = pair(flyer);
            double t = p.worstClosure_s(ClosureSettings.DEFAULT, p.leaving_s(1.5, 1.0));
            return p.closure_mps(t) - p.limit_mps(t, ClosureSettings.DEFAULT);
        }
    }
}
