package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Target;
import pairdown.season.AttemptSummary;
import pairdown.season.AttemptSummary.Dive;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.AttemptSummary.Spread;
import pairdown.season.Criteria;
import pairdown.season.Season;
import pairdown.season.SeasonPlan;
import pairdown.season.SeasonSettings;
import pairdown.season.SteadySegment;
import pairdown.tail.PowerCurve;
import pairdown.tail.TailSettings;
import pairdown.tail.TailSummary;

/**
 * A made-up season: twenty practice dives, three of them with an episode and one never steady, then
 * eight attempts of two flyers from 150 m down to 8 m, and a folder that is no attempt.
 */
public final class SyntheticSeason {
    private static final Target TARGET = new Target(38, AirspeedKind.TRUE, 17.78, 1.5, 1.0, 10);
    private static final double[] GATES_M = {150, 60, 60, 30, 30, 15, 15, 8};

    private final Random random = new Random(8);
    private final List<AttemptSummary> attempts = new ArrayList<>();

    private SyntheticSeason() {}

    public static Season season() {
        return new SyntheticSeason().make();
    }

    private Season make() {
        for (int i = 0; i < 20; i++) {
            dive(i);
        }
        for (int i = 0; i < GATES_M.length; i++) {
            attempt(i, GATES_M[i]);
        }
        attempts.add(unusable());
        return Season.of(
                attempts,
                new SeasonPlan(
                        new Criteria(
                                Optional.of("From wide to near"),
                                OptionalInt.of(2),
                                OptionalInt.of(3),
                                OptionalInt.of(0),
                                OptionalInt.of(0),
                                OptionalDouble.of(10)),
                        SeasonSettings.DEFAULT,
                        TailSettings.DEFAULT,
                        List.of("season.json: field \"colour\" is not known and was read over")));
    }

    private double near(double value, double sd) {
        return value + sd * random.nextGaussian();
    }

    private void dive(int i) {
        boolean episode = i == 6 || i == 11 || i == 12;
        boolean never = i == 12;
        Dive dive =
                new Dive(
                        "flap 40°, reverse",
                        !never,
                        never ? 3.2 : near(16, 2),
                        never ? OptionalDouble.empty() : OptionalDouble.of(near(9, 1.5)),
                        74,
                        OptionalDouble.of(Math.abs(near(0.4, 0.1))),
                        OptionalDouble.of(near(episode ? 92 : 64, 4)));
        add(day(i / 7, i), 0, List.of(), Optional.of(dive), episode ? 1 : 0, 0);
    }

    private static String day(int day, int hour) {
        return String.format(Locale.ROOT, "2031-05-%02dT%02d:10:00.000Z", 4 + day, hour % 24);
    }

    private void attempt(int i, double gate_m) {
        boolean hot = i == 3;
        List<FlyerSummary> flyers =
                List.of(
                        flyer("blue", -1, gate_m, hot ? "through" : "on-gate", hot ? 1 : 0),
                        flyer("amber", 1, gate_m, i == 7 ? "short" : "on-gate", 0));
        Dive dive =
                new Dive(
                        "flap 40°, reverse",
                        true,
                        near(30, 5),
                        OptionalDouble.of(near(9, 1.5)),
                        90,
                        OptionalDouble.of(0.5),
                        OptionalDouble.of(near(66, 4)));
        add(day(8 + i, 9), gate_m, flyers, Optional.of(dive), 0, hot ? 1 : 0);
    }

