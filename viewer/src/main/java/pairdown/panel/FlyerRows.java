package pairdown.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.pair.Approach;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.GateHeld;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.Touch;
import pairdown.replay.Desk;
import pairdown.safety.Finding;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/** A card for each flyer: what the team asks first. Pressing it chooses the flyer. */
final class FlyerRows {
    private final Board board;
    private final Words words;
    private final Translation told;
    private final Figures figures;

    FlyerRows(Board board, Words words, Translation told, Figures figures) {
        this.board = board;
        this.words = words;
        this.told = told;
        this.figures = figures;
    }

    List<Row> rows(Desk desk) {
        List<Row> rows = new ArrayList<>();
        List<PairDebrief> pairs = board.debrief().pairs();
        for (int i = 0; i < pairs.size(); i++) {
            rows.add(row(pairs.get(i), i, i == board.pair(desk)));
        }
        if (rows.isEmpty()) {
            rows.add(Row.sentence(words.get("strip.why.pair")));
        }
        return rows;
    }

    private Row row(PairDebrief pair, int number, boolean chosen) {
        String name = pair.slot().map(s -> pair.flyer() + " · " + s).orElse(pair.flyer());
        int participant = board.recording().indexOf(pair.flyer()).orElse(-1);
        return Row.about(participant, name, verdict(pair))
                .with(cells(pair))
                .saying(said(pair))
                .doing(new Command(Action.CHOOSE_FLYER, number), chosen);
    }

    /** Without a slot the logs may be good enough and yet there is no gate to be at. */
    private String verdict(PairDebrief pair) {
        Optional<GateHeld> held = pair.gateHeld();
        if (held.isPresent() && pair.slot().isEmpty()) {
            return words.get("verdict.no-slot");
        }
        return words.get("verdict." + held.map(g -> g.verdict().key()).orElse("none"));
    }

    private List<Row.Cell> cells(PairDebrief pair) {
        List<Row.Cell> cells = new ArrayList<>();
        OptionalDouble planned =
                pair.gateHeld().stream().mapToDouble(GateHeld::planned_m).findFirst();
        add(cells, "flyer.gate", Measure.DISTANCE, planned);
        cells.add(new Row.Cell(words.get("flyer.median"), median(pair)));
        add(
                cells,
                "flyer.match",
                Measure.DURATION,
                pair.matched().longest().stream()
                        .mapToDouble(MatchedWindow::duration_s)
                        .findFirst());
        cells.add(new Row.Cell(words.get("flyer.closure"), worstClosure(pair)));
        add(cells, "flyer.left", Measure.DURATION, pair.heightLeftAtMatch_s());
        cells.add(
                new Row.Cell(
                        words.get(pair.leastGap().isPresent() ? "flyer.least" : "flyer.closest"),
                        pair.leastGap()
                                .flatMap(Approach::gap_m)
                                .or(() -> pair.closest().map(Approach::separation_m))
                                .map(e -> figures.text(Measure.DISTANCE, e))
                                .orElse(Figures.MISSING)));
        return cells;
    }

    private void add(List<Row.Cell> cells, String name, Measure measure, OptionalDouble value) {
        cells.add(new Row.Cell(words.get(name), figures.text(measure, value)));
    }

    private String median(PairDebrief pair) {
        return pair.gateHeld()
                .filter(g -> g.median_m().isPresent())
                .map(g -> withSigma(Measure.DISTANCE, g.median_m(), g.medianSigma_m()))
                .orElse(Figures.MISSING);
    }

    /**
     * Against the closing limit, as the report has it: the one furthest over it, else the one
     * nearest to it, whose uncertainty stands among the limits. What the separation does after the
     * flyer has left says nothing about closing.
     */
    private String worstClosure(PairDebrief pair) {
        Optional<ClosureExceedance> over =
                pair.closureExceedances().stream()
                        .max(Comparator.comparingDouble(ClosureExceedance::over_mps));
        if (over.isPresent()) {
            return figures.text(Measure.CLOSURE, over.get().worst());
        }
        return board.debrief().safety().stream()
                .filter(f -> f.rule().equals(Finding.CLOSURE) && f.value().isPresent())
                .filter(f -> f.participant().equals(pair.flyer()))
                .findFirst()
                .map(f -> figures.text(Measure.CLOSURE, f.value()))
                .orElse(Figures.MISSING);
    }

    private String withSigma(Measure measure, OptionalDouble value, OptionalDouble sigma) {
        return sigma.isPresent()
                ? figures.text(measure, new Estimate(value.getAsDouble(), sigma.getAsDouble()))
                : figures.text(measure, value);
    }

    private String range(MatchedWindow longest) {
        double least_s = Math.max(0, longest.duration_s() - longest.shorter_s());
        double most_s = longest.duration_s() + longest.longer_s();
        return words.get(
                "flyer.match.range",
                figures.number(Measure.DURATION, least_s),
                figures.text(Measure.DURATION, most_s));
    }

    private List<String> said(PairDebrief pair) {
        List<String> said = new ArrayList<>();
        pair.matched().longest().map(this::range).ifPresent(said::add);
        if (!pair.closureExceedances().isEmpty()) {
            said.add(words.get("flyer.over", Integer.toString(pair.closureExceedances().size())));
        }
        for (Touch touch : pair.touch()) {
            said.add(
                    words.get(
                            "flyer.touch",
                            words.get("touch." + touch.grade().key()),
                            figures.text(Measure.DURATION, touch.span().duration_s())));
        }
        said.addAll(pair.matched().refusals());
        said.addAll(pair.refusals());
        String named = pair.lead() + "–" + pair.flyer() + ": ";
        return said.stream().distinct().map(told::of).map(s -> without(named, s)).toList();
    }

    /** The card is that pair's: its sentences need not name it again. */
    private static String without(String named, String sentence) {
        return sentence.startsWith(named) ? sentence.substring(named.length()) : sentence;
    }
}
