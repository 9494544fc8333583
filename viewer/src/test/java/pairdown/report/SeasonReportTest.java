package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;
import pairdown.report.SeasonReport.ReportLinks;
import pairdown.season.Criteria;
import pairdown.season.Season;
import pairdown.season.SeasonJson;
import pairdown.season.SeasonPlan;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Units;
import pairdown.words.Words;

class SeasonReportTest {
    private static final Pattern NEVER_SAID =
            Pattern.compile("\\b(safe|cleared|ready|proven|caused)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern FACT =
            Pattern.compile(
                    "data-from=\"([^\"]+)\" data-sigma=\"([^\"]*)\" data-form=\"([^\"]*)\">([^<]*)<");
    private static final Words WORDS = Words.of(Locale.ENGLISH);

    private static Season season = Season.of(List.of(), SeasonPlan.of(Criteria.NONE));
    private static String page = "";
    private static JsonNode json = new JsonMapper().nullNode();

    @BeforeAll
    static void write() throws Exception {
        season = SyntheticSeason.season();
        page = html(Units.MILES, ReportLinks.NONE);
        json = SeasonJson.of(season);
    }

    private static String html(Units units, ReportLinks links) throws Exception {
        return SeasonReport.html(season, units, WORDS, links);
    }

    @Test
    void everyFigureStandsInTheResultFileAndReadsAsItDoesThere() {
        Figures figures = new Figures(Units.MILES, Locale.ENGLISH);
        Matcher fact = FACT.matcher(page);
        int measured = 0;
        while (fact.find()) {
            JsonNode value = json.at(fact.group(1));
            assertFalse(value.isMissingNode(), fact.group(1));
            boolean isMeasure = List.of(Measure.values()).toString().contains(fact.group(3));
            if (isMeasure && !fact.group(3).isEmpty() && fact.group(2).isEmpty()) {
                measured++;
                Measure measure = Measure.valueOf(fact.group(3));
                assertEquals(figures.text(measure, value.asDouble()), fact.group(4), fact::group);
            }
        }
        assertTrue(measured > 100, "only " + measured);
    }

    @Test
    void thePageIsOneWellFormedFileThatNeedsNothingElse() throws Exception {
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page.replaceFirst("<!DOCTYPE html>", ""))));
        assertFalse(Pattern.compile("(src|href)=\"http").matcher(page).find());
        assertFalse(page.contains("<script"));
        assertEquals(11, page.split("<svg ", -1).length - 1, "charts");
    }

    @Test
    void noSentenceSaysMoreThanLogsCan() {
        assertFalse(NEVER_SAID.matcher(page).find());
        assertFalse(page.contains("{0}") || page.contains("''"));
        assertTrue(page.contains(WORDS.get("caution.5")));
    }

    @Test
    void whatWasNotUsedAndWhyIsSaid() {
        assertTrue(page.contains("flights/pictures</td><td>flights/pictures: no log"));
        assertTrue(page.contains("&quot;colour&quot; is not known"));
    }

    @Test
    void criteriaAreMetOrNotWithTheirEvidence() {
        assertTrue(page.contains("was not on the gate"));
        assertTrue(page.contains(">not met<") && page.contains(">met<"));
    }

    @Test
    void whatFollowedThePowerOfAllAttemptsIsCounted() {
        assertEquals(3, season.tails().get(0).changeTable().orElseThrow().counts().both());
        assertTrue(page.contains(WORDS.get("seasonPage.tail", "lead")));
        assertTrue(page.contains("/tails/0/changeTable/reverseFollowed"), "its counts");
    }

    @Test
    void unitsAreThoseAskedFor() throws Exception {
        String metric = html(Units.METRIC, ReportLinks.NONE);
        assertTrue(metric.contains(" km/h") && !metric.contains(" mph"));
        assertTrue(page.contains(" mph") && !page.contains(" km/h"));
    }

    @Test
    void anAttemptIsLinkedWhereItsReportLies(@TempDir Path folder) throws Exception {
        Path report = folder.resolve("flights/2031-05-12-09/debrief/report.html");
        Files.createDirectories(report.getParent());
        Files.writeString(report, "a report");
        ReportLinks links = ReportLinks.below(folder, folder.resolve("season"));
        String linked = html(Units.MILES, links);
        assertTrue(
                linked.contains("href=\"../flights/2031-05-12-09/debrief/report.html\""),
                "from the page's own folder");
        assertEquals(2 + 1, linked.split("href=", -1).length - 1, "two flyers and a descent");
        assertFalse(page.contains("href="));
    }

    @Test
    void aFolderWithOddNamesIsLinkedAsAnAddress(@TempDir Path folder) throws Exception {
        Path report = folder.resolve("day 1/50 % ü/debrief/report.html");
        Files.createDirectories(report.getParent());
        Files.writeString(report, "a report");
        assertEquals(
                "../day%201/50%20%25%20%C3%BC/debrief/report.html",
                ReportLinks.below(folder, folder.resolve("season")).of("day 1/50 % ü"));
    }

    @Test
    void anEmptySeasonIsAPageThatSaysSo() throws Exception {
        Season none = Season.of(List.of(), SeasonPlan.of(Criteria.NONE));
        String bare = SeasonReport.html(none, Units.KNOTS, WORDS, ReportLinks.NONE);
        assertTrue(bare.contains(WORDS.get("seasonPage.meta.none")));
        assertTrue(bare.contains("None were written down"));
        assertFalse(bare.contains("<svg "));
    }
}
