package pairdown.panel;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pairdown.replay.Desk;
import pairdown.replay.Recording;
import pairdown.season.AttemptSummary;
import pairdown.season.Envelope;
import pairdown.season.Envelope.Machine;
import pairdown.season.Ladder.FlyerLadder;
import pairdown.season.Ladder.Trend;
import pairdown.season.MissingForce;
import pairdown.season.Repeatability;
import pairdown.season.Season;
import pairdown.tail.PowerTable;
import pairdown.tail.TailSeason;
import pairdown.words.Translation;
import pairdown.words.Words;

/**
 * The season before its attempts: how near the flyers came, whether the descent repeats, whether
 * the machines can match. The season's page holds the rest.
 */
final class SeasonGlance {
    private final Season season;
    private final Recording recording;
    private final Words words;
    private final Translation told;

    /** Who of the season has no part in the attempt on show looks like someone after those. */
    private final Map<String, Integer> others = new LinkedHashMap<>();

    SeasonGlance(Season season, Recording recording, Words words, Translation told) {
        this.season = season;
        this.recording = recording;
        this.words = words;
        this.told = told;
    }

    List<Row> rows(Desk desk) {
        List<Row> rows = new ArrayList<>();
        ladder(desk, rows);
        repeatability(rows);
        season.tails().forEach(t -> tail(t, rows));
        envelope(rows);
        return rows;
    }

    private int number(String id) {
        return recording
                .indexOf(id)
                .orElseGet(
                        () ->
                                others.computeIfAbsent(
                                        id, k -> recording.ids().size() + others.size()));
    }

    private void ladder(Desk desk, List<Row> rows) {
        List<FlyerLadder> flyers = season.ladder().flyers();
        rows.add(Row.heading(words.get("seasonPage.ladder")));
        LadderPlot plot =
                new LadderPlot(
                        season.ladder(),
                        flyers.stream().map(f -> number(f.flyer())).toList(),
                        attempts(),
                        shown(desk));
        if (!plot.hasGaps()) {
            rows.add(Row.sentence(words.get("seasonPage.ladder.none")));
            return;
        }
        rows.add(Row.picture(plot));
        rows.add(Row.sentence(words.get("season.ladder.says")));
        for (FlyerLadder flyer : flyers) {
            rows.add(
                    Row.about(number(flyer.flyer()), flyer.flyer(), "")
                            .saying(List.of(trend(flyer.trend()))));
        }
    }

    /** Usable attempts by number, in order of time, as the season's page counts them. */
    private Map<String, Integer> attempts() {
        Map<String, Integer> attempts = new HashMap<>();
        for (AttemptSummary a : season.attempts()) {
            if (a.usable()) {
                attempts.put(a.folder(), attempts.size() + 1);
            }
        }
        return attempts;
    }

    /** The folder of the attempt on show as the season names it. */
    private static String shown(Desk desk) {
        Optional<Path> folder = desk.shown();
        return desk.season().stream()
                .filter(line -> folder.isPresent() && line.folder().equals(folder.get()))
                .map(line -> line.summary().folder())
                .findFirst()
                .orElse("");
    }

    /** What followed the lead's moves of power, counted. */
    private void tail(TailSeason tail, List<Row> rows) {
        tail.changeTable()
                .map(PowerTable::counts)
                .ifPresent(
                        n -> {
                            rows.add(Row.heading(words.get("seasonPage.tail", tail.participant())));
                            rows.add(
                                    Row.sentence(
                                            words.get(
                                                    "season.tail",
                                                    Integer.toString(n.both() + n.firstOnly()),
                                                    Integer.toString(n.both()),
                                                    Integer.toString(n.secondOnly() + n.neither()),
                                                    Integer.toString(n.secondOnly()))));
                        });
    }

    private String trend(Optional<Trend> trend) {
        if (trend.isEmpty()) {
            return words.get("seasonPage.trend.none");
        }
        Trend t = trend.get();
        String key = t.high() < 1 ? "nearer" : t.low() > 1 ? "further" : "open";
        return words.get(
                "seasonPage.trend." + key, factor(t.factor()), factor(t.low()), factor(t.high()));
    }

    private String factor(double value) {
        return String.format(words.locale(), "%.2f", value);
    }

    private void repeatability(List<Row> rows) {
        List<String> said = new ArrayList<>();
        for (Repeatability r : season.repeatabilities()) {
            if (r.held().trials() > 0) {
                said.add(
                        words.get(
                                "seasonPage.held",
                                Integer.toString(r.held().successes()),
                                Integer.toString(r.held().trials()),
                                percent(r.interval().low()),
                                percent(r.interval().high()),
                                r.configuration().map(told::of).orElse("")));
            }
        }
        if (said.isEmpty()) {
            said.add(words.get("seasonPage.held.none"));
        }
        rows.add(Row.heading(words.get("seasonPage.dives")).saying(said));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private void envelope(List<Row> rows) {
        Envelope envelope = season.envelope();
        rows.add(Row.heading(words.get("seasonPage.envelope")));
        List<Machine> machines =
                envelope.machines().stream().filter(EnvelopePlot::isShown).toList();
        EnvelopePlot plot =
                new EnvelopePlot(
                        envelope,
                        machines,
                        machines.stream().map(m -> number(m.machine())).toList());
        if (plot.hasSegments()) {
            rows.add(Row.picture(plot));
            rows.add(Row.sentence(words.get("season.envelope.says")));
        }
        rows.add(Row.sentence(overlap(envelope)));
        envelope.missingForce().ifPresent(f -> rows.add(Row.sentence(force(f))));
        envelope.question().ifPresent(q -> rows.add(Row.sentence(told.of(q))));
    }

    private String overlap(Envelope envelope) {
        String segments = Integer.toString(envelope.segments());
        if (envelope.overlapArea_m2ps2().isEmpty()) {
            return words.get("seasonPage.overlap.unknown", segments);
        }
        boolean shared = envelope.overlapArea_m2ps2().getAsDouble() > 0;
        return words.get(shared ? "season.overlaps" : "seasonPage.overlap.none", segments);
    }

    private String force(MissingForce force) {
        return words.get(
                "seasonPage.force",
                told.of(force.configuration()),
                kilonewtons(force.value_N()),
                kilonewtons(force.low_N()),
                kilonewtons(force.high_N()),
                Integer.toString(force.segments()));
    }

    private String kilonewtons(double force_N) {
        return String.format(words.locale(), "%.1f kN", force_N / 1000);
    }
}
