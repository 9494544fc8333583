package pairdown.demo;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import pairdown.air.Airspeed;
import pairdown.air.Wind;
import pairdown.attempt.LeverArm;
import pairdown.clock.ClockResult;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.debrief.ParticipantDebrief;
import pairdown.demo.receiver.InjectedFaults;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueContact;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.pair.Matched;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.phase.Event;
import pairdown.phase.EventKind;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.track.UnusableInputException;
import pairdown.units.Estimate;
import pairdown.vector.Vec3;

/** Errors of whole debriefs of simulated attempts against the truth, figure by figure. */
final class DebriefErrors {
    private static final double LAST_S = 60;

    /** The truth's windows are told to this. */
    private static final double TRUTH_STEP_S = 0.1;

    private final Map<String, Tally> tallies = new LinkedHashMap<>();
    private final List<String> remarks = new ArrayList<>();
    private final TouchErrors touches = new TouchErrors();

    Tally tally(String figure) {
        return tallies.computeIfAbsent(figure, f -> new Tally());
    }

    TouchErrors touches() {
        return touches;
    }

    List<String> remarks() {
        return remarks;
    }

    DebriefErrors add(SimulatedAttempt made) throws UnusableInputException {
        Debrief debrief = Debriefer.debrief(made.attempt(), made.logs(), step -> {});
        double ahead_s = debrief.axis().seconds(made.truth().start());
        clocks(made, debrief);
        for (ParticipantDebrief p : debrief.participants()) {
            motion(made, debrief, p, ahead_s);
        }
        wind(made, debrief);
        phases(made, debrief, ahead_s);
        double leadAhead_s = leadAhead_s(made, debrief);
        for (PairDebrief pair : debrief.pairs()) {
            pair(made, debrief, pair, leadAhead_s);
        }
        return this;
    }

    /**
     * The debrief's time less the truth's by the lead's own clock: how late its receiver tells all
     * its times nothing in the logs can show, so pairs are held against the truth on that clock.
     */
    static double leadAhead_s(SimulatedAttempt made, Debrief debrief) {
        return debrief.axis().seconds(made.truth().start())
                + applied(made, debrief.clock(), leadFile(made));
    }

    /** A log's offset against the lead's satellite log, whose own latency moves both. */
    private void clocks(SimulatedAttempt made, Debrief debrief) {
        double lead_s = applied(made, debrief.clock(), leadFile(made));
        double leadSigma_s =
                debrief.clock().stream()
                        .filter(c -> c.file().equals(leadFile(made)))
                        .findFirst()
                        .orElseThrow()
                        .offsetSigma_s();
        for (ClockResult r : debrief.clock()) {
            InjectedFaults truth = made.faults(r.file());
            String kind = truth.zero().isPresent() ? "recorder" : "satellite log";
            if (!r.isUsable()) {
                remarks.add(r.file() + " has no clock: " + r.warnings());
            } else if (truth.zero().isPresent()) {
                recorder(made, r, truth, lead_s);
            } else if (!r.file().equals(leadFile(made))) {
                tally(kind + " clock as used, against the lead's (s)")
                        .add(
                                r.map().offset_s() - truth.offset_s().orElse(0) - lead_s,
                                Math.hypot(r.offsetSigma_s(), leadSigma_s));
                r.measured().ifPresent(m -> measured(made, debrief, m, truth));
            }
        }
    }

    private void measured(
            SimulatedAttempt made, Debrief debrief, Estimate m, InjectedFaults truth) {
        double error_s = m.value() - truth.offset_s().orElse(0);
        double common_s = referenceError_s(made, debrief);
        tally("satellite log clock as measured on the ride (s)").add(error_s - common_s, m.sigma());
    }

    /** What the reference itself is off: mean of the logs told to be UTC. */
    private static double referenceError_s(SimulatedAttempt made, Debrief debrief) {
        return debrief.clock().stream()
                .filter(
                        c ->
                                c.measured().isPresent()
                                        && Math.abs(c.measured().get().value()) < 1e-9)
                .mapToDouble(c -> -made.faults(c.file()).offset_s().orElse(0))
                .findFirst()
                .orElse(applied(made, debrief.clock(), leadFile(made)));
    }

    private static String leadFile(SimulatedAttempt made) {
        return made.attempt().lead().orElseThrow().logs().get(0).file();
    }

    private static double applied(SimulatedAttempt made, List<ClockResult> clock, String file) {
        ClockResult r = clock.stream().filter(c -> c.file().equals(file)).findFirst().orElseThrow();
        return r.map().offset_s() - made.faults(file).offset_s().orElse(0);
    }

    /** At both ends of the attempt: zero and rate together. */
    private void recorder(
            SimulatedAttempt made, ClockResult r, InjectedFaults truth, double lead_s) {
        if (r.zero().isEmpty()) {
            return;
        }
        double zero_s = seconds(made, r.zero().get()) - seconds(made, truth.zero().orElseThrow());
        double end_s = made.truth().bodies().get(0).motion().end_s();
        double rate = r.map().rate() - truth.rate_ppm() * 1e-6;
        tally("recorder's clock at both ends, against the lead's (s)")
                .add(zero_s - lead_s, r.offsetSigma_s());
        tally("recorder's clock at both ends, against the lead's (s)")
                .add(zero_s - lead_s + rate * end_s, r.offsetSigma_s());
    }

