package pairdown.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.attempt.Mark;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.Keymap;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.PairDebrief;
import pairdown.phase.Event;
import pairdown.replay.Desk;
import pairdown.safety.Finding;
import pairdown.settings.StripKind;
import pairdown.tail.Episode;
import pairdown.tail.PowerChange;
import pairdown.tail.PowerSource;
import pairdown.tail.TailControl;
import pairdown.words.Figures;
import pairdown.words.Line;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/** What happened and can be gone to: events, findings, episodes, marks; and the other lists. */
final class HappenedRows {
    private final Words words;
    private final Translation told;
    private final Figures figures;

    HappenedRows(Words words, Translation told, Figures figures) {
        this.words = words;
        this.told = told;
        this.figures = figures;
    }

    List<Row> events(Board board) {
        List<Row> rows = new ArrayList<>();
        for (Event event : board.recording().events()) {
            int number =
                    event.participants().isEmpty()
                            ? -1
                            : board.recording().indexOf(event.participants().get(0)).orElse(-1);
            String who = String.join(", ", event.participants());
            String what = words.get("event." + event.kind().key());
            rows.add(
                    Row.about(
                                    number,
                                    who.isEmpty() ? what : who + " · " + what,
                                    clock(board, event.time_s()))
                            .saying(
                                    event.text().isBlank()
                                            ? List.of()
                                            : List.of(told.of(event.text())))
                            .doing(new Command(Action.SEEK, event.time_s()), false));
        }
        return orNone(rows);
    }

    private String clock(Board board, double t_s) {
        return figures.clock(board.debrief().axis(), t_s).substring(0, 10);
    }

    private List<Row> orNone(List<Row> rows) {
        if (rows.isEmpty()) {
            rows.add(Row.sentence(words.get("panel.none")));
        }
        return rows;
    }

    List<Row> limits(Board board) {
        List<Row> rows = new ArrayList<>();
        for (Finding finding : board.debrief().safety()) {
            rows.add(finding(board, finding));
        }
        for (PairDebrief pair : board.debrief().pairs()) {
            for (ClosureExceedance over : pair.closureExceedances()) {
                rows.add(exceedance(board, pair, over));
            }
        }
        rows.add(Row.sentence(words.get("limits.words")));
        return rows;
    }

    private Row finding(Board board, Finding finding) {
        String rule = "rule." + finding.rule();
        String who =
                finding.other()
                        .map(o -> finding.participant() + " – " + o)
                        .orElse(finding.participant());
        Row row =
                Row.about(
                                board.recording().indexOf(finding.participant()).orElse(-1),
                                who + " · " + words.get(words.has(rule) ? rule : "rule.other"),
                                words.get("finding." + finding.outcome().key()))
                        .with(
                                List.of(
                                        new Row.Cell(words.get("limits.flown"), flown(finding)),
                                        new Row.Cell(
                                                words.get("limits.limit"),
                                                inUnits(
                                                        finding,
                                                        finding.limit(),
                                                        OptionalDouble.empty()))))
                        .saying(finding.reason().map(told::of).stream().toList());
        if (finding.time_s().isEmpty()) {
            return row;
        }
        return row.doing(new Command(Action.SEEK, finding.time_s().getAsDouble()), false);
    }

    private String flown(Finding finding) {
        return finding.value().isPresent()
                ? inUnits(finding, finding.value().getAsDouble(), finding.sigma())
                : Figures.MISSING;
    }

    /** Findings are in metres or metres per second; anything else is shown as it is. */
    private String inUnits(Finding finding, double value, OptionalDouble sigma) {
        Line line = new Line();
        double s = sigma.orElse(Double.NaN);
        boolean isHeight = finding.rule().equals("breakOffHeight");
        boolean isAirspeed = finding.rule().equals("maximumAirspeed");
        return switch (finding.unit()) {
            case "m" ->
                    figures.add(line, isHeight ? Measure.HEIGHT : Measure.DISTANCE, value, s)
                            .toString();
            case "m/s", "mps" ->
                    figures.add(line, isAirspeed ? Measure.AIRSPEED : Measure.CLOSURE, value, s)
                            .toString();
            default -> figures.addPlain(line, value, 1).add(' ').add(finding.unit()).toString();
        };
    }

    private Row exceedance(Board board, PairDebrief pair, ClosureExceedance over) {
        return Row.about(
                        board.recording().indexOf(pair.flyer()).orElse(-1),
                        pair.flyer() + " · " + words.get("rule.closure"),
                        clock(board, over.span().start_s()))
                .with(
                        List.of(
                                new Row.Cell(
                                        words.get("flyer.closure"),
                                        figures.text(Measure.CLOSURE, over.worst())),
                                new Row.Cell(
                                        words.get("limits.limit"),
                                        figures.text(Measure.CLOSURE, over.limit_mps())),
                                new Row.Cell(
                                        words.get("limits.at"),
                                        figures.text(Measure.DISTANCE, over.separation_m())),
                                new Row.Cell(
                                        words.get("limits.lasted"),
                                        figures.text(Measure.DURATION, over.span().duration_s()))))
                .doing(new Command(Action.SEEK, over.worstTime_s()), false);
    }

