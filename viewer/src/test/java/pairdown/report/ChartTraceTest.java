package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.words.Units;
import pairdown.words.Words;

/**
 * Reads the pilot's chart as a person does, by the numbers along its edges: labels are known by
 * their outlines, places by the grid lines beside them, and what the line says there must be what
 * was logged.
 */
class ChartTraceTest {
    private static final Path DIVE =
            Path.of("..", "sample-tracks", "practice-dives", "2031-05-06-02");

    private static final FontRenderContext RENDERING = new FontRenderContext(null, true, true);
    private static final String NUMBER = "(-?[\\d.]+)";
    private static final Pattern USE =
            Pattern.compile("<use href=\"#(\\w+)\" x=\"" + NUMBER + "\" y=\"" + NUMBER + "\"");
    private static final Pattern OUTLINE = Pattern.compile("<path id=\"(\\w+)\" d=\"([^\"]+)\"");

    /** A label may stand this far from its grid line (units of the chart). */
    private static final double BESIDE = 4;

    /** The line's points are written to the tenth of a unit, one after the other. */
    private static final double OFF_S = 0.4;

    private static final double OFF_PCT = 1.5;

    /** Two labelled places and what they say: the scale between and beyond them. */
    private record Scale(double at0, double says0, double at1, double says1) {
        double says(double at) {
            return says0 + (at - at0) / (at1 - at0) * (says1 - says0);
        }
    }

    private final Debrief debrief;
    private final String page;
    private final String chart;
    private final Font font;

    ChartTraceTest() throws Exception {
        debrief = Debriefer.debrief(AttemptFolder.open(DIVE), step -> {});
        Words words = Words.of(Locale.ENGLISH);
        page = Report.html(debrief, List.of(), Units.MILES, words, new Drawn());
        int in = page.indexOf("pilot-controls-clip0");
        chart = page.substring(page.lastIndexOf("<svg", in), page.indexOf("</svg>", in));
        try (InputStream file =
                Objects.requireNonNull(
                        ChartTraceTest.class.getResourceAsStream("/fonts/Inter-Regular.ttf"))) {
            font = Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(12f);
        }
    }

    @Test
    void thePowerLeverIsWhereTheChartsOwnNumbersPutIt() {
        Scale time = scale(times(), true);
        Scale percent = scale(percents(), false);
        Series lever =
                Objects.requireNonNull(
                        debrief.participant("lead")
                                .orElseThrow()
                                .systems()
                                .get(Channel.POWER_LEVER));
        int judged = 0;
        for (double[] point : firstLine()) {
            double t_s = time.says(point[0]);
            double shown_pct = percent.says(point[1]);
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (double dt = -OFF_S; dt <= OFF_S; dt += 0.05) {
                double logged = lever.at(t_s + dt);
                least = Math.min(least, logged);
                most = Math.max(most, logged);
            }
            String what = t_s + " s: " + shown_pct + " %, logged " + least + " to " + most;
            assertTrue(shown_pct > least - OFF_PCT && shown_pct < most + OFF_PCT, what);
            judged++;
        }
        assertTrue(judged > 100, "only " + judged + " points");
    }

    /** What a label may say, and the number it stands for: seconds on the attempt's axis. */
    private Map<String, Double> times() {
        Map<String, Double> says = new HashMap<>();
        double first = Math.floor(debrief.axis().epoch().toEpochMilli() / 1e4) * 10;
        for (double utc_s = first; utc_s < first + 600; utc_s += 10) {
            long ofDay = Math.floorMod((long) utc_s, 86_400L);
            String text =
                    String.format(
                            Locale.ROOT,
                            "%02d:%02d:%02d",
                            ofDay / 3600,
                            ofDay / 60 % 60,
                            ofDay % 60);
            says.put(text, utc_s - debrief.axis().epoch().toEpochMilli() / 1e3);
        }
        return says;
    }

    private static Map<String, Double> percents() {
        Map<String, Double> says = new HashMap<>();
        for (int p = 0; p <= 100; p += 10) {
            says.put(String.valueOf(p), (double) p);
            says.put("\u2212" + p, (double) -p);
        }
        return says;
    }

    /** The two labels furthest apart; all between must lie on one line. */
    private Scale scale(Map<String, Double> candidates, boolean along) {
        Map<String, String> ids = new HashMap<>();
        Matcher kept = OUTLINE.matcher(page.substring(page.lastIndexOf("<svg")));
        while (kept.find()) {
            ids.put(kept.group(2), kept.group(1));
        }
        List<double[]> found = new ArrayList<>();
        for (Map.Entry<String, Double> candidate : candidates.entrySet()) {
            Shape outline = new TextLayout(candidate.getKey(), font, RENDERING).getOutline(null);
            double[] first = new double[6];
            PathIterator points = outline.getPathIterator(null);
            points.currentSegment(first);
            Shape atOrigin =
                    AffineTransform.getTranslateInstance(-first[0], -first[1])
                            .createTransformedShape(outline);
            String id = ids.get(PathData.of(atOrigin));
            if (id == null) {
                continue;
            }
            Rectangle2D box = atOrigin.getBounds2D();
            Matcher use = USE.matcher(chart);
            while (use.find()) {
                if (use.group(1).equals(id)) {
                    double at =
                            along
                                    ? Double.parseDouble(use.group(2)) + box.getCenterX()
                                    : Double.parseDouble(use.group(3)) + box.getCenterY();
                    found.add(new double[] {nearestGridLine(at, along), candidate.getValue()});
                }
            }
        }
        found.sort((a, b) -> Double.compare(a[1], b[1]));
        assertTrue(found.size() >= 2, "labels found: " + found.size());
        double[] least = found.get(0);
        double[] most = found.get(found.size() - 1);
        Scale scale = new Scale(least[0], least[1], most[0], most[1]);
        for (double[] label : found) {
            double step = Math.abs(scale.says(1) - scale.says(0));
            assertEquals(label[1], scale.says(label[0]), step, "a label off its scale");
        }
        return scale;
    }

    /** Grid lines are thin filled boxes in the grid's grey. */
    private double nearestGridLine(double at, boolean along) {
        double best = Double.NaN;
        Matcher m = Pattern.compile("<path fill=\"#dddddd\" d=\"([^\"]+)\"").matcher(chart);
        while (m.find()) {
            Rectangle2D box = PathReader.read(m.group(1)).getBounds2D();
            boolean upright = box.getHeight() > box.getWidth();
            double here = along ? box.getCenterX() : box.getCenterY();
            if (upright == along && !(Math.abs(here - at) >= Math.abs(best - at))) {
                best = here;
            }
        }
        assertEquals(at, best, BESIDE, "no grid line beside a label");
        return best;
    }

    /** The points of the first line drawn, which is the power lever's. */
    private List<double[]> firstLine() {
        Matcher line =
                Pattern.compile("<path fill=\"none\" stroke=\"#0072b2\"[^>]* d=\"([^\"]+)\"")
                        .matcher(chart);
        assertTrue(line.find(), "no line");
        List<double[]> points = new ArrayList<>();
        PathIterator i = PathReader.read(line.group(1)).getPathIterator(null);
        double[] at = new double[6];
        for (; !i.isDone(); i.next()) {
            if (i.currentSegment(at) != PathIterator.SEG_CLOSE) {
                points.add(new double[] {at[0], at[1]});
            }
        }
        return points;
    }
}
