package pairdown.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import pairdown.attempt.MatchedSettings;

/**
 * What a pair's data may be asked, and in words why not the rest. The grades and what each allows
 * are common practice, without a published source.
 */
final class DataLimits {
    /** Slower than one fix a second, less jitter, nothing of a pair can be told. */
    private static final double SLOWEST_HZ = 0.95;

    /** From here on gates, overshoots and locks show. */
    private static final double FAST_HZ = 4.5;

    /** One fix a second without velocity: no closing limit is judged nearer than this (m). */
    private static final double POSITION_ONLY_LIMIT_M = 50;

    /** Least gate that is judged at one fix a second with and without velocity (m). */
    private static final double SLOW_GATE_M = 8;

    private static final double POSITION_ONLY_GATE_M = 15;

    /** Two are slow against each other up to this multiple of the tolerances. */
    private static final double SLOW_TOLERANCES = 3;

    private final PairInput input;
    private final double rate_Hz;
    private final List<String> withoutVelocity = new ArrayList<>();
    private final List<String> withoutVertical = new ArrayList<>();

    DataLimits(PairInput input) {
        this.input = input;
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
        return rate_Hz < FAST_HZ;
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
        return !isSlow() || gate_m >= (isPositionOnly() ? POSITION_ONLY_GATE_M : SLOW_GATE_M);
    }

    /** The gap from which on the closing limit is judged (m). */
    double closingLimitFrom_m() {
        return isSlow() && isPositionOnly() ? POSITION_ONLY_LIMIT_M : 0;
    }

    double dwell_s(PairSettings settings) {
        double wanted_s = input.matched().dwell_s();
        return isSlow() ? Math.max(wanted_s, settings.match().slowDwell_s()) : wanted_s;
    }

    /** Everything refused or weakened, one line each. */
    List<String> words(PairSettings settings) {
        List<String> words = new ArrayList<>();
        String pair = input.lead().id() + "–" + input.flyer().id();
        if (rate_Hz < SLOWEST_HZ) {
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
            addSlow(words, pair, settings);
        }
        return words;
    }

    private void addSlow(List<String> words, String pair, PairSettings settings) {
        String at = " at " + number(rate_Hz) + " Hz";
        if (isPositionOnly()) {
            words.add(
                    pair + ": matched windows and touch cannot be told from positions alone" + at);
            words.add(
                    pair
                            + ": the closing limit is not judged under "
                            + number(POSITION_ONLY_LIMIT_M)
                            + " m without velocity"
                            + at);
        } else {
            words.add(
                    pair
                            + ": whether they touched cannot be told"
                            + at
                            + ": nothing is graded above possible; 5 are needed");
        }
        if (dwell_s(settings) > input.matched().dwell_s()) {
            words.add(pair + ": a match must hold for " + number(dwell_s(settings)) + " s" + at);
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
            PairRows rows, MatchRates rates, PairInput input, PairSettings.Match settings) {
        List<String> words = new ArrayList<>();
        MatchedSettings tolerance = input.matched();
        boolean[] slow = new boolean[rows.size];
        for (int i = 0; i < rows.size; i++) {
            slow[i] =
                    rates.level_mps[i] < SLOW_TOLERANCES * tolerance.horizontal_mps()
                            && Math.abs(rates.vertical_mps[i])
                                    < SLOW_TOLERANCES * tolerance.vertical_mps();
        }
        addTooFine(
                words,
                "horizontal",
                tolerance.horizontal_mps(),
                sigma_mps(rows.levelSigma_mps, slow),
                settings);
        addTooFine(
                words,
                "vertical",
                tolerance.vertical_mps(),
                sigma_mps(rows.verticalSigma_mps, slow),
                settings);
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
