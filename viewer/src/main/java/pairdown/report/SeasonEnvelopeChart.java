package pairdown.report;

import java.awt.Color;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.style.Styler.LegendLayout;
import org.knowm.xchart.style.Styler.LegendPosition;
import pairdown.attempt.Role;
import pairdown.season.Envelope;
import pairdown.season.Envelope.Corner;
import pairdown.season.Envelope.Machine;
import pairdown.season.Envelope.Overlap;
import pairdown.season.Envelope.TargetMark;
import pairdown.season.SteadySegment;
import pairdown.theme.Palette;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/**
 * Steady flight of all machines in calibrated airspeed and sink: points, the hull round each
 * configuration, what the lead's and the flyers' share, and the target with its tolerances. Fast is
 * right, steep is down, as a path is.
 */
final class SeasonEnvelopeChart {
    private static final Color SHARED = new Color(0x00, 0x9E, 0x73, 0x70);

    /** Small: a season has hundreds of segments. */
    private static final int MARK = 5;

    private final SeasonBuilder page;
    private final Words words;
    private final Figures figures;

    SeasonEnvelopeChart(SeasonBuilder page) {
        this.page = page;
        this.words = page.words();
        this.figures = page.figures();
    }

    XYChart chart() {
        Envelope e = page.season().envelope();
        XYChart chart =
                ChartStyle.chart(
                        960,
                        560,
                        words.get("seasonPage.axis.airspeed", figures.symbol(Measure.AIRSPEED)),
                        words.get("seasonPage.axis.sink", figures.symbol(Measure.SINK)),
                        words.locale());
        shared(chart, e.overlaps());
        List<String> flyers =
                e.machines().stream()
                        .filter(m -> m.role().equals(Role.FLYER.key()))
                        .map(Machine::machine)
                        .distinct()
                        .toList();
        Palette palette = Palette.LIGHT.forNames(flyers);
        int leads = 0;
        for (Machine m : e.machines()) {
            if (m.role().equals(Role.LEAD.key())) {
                machine(chart, m, ChartStyle.BLACK, leads++);
            } else if (m.role().equals(Role.FLYER.key())) {
                int place = flyers.indexOf(m.machine());
                machine(chart, m, colour(palette.participant(place)), place);
            }
        }
        e.target().ifPresent(t -> target(chart, t));
        chart.getStyler().setLegendPosition(LegendPosition.OutsideE);
        chart.getStyler().setLegendLayout(LegendLayout.Vertical);
        chart.getStyler().setMarkerSize(MARK);
        ChartScale.DOWN.label(chart, words.locale());
        return chart;
    }

    private static Color colour(int rgba) {
        return new Color(rgba >>> 8);
    }

    private void shared(XYChart chart, List<Overlap> overlaps) {
        int n = 0;
        for (Overlap o : overlaps) {
            for (List<Corner> polygon : o.polygons()) {
                String name = words.get("seasonPage.series.shared");
                String unique = n == 0 ? name : name + " " + n;
                ChartAreas.area(chart, unique, round(polygon), SHARED);
                if (n++ > 0) {
                    ChartAreas.unlisted(chart, unique);
                }
            }
        }
    }

    private void machine(XYChart chart, Machine m, Color colour, int look) {
        String name = m.machine() + ", " + new Translation(words).of(m.configuration());
        ChartStyle.line(chart, name, round(m.hull()), colour, ChartStyle.stroke(look));
        Points points = new Points();
        for (SteadySegment s : m.segments()) {
            points.add(v(s.calibratedAirspeed_mps()), z(s.sink_mps()));
        }
        ChartAreas.dots(chart, words.get("seasonPage.series.segments", name), points, colour);
    }

    private Points round(List<Corner> hull) {
        Points line = new Points();
        for (int i = 0; i <= hull.size() && !hull.isEmpty(); i++) {
            Corner c = hull.get(i % hull.size());
            line.add(v(c.calibratedAirspeed_mps()), z(c.sink_mps()));
        }
        return line;
    }

    private void target(XYChart chart, TargetMark t) {
        if (t.calibratedAirspeed_mps().isEmpty()) {
            return;
        }
        double at_mps = t.calibratedAirspeed_mps().getAsDouble();
        double dv_mps = t.set().airspeedTolerance_mps();
        double dz_mps = t.set().sinkTolerance_mps();
        double sink_mps = t.set().sink_mps();
        Points box = new Points();
        box.add(v(at_mps - dv_mps), z(sink_mps - dz_mps));
        box.add(v(at_mps + dv_mps), z(sink_mps - dz_mps));
        box.add(v(at_mps + dv_mps), z(sink_mps + dz_mps));
        box.add(v(at_mps - dv_mps), z(sink_mps + dz_mps));
        box.add(v(at_mps - dv_mps), z(sink_mps - dz_mps));
        ChartStyle.line(
                chart,
                words.get("seasonPage.series.target"),
                box,
                ChartStyle.PURPLE,
                ChartStyle.SOLID);
    }

    private double v(double mps) {
        return figures.shown(Measure.AIRSPEED, mps);
    }

    private double z(double mps) {
        return ChartScale.DOWN.drawn(figures.shown(Measure.SINK, mps));
    }
}
