package pairdown.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.attempt.MatchedSettings;
import pairdown.debrief.Debrief;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Recording;
import pairdown.settings.StripKind;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The strips of what a flyer is against the lead: gap, closure, rates. */
final class PairStrips {
    /** A gap strip that showed more would flatten what matters, without a gate (m). */
    private static final double FAR_M = 100;

    /** With one, likewise, in gates, but never less than the way onto the nearest of them (m). */
    private static final double FAR_GATES = 5;

    private static final double LEAST_FAR_M = 40;

    /**
     * Colours and shapes of the three axes begin here, at those that participants get last: an axis
     * must not look like one of them.
     */
    private static final int FIRST_AXIS = 5;

    /**
     * Rates are shown up to this separation: at 200 m the lead's turning by a degree a second moves
     * the place it sees a flyer at by 3.5 m/s, more than any tolerance.
     */
    private static final double RATES_WITHIN_M = 200;

    private final Recording recording;
    private final Debrief debrief;
    private final Words words;

    PairStrips(Recording recording, Words words) {
        this.recording = recording;
        this.debrief = recording.debrief();
        this.words = words;
    }

    StripData gap() {
        List<Curve> curves = new ArrayList<>();
        forPairs(
                (pair, i, flyer) -> {
                    Figure shown = pair.slot().isPresent() ? Figure.GAP : Figure.SEPARATION;
                    curves.add(pairCurve(pair, i, flyer, shown, false));
                });
        List<StripData.Level> gate = new ArrayList<>();
        debrief.attempt()
                .gate_m()
                .ifPresent(g -> gate.add(new StripData.Level(g, words.get("strip.gate"))));
        return new StripData(
                StripKind.GAP,
                Measure.DISTANCE,
                false,
                0,
                10,
                0,
                far_m(),
                curves,
                gate,
                List.of(),
                whyNoPair());
    }

    private double far_m() {
        OptionalDouble gate_m = debrief.attempt().gate_m();
        return gate_m.isPresent() ? Math.max(LEAST_FAR_M, FAR_GATES * gate_m.getAsDouble()) : FAR_M;
    }

    StripData closure() {
        List<Curve> curves = new ArrayList<>();
        forPairs(
                (pair, i, flyer) -> {
                    curves.add(pairCurve(pair, i, flyer, Figure.CLOSURE_RATE, false));
                    curves.add(pairCurve(pair, i, flyer, Figure.CLOSING_LIMIT, true));
                });
        return new StripData(
                StripKind.CLOSURE,
                Measure.CLOSURE,
                true,
                -2,
                4,
                -10,
                15,
                curves,
                List.of(),
                List.of(),
                whyNoPair());
    }

    StripData rates() {
        List<Curve> curves = new ArrayList<>();
        forPairs(
                (pair, i, flyer) -> {
                    curves.add(rate(pair, i, FIRST_AXIS, "strip.ahead", Figure.AHEAD_RATE));
                    curves.add(rate(pair, i, FIRST_AXIS + 1, "strip.right", Figure.RIGHT_RATE));
                    curves.add(rate(pair, i, FIRST_AXIS + 2, "strip.above", Figure.ABOVE_RATE));
                });
        MatchedSettings matched = debrief.attempt().matched();
        return new StripData(
                StripKind.RATES,
                Measure.CLOSURE,
                true,
                -3,
                3,
                -8,
                8,
                curves,
                List.of(),
                List.of(
                        new StripData.Band(-matched.horizontal_mps(), matched.horizontal_mps()),
                        new StripData.Band(-matched.vertical_mps(), matched.vertical_mps())),
                whyNoPair());
    }

    private Curve rate(PairDebrief pair, int i, int number, String label, Figure figure) {
        return new Curve(words.get(label), number, i, false, near(pair.series(), figure));
    }

    /** Only where the two are near: far away the lead's turning is all that a rate shows. */
    private static Pyramid near(PairSeries series, Figure figure) {
        float[] values = new float[series.size()];
        for (int k = 0; k < values.length; k++) {
            boolean isNear = series.value(Figure.SEPARATION, k) <= RATES_WITHIN_M;
            values[k] = isNear ? (float) series.value(figure, k) : Float.NaN;
        }
        return Pyramid.of(series.time_s(0), series.step_s(), values);
    }

    private static Curve pairCurve(
            PairDebrief pair, int i, int flyer, Figure figure, boolean isLimit) {
        return new Curve(pair.flyer(), flyer, i, isLimit, Pyramid.of(pair.series(), figure));
    }

    private String whyNoPair() {
        return words.get("strip.why.pair");
    }

    private interface ForPair {
        void accept(PairDebrief pair, int index, int flyer);
    }

    private void forPairs(ForPair each) {
        for (int i = 0; i < debrief.pairs().size(); i++) {
            PairDebrief pair = debrief.pairs().get(i);
            if (pair.series().size() > 0) {
                each.accept(pair, i, recording.indexOf(pair.flyer()).orElse(i + 1));
            }
        }
    }
}
