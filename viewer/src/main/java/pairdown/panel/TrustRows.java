package pairdown.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.clock.ClockResult;
import pairdown.debrief.Debrief;
import pairdown.debrief.LogQuality;
import pairdown.height.HeightResult;
import pairdown.replay.Recording;
import pairdown.time.Span;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/** What to trust: each log's clock, height and data, with the warnings; then the air. */
final class TrustRows {
    private final Debrief debrief;
    private final Recording recording;
    private final Words words;
    private final Translation told;
    private final Figures figures;

    TrustRows(Board board, Words words, Translation told, Figures figures) {
        this.debrief = board.debrief();
        this.recording = board.recording();
        this.words = words;
        this.told = told;
        this.figures = figures;
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (LogQuality log : debrief.quality()) {
            rows.add(row(log));
        }
        rows.add(Row.heading(words.get("trust.air")).saying(air()));
        if (!debrief.notes().isEmpty()) {
            rows.add(Row.heading(words.get("trust.notes")).saying(told.of(debrief.notes())));
        }
        return rows;
    }

    private Row row(LogQuality log) {
        List<Row.Cell> cells = new ArrayList<>();
        Optional<ClockResult> clock =
                debrief.clock().stream()
                        .filter(c -> c.file().equals(log.file()))
                        .filter(c -> c.participant().equals(log.participant()))
                        .findFirst();
        clock.ifPresent(c -> clockCells(c, cells));
        Optional<HeightResult> height =
                debrief.heights().stream()
                        .filter(h -> h.file().equals(log.file()))
                        .filter(h -> h.participant().equals(log.participant()))
                        .findFirst();
        height.ifPresent(h -> heightCells(h, cells));
        cells.add(new Row.Cell(words.get("trust.fixes"), Integer.toString(log.fixes())));
        cells.add(
                new Row.Cell(
                        words.get("trust.rate"),
                        log.rate_Hz().isPresent()
                                ? figures.addPlain(new Line(), log.rate_Hz().getAsDouble(), 1)
                                        + " Hz"
                                : Figures.MISSING));
        double missing_s = log.gaps().stream().mapToDouble(Span::duration_s).sum();
        cells.add(
                new Row.Cell(
                        words.get("trust.gaps"),
                        log.gaps().size() + " · " + figures.text(Measure.DURATION, missing_s)));
        cells.add(
                new Row.Cell(
                        words.get("trust.dropped"), log.skippedCount() + " + " + log.rejected()));
        List<String> warnings = new ArrayList<>(log.warnings());
        clock.ifPresent(c -> warnings.addAll(c.warnings()));
        height.ifPresent(h -> warnings.addAll(h.warnings()));
        List<String> said = new ArrayList<>(told.of(warnings));
        told.lost(log.skipped()).ifPresent(said::add);
        return Row.about(
                        recording.indexOf(log.participant()).orElse(-1),
                        log.participant() + " · " + log.file(),
                        verdict(log, clock, warnings))
                .with(cells)
                .saying(said);
    }

    private String verdict(LogQuality log, Optional<ClockResult> clock, List<String> warnings) {
        if (log.span().isEmpty() || clock.map(c -> !c.isUsable()).orElse(false)) {
            return words.get("trust.not-used");
        }
        return warnings.isEmpty()
                ? words.get("trust.no-warning")
                : words.get("trust.warnings", Integer.toString(warnings.size()));
    }

    private void clockCells(ClockResult clock, List<Row.Cell> cells) {
        cells.add(
                new Row.Cell(words.get("trust.clock"), words.get("clock." + clock.method().key())));
        Line offset = new Line();
        if (clock.isUsable()) {
            figures.addPlain(offset, clock.map().offset_s(), 2).add(" ± ");
            figures.addPlain(offset, clock.offsetSigma_s(), 2).add(" s");
        } else {
            offset.add(Figures.MISSING);
        }
        cells.add(new Row.Cell(words.get("trust.offset"), offset.toString()));
    }

    private void heightCells(HeightResult height, List<Row.Cell> cells) {
        cells.add(
                new Row.Cell(
                        words.get("trust.height"), words.get("datum." + height.datumRead().key())));
        cells.add(
                new Row.Cell(
                        words.get("trust.bias"),
                        height.bias_m()
                                .map(b -> figures.text(Measure.DISTANCE, b))
                                .orElse(
                                        "± "
                                                + figures.text(
                                                        Measure.DISTANCE, height.biasSigma_m()))));
    }

    private List<String> air() {
        List<String> said = new ArrayList<>();
        said.add(
                debrief.wind().isKnown()
                        ? words.get(
                                "trust.wind",
                                words.each("wind", debrief.wind().method()),
                                Integer.toString(debrief.wind().layers().size()))
                        : words.get("trust.no-wind"));
        said.addAll(told.of(debrief.wind().notes()));
        return said;
    }
}
