package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.clock.ClockResult;
import pairdown.debrief.Debrief;
import pairdown.debrief.LogQuality;
import pairdown.pair.Approach;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.HeightBudget;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.report.ReportModel.FlyerLine;
import pairdown.safety.Finding;
import pairdown.units.Estimate;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** One flyer's line on the board. */
final class FlyerPart {
    private final Debrief debrief;
    private final PairDebrief pair;
    private final String at;
    private final Words words;
    private final Facts facts;

    FlyerPart(Debrief debrief, int index, Words words, Figures figures) {
        this.debrief = debrief;
        this.pair = debrief.pairs().get(index);
        this.at = "/pairs/" + index;
        this.words = words;
        this.facts = new Facts(debrief.axis(), words, figures);
    }

    FlyerLine line() {
        return new FlyerLine(
                pair.flyer(),
                planned(),
                median(),
                longest(),
                range(),
                nearest(),
                pair.slot().isPresent(),
                worstClosing(),
                heightLeft(),
                verdict(),
                words.get("verdict." + verdictKey() + ".says"),
                clockSigma(),
                distanceSigma(),
                gaps());
    }

    private Fact planned() {
        return pair.gateHeld()
                .map(g -> facts.of(Measure.DISTANCE, g.planned_m(), at + "/gateHeld/planned_m"))
                .orElse(facts.missing());
    }

    private Fact median() {
        return pair.gateHeld()
                .map(g -> facts.medianGap(g, at + "/gateHeld"))
                .orElse(facts.missing());
    }

    private Fact longest() {
        if (!pair.matched().isKnown()) {
            return facts.missing();
        }
        double longest_s = pair.matched().longest().map(MatchedWindow::duration_s).orElse(0.0);
        return facts.of(Measure.DURATION, longest_s, at + "/matched/longest_s");
    }

    /** The longest match with its rates one sigma larger and one smaller; none without a match. */
    private List<Fact> range() {
        Optional<MatchedWindow> best = pair.matched().longest();
        if (best.isEmpty()) {
            return List.of();
        }
        int window = pair.matched().windows().indexOf(best.get());
        return facts.range(best.get(), at + "/matched/windows/" + window);
    }

    private Fact nearest() {
        Optional<Estimate> gap = pair.leastGap().flatMap(Approach::gap_m);
        if (gap.isPresent()) {
            return facts.of(
                    Measure.DISTANCE,
                    gap.get(),
                    at + "/leastGap/gap_m",
                    at + "/leastGap/gapSigma_m");
        }
        return pair.closest()
                .map(
                        a ->
                                facts.of(
                                        Measure.DISTANCE,
                                        a.separation_m(),
                                        at + "/closest/separation_m",
                                        at + "/closest/separationSigma_m"))
                .orElse(facts.missing());
    }

    /** The speed furthest over the limit and the limit there; one entry where none was over. */
    private List<Fact> worstClosing() {
        int worst = -1;
        double most_mps = 0;
        for (int i = 0; i < pair.closureExceedances().size(); i++) {
            ClosureExceedance e = pair.closureExceedances().get(i);
            if (e.over_mps() > most_mps) {
                most_mps = e.over_mps();
                worst = i;
            }
        }
        if (worst < 0) {
            return List.of(Fact.missing(words.get(notOver())));
        }
        ClosureExceedance e = pair.closureExceedances().get(worst);
        String from = at + "/closureExceedances/" + worst;
        return List.of(
                facts.worst(e, from),
                facts.of(Measure.CLOSURE, e.limit_mps(), from + "/limit_mps"));
    }

    /** That none was found says nothing where the data can't show any. */
    private String notOver() {
        boolean told =
                debrief.safety().stream()
                        .filter(f -> f.rule().equals(Finding.CLOSURE))
                        .filter(f -> f.participant().equals(pair.flyer()))
                        .anyMatch(f -> f.outcome() != Finding.Outcome.CANNOT_TELL);
        return told ? "report.closing.within" : "report.closing.cannotTell";
    }

    private Fact heightLeft() {
        if (pair.heightLeftAtMatch_s().isEmpty()) {
            return facts.missing();
        }
        return facts.of(
                Measure.DURATION,
                pair.heightLeftAtMatch_s().getAsDouble(),
                pair.heightBudget().map(HeightBudget::sigma_s).orElse(OptionalDouble.empty()),
                at + "/heightLeftAtMatch_s",
                at + "/heightLeft/sigma_s");
    }

    private Fact verdict() {
        if (isSlotless()) {
            return Fact.missing(words.get("verdict.no-slot"));
        }
        return pair.gateHeld()
                .map(g -> facts.word("verdict.", g.verdict().key(), at + "/gateHeld/verdict"))
                .orElse(Fact.missing(words.get("verdict.none")));
    }

    /** Its logs may be good enough: there is no place to be at. */
    private boolean isSlotless() {
        return pair.gateHeld().isPresent() && pair.slot().isEmpty();
    }

    private String verdictKey() {
        return isSlotless()
                ? "no-slot"
                : pair.gateHeld().map(g -> g.verdict().key()).orElse("none");
    }

    /** Of the flyer's surest clock. */
    private Fact clockSigma() {
        int best = -1;
        for (int i = 0; i < debrief.clock().size(); i++) {
            ClockResult c = debrief.clock().get(i);
            boolean better =
                    best < 0 || c.offsetSigma_s() < debrief.clock().get(best).offsetSigma_s();
            if (c.participant().equals(pair.flyer()) && c.isUsable() && better) {
                best = i;
            }
        }
        return best < 0
                ? facts.missing()
                : facts.of(
                        Measure.OFFSET,
                        debrief.clock().get(best).offsetSigma_s(),
                        "/clock/logs/" + best + "/offsetSigma_s");
    }

    private Fact distanceSigma() {
        return pair.closest()
                .map(
                        a ->
                                facts.of(
                                        Measure.DISTANCE,
                                        a.separation_m().sigma(),
                                        at + "/closest/separationSigma_m"))
                .orElse(facts.missing());
    }

    /** Of each of the flyer's logs. */
    private List<Fact> gaps() {
        List<Fact> gaps = new ArrayList<>();
        for (int i = 0; i < debrief.quality().size(); i++) {
            LogQuality log = debrief.quality().get(i);
            if (log.participant().equals(pair.flyer())) {
                gaps.add(facts.count(log.gaps().size(), "/quality/logs/" + i + "/gaps"));
            }
        }
        return gaps.isEmpty() ? List.of(facts.missing()) : gaps;
    }
}
