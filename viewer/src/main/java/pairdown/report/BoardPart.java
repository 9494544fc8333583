package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.debrief.Debrief;
import pairdown.pair.Approach;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.GateHeld;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.report.ReportModel.FlyerLine;
import pairdown.report.ReportModel.HeightPart;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The board page: one line a flyer, and what the height was used for. */
final class BoardPart {
    private final Debrief debrief;
    private final Words words;
    private final Figures figures;

    BoardPart(Debrief debrief, Words words, Figures figures) {
        this.debrief = debrief;
        this.words = words;
        this.figures = figures;
    }

    List<FlyerLine> flyers() {
        List<FlyerLine> lines = new ArrayList<>();
        for (int i = 0; i < debrief.pairs().size(); i++) {
            lines.add(line(debrief.pairs().get(i), "/pairs/" + i));
        }
        return lines;
    }

    private FlyerLine line(PairDebrief p, String at) {
        Optional<GateHeld> gate = p.gateHeld();
        return new FlyerLine(
                p.flyer(),
                fact(
                        Measure.DISTANCE,
                        gate.map(g -> OptionalDouble.of(g.planned_m()))
                                .orElse(OptionalDouble.empty()),
                        at + "/gateHeld/planned_m"),
                fact(
                        Measure.DISTANCE,
                        gate.map(GateHeld::median_m).orElse(OptionalDouble.empty()),
                        at + "/gateHeld/median_m"),
                longest(p, at),
                closest(p, at),
                worstClosing(p, at),
                fact(Measure.DURATION, p.heightLeftAtMatch_s(), at + "/heightLeftAtMatch_s"),
                gate.map(
                                g ->
                                        Fact.word(
                                                words.get("verdict." + g.verdict().key()),
                                                at + "/gateHeld/verdict"))
                        .orElse(Fact.missing(words.get("verdict.none"))),
                trust(p));
    }

    private Fact fact(Measure measure, OptionalDouble value, String from) {
        return value.isPresent()
                ? Fact.of(figures.text(measure, value), from, measure)
                : Fact.missing(Figures.MISSING);
    }

    private Fact longest(PairDebrief p, String at) {
        if (!p.matched().isKnown()) {
            return Fact.missing(Figures.MISSING);
        }
        double longest_s = p.matched().longest().map(MatchedWindow::duration_s).orElse(0.0);
        return Fact.of(
                figures.text(Measure.DURATION, longest_s),
                at + "/matched/longest_s",
                Measure.DURATION);
    }

    private Fact closest(PairDebrief p, String at) {
        Optional<Approach> gap = p.leastGap().filter(a -> a.gap_m().isPresent());
        if (gap.isPresent()) {
            return Fact.of(
                    figures.text(Measure.DISTANCE, gap.get().gap_m().orElseThrow()),
                    at + "/leastGap/gap_m",
                    Measure.DISTANCE);
        }
        return p.closest()
                .map(
                        a ->
                                Fact.of(
                                        figures.text(Measure.DISTANCE, a.separation_m()),
                                        at + "/closest/separation_m",
                                        Measure.DISTANCE))
                .orElse(Fact.missing(Figures.MISSING));
    }

    private Fact worstClosing(PairDebrief p, String at) {
        int worst = -1;
        double most_mps = 0;
        for (int i = 0; i < p.closureExceedances().size(); i++) {
            ClosureExceedance e = p.closureExceedances().get(i);
            if (e.worst_mps() - e.limit_mps() > most_mps) {
                most_mps = e.worst_mps() - e.limit_mps();
                worst = i;
            }
        }
        if (worst < 0) {
            return Fact.missing(words.get("report.closing.within"));
        }
        ClosureExceedance e = p.closureExceedances().get(worst);
        return Fact.of(
                words.get(
                        "report.closing.over",
                        figures.text(Measure.CLOSURE, e.worst_mps()),
                        figures.number(Measure.CLOSURE, e.limit_mps())),
                at + "/closureExceedances/" + worst + "/worst_mps",
                Measure.CLOSURE);
    }

    private String trust(PairDebrief p) {
        double clock_s =
                debrief.clock().stream()
                        .filter(c -> c.participant().equals(p.flyer()) && c.isUsable())
                        .mapToDouble(c -> c.offsetSigma_s())
                        .min()
                        .orElse(Double.NaN);
        int gaps =
                debrief.quality().stream()
                        .filter(q -> q.participant().equals(p.flyer()))
                        .mapToInt(q -> q.gaps().size())
                        .sum();
        String distance =
                p.closest()
                        .map(Approach::separation_m)
                        .map(Estimate::sigma)
                        .map(s -> figures.text(Measure.DISTANCE, s))
                        .orElse(Figures.MISSING);
        return words.get(
                "report.trust.line",
                String.format(words.locale(), "%.2f s", clock_s),
                distance,
                String.valueOf(gaps));
    }

    /** Height from first exit to break-off: before the match, matched, and what was left. */
    List<HeightPart> heightBudget() {
        return new HeightBudget(debrief, words, figures).parts();
    }

    String heightBudgetSays() {
        return new HeightBudget(debrief, words, figures).says();
    }
}
