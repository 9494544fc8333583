package pairdown.report;

import java.util.List;

/**
 * All that the report's template shows: words, figures with their origin, and charts. Public for
 * the template engine's sake.
 *
 * @param lang the page's language
 * @param title heading
 * @param date the attempt's UTC date
 * @param boardPictures one in grey, where pictures can be made
 * @param whyNoPictures where they can't: why, and what would mend it; else empty
 * @param notes what was assumed or can't be known beyond single logs
 */
public record ReportModel(
        String lang,
        String title,
        String attempt,
        String date,
        List<String> cautions,
        List<TrustRow> trust,
        List<String> notes,
        List<FlyerLine> flyers,
        List<Picture> boardPictures,
        String whyNoPictures,
        List<FindingRow> findings,
        List<HeightPart> heightBudget,
        String heightBudgetSays,
        List<PairSection> pairs,
        List<TrustChart> trustCharts,
        PilotPage pilot,
        List<EventRow> events,
        List<Threshold> thresholds) {

    /** One log's trustworthiness, in the order a reader asks. */
    public record TrustRow(
            String participant,
            String file,
            String format,
            Fact fixes,
            String rate,
            String clock,
            String height,
            String lost,
            List<String> warnings) {}

    /** One flyer's line on the board. */
    public record FlyerLine(
            String flyer,
            Fact gate,
            Fact medianGap,
            Fact longestMatch,
            Fact closest,
            Fact worstClosing,
            Fact heightLeft,
            Fact verdict,
            String trust) {}

    public record FindingRow(
            String rule,
            String who,
            String outcome,
            String outcomeKey,
            Fact value,
            Fact limit,
            String time,
            String reason) {}

    /** A part of the height from exit to break-off and what it was used for. */
    public record HeightPart(String name, String amount, int share_pct, String look) {}

    /** One pair for the coach. */
    public record PairSection(
            String heading,
            List<String> sentences,
            List<Picture> pictures,
            List<Chart> charts,
            List<WindowRow> windows,
            List<String> exceedances,
            List<String> touches,
            List<String> refusals) {}

    public record WindowRow(
            Fact start,
            Fact duration,
            String range,
            Fact separation,
            Fact airspeed,
            Fact sink,
            Fact ended) {}

    /** A picture made by the viewer, as a data URI. */
    public record Picture(String source, String caption) {}

    /** A chart and the sentence that says how to read it. */
    public record Chart(String svg, String caption) {}

    public record TrustChart(String heading, Chart chart) {}

    /** The pilot's page; nothing but {@code says} where no systems were logged. */
    public record PilotPage(
            List<String> says,
            List<String> episodes,
            List<Chart> charts,
            List<List<String>> sequence) {}

    public record EventRow(String time, String kind, String who, String text) {}

    /** A tolerance or limit that results were judged by. */
    public record Threshold(String name, String value) {}
}
