package pairdown.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.track.EvenSeries;
import pairdown.track.Track;
import pairdown.units.Estimate;

/**
 * Ties a recorder that knows air data but no places to its own aircraft's satellite log.
 *
 * <p>{@link AirDataSearch} finds the lag roughly. Then each signal is fitted by itself, with rate:
 * pressure instruments lag, and their lag would come out as a clock error, so the clock is taken
 * from signals that do not (yaw rate, heading, longitudinal load), and what the pressure height
 * says apart from them is reported as its lag.
 */
final class AirDataMatch {
    /** Pressure that leads by its usual lag and so many sigmas more is of another flight. */
    private static final double LEADING_SIGMAS = 3;

    /** No compass is so far off, its declination included, but where none is of use. */
    private static final double MOST_TURNED_DEG = 50;

    private final SystemsSignals systems;
    private final VehicleSignals vehicle;
    private final ClockSettings settings;

    private AirDataMatch(Track track, Mover of, ClockSettings settings) {
        this.settings = settings;
        this.systems = SystemsSignals.of(track, of.kernel_s());
        this.vehicle = new VehicleSignals(of.motionByPosition());
    }

    /**
     * The match, or why there is none.
     *
     * @param delta_s the vehicle's log time minus the recorder's, at the recorder's {@code
     *     middle_s}
     * @param words lag and disagreement of pressure, and what had to be assumed
     */
    record Match(
            double delta_s,
            double sigma_s,
            double rate,
            double middle_s,
            double residual_mps,
            OffsetCurve curve,
            List<String> words) {
        /** The vehicle's log time minus the recorder's at the recorder's time 0. */
        double atZero_s() {
            return delta_s - rate * middle_s;
        }
    }

    /** Outcome: a match or a refusal in words. */
    record Outcome(Optional<Match> match, String refusal) {
        static Outcome refused(String why) {
            return new Outcome(Optional.empty(), why);
        }
    }

    /**
     * Matches a recorder.
     *
     * @param near lags to keep to (the vehicle's time minus the recorder's) with their reach, or
     *     empty to search all
     */
    static Outcome of(Track track, Mover vehicle, Optional<Estimate> near, ClockSettings settings) {
        return new AirDataMatch(track, vehicle, settings).match(near);
    }

    private Outcome match(Optional<Estimate> near) {
        AirDataSearch.Found found = new AirDataSearch(systems, vehicle, settings).find(near);
        return found.lag_s().map(this::refine).orElseGet(() -> Outcome.refused(found.refusal()));
    }

    private Outcome refine(double lag_s) {
        Optional<LagFit.Fit> heading =
                systems.hasHeading && HeadingSignal.turns(systems)
                        ? rough(new HeadingSignal(systems, vehicle), lag_s)
                        : Optional.empty();
        double turned_deg = heading.map(HeadingSignal::turned_deg).orElse(0.0);
        if (Math.abs(turned_deg) > MOST_TURNED_DEG) {
            return Outcome.refused(
                    String.format(
                            Locale.ROOT,
                            "where its air data fit best its heading is %.0f° off its aircraft's"
                                    + " track: a record of another flight?",
                            Math.abs(turned_deg)));
        }
        Optional<LagFit.Fit> climb =
                systems.hasClimb
                        ? fit(scaled(systems.climb_mps, vehicle.velocity[2]), lag_s)
                        : Optional.empty();
        List<Named> prompt = new ArrayList<>();
        if (systems.hasYawRate) {
            prompt(prompt, "yaw rate", fit(ScaledSignal.turn(systems, vehicle), lag_s));
        }
        prompt(prompt, "heading", heading.filter(AirDataMatch::isTold));
        if (systems.hasNormal) {
            prompt(prompt, "load", fit(scaled(systems.load_g, vehicle.load_g), lag_s));
        } else if (systems.hasLongitudinal) {
            prompt(prompt, "longitudinal load", fit(ScaledSignal.thrust(systems, vehicle), lag_s));
        }
        return prompt.isEmpty() ? byPressure(climb) : byPrompt(prompt, climb);
    }

    /** A signal's name and fit. */
    private record Named(String name, LagFit.Fit fit) {}

    private void prompt(List<Named> all, String name, Optional<LagFit.Fit> fit) {
        fit.filter(f -> f.sigma_s(systems.half_s()) < 3 * settings.unobservable_s())
                .ifPresent(f -> all.add(new Named(name, f)));
    }

    private Optional<LagFit.Fit> fit(LagFit.Problem problem, double lag_s) {
        return rough(problem, lag_s).filter(AirDataMatch::isTold);
    }

