package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.Mark;
import pairdown.debrief.Debrief;
import pairdown.debrief.HeightUse;
import pairdown.pair.PairDebrief;
import pairdown.report.ReportModel.BoardPage;
import pairdown.report.ReportModel.Chart;
import pairdown.report.ReportModel.FindingRow;
import pairdown.report.ReportModel.FlyerLine;
import pairdown.report.ReportModel.HeightPart;
import pairdown.report.ReportModel.TimedPicture;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/**
 * The board page: one sheet of paper, black and white, however many flew. With more flyers lines
 * stand closer and less is said beside each; what has no room stands on the coach's pages.
 */
final class BoardPart {
    /** Up to here every flyer has a sentence of its own. */
    private static final int ROOMY = 3;

    /** More lines than this do not fit beside everything else. */
    private static final int MOST_FLYERS = 14;

    private static final int FINDINGS_ROOMY = 7;
    private static final int FINDINGS_TIGHT = 5;
    private static final int NOTES = 3;
    private static final int CLOSING_CURVES = 4;
    private static final int PERCENT = 100;

    /** A part of the bar this wide has room for its name. */
    private static final double NAMED_SHARE = 0.15;

    private final Debrief debrief;
    private final List<Mark> marks;
    private final Words words;
    private final Figures figures;
    private final Facts facts;
    private final ChartBook book;

    BoardPart(Debrief debrief, List<Mark> marks, Words words, Figures figures, ChartBook book) {
        this.debrief = debrief;
        this.marks = marks;
        this.words = words;
        this.figures = figures;
        this.book = book;
        this.facts = new Facts(debrief.axis(), words, figures);
    }

    BoardPage page(Optional<TimedPicture> picture, List<FindingRow> allFindings) {
        boolean roomy = debrief.pairs().size() <= ROOMY;
        int most = roomy ? FINDINGS_ROOMY : FINDINGS_TIGHT;
        List<FindingRow> findings = allFindings.stream().limit(most).toList();
        return new BoardPage(
                roomy ? "roomy" : "tight",
                flyers(),
                rest(debrief.pairs().size() - MOST_FLYERS, "report.board.moreFlyers"),
                picture.stream().toList(),
                closing().stream().toList(),
                budget(),
                words.get(HeightUse.of(debrief).isPresent() ? BUDGET + "says" : BUDGET + "none"),
                findings,
                rest(allFindings.size() - findings.size(), "report.board.moreFindings"),
                notes(),
                NOTES);
    }

    private static final String BUDGET = "report.budget.";

    private String rest(int left, String key) {
        return left > 0 ? words.get(key, String.valueOf(left)) : "";
    }

    private List<FlyerLine> flyers() {
        List<FlyerLine> lines = new ArrayList<>();
        for (int i = 0; i < Math.min(MOST_FLYERS, debrief.pairs().size()); i++) {
            lines.add(new FlyerPart(debrief, i, words, figures).line());
        }
        return lines;
    }

    /** Closing against distance for the nearest flyers, told apart by their dashes. */
    private Optional<Chart> closing() {
        List<PairDebrief> nearest = Nearest.of(debrief.pairs(), CLOSING_CURVES);
        boolean limited = nearest.stream().anyMatch(PairCharts::isLimited);
        return book.draw(
                new PairCharts(words, figures).closingOf(nearest),
                "boardclosing",
                words.get("report.chart.boardClosing" + (limited ? "" : ".free")));
    }

    private List<HeightPart> budget() {
        List<HeightPart> parts = new ArrayList<>();
        HeightUse.of(debrief)
                .ifPresent(
                        h -> {
                            if (h.matchStart_m().isEmpty()) {
                                part(parts, h, unmatched(), "exit_m", "end_m");
                            } else {
                                part(parts, h, "approach", "exit_m", "matchStart_m");
                                part(parts, h, "matched", "matchStart_m", "matchEnd_m");
                                part(parts, h, "after", "matchEnd_m", "end_m");
                            }
                        });
        return parts;
    }

    private String unmatched() {
        return debrief.pairs().stream().anyMatch(p -> p.matched().isKnown())
                ? "unmatched"
                : "unjudged";
    }

    private void part(List<HeightPart> parts, HeightUse h, String key, String from, String to) {
        double amount_m = at(h, from) - at(h, to);
        double share = amount_m / (h.exit_m() - h.end_m());
        parts.add(
                new HeightPart(
                        words.get(BUDGET + key),
                        facts.of(
                                Measure.HEIGHT,
                                amount_m,
                                "/heightUse/" + from + " -/heightUse/" + to),
                        (int) Math.round(PERCENT * share),
                        share >= NAMED_SHARE,
                        key));
    }

    private static double at(HeightUse h, String field) {
        OptionalDouble height_m =
                switch (field) {
                    case "exit_m" -> OptionalDouble.of(h.exit_m());
                    case "matchStart_m" -> h.matchStart_m();
                    case "matchEnd_m" -> h.matchEnd_m();
                    default -> OptionalDouble.of(h.end_m());
                };
        return height_m.orElseThrow();
    }

    /** The first notes that people typed on moments of this attempt. */
    private List<String> notes() {
        return marks.stream().map(Mark::note).filter(note -> !note.isBlank()).limit(NOTES).toList();
    }
}
