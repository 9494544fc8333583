package pairdown.panel;

import java.util.List;
import pairdown.settings.StripKind;
import pairdown.words.Measure;

/**
 * What a strip shows, made once for a debrief.
 *
 * @param isSigned whether values have a direction and are shown with a plus
 * @param least value that the axis always holds
 * @param greatest value that the axis always holds
 * @param floor value under which nothing is drawn, so that far ones do not flatten the rest
 * @param ceiling likewise above
 * @param lines limits and targets that stay the same
 * @param bands tolerances that stay the same
 * @param why in words, why there is nothing to show; empty where there is
 */
record StripData(
        StripKind kind,
        Measure measure,
        boolean isSigned,
        double least,
        double greatest,
        double floor,
        double ceiling,
        List<Curve> curves,
        List<Level> lines,
        List<Band> bands,
        String why) {
    /** A value that stays the same, and what it is. */
    record Level(double value, String label) {}

    /** A range that stays the same. */
    record Band(double from, double to) {}

    StripData {
        curves = List.copyOf(curves);
        lines = List.copyOf(lines);
        bands = List.copyOf(bands);
    }

    /** Whether the curves of flyers that are not chosen are shown too, faintly. */
    boolean showsOthers() {
        return kind != StripKind.RATES;
    }

    boolean isEmpty() {
        return curves.isEmpty();
    }
}