    /** Though nothing may tell the lag. */
    private Optional<LagFit.Fit> rough(LagFit.Problem problem, double lag_s) {
        return LagFit.from(problem, lag_s, settings.rateSigma(), settings.maximumRate());
    }

    private static boolean isTold(LagFit.Fit fit) {
        return Double.isFinite(fit.deltaSigma_s());
    }

    private ScaledSignal scaled(double[] recorded, EvenSeries of) {
        return ScaledSignal.still(systems, recorded, of);
    }

    private Outcome byPressure(Optional<LagFit.Fit> climb) {
        if (climb.isEmpty() || !(climb.get().deltaSigma_s() < settings.pressureLag_s())) {
            return Outcome.refused("its air data are too weak to tell its clock");
        }
        LagFit.Fit f = climb.get();
        return outcome(
                new Estimate(f.delta_s(), Math.hypot(f.deltaSigma_s(), settings.pressureLag_s())),
                new Estimate(f.rate(), f.rateSigma()),
                climb,
                List.of(
                        "aligned by pressure height alone: the lag of the instrument (usually 0.3 to"
                                + " 1.5 s) could not be told from the clock"));
    }

    private Outcome byPrompt(List<Named> prompt, Optional<LagFit.Fit> climb) {
        Estimate delta = combine(prompt.stream().map(n -> delta(n.fit)).toList());
        Estimate rate = combine(prompt.stream().map(n -> rate(n.fit)).toList());
        if (climb.isEmpty()) {
            return outcome(delta, rate, climb, List.of());
        }
        double lag_s = delta.value() - climb.get().delta_s();
        double sigma_s = Math.hypot(delta.sigma(), climb.get().deltaSigma_s());
        String words =
                String.format(
                        Locale.ROOT,
                        "pressure height %s %s by %.2f s (sigma %.2f s)",
                        lag_s < 0 ? "leads" : "lags",
                        names(prompt),
                        Math.abs(lag_s),
                        sigma_s);
        return lag_s + LEADING_SIGMAS * sigma_s < -settings.pressureLag_s()
                ? Outcome.refused(words + ", which no instrument does: a record of another flight?")
                : outcome(delta, rate, climb, List.of(words + "; the clock follows the latter"));
    }

    private static String names(List<Named> prompt) {
        return String.join(" and ", prompt.stream().map(Named::name).toList());
    }

    private static Estimate delta(LagFit.Fit f) {
        return new Estimate(f.delta_s(), f.deltaSigma_s());
    }

    private static Estimate rate(LagFit.Fit f) {
        return new Estimate(f.rate(), f.rateSigma());
    }

    /** Weighted mean; where the parts disagree its sigma grows by their chi-square. */
    private static Estimate combine(List<Estimate> parts) {
        double sum = 0;
        double weights = 0;
        for (Estimate e : parts) {
            double w = 1 / (e.sigma() * e.sigma() + 1e-12);
            sum += w * e.value();
            weights += w;
        }
        double mean = sum / weights;
        double chi2 = 0;
        for (Estimate e : parts) {
            chi2 += (e.value() - mean) * (e.value() - mean) / (e.sigma() * e.sigma() + 1e-12);
        }
        double growth = parts.size() > 1 ? Math.max(1, chi2 / (parts.size() - 1)) : 1;
        return new Estimate(mean, Math.sqrt(growth / weights));
    }

    private Outcome outcome(
            Estimate delta, Estimate rate, Optional<LagFit.Fit> climb, List<String> words) {
        double sigma_s = Math.hypot(delta.sigma(), rate.sigma() * systems.half_s());
        return new Outcome(
                Optional.of(
                        new Match(
                                delta.value(),
                                sigma_s,
                                rate.value(),
                                systems.middle_s(),
                                climb.map(LagFit.Fit::residual).orElse(Double.NaN),
                                curve(delta.value()),
                                words)),
                "");
    }

    /** Misfit of the climb rate against lag. */
    private OffsetCurve curve(double delta_s) {
        List<OffsetCurve.Point> points = new ArrayList<>();
        for (int i = -30; systems.hasClimb && i <= 30; i++) {
            double trial_s = delta_s + 0.1 * i;
            double squares = 0;
            int n = 0;
            for (int k = 0; k < systems.size; k++) {
                double d =
                        systems.climb_mps[k] - vehicle.velocity[2].at(systems.time_s(k) + trial_s);
                if (!Double.isNaN(d)) {
                    squares += d * d;
                    n++;
                }
            }
            if (n > 0) {
                points.add(new OffsetCurve.Point(trial_s, Math.sqrt(squares / n)));
            }
        }
        return new OffsetCurve(points);
    }
}
