package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import nu.validator.htmlparser.common.XmlViolationPolicy;
import nu.validator.htmlparser.sax.HtmlParser;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;
import pairdown.words.Figures;
import pairdown.words.Units;
import pairdown.words.Words;

/** The main job on the sample attempt, through the command line. */
class SampleDebriefTest {
    private static final Words WORDS = Words.of(Locale.ENGLISH);
    private static final Figures FIGURES = new Figures(Units.MILES, Locale.ENGLISH);

    /** Words that no output may say of a flight. */
    private static final Pattern NEVER_SAID =
            Pattern.compile("\\b(safe|cleared|ready|proven|caused)\\b", Pattern.CASE_INSENSITIVE);

    @TempDir private static Path out;

    private static JsonNode debrief = new JsonMapper().nullNode();
    private static String report = "";

    @BeforeAll
    static void debriefTheSample() throws Exception {
        assertEquals(
                ExitStatus.DONE,
                Main.run(
                        "debrief",
                        Sample.FOLDER.toString(),
                        "--out",
                        out.toString(),
                        "--tracks",
                        "--share",
                        out.resolve("whole.zip").toString(),
                        "--share-stripped",
                        out.resolve("stripped.zip").toString()));
        debrief = new JsonMapper().readTree(out.resolve("debrief.json").toFile());
        report = Files.readString(out.resolve("report.html"));
    }

    @Test
    void everyFlyerIsJudgedAgainstTheLeadAndHasItsSeries() {
        assertEquals(2, debrief.path("pairs").size());
        for (JsonNode pair : debrief.path("pairs")) {
            assertTrue(Files.isRegularFile(out.resolve(pair.path("series").asText())));
            assertTrue(pair.path("closest").path("separationSigma_m").asDouble() > 0);
        }
    }

    @Test
    void whatCannotBeToldIsAbsentAndNotZero() {
        for (JsonNode pair : debrief.path("pairs")) {
            JsonNode matched = pair.path("matched");
            assertEquals(matched.has("refusals"), !matched.has("total_s"), matched::toString);
            boolean judged = !pair.path("gateHeld").path("verdict").asText().equals("no-data");
            assertEquals(judged, pair.path("gateHeld").has("held_s"), pair::toString);
        }
    }

    @Test
    void aDatumIsToldOfLogsWithSatelliteHeightsAlone() {
        Set<String> files = new HashSet<>();
        debrief.path("heights").path("logs").forEach(l -> files.add(l.path("file").asText()));
        for (JsonNode log : debrief.path("quality").path("logs")) {
            boolean placed = log.path("fixes").asInt() > 0;
            assertEquals(placed, files.contains(log.path("file").asText()), log::toString);
        }
    }

    @Test
    void everyFigureOfTheReportReadsAsTheResultFileSays() {
        List<Traced> figures = Traced.on(report);
        for (Traced figure : figures) {
            Set<String> wanted = figure.wanted(debrief, WORDS, FIGURES);
            assertTrue(wanted.contains(figure.shownUnsigned()), figure + ", not " + wanted);
        }
        assertTrue(figures.size() > 100, "only " + figures.size() + " figures");
    }

    /**
     * Every number on the board page is traced but those in its heading, the charts' scales and how
     * many findings found no room.
     */
    @Test
    void theBoardPageHasNoNumberThatIsNotTraced() {
        String board = report.substring(report.indexOf("<section class=\"sheet board"));
        String page = board.substring(board.indexOf("<thead>"), board.indexOf("</section>"));
        assertUntraced(page.replaceAll("and \\d+ more, on the coach&#39;s pages", ""));
    }

    @Test
    void thePartsOfTheHeightAreAsWideAsTheirShares() {
        Matcher part =
                Pattern.compile("<td class=\"\\w+\" style=\"width: (\\d+)%\">").matcher(report);
        int sum_pct = 0;
        while (part.find()) {
            sum_pct += Integer.parseInt(part.group(1));
        }
        assertEquals(100, sum_pct, 2);
    }

    @Test
    void noSentenceOnAPairHasANumberThatIsNotTraced() {
        Matcher pair =
                Pattern.compile("(?s)<section class=\"pair.*?(<div class=\"pictures\">)")
                        .matcher(report);
        int pairs = 0;
        while (pair.find()) {
            assertUntraced(pair.group().replaceAll("(?s)<ul>.*?</ul>", ""));
            pairs++;
        }
        assertEquals(debrief.path("pairs").size(), pairs);
    }

    private static void assertUntraced(String html) {
        String untraced =
                html.replaceAll("(?s)<span class=\"fact\".*?</span>", "")
                        .replaceAll("(?s)<svg.*?</svg>", "")
                        .replaceAll("<[^>]*>|&#?\\w+;", " ");
        Matcher number = Pattern.compile("\\d").matcher(untraced);
        assertFalse(number.find(), () -> around(untraced, number.start()));
    }

    @Test
    void theReportIsHtmlWithoutAnError() throws Exception {
        List<String> errors = new ArrayList<>();
        HtmlParser parser = new HtmlParser(XmlViolationPolicy.ALLOW);
        parser.setErrorHandler(new Noted(errors));
        parser.setContentHandler(new DefaultHandler());
        parser.parse(new InputSource(new StringReader(report)));
        assertEquals(List.of(), errors);
    }

