package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.words.Units;
import pairdown.words.Words;

class PilotPageTest {
    private static final Words WORDS = Words.of(Locale.ENGLISH);

    /** A practice dive of the demo season in which control faded once. */
    private static final Path DIVE =
            Path.of("..", "sample-tracks", "practice-dives", "2031-05-06-02");

    @Test
    void whatThePilotAsksIsOnOneSheet() throws Exception {
        Debrief debrief = Debriefer.debrief(AttemptFolder.open(DIVE), step -> {});
        assertEquals(1, debrief.tailControl().orElseThrow().episodes().size());
        String page = Report.html(debrief, List.of(), Units.MILES, WORDS, new Drawn());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ReportPdf.write(pilotOf(page), bytes);
        try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
            String said = new PDFTextStripper().getText(pdf);
            assertEquals(1, pdf.getNumberOfPages(), said);
            for (String part :
                    List.of(
                            "report.pilot.episodes",
                            "report.pilot.map",
                            "report.pilot.dives",
                            "report.pilot.steps")) {
                assertTrue(said.contains(WORDS.get(part)), part + " is not on " + said);
            }
            assertTrue(said.contains("power lever"), said);
        }
        assertTrue(page.contains("<h2>Behind the pilot"), "the rest stands behind it");
    }

    /** An onset known to a second is not told to the millisecond, and both have their digits. */
    @Test
    void anOnsetHasNoMoreDigitsThanItsSigma() throws Exception {
        Debrief debrief = Debriefer.debrief(AttemptFolder.open(DIVE), step -> {});
        double sigma_s = debrief.tailControl().orElseThrow().episodes().get(0).startSigma_s();
        String page = Report.html(debrief, List.of(), Units.MILES, WORDS, new Drawn());
        String row = page.substring(page.indexOf(WORDS.get("report.pilot.episodes")));
        String said =
                row.substring(row.indexOf("<tbody>"), row.indexOf("</tr>", row.indexOf("<tbody>")))
                        .replaceAll("<[^>]*>", " ")
                        .replace("&#160;", " ")
                        .replace('\u00a0', ' ')
                        .replaceAll("\\s+", " ");
        String onset =
                sigma_s < 0.95
                        ? String.format(Locale.ROOT, "\\d\\d\\.\\d ± %.1f s", sigma_s)
                        : String.format(Locale.ROOT, "\\d\\d ± %.0f s", sigma_s);
        assertTrue(said.matches(".*\\d\\d:\\d\\d:" + onset + ".*"), said);
    }

    /** Two counts on one page must be one: both are the table's. */
    @Test
    void theCountOfMovesIsTheTables() throws Exception {
        Debrief debrief = Debriefer.debrief(AttemptFolder.open(DIVE), step -> {});
        String page = Report.html(debrief, List.of(), Units.MILES, WORDS, new Drawn());
        String pilot = pilotOf(page);
        assertTrue(pilot.contains("data-from=\"/tailControl/review/changeTable/reverseFollowed\""));
        assertTrue(pilot.contains("data-from=\"/tailControl/review/changeTable/reverseNot\""));
        for (String table : List.of("changeTable", "stretchTable")) {
            String says = WORDS.get("report.pilot.table." + table + ".says");
            assertTrue(page.contains(says.replace("'", "&#39;")), says);
        }
    }

    /** The page with nothing but the pilot's sheet, and the lettering that charts refer to. */
    private static String pilotOf(String page) {
        int pilot = page.indexOf("<section class=\"sheet pilot");
        int end = page.indexOf("</section>", pilot);
        return page.substring(0, page.indexOf("<header>"))
                + page.substring(pilot, end)
                + "</section>"
                + page.substring(page.lastIndexOf("<svg"));
    }
}
