package pairdown.report;

import java.util.List;
import pairdown.attempt.Mark;
import pairdown.debrief.Debrief;
import pairdown.words.Figures;
import pairdown.words.Units;
import pairdown.words.Words;

/**
 * The report of one attempt as a self-contained page: valid both as HTML and as XML, for the PDF.
 */
public final class Report {
    private Report() {}

    /**
     * The page.
     *
     * @param marks moments that people marked; their notes go on the board
     * @param units what figures are shown in
     * @param words its texts; numbers are in their locale
     */
    public static String html(
            Debrief debrief, List<Mark> marks, Units units, Words words, Pictures pictures) {
        Figures figures = new Figures(units, words.locale());
        ReportModel model = new ReportBuilder(debrief, marks, words, figures, pictures).build();
        return PageTemplate.fill("report.ftlh", "report", model, words);
    }
}
