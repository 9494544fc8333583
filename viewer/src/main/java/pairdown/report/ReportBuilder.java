package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.knowm.xchart.XYChart;
import pairdown.attempt.Mark;
import pairdown.clock.ClockResult;
import pairdown.debrief.Debrief;
import pairdown.debrief.JsonValues;
import pairdown.pair.PairDebrief;
import pairdown.phase.Event;
import pairdown.report.ReportModel.EventRow;
import pairdown.report.ReportModel.FindingRow;
import pairdown.report.ReportModel.PairSection;
import pairdown.report.ReportModel.PilotPage;
import pairdown.report.ReportModel.TimedPicture;
import pairdown.report.ReportModel.TrustChart;
import pairdown.words.Figures;
import pairdown.words.Translation;
import pairdown.words.Words;

/** Makes the report's model from a debrief: what is said, with which figures, in which order. */
final class ReportBuilder {
    /** Pairs with pictures: with more of them a page would be too heavy to send. */
    private static final int PICTURED = 4;

    private final Debrief debrief;
    private final List<Mark> marks;
    private final Words words;
    private final Translation told;
    private final Figures figures;
    private final Pictures pictures;
    private final ChartBook charts = new ChartBook();

    ReportBuilder(
            Debrief debrief, List<Mark> marks, Words words, Figures figures, Pictures pictures) {
        this.debrief = debrief;
        this.marks = List.copyOf(marks);
        this.words = words;
        this.told = new Translation(words);
        this.figures = figures;
        this.pictures = pictures;
    }

    ReportModel build() {
        CompletableFuture<Optional<TimedPicture>> boardPicture =
                BoardPicture.order(debrief, words, figures, pictures);
        List<PairPart> pairs = pairs();
        String day = new JsonValues(debrief.axis()).time(debrief.span().start_s()).substring(0, 10);
        List<FindingRow> findings = new FindingPart(debrief, words, figures).rows();
        PilotPage pilot = new PilotPart(debrief, words, figures, charts).page();
        List<TrustChart> trustCharts = trustCharts();
        List<PairSection> pairSections = pairs.stream().map(PairPart::section).toList();
        return new ReportModel(
                words.language(),
                debrief.attempt().title().orElse(debrief.attempt().id()),
                debrief.attempt().id(),
                day,
                Cautions.of(words),
                new TrustPart(debrief, words, figures).rows(),
                notes(),
                new BoardPart(debrief, marks, words, figures, charts)
                        .page(boardPicture.join(), findings),
                whyNoPictures(),
                findings,
                pairSections,
                trustCharts,
                pilot,
                events(),
                new ThresholdPart(debrief, words, figures).rows(),
                charts.outlines());
    }

    private String whyNoPictures() {
        Optional<String> why = pictures.whyNone();
        if (why.isPresent()) {
            return words.get("report.pictures.none", why.get());
        }
        return pictures != Pictures.NONE && debrief.pairs().size() > PICTURED
                ? words.get("report.pictures.nearest", String.valueOf(PICTURED))
                : "";
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>(debrief.notes());
        notes.addAll(debrief.wind().notes());
        return told.of(notes);
    }

    /** Made all at once, so that their pictures are drawn while the rest is put together. */
    private List<PairPart> pairs() {
        List<PairDebrief> shown = Nearest.of(debrief.pairs(), PICTURED);
        List<PairPart> parts = new ArrayList<>();
        for (int i = 0; i < debrief.pairs().size(); i++) {
            Pictures its = shown.contains(debrief.pairs().get(i)) ? pictures : Pictures.NONE;
            parts.add(new PairPart(debrief, i, words, figures, its, charts));
        }
        return parts;
    }

    private List<TrustChart> trustCharts() {
        TrustCharts trust = new TrustCharts(words, figures);
        List<TrustChart> out = new ArrayList<>();
        int n = 0;
        for (ClockResult clock : debrief.clock()) {
            if (clock.curve().isPresent()) {
                String heading =
                        words.get("report.clock.heading", clock.participant(), clock.file());
                String caption =
                        clock.zero().isPresent()
                                ? "report.recorder.caption"
                                : "report.clock.caption";
                XYChart chart = trust.offsets(clock, clock.curve().get(), debrief.axis());
                add(out, "clock" + n++, heading, chart, caption);
            }
        }
        add(
                out,
                "heights",
                words.get("report.heights.heading"),
                trust.heights(debrief),
                "report.heights.caption");
        add(
                out,
                "biases",
                words.get("report.biases.heading"),
                trust.biases(debrief),
                "report.biases.caption");
        if (debrief.wind().isKnown()) {
            String heading =
                    words.get("report.wind.heading", words.each("wind", debrief.wind().method()));
            add(out, "wind", heading, trust.wind(debrief.wind()), "report.wind.caption");
        }
        return out;
    }

    private void add(
            List<TrustChart> out, String name, String heading, XYChart chart, String captionKey) {
        charts.draw(chart, name, words.get(captionKey))
                .ifPresent(drawn -> out.add(new TrustChart(heading, drawn)));
    }

    private List<EventRow> events() {
        List<EventRow> rows = new ArrayList<>();
        for (Event e : debrief.events()) {
            rows.add(
                    new EventRow(
                            figures.clock(debrief.axis(), e.time_s(), Facts.CLOCK_DECIMALS),
                            words.get("event." + e.kind().key()),
                            String.join(", ", e.participants()),
                            told.of(e.text())));
        }
        return rows;
    }
}