    /** As one who hears the page, not sees it, finds the way by its headings. */
    @Test
    void headingsGoDownOneLevelAtATime() {
        Matcher heading = Pattern.compile("<h([1-6])[ >]").matcher(report);
        int last = 0;
        while (heading.find()) {
            int level = Integer.parseInt(heading.group(1));
            assertTrue(level <= last + 1, () -> around(report, heading.start()));
            last = level;
        }
        assertTrue(last > 0);
    }

    @Test
    void theReportIsOneFileThatAsksForNothingElse() {
        Matcher link =
                Pattern.compile("(src|href|url\\()\\s*=?\\s*[\"']?([^\"')\\s>]*)").matcher(report);
        while (link.find()) {
            String to = link.group(2);
            assertTrue(to.startsWith("data:") || to.startsWith("#"), link.group());
        }
        assertFalse(report.contains("<script"));
        assertFalse(report.contains("@import"));
    }

    @Test
    void everyLetteringThatAChartUsesIsOnThePage() {
        Matcher use = Pattern.compile("<use href=\"#([^\"]+)\"").matcher(report);
        int uses = 0;
        while (use.find()) {
            uses++;
            assertTrue(report.contains("<path id=\"" + use.group(1) + "\""), use.group(1));
        }
        assertTrue(uses > 50, "only " + uses);
    }

    @Test
    void theReportIsLightEnoughToSend() {
        assertTrue(report.length() < 3_000_000, report.length() + " characters");
    }

    @Test
    void theBoardPageIsOnePageOfThePdfInBlackAndWhite() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(out.resolve("report.pdf").toFile())) {
            String board = textOf(pdf, 2);
            assertTrue(board.startsWith("Board page"), board);
            assertTrue(board.contains("Next gate:"), board);
            assertTrue(board.contains("Judged by:"), board);
            assertTrue(textOf(pdf, 3).startsWith("For the coach"), () -> "no coach's page");
            BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(1, 50);
            for (int y = 0; y < page.getHeight(); y++) {
                for (int x = 0; x < page.getWidth(); x++) {
                    Color c = new Color(page.getRGB(x, y));
                    int spread =
                            Math.max(c.getRed(), Math.max(c.getGreen(), c.getBlue()))
                                    - Math.min(c.getRed(), Math.min(c.getGreen(), c.getBlue()));
                    assertTrue(spread < 12, "colour at " + x + ", " + y + ": " + c);
                }
            }
        }
    }

    @Test
    void everyPageOfThePdfIsA4AndBringsItsFonts() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(out.resolve("report.pdf").toFile())) {
            for (PDPage page : pdf.getPages()) {
                assertEquals(PDRectangle.A4.getWidth(), page.getMediaBox().getWidth(), 0.5);
                assertEquals(PDRectangle.A4.getHeight(), page.getMediaBox().getHeight(), 0.5);
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                }
            }
            assertFalse(textOf(pdf, 1, pdf.getNumberOfPages()).contains("#"), "a glyph is missing");
        }
    }

    private static String textOf(PDDocument pdf, int page) throws IOException {
        return textOf(pdf, page, page);
    }

    private static String textOf(PDDocument pdf, int first, int last) throws IOException {
        PDFTextStripper text = new PDFTextStripper();
        text.setSortByPosition(true);
        text.setStartPage(first);
        text.setEndPage(last);
        return text.getText(pdf);
    }

    /** Keeps a parser's errors; its warnings are about other uses than HTML. */
    private record Noted(List<String> errors) implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) {}

        @Override
        public void error(SAXParseException e) {
            errors.add(e.getLineNumber() + ": " + e.getMessage());
        }

        @Override
        public void fatalError(SAXParseException e) {
            error(e);
        }
    }

    /** Every file written, the text of the PDF and of the archives included. */
    @Test
    void noOutputSaysMoreThanALogCan() throws Exception {
        List<String> outputs = new ArrayList<>();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".pdf")) {
                    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
                        outputs.add(textOf(pdf, 1, pdf.getNumberOfPages()));
                    }
                } else if (name.endsWith(".zip")) {
                    addEntries(file, outputs);
                } else {
                    outputs.add(Files.readString(file));
                }
            }
        }
        for (String output : outputs) {
            Matcher said = NEVER_SAID.matcher(output);
            assertFalse(said.find(), () -> around(output, said.start()));
        }
        assertTrue(outputs.size() > 20, "only " + outputs.size() + " outputs");
    }

    private static void addEntries(Path zip, List<String> outputs) throws IOException {
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().map(e -> (ZipEntry) e).toList()) {
                if (!entry.getName().endsWith(".pdf")) {
                    outputs.add(
                            new String(
                                    file.getInputStream(entry).readAllBytes(),
                                    StandardCharsets.UTF_8));
                }
            }
        }
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60));
    }

    @Test
    void theReportReadsAsPlainEnglish() {
        assertFalse(report.contains("''"), "a doubled apostrophe");
        assertFalse(report.contains("{0}"), "a place left open");
    }
}
