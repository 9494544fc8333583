package pairdown.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.BreakOff;
import pairdown.attempt.Role;
import pairdown.motion.State;
import pairdown.pair.BreakOffHeight;
import pairdown.pair.PairDebrief;
import pairdown.safety.Finding.Outcome;
import pairdown.time.Span;
import pairdown.track.Series;

/**
 * Holds every limit that was set against what was flown, over all participants and pairs. A limit
 * that was not set is not judged; one that the data can't decide is said to be so, unless what they
 * do show is already beyond it.
 */
public final class LimitCheck {
    private static final String DATA_END = "the data end before the flyer leaves the lead";

    private final LimitInput input;
    private final SafetySettings settings;
    private final List<Finding> findings = new ArrayList<>();

    private LimitCheck(LimitInput input, SafetySettings settings) {
        this.input = input;
        this.settings = settings;
    }

    /** All findings: break-off heights, closing limits, the lead's airspeed, separations. */
    public static List<Finding> check(LimitInput input) {
        return check(input, SafetySettings.DEFAULT);
    }

    /** The same by other settings. */
    public static List<Finding> check(LimitInput input, SafetySettings settings) {
        LimitCheck check = new LimitCheck(input, settings);
        input.limits().breakOff().ifPresent(b -> input.pairs().forEach(p -> check.breakOff(b, p)));
        double contact_mps = input.limits().closure().contact_mps();
        input.pairs().forEach(p -> check.findings.add(ClosingFinding.of(p, contact_mps, settings)));
        if (input.limits().maximumAirspeed_mps().isPresent()) {
            check.airspeed(input.limits().maximumAirspeed_mps().getAsDouble());
        }
        if (input.limits().minimumSeparation_m().isPresent()) {
            check.separations(input.limits().minimumSeparation_m().getAsDouble());
        }
        return List.copyOf(check.findings);
    }

    /**
     * Judged at the flyer's height where it leaves its last match, or its closest approach. A flyer
     * still matched where the data end leaves lower yet, so one already under its limit has gone
     * through it; one that opens in its match leaves there.
     */
    private void breakOff(BreakOff limit, PairDebrief pair) {
        Verdict verdict = new Verdict("breakOffHeight", pair.flyer(), limit.height_m(), "m");
        if (!pair.matched().refusals().isEmpty()) {
            findings.add(verdict.cannotTell("these data can't tell when the flyer was matched"));
            return;
        }
        Optional<Body> flyer = input.body(pair.flyer());
        OptionalDouble at_s = pair.leaving_s().isPresent() ? pair.leaving_s() : lastMatched_s(pair);
        if (flyer.isEmpty()
                || at_s.isEmpty()
                || !flyer.get().trajectory().covers(at_s.getAsDouble())) {
            findings.add(verdict.cannotTell(DATA_END));
            return;
        }
        Finding finding = breakOff(verdict, limit, flyer.get(), at_s.getAsDouble());
        boolean left = pair.leaving_s().isPresent() || opensAt(flyer.get(), at_s.getAsDouble());
        findings.add(
                left || finding.outcome() == Outcome.EXCEEDED
                        ? finding
                        : verdict.cannotTell(DATA_END));
    }

    private static OptionalDouble lastMatched_s(PairDebrief pair) {
        return pair.matched().windows().stream().mapToDouble(w -> w.span().end_s()).max();
    }

    private boolean opensAt(Body flyer, double t_s) {
        return flyer.opening_s().isPresent()
                && flyer.opening_s().getAsDouble() - t_s <= settings.hole_s();
    }

    private Finding breakOff(Verdict verdict, BreakOff limit, Body flyer, double t_s) {
        State state = flyer.trajectory().at(t_s);
        double ellipsoid_m = input.frame().toGeodetic(state.position_m()).height_m();
        double value_m = BreakOffHeight.inDatum_m(ellipsoid_m, limit, input.undulation_m());
        return verdict.judged(
                t_s,
                value_m,
                state.positionSigma_m().z(),
                limit.height_m() - value_m,
                settings.sigmas());
    }