    List<Row> tail(Board board) {
        List<Row> rows = new ArrayList<>();
        if (board.debrief().tailControl().isEmpty()) {
            rows.add(Row.sentence(words.get("strip.why.systems")));
            return rows;
        }
        TailControl tail = board.debrief().tailControl().get();
        rows.add(
                Row.fact(
                                words.get("tail.standing"),
                                figures.text(Measure.RATIO, tail.standingEffectiveness()))
                        .saying(List.of(words.get("tail.standing.says"))));
        for (Episode episode : tail.episodes()) {
            rows.add(episode(board, episode));
        }
        if (tail.episodes().isEmpty()) {
            rows.add(Row.sentence(words.get(tail.tellsEpisodes() ? "tail.none" : "tail.untold")));
        }
        rows.add(Row.fact(words.get("tail.changes"), Integer.toString(tail.powerChanges().size())));
        for (PowerChange change : tail.powerChanges()) {
            rows.add(change(board, change));
        }
        for (String note : tail.notes()) {
            rows.add(Row.sentence(told.of(note)));
        }
        rows.add(Row.sentence(words.get("caution.4")));
        return rows;
    }

    private Row episode(Board board, Episode episode) {
        List<String> said = new ArrayList<>();
        if (episode.why().isBlank()) {
            said.add(
                    String.join(
                            ", ",
                            episode.signs().stream()
                                    .map(s -> words.get("sign." + s.key()))
                                    .toList()));
        }
        episode.precededBy().ifPresent(l -> said.add(link("tail.preceded", l)));
        episode.endedAfter().ifPresent(l -> said.add(link("tail.ended", l)));
        if (!episode.why().isBlank()) {
            said.add(told.of(episode.why()));
        }
        return Row.about(
                        -1,
                        words.get("tail.episode", words.get("grade." + episode.grade().key())),
                        clock(board, episode.span().start_s()))
                .with(
                        List.of(
                                new Row.Cell(
                                        words.get("limits.lasted"),
                                        figures.text(
                                                Measure.DURATION, episode.span().duration_s())),
                                new Row.Cell(
                                        words.get("tail.least"),
                                        figures.text(
                                                Measure.RATIO, episode.minimumEffectiveness())),
                                new Row.Cell(
                                        words.get("tail.margin"),
                                        figures.text(Measure.SHARE, episode.elevatorMargin_pct()))))
                .saying(said)
                .doing(new Command(Action.SEEK, episode.span().start_s()), false);
    }

    private Row change(Board board, PowerChange change) {
        String way = change.towardReverse() ? "tail.reverse" : "tail.forward";
        return Row.about(-1, moved(change), clock(board, change.time_s()))
                .saying(List.of(words.get(change.episode().isPresent() ? way + "-episode" : way)))
                .doing(new Command(Action.SEEK, change.time_s()), false);
    }

    /** A coefficient is a fraction, all other channels are percents or degrees. */
    private String figure(PowerChange change, double value) {
        int decimals = change.channel() == PowerSource.RETARDING_COEFFICIENT ? 2 : 0;
        return figures.addPlain(new Line(), value, decimals).toString();
    }

    private String link(String key, Episode.Link link) {
        return words.get(key, moved(link.change()), figures.text(Measure.DURATION, link.lag_s()));
    }

    private String moved(PowerChange change) {
        return words.get(
                "tail.moved." + change.channel().key(),
                figure(change, change.from()),
                figure(change, change.to()));
    }

    List<Row> marks(Board board, Desk desk, Keymap keys) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < desk.marks().size(); i++) {
            Mark mark = desk.marks().get(i);
            double t_s = board.debrief().axis().seconds(mark.time());
            List<String> said = new ArrayList<>();
            if (!mark.note().isBlank()) {
                said.add(mark.note());
            }
            mark.video().ifPresent(v -> said.add(words.get("mark.video", v)));
            rows.add(
                    Row.about(
                                    -1,
                                    words.get("mark." + mark.kind().key())
                                            + (mark.participants().isEmpty()
                                                    ? ""
                                                    : " · "
                                                            + String.join(
                                                                    ", ", mark.participants())),
                                    clock(board, t_s))
                            .saying(said)
                            .doing(new Command(Action.CHOOSE_MARK, i), i == desk.chosenMark()));
        }
        rows.add(
                Row.sentence(
                        words.get(
                                "mark.how",
                                keys.label(Action.MARK),
                                keys.label(Action.MARK_TOUCH),
                                keys.label(Action.DELETE_MARK))));
        return rows;
    }

    List<Row> strips(Desk desk, Keymap keys) {
        List<Row> rows = new ArrayList<>();
        StripKind[] kinds = StripKind.values();
        for (int i = 0; i < kinds.length; i++) {
            Action toggle = Operator.stripAction(i);
            boolean on = desk.settings().strips().contains(kinds[i]);
            rows.add(
                    Row.fact(
                                    words.get("strip." + kinds[i].key()),
                                    words.get(on ? "strip.on" : "strip.off")
                                            + "   "
                                            + keys.label(toggle))
                            .doing(Command.of(toggle), on));
        }
        return rows;
    }
}
