package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.knowm.xchart.XYChart;
import pairdown.app.Sample;
import pairdown.debrief.Debrief;
import pairdown.debrief.DebriefJson;
import pairdown.pair.PairDebrief;
import pairdown.words.Figures;
import pairdown.words.Translation;
import pairdown.words.Units;
import pairdown.words.Words;

/** All that the report says comes from the bundle of texts, or from the debrief. */
class ReportLanguageTest {
    private static final Debrief DEBRIEF = Sample.debrief();

    /** What stands for the same in every language: units, Tc′, the file formats. */
    private static final Set<String> SAME_EVERYWHERE =
            Set.of("m", "s", "ft", "min", "mph", "Hz", "csv", "igc", "msl");

    /** Every text of the bundle in brackets, so that one from elsewhere stands out. */
    private static final Words BRACKETED = bracketed();

    private static Words bracketed() {
        Words english = Words.of(Locale.ENGLISH);
        Map<String, String> texts = new HashMap<>();
        for (String key : english.keys()) {
            String text = english.get(key);
            boolean count = Pattern.matches("\\d+", text);
            texts.put(key, count ? text : "⟦" + text + "⟧");
        }
        return Words.of(Locale.ENGLISH, texts);
    }

    @ParameterizedTest
    @ValueSource(strings = {"report.ftlh", "season.ftlh"})
    void aTemplateHasNoTextOfItsOwn(String name) throws IOException {
        String template;
        try (InputStream in = Report.class.getResourceAsStream("/pairdown/report/" + name)) {
            template = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        String text =
                template.replaceAll("(?s)<style.*?</style>", "")
                        .replaceAll("(?s)<#--.*?-->", "")
                        .replaceAll("\\$\\{([^{}\"]|\"[^\"]*\")*\\}", "")
                        .replaceAll("</?[#@]([^>\"]|\"[^\"]*\")*>", "")
                        .replaceAll("<[^>]*>", "");
        assertFalse(Pattern.compile("\\p{L}{2,}").matcher(text).find(), text);
    }

    @Test
    void everyWordOnThePageComesFromTheBundleOrTheDebrief() throws IOException {
        String page = page(BRACKETED);
        String text =
                page.replaceAll("(?s)<(style|svg).*?</\\1>", " ")
                        .replaceAll("<[^>]*>", " ")
                        .replace("&#39;", "'")
                        .replace("&amp;", "&");
        String left = outsideBrackets(text);
        for (String told : toldByTheDebrief()) {
            left = left.replace(told, " ");
        }
        Set<String> strangers = new TreeSet<>();
        Pattern.compile("[\\p{L}]+").matcher(left).results().forEach(w -> strangers.add(w.group()));
        strangers.removeAll(SAME_EVERYWHERE);
        assertEquals(Set.of(), strangers);
    }

    /** Brackets nest where a text is put into another. */
    private static String outsideBrackets(String text) {
        StringBuilder out = new StringBuilder();
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '⟦' ? 1 : 0;
            if (depth == 0) {
                out.append(c);
            }
            depth -= c == '⟧' ? 1 : 0;
        }
        return out.toString();
    }

    /** Names and files, the longest first: sentences come out of the bundle, by their English. */
    private static List<String> toldByTheDebrief() {
        List<String> told = new ArrayList<>();
        gather(DebriefJson.of(DEBRIEF), told);
        told.removeAll(SaidSentences.of(DEBRIEF));
        told.sort(Comparator.comparingInt(String::length).reversed());
        return told;
    }

    private static void gather(JsonNode node, List<String> told) {
        if (node.isTextual() && node.asText().length() > 2) {
            told.add(node.asText());
        }
        node.forEach(child -> gather(child, told));
    }

    @Test
    void everySentenceOfADebriefIsOneOfTheBundle() {
        List<String> said = SaidSentences.of(DEBRIEF);
        assertTrue(said.size() > 20, "only " + said.size());
        assertEquals(List.of(), said.stream().filter(s -> !Translation.knows(s)).toList());
    }

    @Test
    void everyLabelOfEveryChartComesFromTheBundle() {
        Figures figures = new Figures(Units.MILES, Locale.ENGLISH);
        PairDebrief pair = DEBRIEF.pairs().get(0);
        PairCharts c = new PairCharts(BRACKETED, figures);
        PairTimeCharts overTime = new PairTimeCharts(BRACKETED, figures, DEBRIEF, pair);
        ApproachCharts a = new ApproachCharts(BRACKETED, figures);
        TrustCharts t = new TrustCharts(BRACKETED, figures);
        List<XYChart> charts = new ArrayList<>();
        charts.add(c.closing(pair));
        charts.add(c.closingOf(DEBRIEF.pairs()));
        charts.add(overTime.gap());
        charts.add(overTime.rates());
        charts.add(a.plan(pair, DEBRIEF.attempt().gate_m()));
        charts.add(a.profile(pair, DEBRIEF.attempt().gate_m()));
        charts.add(t.heights(DEBRIEF));
        charts.add(t.biases(DEBRIEF));
        charts.add(t.wind(DEBRIEF.wind()));
        DEBRIEF.clock()
                .forEach(
                        clock ->
                                clock.curve()
                                        .ifPresent(
                                                curve ->
                                                        charts.add(
                                                                t.offsets(
                                                                        clock,
                                                                        curve,
                                                                        DEBRIEF.axis()))));
        Set<String> names = new TreeSet<>();
        DEBRIEF.participants().forEach(p -> names.add(p.id()));
        for (XYChart chart : charts) {
            assertTrue(chart.getXAxisTitle().contains("⟦"), chart.getXAxisTitle());
            assertTrue(chart.getYAxisTitle().contains("⟦"), chart.getYAxisTitle());
            for (String series : chart.getSeriesMap().keySet()) {
                boolean unnamed = series.isBlank() || series.startsWith("\u200b");
                assertTrue(unnamed || names.contains(series) || series.contains("⟦"), series);
            }
        }
    }

    /** The file for this language lies beside this test and holds but a few texts. */
    @Test
    void aTranslationIsOneMoreFile() throws IOException {
        String page = page(Words.of(Locale.forLanguageTag("eo")));
        assertTrue(page.contains("lang=\"eo\""));
        assertTrue(page.contains("<h2>Kion fidi</h2>"));
        assertTrue(page.contains("Tabulpaĝo: "));
        assertTrue(page.contains("For the coach"), "what is not translated is English");
    }

    @Test
    void numbersFollowTheLocale() throws IOException {
        Pattern sigma = Pattern.compile("\\d+,\\d ± \\d+,\\d m");
        assertTrue(sigma.matcher(page(Words.of(Locale.GERMANY))).find());
        assertFalse(sigma.matcher(page(Words.of(Locale.UK))).find());
    }

    @Test
    void aLanguageWithoutTranslationSaysThatItIsEnglish() throws IOException {
        assertTrue(page(Words.of(Locale.JAPAN)).contains("lang=\"en\""));
    }

    private static String page(Words words) throws IOException {
        return Report.html(DEBRIEF, List.of(), Units.MILES, words, Pictures.NONE);
    }
}
