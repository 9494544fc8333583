package pairdown.season;

import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import pairdown.attempt.ChosenSettings;
import pairdown.debrief.JsonValues;
import pairdown.debrief.TailTablesJson;
import pairdown.season.AttemptSummary.Dive;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.AttemptSummary.Spread;
import pairdown.season.Ladder.FlyerLadder;
import pairdown.season.Ladder.Rung;
import pairdown.season.Ladder.Trend;
import pairdown.season.Repeatability.Run;
import pairdown.stats.IndividualsChart;
import pairdown.stats.Survival;
import pairdown.tail.TailSeason;
import pairdown.time.TimeAxis;

/**
 * A season as {@code season.json}, version 1: the file other programs read. What can't be known is
 * absent.
 *
 * <ul>
 *   <li>{@code settings}: what the figures were found with, by the names that the team's own {@code
 *       season.json} sets them under.
 *   <li>{@code attempts}: all, in order of time, the unusable last with their {@code reason}; for a
 *       flyer its gaps (m, one sigma beside), {@code held_s}, {@code matchedLongest_s}, {@code
 *       overshoots}, {@code verdict} and {@code spread} about its mean place in the lead's axes;
 *       {@code descentHeld}, {@code timeToStabilise_s}, {@code episodes} of the lead's descent.
 *   <li>{@code repeatability}: descents held of those judged, in the configuration of the latest
 *       (others under {@code byConfiguration}), with Wilson's 95 % interval; {@code stabilise}, the
 *       product-limit curve step by step; {@code runs}, each figure over the dives with its mean
 *       and, from eight dives on, its {@code low} and {@code high} limits.
 *   <li>{@code ladder.flyers}: for each its {@code rungs} (gate planned, median gap, sigma, {@code
 *       againstLast}: {@code nearer}, {@code further} or {@code no measurable change}) and {@code
 *       factorPerAttempt}, by which the gap changed from one attempt to the next, with its 95 %
 *       interval.
 *   <li>{@code envelope}: {@code machines} with the hull of their steady segments (calibrated
 *       airspeed and sink, m/s), {@code overlapArea} (m²/s²) of the lead's with the flyers', {@code
 *       overlaps} by the lead's configuration and flyer, {@code gap} in steps of 2 m/s and 1 m/s,
 *       {@code target}, and {@code missingForce_N} with its 95 % interval: that of the
 *       configuration that lacks least, all of them under {@code byConfiguration}.
 *   <li>{@code tails}: for each lead its {@code episodes}, {@code changeTable}, {@code
 *       stretchTable}, {@code averages}, {@code precededLag}, {@code endedLag} and {@code
 *       forwardThenRestored} as in {@code debrief.json}, over all its attempts; Tc′ by the drag of
 *       {@code idle_s} seconds at idle in all of them.
 *   <li>{@code criteria}: the team's own, met or not, with the evidence.
 * </ul>
 */
public final class SeasonJson {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final JsonValues VALUES = new JsonValues(new TimeAxis(Instant.EPOCH));

    private SeasonJson() {}