    private static double seconds(SimulatedAttempt made, Instant at) {
        return new TimeAxis(made.truth().start()).seconds(at);
    }

    private void motion(
            SimulatedAttempt made, Debrief debrief, ParticipantDebrief p, double ahead_s) {
        if (p.trajectory().isEmpty()) {
            remarks.add(p.id() + " has no trajectory");
            return;
        }
        Trajectory found = p.trajectory().get();
        TrueBody body = made.truth().body(p.id());
        String who = p.participant().role().isJumper() ? "flyer" : p.participant().role().key();
        double late_s = clockError_s(made, debrief, p);
        double from_s = body.exit_s().orElse(made.truth().bodies().get(0).motion().start_s() + 200);
        double to_s = body.opening_s().orElse(found.end_s() - ahead_s);
        for (double t = from_s; t < to_s; t += 1.3) {
            double at_s = t + ahead_s;
            if (found.covers(at_s) && !found.inGap(at_s)) {
                State s = found.at(at_s);
                // Where the clock is off, the body truly was there earlier or later.
                Vec3 truth_mps =
                        turned(made, debrief.frame(), body.motion().velocityAt_mps(t - late_s));
                Vec3 dv = s.velocity_mps().minus(truth_mps);
                Vec3 place =
                        debrief.frame()
                                .toEnu(
                                        made.truth()
                                                .frame()
                                                .toGeodetic(
                                                        body.motion().positionAt_m(t - late_s)));
                Vec3 dp = s.position_m().minus(place);
                addAxes(who + " velocity, by axis (m/s)", dv, s.velocitySigma_mps());
                addAxes(who + " position, by axis (m)", dp, s.positionSigma_m());
            }
        }
        p.calibratedAirspeed_mps().ifPresent(c -> airspeed(made, p, c::at, ahead_s, from_s, to_s));
    }

    private static double clockError_s(
            SimulatedAttempt made, Debrief debrief, ParticipantDebrief p) {
        String file = p.participant().logs().get(0).file();
        return applied(made, debrief.clock(), file);
    }

    private static Vec3 turned(SimulatedAttempt made, LocalFrame into, Vec3 v) {
        return made.truth().frame().rotationTo(into).times(v);
    }

    private void addAxes(String figure, Vec3 error, Vec3 sigma) {
        tally(figure).add(error.x(), sigma.x());
        tally(figure).add(error.y(), sigma.y());
        tally(figure).add(error.z(), sigma.z());
    }

    private void airspeed(
            SimulatedAttempt made,
            ParticipantDebrief p,
            DoubleUnaryOperator found_mps,
            double ahead_s,
            double from_s,
            double to_s) {
        TrueBody body = made.truth().body(p.id());
        for (double t = from_s + 15; t < to_s; t += 1.3) {
            double msl_m = msl_m(made, body.motion().positionAt_m(t));
            Vec3 through_mps =
                    body.motion()
                            .velocityAt_mps(t)
                            .minus(made.truth().air().meanWind_mps().apply(msl_m));
            double cas_mps =
                    Airspeed.calibrated_mps(
                            through_mps.norm(),
                            made.truth().air().atmosphere().pressure_hPa(msl_m),
                            made.truth().air().atmosphere().temperature_C(msl_m));
            String who = p.participant().role().isJumper() ? "flyer" : p.participant().role().key();
            tally(who + " calibrated airspeed (m/s)")
                    .add(found_mps.applyAsDouble(t + ahead_s) - cas_mps);
        }
    }

    private static double msl_m(SimulatedAttempt made, Vec3 place_m) {
        return made.truth().frame().toGeodetic(place_m).height_m()
                - made.truth().air().undulation_m();
    }

    private void wind(SimulatedAttempt made, Debrief debrief) {
        if (!debrief.wind().isKnown()) {
            remarks.add("no wind: " + debrief.wind().notes());
        }
        for (Wind.Layer layer : debrief.wind().layers()) {
            double msl_m =
                    (layer.bottom_m() + layer.top_m()) / 2 - made.truth().air().undulation_m();
            Vec3 w = made.truth().air().meanWind_mps().apply(msl_m);
            double off_mps =
                    Math.hypot(layer.towardEast_mps() - w.x(), layer.towardNorth_mps() - w.y());
            tally("wind by layer, vector (m/s)").add(off_mps, layer.sigma_mps() * Math.sqrt(2));
        }
    }

