package pairdown.panel;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.Keymap;
import pairdown.replay.Desk;
import pairdown.replay.Recording;
import pairdown.season.AttemptSummary;
import pairdown.season.AttemptSummary.Dive;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.Season;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/** All attempts of a season: pressing one opens it, its button lays it over the one shown. */
final class SeasonRows {
    private final Words words;
    private final Translation told;
    private final Figures figures;
    private final Keymap keys;

    SeasonRows(Words words, Translation told, Figures figures, Keymap keys) {
        this.words = words;
        this.told = told;
        this.figures = figures;
        this.keys = keys;
    }

    List<Row> rows(Desk desk, Recording recording) {
        List<Row> rows = new ArrayList<>();
        if (desk.seasonFound().isPresent()) {
            Season found = desk.seasonFound().get();
            rows.addAll(new SeasonGlance(found, recording, words, told).rows(desk));
            rows.add(0, toList(rows.size() + 1, desk.season().size()));
            rows.add(Row.heading(words.get("season.list")));
        }
        int before = rows.size();
        for (int i = 0; i < desk.season().size(); i++) {
            rows.add(row(desk, desk.season().get(i), i));
        }
        String how = rows.size() == before ? "season.none" : "season.how";
        rows.add(
                Row.sentence(
                        words.get(
                                how,
                                keys.label(Action.OPEN_SEASON),
                                keys.label(Action.GHOST_ALIGNMENT),
                                keys.label(Action.GHOST))));
        return rows;
    }

    /** What the season says comes first; one press leads past it. */
    private Row toList(int rows, int attempts) {
        return Row.fact(words.get("season.to-list"), Integer.toString(attempts))
                .doing(new Command(Action.PANEL_DOWN, rows), false);
    }

    private Row row(Desk desk, Desk.SeasonLine line, int number) {
        AttemptSummary summary = line.summary();
        if (!summary.usable()) {
            return Row.about(-1, summary.attempt(), words.get("season.unusable"))
                    .saying(summary.reason().map(told::of).stream().toList());
        }
        Row row =
                Row.about(-1, summary.attempt(), gate(summary))
                        .saying(said(summary))
                        .doing(
                                new Command(Action.OPEN_ATTEMPT, number),
                                is(desk.shown(), line.folder()));
        return row.beside(
                new Row.Aside(
                        words.get("season.overlay"),
                        new Command(Action.OVERLAY_ATTEMPT, number),
                        is(desk.overlaid(), line.folder())));
    }

    private static boolean is(Optional<Path> one, Path other) {
        return one.isPresent() && one.get().equals(other);
    }

    private String gate(AttemptSummary summary) {
        OptionalDouble gate_m = summary.gate_m();
        return gate_m.isPresent()
                ? words.get("season.gate", figures.text(Measure.DISTANCE, gate_m.getAsDouble()))
                : "";
    }

    private List<String> said(AttemptSummary summary) {
        List<String> said = new ArrayList<>();
        summary.flyers().forEach(flyer -> said.add(flyer(flyer)));
        summary.dive().ifPresent(dive -> said.add(dive(dive)));
        if (!summary.exceeded().isEmpty()) {
            said.add(words.get("season.exceeded", "" + summary.exceeded().size()));
        }
        if (summary.closureExceedances() > 0) {
            said.add(words.get("season.closing", "" + summary.closureExceedances()));
        }
        summary.episodes()
                .filter(n -> n > 0)
                .ifPresent(n -> said.add(words.get("season.episodes", "" + n)));
        return said;
    }

    private String dive(Dive dive) {
        String longest = figures.text(Measure.DURATION, dive.longest_s());
        return words.get(dive.held() ? "season.dive-held" : "season.dive-not-held", longest);
    }

    private String flyer(FlyerSummary flyer) {
        String verdict =
                flyer.verdict()
                        .map(v -> words.get("verdict." + v))
                        .orElse(words.get("verdict.none"));
        return words.get("season.flyer", flyer.flyer(), gap(flyer), verdict);
    }

    /** The gap the gate is judged by; without a match the least one. */
    private String gap(FlyerSummary flyer) {
        if (flyer.medianGap_m().isPresent()) {
            return words.get("season.median", distance(flyer.medianGap_m(), flyer.sigma_m()));
        }
        return flyer.leastGap_m().isPresent()
                ? words.get("season.least", distance(flyer.leastGap_m(), flyer.sigma_m()))
                : "\u2212";
    }

    private String distance(OptionalDouble value_m, OptionalDouble sigma_m) {
        return sigma_m.isPresent()
                ? figures.text(
                        Measure.DISTANCE,
                        new Estimate(value_m.getAsDouble(), sigma_m.getAsDouble()))
                : figures.text(Measure.DISTANCE, value_m.getAsDouble());
    }
}