    /** The whole file as a tree. */
    public static ObjectNode of(Season season) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("format", "pairdown-season").put("version", 1);
        season.title().ifPresent(t -> root.put("title", t));
        root.set("settings", ChosenSettings.tree(season.settings()));
        ArrayNode attempts = root.putArray("attempts");
        season.attempts().forEach(a -> attempt(attempts.addObject(), a));
        repeatability(root.putObject("repeatability"), season);
        ArrayNode flyers = root.putObject("ladder").putArray("flyers");
        season.ladder().flyers().forEach(f -> ladder(flyers.addObject(), f));
        new EnvelopeJson(VALUES).write(root.putObject("envelope"), season.envelope());
        ArrayNode tails = root.putArray("tails");
        season.tails().forEach(t -> tail(tails.addObject(), t));
        ArrayNode criteria = root.putArray("criteria");
        for (Criterion c : season.criteria()) {
            criteria.addObject()
                    .put("criterion", c.name())
                    .put("met", c.met())
                    .put("evidence", c.evidence());
        }
        VALUES.words(root, "notes", season.notes());
        return root;
    }

    private static void tail(ObjectNode o, TailSeason t) {
        o.put("participant", t.participant()).put("attempts", t.attempts());
        o.put("episodes", t.episodes());
        VALUES.put(o, "idle_s", t.idle_s());
        TailTablesJson tables = new TailTablesJson(VALUES);
        t.changeTable().ifPresent(c -> tables.table(o.putObject("changeTable"), c));
        t.stretchTable().ifPresent(c -> tables.table(o.putObject("stretchTable"), c));
        ArrayNode averages = o.putArray("averages");
        t.averages().forEach(a -> tables.average(averages.addObject(), a));
        tables.lags(o, "precededLag", t.precededLag());
        tables.lags(o, "endedLag", t.endedLag());
        tables.restored(o, t.forwardThenRestored());
    }

    private static void attempt(ObjectNode o, AttemptSummary a) {
        o.put("attempt", a.attempt()).put("folder", a.folder()).put("usable", a.usable());
        a.reason().ifPresent(r -> o.put("reason", r));
        if (!a.usable()) {
            return;
        }
        o.put("start", a.start());
        VALUES.put(o, "gate_m", a.gate_m());
        ArrayNode flyers = o.putArray("flyers");
        a.flyers().forEach(f -> flyer(flyers.addObject(), f));
        a.descentHeld().ifPresent(h -> o.put("descentHeld", h));
        a.dive().ifPresent(d -> dive(o, d));
        a.episodes().ifPresent(n -> o.put("episodes", n));
        if (a.closureTold() || a.closureExceedances() > 0) {
            o.put("closureExceedances", a.closureExceedances());
        }
        VALUES.words(o, "exceeded", a.exceeded());
        VALUES.words(o, "exceededByLead", a.exceededByLead());
    }

    private static void dive(ObjectNode o, Dive d) {
        o.put("configuration", d.configuration());
        VALUES.put(o, "timeToStabilise_s", d.stabilise_s());
        VALUES.put(o, "longestOnTarget_s", d.longest_s());
        VALUES.put(o, "airspeedSd_mps", d.airspeedSd_mps());
        VALUES.put(o, "peakElevator_pct", d.peakElevator_pct());
    }

    private static void flyer(ObjectNode o, FlyerSummary f) {
        o.put("flyer", f.flyer());
        VALUES.put(o, "leastGap_m", f.leastGap_m());
        VALUES.put(o, "medianGap_m", f.medianGap_m());
        VALUES.put(o, "sigma_m", f.sigma_m());
        VALUES.put(o, "held_s", f.held_s());
        VALUES.put(o, "matchedLongest_s", f.matchedLongest_s());
        f.overshoots().ifPresent(n -> o.put("overshoots", n));
        f.verdict().ifPresent(v -> o.put("verdict", v));
        f.spread().ifPresent(s -> spread(o.putObject("spread"), s));
    }

    private static void spread(ObjectNode o, Spread s) {
        VALUES.put(o, "ahead_m", s.ahead_m());
        VALUES.put(o, "right_m", s.right_m());
        VALUES.put(o, "above_m", s.above_m());
        VALUES.put(o, "aheadSd_m", s.aheadSd_m());
        VALUES.put(o, "rightSd_m", s.rightSd_m());
        VALUES.put(o, "aboveSd_m", s.aboveSd_m());
        VALUES.put(o, "correlation", s.correlation());
    }

    private static void repeatability(ObjectNode o, Season season) {
        repeatability(o, season.repeatability());
        ArrayNode all = o.putArray("byConfiguration");
        season.repeatabilities().forEach(r -> counts(all.addObject(), r));
    }

    private static void counts(ObjectNode o, Repeatability r) {
        r.configuration().ifPresent(c -> o.put("configuration", c));
        o.put("successes", r.held().successes()).put("trials", r.held().trials());
        VALUES.put(o, "low", r.interval().low());
        VALUES.put(o, "high", r.interval().high());
    }

    private static void repeatability(ObjectNode o, Repeatability r) {
        counts(o, r);
        VALUES.put(o, "medianTimeToStabilise_s", r.medianStabilise_s());
        o.put("neverStabilised", r.neverStabilised());
        ArrayNode curve = o.putArray("stabilise");
        for (Survival.Step s : r.stabilise().steps()) {
            ObjectNode step = curve.addObject();
            VALUES.put(step, "time_s", s.time_s());
            step.put("atRisk", s.atRisk()).put("events", s.events());
            VALUES.put(step, "notYet", s.surviving());
        }
        ArrayNode runs = o.putArray("runs");
        r.runs().forEach(run -> run(runs.addObject(), run));
    }

    private static void run(ObjectNode o, Run run) {
        IndividualsChart chart = run.chart();
        o.put("quantity", run.quantity().key());
        o.put("dives", chart.values().size());
        VALUES.put(o, "mean", chart.mean());
        VALUES.put(o, "meanRange", chart.meanRange());
        chart.limits()
                .ifPresent(
                        l -> {
                            VALUES.put(o, "low", l.low());
                            VALUES.put(o, "high", l.high());
                        });
        ArrayNode outside = o.putArray("outside");
        chart.outside().forEach(i -> outside.add(run.dives().get(i).attempt()));
    }

    private static void ladder(ObjectNode o, FlyerLadder f) {
        o.put("flyer", f.flyer());
        ArrayNode rungs = o.putArray("rungs");
        f.rungs().forEach(r -> rung(rungs.addObject(), r));
        f.trend().ifPresent(t -> trend(o.putObject("factorPerAttempt"), t));
    }

    private static void trend(ObjectNode o, Trend t) {
        VALUES.put(o, "factor", t.factor());
        VALUES.put(o, "low", t.low());
        VALUES.put(o, "high", t.high());
    }

    private static void rung(ObjectNode o, Rung r) {
        o.put("attempt", r.attempt()).put("folder", r.folder());
        VALUES.put(o, "gate_m", r.planned_m());
        VALUES.put(o, "medianGap_m", r.flown().medianGap_m());
        VALUES.put(o, "sigma_m", r.flown().sigma_m());
        r.against().ifPresent(a -> o.put("againstLast", a));
    }
}
