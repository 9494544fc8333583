package pairdown.report;

import java.util.List;
import pairdown.report.ReportModel.Chart;
import pairdown.report.ReportModel.CountTable;
import pairdown.report.ReportModel.Threshold;

/**
 * All that the season's template shows. Public for the template engine's sake.
 *
 * @param lang the page's language
 * @param glance the season in a few sentences
 * @param criteria the team's own for the next step; {@code criteriaSays} where it set none
 * @param unusable folders that are no attempt or could not be used
 */
public record SeasonModel(
        String lang,
        String title,
        String meta,
        List<String> cautions,
        List<String> glance,
        List<CriterionRow> criteria,
        Ladder ladder,
        Dives dives,
        List<Tail> tails,
        Envelope envelope,
        List<UnusableRow> unusable,
        List<String> notes,
        List<Threshold> thresholds) {

    public record CriterionRow(String name, Fact met, String metKey, String evidence) {}

    /** The step-down. */
    public record Ladder(List<String> says, List<Chart> charts, List<RungRow> rows) {}

    /**
     * One attempt of one flyer.
     *
     * @param number counts usable attempts in order of time: the charts' axis
     */
    public record RungRow(
            int number,
            Link attempt,
            String flyer,
            Fact gate,
            Fact median,
            String change,
            Fact least,
            Fact held,
            Fact matched,
            Fact overshoots,
            Fact verdict,
            String verdictKey,
            String spread) {}

    /**
     * An attempt's name.
     *
     * @param href relative path of its report; empty where none was made
     * @param day of UTC; empty where the name says it
     */
    public record Link(String name, String href, String day) {}

    /** The lead's descents. */
    public record Dives(List<String> says, List<Chart> charts, List<DiveRow> rows) {}

    public record DiveRow(
            int number,
            Link attempt,
            String configuration,
            Fact held,
            String heldKey,
            Fact longest,
            Fact stabilise,
            Fact spread,
            Fact elevator,
            Fact episodes,
            String exceeded) {}

    /** What followed the moves of power of one lead, over all its attempts. */
    public record Tail(
            String title, List<Prose> says, List<Chart> charts, List<CountTable> counts) {}

    /** The envelope. */
    public record Envelope(
            List<String> says,
            String question,
            List<Chart> charts,
            List<MachineRow> rows,
            List<OverlapRow> overlaps,
            List<ForceRow> forces) {}

    public record MachineRow(
            String machine,
            String role,
            String configuration,
            Fact segments,
            String airspeed,
            String sink) {}

    /** What the lead in one configuration shares with a flyer; how far apart where nothing. */
    public record OverlapRow(String configuration, String flyer, Fact area, String apart) {}

    public record ForceRow(
            String configuration, Fact segments, String flown, Fact force, String interval) {}

    public record UnusableRow(String folder, String reason) {}
}