    private void phases(SimulatedAttempt made, Debrief debrief, double ahead_s) {
        for (TrueBody body : made.truth().bodies()) {
            body.exit_s()
                    .ifPresent(
                            t ->
                                    event(
                                            lost(made, body.id(), t)
                                                    ? "exit in a dropout (s)"
                                                    : "exit (s)",
                                            debrief,
                                            EventKind.EXIT,
                                            body.id(),
                                            t + ahead_s));
            body.opening_s()
                    .ifPresent(
                            t ->
                                    event(
                                            "opening (s)",
                                            debrief,
                                            EventKind.OPENING,
                                            body.id(),
                                            t + ahead_s));
        }
    }

    private static boolean lost(SimulatedAttempt made, String who, double t_s) {
        return made.faults().stream()
                .filter(f -> f.participant().equals(who))
                .flatMap(f -> f.lost().stream())
                .anyMatch(l -> l.start_s() < t_s + 3 && l.end_s() > t_s - 3);
    }

    private void event(String figure, Debrief debrief, EventKind kind, String who, double true_s) {
        Optional<Event> found =
                debrief.events().stream()
                        .filter(e -> e.kind() == kind && e.participants().contains(who))
                        .findFirst();
        if (found.isEmpty()) {
            remarks.add(kind + " of " + who + " was not found");
        }
        found.ifPresent(e -> tally(figure).add(e.time_s() - true_s, e.sigma_s()));
    }

    private void pair(SimulatedAttempt made, Debrief debrief, PairDebrief pair, double ahead_s) {
        Trajectory lead = debrief.participant(pair.lead()).orElseThrow().trajectory().orElseThrow();
        Trajectory flyer =
                debrief.participant(pair.flyer()).orElseThrow().trajectory().orElseThrow();
        LeverArm slot = pair.slotArm().orElseThrow();
        TruePair truth = new TruePair(made.truth(), pair.lead(), pair.flyer(), slot);
        double leaving_s =
                truth.leaving_s(
                        made.attempt().matched().horizontal_mps(),
                        made.attempt().matched().vertical_mps());
        PairSeries s = pair.series();
        List<TrueContact> contacts =
                made.truth().contacts().stream()
                        .filter(c -> c.flyer().equals(pair.flyer()))
                        .toList();
        for (int i = 0; i < s.size(); i++) {
            double t = s.time_s(i) - ahead_s;
            if (lead.inGap(s.time_s(i)) || flyer.inGap(s.time_s(i))) {
                continue;
            }
            double error_m = s.value(Figure.SEPARATION, i) - truth.separation_m(t);
            String when = t <= leaving_s ? "until the flyer leaves" : "after the flyer left";
            tally("separation " + when + " (m)").add(error_m, s.value(Figure.SEPARATION_SIGMA, i));
            tally("gap (m)")
                    .add(s.value(Figure.GAP, i) - truth.gap_m(t), s.value(Figure.GAP_SIGMA, i));
            if (t > truth.closest_s() - LAST_S && t <= truth.closest_s()) {
                tally("closure rate in the last 60 s (m/s)")
                        .add(
                                s.value(Figure.CLOSURE_RATE, i) - truth.closure_mps(t),
                                s.value(Figure.CLOSURE_SIGMA, i));
            }
        }
        matched(made, pair, truth, lead, flyer, ahead_s);
        touches.add(pair, truth, contacts, ahead_s);
    }

    /**
     * Against windows by the same definition from the truth. A rate that grazes a threshold makes a
     * total shorter or longer by seconds for a hair: then its own ± must say so.
     */
    private void matched(
            SimulatedAttempt made,
            PairDebrief pair,
            TruePair truth,
            Trajectory lead,
            Trajectory flyer,
            double ahead_s) {
        Matched found = pair.matched();
        tally("matched windows refused (share)").add(found.isKnown() ? 0 : 1);
        if (!found.isKnown()) {
            return;
        }
        double true_s =
                truth
                        .matched(
                                made.attempt().matched().horizontal_mps(),
                                made.attempt().matched().vertical_mps())
                        .stream()
                        .mapToDouble(Span::duration_s)
                        .sum();
        double off_s = found.total_s() - true_s;
        double sigma_s = off_s > 0 ? found.totalShorter_s() : found.totalLonger_s();
        tally("true matched total (s)").add(true_s);
        tally("matched total (s)").add(off_s, Math.max(TRUTH_STEP_S, sigma_s));
        tally("matched total off by more than 5 % and 0.5 s (share)")
                .add(isOff(found.total_s(), true_s) ? 1 : 0);
        new MatchedBound(truth)
                .add(
                        tally("the same of an efficient estimator, ten draws (share)"),
                        lead,
                        flyer,
                        ahead_s,
                        made.attempt().matched(),
                        true_s);
    }

    /** Whether a total is off by more than 5 % and 0.5 s. */
    static boolean isOff(double found_s, double true_s) {
        return Math.abs(found_s - true_s) > Math.max(0.5, 0.05 * true_s);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        tallies.forEach((figure, t) -> text.append(String.format("%-58s %s%n", figure, t)));
        text.append("touch: ").append(touches).append('\n');
        remarks.stream()
                .distinct()
                .limit(12)
                .forEach(r -> text.append("  ").append(r).append('\n'));
        return text.toString();
    }
}
