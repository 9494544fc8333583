package pairdown.tail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.atmosphere.Atmosphere;
import pairdown.track.Channel;

/**
 * Retarding force beyond idle and Tc′ from the balance along the path: T_rev = W·(sin γ − V̇/g) −
 * D_idle(V), Tc′ = T_rev/(q·A), with γ positive down, A the propeller's disc.
 *
 * @param share W-normalised sum of all retarding forces, sin γ − V̇/g
 * @param weight_N by the mass that was given, else the usual one
 * @param force_N beyond idle; NaN without idle drag
 * @param coefficient Tc′
 * @param coefficientSigma one standard deviation of Tc′
 * @param ownIdle what flight at idle in this log says about the drag
 * @param notes what was assumed and what is missing
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record ForceBalance(
        double[] share,
        double weight_N,
        double[] force_N,
        double[] coefficient,
        double[] coefficientSigma,
        Optional<IdleEvidence> ownIdle,
        List<String> notes) {
    /** A flap further than this from any met at idle has another drag. */
    private static final double FLAP_REACH_DEG = 6;

    /**
     * The rougher the air, the less is known of the wind, and with it of the airspeed in reverse,
     * by this for every m/s of gusts (common practice, no published source).
     */
    private static final double AIRSPEED_PER_GUST = 0.4;

    static ForceBalance of(TailInput input, Signals signals, AirData air) {
        int n = signals.grid().size();
        double[] share = new double[n];
        for (int i = 0; i < n; i++) {
            share[i] = air.sinePath()[i] - air.acceleration_mps2()[i] / Atmosphere.GRAVITY_MPS2;
        }
        List<String> notes = new ArrayList<>();
        double[] nothing = Signals.nothing(n);
        if (!air.hasPath()) {
            return new ForceBalance(
                    share, Double.NaN, nothing, nothing, nothing, Optional.empty(), notes);
        }
        TailSettings.Force force = input.settings().force();
        double mass_kg = input.aircraft().mass_kg().orElse(force.usualMass_kg());
        double weight_N = mass_kg * Atmosphere.GRAVITY_MPS2;
        Optional<IdleEvidence> own = IdleFit.of(signals, air, share, weight_N, input.settings());
        Optional<IdleDrag> idle = idle(own, input.aircraft().idle(), signals, notes);
        if (idle.isEmpty()) {
            return new ForceBalance(share, weight_N, nothing, nothing, nothing, own, notes);
        }
        if (input.aircraft().mass_kg().isEmpty()) {
            notes.add(
                    String.format(
                            Locale.ROOT,
                            "no mass is given: %.0f kg is taken, so that retarding force and Tc′ may"
                                    + " be off by %.0f %%",
                            mass_kg,
                            100 * force.usualMassSigma()));
        }
        return new Beyond(idle.get(), input, signals, air, share, weight_N).balance(own, notes);
    }

    /** All that flight at idle says, in this log and in others of the aircraft. */
    private static Optional<IdleDrag> idle(
            Optional<IdleEvidence> own,
            Optional<IdleEvidence> others,
            Signals signals,
            List<String> notes) {
        if (own.isPresent()) {
            return Optional.of(others.map(o -> o.and(own.get())).orElse(own.get()).drag());
        }
        if (others.isPresent()) {
            notes.add(
                    "idle drag is from other descents of this aircraft: none at idle in this log");
            return others.map(IdleEvidence::drag);
        }
        notes.add(
                signals.has(Channel.POWER_LEVER)
                        ? "no flight at idle in this log to take the idle drag from: retarding force"
                                + " beyond idle and Tc′ are not known"
                        : "without the power lever no idle descent can be told, hence no retarding"
                                + " force beyond idle and no Tc′");
        return Optional.empty();
    }

    /** What is left of the balance once the drag at idle is taken off. */
    private record Beyond(
            IdleDrag idle,
            TailInput input,
            Signals signals,
            AirData air,
            double[] share,
            double weight_N) {
        ForceBalance balance(Optional<IdleEvidence> own, List<String> notes) {
            TailSettings.Force settings = input.settings().force();
            double disc_m2 = settings.disc_m2();
            double[] flap = signals.column(Channel.FLAP);
            int n = share.length;
            double[] force_N = new double[n];
            double[] coefficient = new double[n];
            double[] sigma = new double[n];
            boolean otherFlap = false;
            for (int i = 0; i < n; i++) {
                double q_Pa = air.dynamicPressure_Pa()[i];
                force_N[i] = weight_N * share[i] - q_Pa * idle.area_m2(flap[i], lift_m2(i));
                coefficient[i] = force_N[i] / (q_Pa * disc_m2);
                sigma[i] = areaSigma_m2(i, flap[i], settings) / disc_m2;
                otherFlap |= coefficient[i] > 0.3 && idle.flapBeyond_deg(flap[i]) > FLAP_REACH_DEG;
            }
            notes.add(
                    String.format(
                            Locale.ROOT,
                            "Tc′ takes a propeller disc of %.1f m across, as is usual, and idle drag"
                                    + " met from %.0f to %.0f m/s",
                            settings.discDiameter_m(),
                            idle.met().lowest_mps(),
                            idle.met().highest_mps()));
            if (otherFlap) {
                notes.add("the flap was set in reverse as never at idle: Tc′ there is uncertain");
            }
            return new ForceBalance(share, weight_N, force_N, coefficient, sigma, own, notes);
        }

        private double lift_m2(int i) {
            double sine = air.sinePath()[i];
            return weight_N * Math.sqrt(1 - sine * sine) / air.dynamicPressure_Pa()[i];
        }

        /**
         * Of force over q: mass, sink and rising air through W·sin γ; the drag at idle; and
         * airspeed V, by which the balance over q goes with V⁻³ and drag due to lift with V⁻⁴.
         */
        private double areaSigma_m2(int i, double flap_deg, TailSettings.Force settings) {
            boolean massKnown = input.aircraft().mass_kg().isPresent();
            double massSigma = massKnown ? settings.massSigma() : settings.usualMassSigma();
            double whole_m2 = weight_N / air.dynamicPressure_Pa()[i];
            double speed =
                    Math.hypot(
                                    settings.airspeedSigma_mps(),
                                    AIRSPEED_PER_GUST * air.verticalAir_mps())
                            / air.calibrated_mps()[i];
            double rising =
                    Math.hypot(settings.sinkSigma_mps(), air.verticalAir_mps()) / air.true_mps()[i];
            double lift = idle.mean().getEntry(IdleDrag.TERMS - 1, 0) * lift_m2(i) * lift_m2(i);
            double balance = Math.hypot(whole_m2 * rising, whole_m2 * massSigma * share[i]);
            double airspeed = (3 * whole_m2 * share[i] - 4 * lift) * speed;
            return Math.hypot(
                    Math.hypot(balance, airspeed), idle.areaSigma_m2(flap_deg, lift_m2(i)));
        }
    }

    boolean hasCoefficient() {
        return Arrays.stream(coefficient).anyMatch(Double::isFinite);
    }
}