    private void airspeed(double limit_mps) {
        Optional<Body> lead =
                input.bodies().stream().filter(b -> b.role() == Role.LEAD).findFirst();
        if (lead.isEmpty()) {
            return;
        }
        Verdict verdict = new Verdict("maximumAirspeed", lead.get().id(), limit_mps, "m/s");
        if (input.leadAirspeed_mps().isEmpty() || input.leadDescent().isEmpty()) {
            findings.add(
                    verdict.cannotTell(
                            input.leadDescent().isEmpty()
                                    ? "no descent of the lead was found"
                                    : "the lead's airspeed is not known"));
            return;
        }
        Series series = input.leadAirspeed_mps().get();
        Span descent = input.leadDescent().get();
        Optional<Peak> peak = Peak.of(series, descent, settings.debounce_s());
        if (peak.isEmpty()) {
            findings.add(verdict.cannotTell("the lead's airspeed has no data in its descent"));
            return;
        }
        double t_s = peak.get().time_s();
        double sigma_mps = airspeedSigma_mps(lead.get(), t_s);
        Finding finding =
                verdict.judged(
                        t_s,
                        peak.get().value(),
                        sigma_mps,
                        peak.get().value() - limit_mps,
                        settings.sigmas());
        findings.add(
                finding.outcome() == Outcome.CLEAR && peak.get().hasHoles()
                        ? verdict.cannotTell("a gap in the lead's airspeed during its descent")
                        : finding);
    }

    private double airspeedSigma_mps(Body lead, double t_s) {
        if (!input.wind().isKnown() || !lead.trajectory().covers(t_s)) {
            return settings.airspeedSigma_mps();
        }
        double height_m =
                input.frame().toGeodetic(lead.trajectory().at(t_s).position_m()).height_m();
        return Math.hypot(settings.airspeedSigma_mps(), input.wind().sigma_mps(height_m));
    }

    /** All against all that are no lead–flyer pair, while both are out and no canopy is open. */
    private void separations(double limit_m) {
        List<Body> bodies = input.bodies();
        for (int i = 0; i < bodies.size(); i++) {
            for (int j = i + 1; j < bodies.size(); j++) {
                if (!isLeadAndFlyer(bodies.get(i), bodies.get(j))) {
                    separation(bodies.get(i), bodies.get(j), limit_m);
                }
            }
        }
    }

    private static boolean isLeadAndFlyer(Body a, Body b) {
        return (a.role() == Role.LEAD && b.role() == Role.FLYER)
                || (a.role() == Role.FLYER && b.role() == Role.LEAD);
    }

    private void separation(Body a, Body b, double limit_m) {
        boolean aJumps = a.role().isJumper();
        Body first = aJumps ? a : b;
        Body second = aJumps ? b : a;
        if (!first.role().isJumper()) {
            // Two aircraft: no exit from which to count.
            return;
        }
        Verdict verdict =
                new Verdict("minimumSeparation", first.id(), limit_m, "m").with(second.id());
        Optional<Span> span = SharedFlight.of(first, second, settings);
        if (span.isEmpty()) {
            findings.add(
                    verdict.cannotTell(
                            "no exit or opening of one of them was found, or one opened before the"
                                    + " other had flown clear"));
            return;
        }
        Nearest nearest = Nearest.of(first, second, span.get(), limit_m, settings);
        Finding finding =
                nearest.known()
                        ? verdict.judged(
                                nearest.time_s(),
                                nearest.separation_m(),
                                nearest.sigma_m(),
                                limit_m - nearest.separation_m(),
                                settings.sigmas())
                        : verdict.cannotTell("their logs share no time between exit and opening");
        findings.add(
                finding.outcome() == Outcome.CLEAR && nearest.mayHide()
                        ? verdict.cannotTell(
                                unseen(first, second, span.get(), nearest.separation_m()))
                        : finding);
    }

    private static String unseen(Body a, Body b, Span span, double least_m) {
        Body sooner = a.trajectory().end_s() < b.trajectory().end_s() ? a : b;
        double short_s = span.end_s() - sooner.trajectory().end_s();
        String seen = String.format(Locale.ROOT, "; the least seen is %.0f m", least_m);
        return short_s > 1
                ? String.format(
                                Locale.ROOT,
                                "the log of %s ends %.0f s before the first opening",
                                sooner.id(),
                                short_s)
                        + seen
                : "a gap in the data where they may have been near" + seen;
    }
}
