package pairdown.report;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Lettering that the charts of one page share. The same label stands on chart after chart: its
 * outline is kept once, and each chart says only where it goes. Nine tenths of a chart is
 * lettering.
 */
final class Outlines {
    /** An outline shorter than this is not worth a reference (characters). */
    private static final int WORTH = 100;

    private final Map<String, String> ids = new LinkedHashMap<>();
    private final int worth;

    private Outlines(int worth) {
        this.worth = worth;
    }

    /** For a page whose end holds {@link #kept}. */
    static Outlines ofPage() {
        return new Outlines(WORTH);
    }

    /** For a chart that stands alone: nothing is kept. */
    static Outlines inPlace() {
        return new Outlines(Integer.MAX_VALUE);
    }

    /**
     * The element of a filled outline; empty if it has no points.
     *
     * @param look its attributes, each led by a space
     */
    String element(Shape shape, String look) {
        PathIterator points = shape.getPathIterator(null);
        if (points.isDone()) {
            return "";
        }
        double[] first = new double[6];
        points.currentSegment(first);
        AffineTransform toOrigin = AffineTransform.getTranslateInstance(-first[0], -first[1]);
        String d = PathData.of(toOrigin.createTransformedShape(shape));
        if (d.length() < worth) {
            return "<path" + look + " d=\"" + PathData.of(shape) + "\"/>";
        }
        String id = ids.computeIfAbsent(d, unused -> "o" + ids.size());
        return String.format(
                Locale.ROOT,
                "<use href=\"#%s\" x=\"%.1f\" y=\"%.1f\"%s/>",
                id,
                first[0],
                first[1],
                look);
    }

    /** What elements refer to. */
    String kept() {
        StringBuilder kept = new StringBuilder();
        ids.forEach(
                (d, id) ->
                        kept.append("<path id=\"")
                                .append(id)
                                .append("\" d=\"")
                                .append(d)
                                .append("\"/>"));
        return kept.toString();
    }
}
