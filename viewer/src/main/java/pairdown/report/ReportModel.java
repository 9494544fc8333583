package pairdown.report;

import java.util.List;

/**
 * All that the report's template shows: words, figures with their origin, and charts. Public for
 * the template engine's sake.
 *
 * @param lang the page's language
 * @param title heading
 * @param date the attempt's UTC date
 * @param whyNoPictures where they can't: why, and what would mend it; else empty
 * @param outlines lettering that charts refer to, as elements of SVG
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
        BoardPage board,
        String whyNoPictures,
        List<FindingRow> findings,
        List<PairSection> pairs,
        List<TrustChart> trustCharts,
        PilotPage pilot,
        List<EventRow> events,
        List<Threshold> thresholds,
        String outlines) {

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

    /**
     * The sheet for the board.
     *
     * @param density how close its lines stand: {@code roomy} or {@code tight}
     * @param moreFlyers says how many had no room, or empty
     * @param pictures one in grey, where pictures can be made
     * @param closing one chart, where there is something to draw
     * @param moreFindings says how many had no room, or empty
     * @param notes that people typed
     * @param noteLines how many lines notes have, typed or left for a pen
     */
    public record BoardPage(
            String density,
            List<FlyerLine> flyers,
            String moreFlyers,
            List<TimedPicture> pictures,
            List<Chart> closing,
            List<HeightPart> budget,
            String budgetSays,
            List<FindingRow> findings,
            String moreFindings,
            List<String> notes,
            int noteLines) {}

    /**
     * One flyer's line on the board.
     *
     * @param range of the longest match within one sigma: from, to; empty without a match
     * @param nearestIsGap whether {@code nearest} is a gap to a slot, else a separation
     * @param worstClosing speed and limit, or one entry that says there was none
     * @param says what the verdict means
     * @param gaps in each of the flyer's logs
     */
    public record FlyerLine(
            String flyer,
            Fact gate,
            Fact medianGap,
            Fact longestMatch,
            List<Fact> range,
            Fact nearest,
            boolean nearestIsGap,
            List<Fact> worstClosing,
            Fact heightLeft,
            Fact verdict,
            String says,
            Fact clockSigma,
            Fact distanceSigma,
            List<Fact> gaps) {}

    public record FindingRow(
            String rule,
            String who,
            Fact outcome,
            String outcomeKey,
            Fact value,
            Fact limit,
            Fact time,
            String reason) {}

    /**
     * A part of the height from exit to break-off and what it was used for.
     *
     * @param named whether its name fits into its share of the bar, else it stands below
     */
    public record HeightPart(String name, Fact amount, int share_pct, boolean named, String look) {}

    /** One pair for the coach. */
    public record PairSection(
            String heading,
            List<Prose> sentences,
            List<Picture> pictures,
            List<Chart> charts,
            List<WindowRow> windows,
            List<Prose> exceedances,
            List<Prose> touches,
            List<String> refusals) {}

    public record WindowRow(
            Fact start,
            Fact duration,
            List<Fact> range,
            Fact separation,
            Fact airspeed,
            Fact sink,
            Fact ended) {}

    /** A picture made by the viewer, as a data URI. */
    public record Picture(String source, String caption) {}

    /** A picture whose caption tells when it is of. */
    public record TimedPicture(String source, Prose caption) {}

    /**
     * A chart and the sentence that says how to read it.
     *
     * @param look {@code half} a page wide, or {@code broad}
     */
    public record Chart(String svg, String caption, String look) {}

    public record TrustChart(String heading, Chart chart) {}

    /**
     * The pilot's page; nothing but {@code says} where no systems were logged.
     *
     * @param episodes in order of time
     * @param dives a row a descent: what to practise from
     * @param steps power at each step in the dives
     * @param essentials charts for the one page
     * @param details charts for what is behind it
     * @param follows what usually followed a move of power, in sentences
     * @param counts moves and episodes counted together
     * @param map effectiveness over Tc′ and airspeed
     * @param cannot what these data can't show, and what was assumed
     */
    public record PilotPage(
            List<Prose> says,
            List<EpisodeRow> episodes,
            List<DiveRow> dives,
            List<StepRow> steps,
            List<Chart> essentials,
            List<Chart> details,
            List<Prose> follows,
            List<CountTable> counts,
            EffectMap map,
            List<String> cannot) {
        static PilotPage saying(Prose only) {
            return new PilotPage(
                    List.of(only),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    EffectMap.NONE,
                    List.of());
        }
    }

    /**
     * One time that control faded.
     *
     * @param before the move of power before it, or that none was found
     * @param after the forward move it ended after, or that there was none
     */
    public record EpisodeRow(
            Fact start,
            Prose startSigma,
            Fact lasted,
            Fact grade,
            Prose before,
            Prose after,
            String why) {}

    /** One descent: when, at which airspeed, how soon steady, and whether it held. */
    public record DiveRow(
            Fact start,
            Fact pushOver,
            Fact pushOverAirspeed,
            Fact reverse,
            Fact reverseAirspeed,
            Fact stabilised,
            Fact held,
            String reached,
            String episodes) {}

    /** One move of power in a dive. */
    public record StepRow(
            Fact time,
            Prose move,
            Fact airspeed,
            Fact sink,
            Fact retardingCoefficient,
            String followed) {}

    /** Counts of moves and episodes: what is counted, two rows, two columns, what they say. */
    public record CountTable(
            String unit,
            String counted,
            String first,
            String second,
            List<Fact> counts,
            Prose says) {}

    /**
     * Effectiveness by airspeed (rows, the fastest first) and Tc′ (columns).
     *
     * @param columns lower and upper edge of each
     */
    public record EffectMap(List<String> columns, List<EffectRow> rows) {
        static final EffectMap NONE = new EffectMap(List.of(), List.of());
    }

    /** One row of the map; a cell without a sample is empty. */
    public record EffectRow(String airspeed, List<List<Fact>> cells) {}

    public record EventRow(String time, String kind, String who, String text) {}

    /** A tolerance or limit that results were judged by. */
    public record Threshold(String name, Prose value) {}
}
