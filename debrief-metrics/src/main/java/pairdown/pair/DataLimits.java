package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import pairdown.attempt.MatchedSettings;

/** What a pair's data may be asked, and in words why not the rest. */
final class DataLimits {
    private final PairInput input;
    private final PairSettings.Grades grades;
    private final double rate_Hz;
    private final List<String> withoutVelocity = new ArrayList<>();
    private final List<String> withoutVertical = new ArrayList<>();

    DataLimits(PairInput input, PairSettings.Grades grades) {
        this.input = input;
        this.grades = grades;
        this.rate_Hz = Math.min(input.lead().grade().rate_Hz(), input.flyer().grade().rate_Hz());
        for (PairMember m : List.of(input.lead(), input.flyer())) {
            if (!m.grade().levelVelocity()) {
                withoutVelocity.add(m.id());
            } else if (!m.grade().verticalVelocity()) {
                withoutVertical.add(m.id());
            }
        }
    }

    boolean isSlow() {
        return rate_Hz < grades.fast_Hz();
    }

    private boolean isPositionOnly() {
        return !withoutVelocity.isEmpty();
    }

    /** Whether touch may be graded at all. */
    boolean allowsTouch() {
        return !(isSlow() && isPositionOnly());
    }

    boolean allowsMatching() {
        return !(isSlow() && isPositionOnly());
    }

    boolean allowsGate(double gate_m) {
        return !isSlow()
                || gate_m >= (isPositionOnly() ? grades.positionOnlyGate_m() : grades.slowGate_m());
    }

    /** The gap from which on the closing limit is judged (m). */
    double closingLimitFrom_m() {
        return isSlow() && isPositionOnly() ? grades.positionOnlyLimit_m() : 0;
    }

    double dwell_s() {
        double wanted_s = input.matched().dwell_s();
        return isSlow() ? Math.max(wanted_s, grades.slowDwell_s()) : wanted_s;
    }

    /** Everything refused or weakened, one line each. */
    List<String> words() {
        List<String> words = new ArrayList<>();
        String pair = input.lead().id() + "–" + input.flyer().id();
        if (rate_Hz < grades.slowest_Hz()) {
            words.add(
                    pair
                            + ": pair figures need a fix a second from both logs; the slower has one"
                            + " every "
                            + number(rate_Hz > 0 ? 1 / rate_Hz : 0)
                            + " s");
        }
        if (isPositionOnly()) {
            words.add(
                    "the log of "
                            + String.join(" and of ", withoutVelocity)
                            + " has no velocity: speeds are differenced positions");
        }
        for (String id : withoutVertical) {
            words.add("the log of " + id + " has no vertical speed: its sink is from heights");
        }
        if (isSlow()) {
            addSlow(words, pair);
        }
        return words;
    }

    private void addSlow(List<String> words, String pair) {
        String at = " at " + number(rate_Hz) + " Hz";
        if (isPositionOnly()) {
            words.add(
                    pair + ": matched windows and touch cannot be told from positions alone" + at);
            words.add(
                    pair
                            + ": the closing limit is not judged under "
                            + number(grades.positionOnlyLimit_m())
                            + " m without velocity"
                            + at);
        } else {
            words.add(
                    pair
                            + ": whether they touched cannot be told"
                            + at
                            + ": nothing is graded above possible; 5 are needed");
        }
        if (dwell_s() > input.matched().dwell_s()) {
            words.add(pair + ": a match must hold for " + number(dwell_s()) + " s" + at);
        }
        OptionalDouble gate_m = input.gate_m();
        if (gate_m.isPresent() && !allowsGate(gate_m.getAsDouble())) {
            words.add(
                    pair
                            + ": a gate of "
                            + number(gate_m.getAsDouble())
                            + " m cannot be judged"
                            + at);
        }
    }

    /**
     * Why a tolerance is too fine for the data; empty where it is not. The sigma is that of the
     * rows in which the two were slow against each other: where one dives away, what a late clock
     * does to its velocity is larger, and matters to no match.
     */
    static List<String> tooFine(
            PairRows rows, MatchRates rates, PairInput input, PairSettings settings) {
        List<String> words = new ArrayList<>();
        MatchedSettings tolerance = input.matched();
        double slowTolerances = settings.grades().slowTolerances();
        boolean[] slow = new boolean[rows.size];
        for (int i = 0; i < rows.size; i++) {
            slow[i] =
                    rates.level_mps[i] < slowTolerances * tolerance.horizontal_mps()
                            && Math.abs(rates.vertical_mps[i])
                                    < slowTolerances * tolerance.vertical_mps();
        }
        addTooFine(
                words,
                "horizontal",
                tolerance.horizontal_mps(),
                sigma_mps(rows.levelSigma_mps, slow),
                settings.match());
        addTooFine(
                words,
                "vertical",
                tolerance.vertical_mps(),
                sigma_mps(rows.verticalSigma_mps, slow),
                settings.match());
        return words;
    }

    /** The median over the rows asked for or, where they have none, over all. */
    private static OptionalDouble sigma_mps(double[] sigma_mps, boolean[] asked) {
        double[] of =
                IntStream.range(0, asked.length)
                        .filter(i -> asked[i])
                        .mapToDouble(i -> sigma_mps[i])
                        .toArray();
        OptionalDouble there = RowStatistics.median(of);
        return there.isPresent() ? there : RowStatistics.median(sigma_mps);
    }

    private static void addTooFine(
            List<String> words,
            String which,
            double tolerance_mps,
            OptionalDouble sigma_mps,
            PairSettings.Match settings) {
        if (sigma_mps.isPresent()
                && tolerance_mps < settings.leastSigmas() * sigma_mps.getAsDouble()) {
            words.add(
                    "a "
                            + which
                            + " tolerance of "
                            + number(tolerance_mps)
                            + " m/s is under "
                            + number(settings.leastSigmas())
                            + " sigma of these data ("
                            + number(sigma_mps.getAsDouble())
                            + " m/s): matched windows cannot be told");
        }
    }

    private static String number(double v) {
        String text = String.format(Locale.ROOT, "%.2f", v);
        return text.contains(".") ? text.replaceAll("\\.?0+$", "") : text;
    }
}
