package pairdown.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import pairdown.report.ReportModel.Chart;
import pairdown.report.SeasonModel.ForceRow;
import pairdown.report.SeasonModel.MachineRow;
import pairdown.report.SeasonModel.OverlapRow;
import pairdown.season.Envelope;
import pairdown.season.Envelope.Corner;
import pairdown.season.Envelope.Machine;
import pairdown.season.MissingForce;
import pairdown.season.SteadySegment;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The envelope's part of the season page. */
final class SeasonEnvelope {
    private final SeasonBuilder page;
    private final Words words;
    private final Figures figures;
    private final Facts facts;
    private final Envelope envelope;

    SeasonEnvelope(SeasonBuilder page) {
        this.page = page;
        this.words = page.words();
        this.figures = page.figures();
        this.facts = page.facts();
        this.envelope = page.season().envelope();
    }

    SeasonModel.Envelope model() {
        List<String> says = new ArrayList<>();
        says.add(overlap());
        envelope.gap()
                .filter(g -> envelope.overlapArea_m2ps2().orElse(0) == 0)
                .ifPresent(g -> says.add(gap(g)));
        envelope.missingForce().ifPresent(f -> says.add(force(f)));
        target(says);
        envelope.notes().forEach(n -> says.add(sentence(page.told(n))));
        return new SeasonModel.Envelope(
                says,
                envelope.question().map(page::told).map(SeasonEnvelope::sentence).orElse(""),
                charts(),
                rows(),
                overlaps(),
                forces());
    }

    private static String sentence(String text) {
        return Character.toUpperCase(text.charAt(0))
                + text.substring(1)
                + (text.endsWith("?") ? "" : ".");
    }

    /** Whether the machines' steady flight meets, and what is missing. */
    String glance() {
        return envelope.missingForce().isPresent()
                ? overlap() + " " + force(envelope.missingForce().get())
                : overlap();
    }

    private String overlap() {
        String segments = String.valueOf(envelope.segments());
        if (envelope.overlapArea_m2ps2().isEmpty()) {
            return words.get("seasonPage.overlap.unknown", segments);
        }
        double area = envelope.overlapArea_m2ps2().getAsDouble();
        return area > 0
                ? words.get(
                        "seasonPage.overlap",
                        segments,
                        figures.text(Measure.AIRSPEED, extent(Corner::calibratedAirspeed_mps)),
                        figures.text(Measure.SINK, extent(Corner::sink_mps)),
                        page.number("%.1f", area),
                        sharing())
                : words.get("seasonPage.overlap.none", segments);
    }

    /** The lead's configurations in which it has flown what a flyer has. */
    private String sharing() {
        return envelope.overlaps().stream()
                .filter(o -> o.area_m2ps2() > 0)
                .map(Envelope.Overlap::configuration)
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** How far the widest shared polygon reaches. */
    private double extent(ToDoubleFunction<Corner> of) {
        return envelope.overlaps().stream()
                .flatMap(o -> o.polygons().stream())
                .map(p -> p.stream().mapToDouble(of).summaryStatistics())
                .mapToDouble(s -> s.getMax() - s.getMin())
                .max()
                .orElse(0);
    }

    private String gap(Envelope.Gap g) {
        double dv = g.flown().calibratedAirspeed_mps() - g.lead().calibratedAirspeed_mps();
        double dz = g.flown().sink_mps() - g.lead().sink_mps();
        return words.get(
                "seasonPage.gap",
                g.flyer(),
                figures.text(Measure.AIRSPEED, Math.abs(dv)),
                words.get(dv < 0 ? "seasonPage.slower" : "seasonPage.faster"),
                figures.text(Measure.SINK, Math.abs(dz)),
                words.get(dz < 0 ? "seasonPage.sinksLess" : "seasonPage.sinksMore"));
    }

    private String force(MissingForce f) {
        return words.get(
                "seasonPage.force",
                page.told(f.configuration()),
                kilonewtons(f.value_N()),
                kilonewtons(f.low_N()),
                kilonewtons(f.high_N()),
                String.valueOf(f.segments()));
    }

    private String kilonewtons(double force_N) {
        return page.number("%.1f kN", force_N / 1000);
    }

    private void target(List<String> says) {
        envelope.target()
                .ifPresent(
                        t ->
                                says.add(
                                        words.get(
                                                "seasonPage.target",
                                                figures.text(
                                                        Measure.AIRSPEED, t.set().airspeed_mps()),
                                                words.get("airspeed." + t.set().kind().key()),
                                                figures.text(Measure.SINK, t.set().sink_mps()),
                                                figures.text(
                                                        Measure.AIRSPEED,
                                                        t.calibratedAirspeed_mps()))));
    }

    private List<Chart> charts() {
        List<Chart> charts = new ArrayList<>();
        ChartBook.alone(
                        new SeasonEnvelopeChart(page).chart(),
                        "envelope",
                        words.get("seasonPage.chart.envelope"))
                .ifPresent(charts::add);
        return charts;
    }

    private List<MachineRow> rows() {
        List<MachineRow> rows = new ArrayList<>();
        for (int i = 0; i < envelope.machines().size(); i++) {
            Machine m = envelope.machines().get(i);
            rows.add(
                    new MachineRow(
                            m.machine(),
                            words.get("role." + m.role()),
                            page.told(m.configuration()),
                            facts.count(
                                    m.segments().size(), "/envelope/machines/" + i + "/segments"),
                            range(m, Measure.AIRSPEED, SteadySegment::calibratedAirspeed_mps),
                            range(m, Measure.SINK, SteadySegment::sink_mps)));
        }
        return rows;
    }

    private String range(Machine m, Measure measure, ToDoubleFunction<SteadySegment> of) {
        Comparator<SteadySegment> by = Comparator.comparingDouble(of);
        double low = of.applyAsDouble(m.segments().stream().min(by).orElseThrow());
        double high = of.applyAsDouble(m.segments().stream().max(by).orElseThrow());
        return words.get(
                "seasonPage.range", figures.number(measure, low), figures.text(measure, high));
    }

    private List<OverlapRow> overlaps() {
        List<OverlapRow> rows = new ArrayList<>();
        for (int i = 0; i < envelope.overlaps().size(); i++) {
            Envelope.Overlap o = envelope.overlaps().get(i);
            boolean any = o.area_m2ps2() > 0;
            rows.add(
                    new OverlapRow(
                            page.told(o.configuration()),
                            o.flyer(),
                            new Fact(
                                    any
                                            ? page.number("%.1f m²/s²", o.area_m2ps2())
                                            : words.get("seasonPage.overlap.no"),
                                    "/envelope/overlaps/" + i + "/area",
                                    "",
                                    ""),
                            any ? "" : gap(o.nearest())));
        }
        return rows;
    }

    private List<ForceRow> forces() {
        List<ForceRow> rows = new ArrayList<>();
        for (int i = 0; i < envelope.missingForces().size(); i++) {
            MissingForce f = envelope.missingForces().get(i);
            String at = "/envelope/missingForce_N/byConfiguration/" + i;
            rows.add(
                    new ForceRow(
                            page.told(f.configuration()),
                            facts.count(f.segments(), at + "/segments"),
                            words.get(
                                    "seasonPage.force.flown",
                                    figures.text(Measure.AIRSPEED, f.trueAirspeed_mps()),
                                    figures.text(Measure.SINK, f.sink_mps())),
                            new Fact(kilonewtons(f.value_N()), at + "/value", "", ""),
                            words.get(
                                    "seasonPage.range",
                                    page.number("%.1f", f.low_N() / 1000),
                                    kilonewtons(f.high_N()))));
        }
        return rows;
    }
}
