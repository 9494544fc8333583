package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.clock.ClockResult;
import pairdown.debrief.Debrief;
import pairdown.debrief.LogQuality;
import pairdown.height.HeightResult;
import pairdown.report.ReportModel.TrustRow;
import pairdown.time.Span;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/** What to trust: one row a log. */
final class TrustPart {
    /** A clock is known to some hundredths of a second at the best. */
    private static final String OFFSET = "%+.2f";

    private static final String OFFSET_SIGMA = "± %.2f s";

    private final Debrief debrief;
    private final Words words;
    private final Figures figures;

    TrustPart(Debrief debrief, Words words, Figures figures) {
        this.debrief = debrief;
        this.words = words;
        this.figures = figures;
    }

    List<TrustRow> rows() {
        List<TrustRow> rows = new ArrayList<>();
        for (int i = 0; i < debrief.quality().size(); i++) {
            rows.add(row(debrief.quality().get(i), "/quality/logs/" + i));
        }
        return rows;
    }

    private TrustRow row(LogQuality q, String at) {
        Optional<ClockResult> clock =
                debrief.clock().stream().filter(c -> c.file().equals(q.file())).findFirst();
        Optional<HeightResult> height =
                debrief.heights().stream().filter(h -> h.file().equals(q.file())).findFirst();
        List<String> warnings = new ArrayList<>(q.warnings());
        clock.ifPresent(c -> warnings.addAll(c.warnings()));
        height.ifPresent(h -> warnings.addAll(h.warnings()));
        return new TrustRow(
                q.participant(),
                q.file(),
                q.format().orElse(words.get("report.notRead")),
                new Facts(debrief.axis(), words, figures).count(q.fixes(), at + "/fixes"),
                q.rate_Hz().isPresent()
                        ? String.format(words.locale(), "%.1f Hz", q.rate_Hz().getAsDouble())
                        : Figures.MISSING,
                clock.map(this::clock).orElse(Figures.MISSING),
                height.map(this::height).orElse(Figures.MISSING),
                lost(q),
                said(q, warnings));
    }

    private List<String> said(LogQuality q, List<String> warnings) {
        Translation told = new Translation(words);
        List<String> said = new ArrayList<>(told.of(warnings.stream().distinct().toList()));
        told.lost(q.skipped()).ifPresent(said::add);
        return said;
    }

    private String clock(ClockResult c) {
        String method = words.get("clock." + c.method().key());
        if (!c.isUsable()) {
            return method;
        }
        String sigma = String.format(words.locale(), OFFSET_SIGMA, c.offsetSigma_s());
        if (c.zero().isPresent()) {
            return method + ", " + sigma;
        }
        return String.format(words.locale(), OFFSET, c.map().offset_s())
                + " "
                + sigma
                + ", "
                + method;
    }

    private String height(HeightResult h) {
        String datum = words.get("datum." + h.datumRead().key());
        Optional<Estimate> bias = h.bias_m();
        return bias.isPresent()
                ? words.get("report.height.bias", datum, figures.text(Measure.DISTANCE, bias.get()))
                : words.get(
                        "report.height.unmeasured",
                        datum,
                        figures.text(Measure.DISTANCE, h.biasSigma_m()));
    }

    private String lost(LogQuality q) {
        double gaps_s = q.gaps().stream().mapToDouble(Span::duration_s).sum();
        List<String> said = new ArrayList<>();
        if (!q.gaps().isEmpty()) {
            said.add(
                    words.get(
                            "report.lost.gaps",
                            String.valueOf(q.gaps().size()),
                            figures.text(Measure.DURATION, gaps_s)));
        }
        if (q.skippedCount() > 0) {
            said.add(words.get("report.lost.skipped", String.valueOf(q.skippedCount())));
        }
        if (q.rejected() > 0) {
            said.add(words.get("report.lost.rejected", String.valueOf(q.rejected())));
        }
        return said.isEmpty() ? words.get("report.lost.none") : String.join(", ", said);
    }
}
