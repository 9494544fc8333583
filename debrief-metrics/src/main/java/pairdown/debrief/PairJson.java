package pairdown.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import pairdown.pair.Approach;
import pairdown.pair.Bearing;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.GateHeld;
import pairdown.pair.HeightBudget;
import pairdown.pair.Matched;
import pairdown.pair.MatchedWindow;
import pairdown.pair.OnTarget;
import pairdown.pair.PairDebrief;
import pairdown.pair.Touch;

/** One pair's entry in {@code debrief.json}. */
final class PairJson {
    private final JsonValues values;

    PairJson(JsonValues values) {
        this.values = values;
    }

    void fill(ObjectNode o, PairDebrief p) {
        o.put("lead", p.lead()).put("flyer", p.flyer());
        p.slot().ifPresent(s -> o.put("slot", s));
        o.put("axes", p.axes().key());
        p.closest().ifPresent(a -> approach(o.putObject("closest"), a));
        p.leastGap().ifPresent(a -> approach(o.putObject("leastGap"), a));
        p.anchoredClosest().ifPresent(a -> approach(o.putObject("anchoredClosest"), a));
        p.anchoredLeastGap().ifPresent(a -> approach(o.putObject("anchoredLeastGap"), a));
        matched(o.putObject("matched"), p.matched());
        p.gateHeld().ifPresent(g -> gate(o.putObject("gateHeld"), g));
        p.onTarget().ifPresent(t -> onTarget(o.putObject("onTarget"), t));
        ArrayNode touches = o.putArray("touch");
        p.touch().forEach(t -> touch(touches.addObject(), t));
        ArrayNode exceedances = o.putArray("closureExceedances");
        p.closureExceedances().forEach(e -> exceedance(exceedances.addObject(), e));
        values.put(o, "heightLeftAtMatch_s", p.heightLeftAtMatch_s());
        p.heightBudget().ifPresent(b -> heightLeft(o.putObject("heightLeft"), b));
        p.breakOff_s().ifPresent(t -> o.put("breakOff", values.time(t)));
        values.words(o, "refusals", p.refusals());
        o.put("series", seriesFile(p));
    }

    /** The pair's series, relative to the output folder. */
    static String seriesFile(PairDebrief p) {
        return "pairs/" + p.lead() + "-" + p.flyer() + ".csv";
    }

    private void approach(ObjectNode o, Approach a) {
        o.put("time", values.time(a.time_s()));
        values.put(o, "separation_m", a.separation_m().value());
        values.put(o, "separationSigma_m", a.separation_m().sigma());
        a.gap_m()
                .ifPresent(
                        g -> {
                            values.put(o, "gap_m", g.value());
                            values.put(o, "gapSigma_m", g.sigma());
                        });
        values.put(o, "closureRate_mps", a.closureRate_mps());
        a.bearing().ifPresent(b -> bearing(o, b));
        values.put(o, "ahead_m", a.ahead_m());
        values.put(o, "right_m", a.right_m());
        values.put(o, "above_m", a.above_m());
    }

    private void bearing(ObjectNode o, Bearing b) {
        values.put(o, "bearing_deg", b.bearing_deg());
        values.put(o, "elevation_deg", b.elevation_deg());
        o.put("clockPosition", b.hour()).put("level", b.level().key());
        values.put(o, "offBearingLine_m", b.offLine_m());
    }

    private void matched(ObjectNode o, Matched m) {
        if (m.isKnown()) {
            values.put(o, "total_s", m.total_s());
            values.put(o, "totalShorter_s", m.totalShorter_s());
            values.put(o, "totalLonger_s", m.totalLonger_s());
            values.put(o, "longest_s", m.longest().map(MatchedWindow::duration_s).orElse(0.0));
        }
        ArrayNode windows = o.putArray("windows");
        m.windows().forEach(w -> window(windows.addObject(), w));
        values.put(o, "bestLevelDifference_mps", m.bestLevelDifference_mps());
        values.put(o, "bestVerticalDifference_mps", m.bestVerticalDifference_mps());
        values.words(o, "refusals", m.refusals());
    }

    private void window(ObjectNode o, MatchedWindow w) {
        values.span(o, w.span());
        values.put(o, "duration_s", w.duration_s());
        values.put(o, "shorter_s", w.shorter_s());
        values.put(o, "longer_s", w.longer_s());
        values.put(o, "airspeedDifference_mps", w.airspeedDifference_mps());
        values.put(o, "sinkDifference_mps", w.sinkDifference_mps());
        values.put(o, "separation_m", w.separation_m());
        values.put(o, "minimumSeparation_m", w.minimumSeparation_m());
        o.put("endedBy", w.endedBy().key());
        values.put(o, "endedByDifference_mps", w.endedByDifference_mps());
        o.put("bridged", w.bridged());
    }

    private void gate(ObjectNode o, GateHeld g) {
        values.put(o, "planned_m", g.planned_m());
        values.put(o, "median_m", g.median_m());
        values.put(o, "medianSigma_m", g.medianSigma_m());
        if (g.verdict() != GateHeld.Verdict.NO_DATA) {
            values.put(o, "held_s", g.held_s());
            values.put(o, "insideShare", g.insideShare());
            o.put("overshoots", g.overshoots());
        }
        o.put("verdict", g.verdict().key());
    }

    private void heightLeft(ObjectNode o, HeightBudget b) {
        values.put(o, "atExit_s", b.atExit_s());
        values.put(o, "atGateIn_s", b.atGateIn_s());
        values.put(o, "atFirstMatch_s", b.atFirstMatch_s());
        values.put(o, "atClosest_s", b.atClosest_s());
        values.put(o, "atLeaving_s", b.atLeaving_s());
        values.put(o, "sigma_s", b.sigma_s());
    }

    private void onTarget(ObjectNode o, OnTarget t) {
        values.put(o, "total_s", t.total_s());
        values.put(o, "longest_s", t.longest_s());
        ArrayNode windows = o.putArray("windows");
        t.windows().forEach(w -> values.span(windows.addObject(), w));
    }

    private void touch(ObjectNode o, Touch t) {
        values.span(o, t.span());
        o.put("grade", t.grade().key());
        ArrayNode evidence = o.putArray("evidence");
        t.evidence().forEach(e -> evidence.add(e.key()));
    }

    private void exceedance(ObjectNode o, ClosureExceedance e) {
        values.span(o, e.span());
        values.put(o, "worst_mps", e.worst().value());
        values.put(o, "worstSigma_mps", e.worst().sigma());
        values.put(o, "limit_mps", e.limit_mps());
        values.put(o, "separation_m", e.separation_m());
    }
}