    private FlyerSummary flyer(String name, int side, double gate_m, String verdict, int through) {
        double gap_m =
                verdict.equals("short") ? 2.5 * gate_m : Math.abs(near(gate_m, 0.06 * gate_m));
        Spread spread =
                new Spread(
                        near(-0.7 * gap_m, 0.5),
                        side * (8 + 0.6 * gap_m),
                        near(1, 0.4),
                        0.4 + 0.04 * gap_m,
                        0.3 + 0.03 * gap_m,
                        0.3,
                        0.5 * side);
        return new FlyerSummary(
                name,
                OptionalDouble.of(gap_m * 0.8),
                OptionalDouble.of(gap_m),
                OptionalDouble.of(1.8),
                OptionalDouble.of(Math.abs(near(14, 4))),
                OptionalDouble.of(Math.abs(near(13, 3))),
                Optional.of(through),
                Optional.of(verdict),
                Optional.of(spread));
    }

    private void add(
            String start,
            double gate_m,
            List<FlyerSummary> flyers,
            Optional<Dive> dive,
            int episodes,
            int exceedances) {
        String name = start.substring(0, 10) + "-" + start.substring(11, 13);
        attempts.add(
                new AttemptSummary(
                        name,
                        (flyers.isEmpty() ? "dives/" : "flights/") + name,
                        Optional.empty(),
                        start,
                        gate_m > 0 ? OptionalDouble.of(gate_m) : OptionalDouble.empty(),
                        flyers,
                        dive,
                        Optional.of(episodes),
                        exceedances,
                        true,
                        exceedances > 0 ? List.of("closure") : List.of(),
                        List.of(),
                        Optional.of(TARGET),
                        Optional.of(tail(episodes)),
                        segments(!flyers.isEmpty())));
    }

    /** Two moves toward reverse and one forward; an episode after the first of them, if any. */
    private TailSummary tail(int episodes) {
        return new TailSummary(
                "lead",
                episodes,
                List.of(episodes, 2 - episodes, 0, 1),
                List.of(episodes, 1, 0, 15),
                episodes > 0 ? List.of(near(0.9, 0.2)) : List.of(),
                episodes > 0 ? List.of(near(1.1, 0.2)) : List.of(),
                episodes,
                episodes,
                List.of(curve(true, -0.15), curve(true, -0.05), curve(false, 0.1)),
                List.of());
    }

    private PowerCurve curve(boolean towardReverse, double change) {
        double[] effectiveness = new double[101];
        double[] force = new double[101];
        for (int i = 0; i < effectiveness.length; i++) {
            double done = Math.min(1, Math.max(0, (i - 45) / 10.0));
            effectiveness[i] = 0.45 + change * done + near(0, 0.02);
            force[i] = Double.NaN;
        }
        return new PowerCurve(towardReverse, effectiveness, force, new double[] {1, 1, 0, 500});
    }

    private List<SteadySegment> segments(boolean flyers) {
        List<SteadySegment> all = new ArrayList<>();
        double idle_mps = near(36, 3);
        all.add(segment("lead", "lead", "flap 40°, idle", idle_mps, 7.2 + 0.32 * (idle_mps - 33)));
        all.add(
                segment(
                        "lead",
                        "lead",
                        "flap 0°, idle",
                        idle_mps + 6,
                        3.8 + 0.1 * (idle_mps - 30)));
        all.add(segment("lead", "lead", "flap 40°, reverse", near(33.5, 0.8), near(17.6, 0.7)));
        if (flyers) {
            all.add(segment("blue", "flyer", "as flown", near(34, 1.2), near(17, 1)));
            all.add(segment("amber", "flyer", "as flown", near(35, 1.2), near(16.5, 1.2)));
        }
        return all;
    }

    private SteadySegment segment(
            String machine, String role, String how, double v_mps, double sink_mps) {
        return new SteadySegment(
                machine,
                role,
                how,
                0,
                5,
                v_mps,
                v_mps * 1.134,
                near(sink_mps, 0.3),
                OptionalDouble.of(role.equals("lead") ? 1650 : 95));
    }

    private static AttemptSummary unusable() {
        return new AttemptSummary(
                "pictures",
                "flights/pictures",
                Optional.of(
                        "flights/pictures: no log with positions among 3 files; put the logs here"),
                "",
                OptionalDouble.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                0,
                true,
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }
}
