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
 * @param force_N beyond idle; NaN without idle drag
 * @param coefficient Tc′
 * @param coefficientSigma one standard deviation of Tc′
 * @param idleDrag the baseline used
 * @param notes what was assumed and what is missing
 */
// Columns of the package's own working, never handed out: copies would cost more than they guard.
@SuppressWarnings("ArrayRecordComponent")
record ForceBalance(
        double[] share,
        double[] force_N,
        double[] coefficient,
        double[] coefficientSigma,
        Optional<IdleDrag> idleDrag,
        List<String> notes) {
    /** A flap setting further than this from any met at idle has another drag. */
    private static final double FLAP_REACH_DEG = 6;

    static ForceBalance of(TailInput input, Signals signals, AirData air) {
        int n = signals.grid().size();
        double[] share = new double[n];
        for (int i = 0; i < n; i++) {
            share[i] = air.sinePath()[i] - air.acceleration_mps2()[i] / Atmosphere.GRAVITY_MPS2;
        }
        List<String> notes = new ArrayList<>();
        double[] nothing = Signals.nothing(n);
        if (!air.hasPath()) {
            return new ForceBalance(share, nothing, nothing, nothing, Optional.empty(), notes);
        }
        TailSettings.Force force = input.settings().force();
        double mass_kg = input.aircraft().mass_kg().orElse(force.usualMass_kg());
        double weight_N = mass_kg * Atmosphere.GRAVITY_MPS2;
        Optional<IdleDrag> idle = idle(input, signals, air, share, weight_N, notes);
        if (idle.isEmpty()) {
            return new ForceBalance(share, nothing, nothing, nothing, idle, notes);
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
        return beyond(idle.get(), input, signals, air, share, weight_N, notes);
    }

    private static Optional<IdleDrag> idle(
            TailInput input,
            Signals signals,
            AirData air,
            double[] share,
            double weight_N,
            List<String> notes) {
        Optional<IdleDrag> own = IdleFit.of(signals, air, share, weight_N, input.settings());
        if (own.isPresent()) {
            return own;
        }
        if (input.aircraft().idleDrag().isPresent()) {
            notes.add(
                    "idle drag is from other descents of this aircraft: none at idle in this log");
            return input.aircraft().idleDrag();
        }
        notes.add(
                signals.has(Channel.POWER_LEVER)
                        ? "no flight at idle in this log to take the idle drag from: retarding force"
                                + " beyond idle and Tc′ are not known"
                        : "without the power lever no idle descent can be told, hence no retarding"
                                + " force beyond idle and no Tc′");
        return Optional.empty();
    }

    private static ForceBalance beyond(
            IdleDrag idle,
            TailInput input,
            Signals signals,
            AirData air,
            double[] share,
            double weight_N,
            List<String> notes) {
        TailSettings.Force settings = input.settings().force();
        double disc_m2 = Math.PI * settings.discDiameter_m() * settings.discDiameter_m() / 4;
        double[] flap = signals.column(Channel.FLAP);
        int n = share.length;
        double[] force_N = new double[n];
        double[] coefficient = new double[n];
        double[] sigma = new double[n];
        double massSigma =
                input.aircraft().mass_kg().isPresent()
                        ? settings.massSigma()
                        : settings.usualMassSigma();
        boolean otherFlap = false;
        for (int i = 0; i < n; i++) {
            double q_Pa = air.dynamicPressure_Pa()[i];
            double cosine = Math.sqrt(1 - air.sinePath()[i] * air.sinePath()[i]);
            force_N[i] = weight_N * share[i] - idle.drag_N(q_Pa, weight_N * cosine, flap[i]);
            coefficient[i] = force_N[i] / (q_Pa * disc_m2);
            double sink = settings.sinkSigma_mps() / air.true_mps()[i];
            double mass = massSigma * share[i];
            double speed =
                    2 * settings.airspeedSigma_mps() / air.calibrated_mps()[i] * coefficient[i];
            double balance =
                    Math.hypot(
                            weight_N * Math.hypot(sink, mass) / (q_Pa * disc_m2),
                            idle.sigma_m2(flap[i]) / disc_m2);
            sigma[i] = Math.hypot(balance, speed);
            otherFlap |= coefficient[i] > 0.3 && idle.flapDistance_deg(flap[i]) > FLAP_REACH_DEG;
        }
        notes.add(
                String.format(
                        Locale.ROOT,
                        "Tc′ takes a propeller disc of %.1f m across, as is usual, and idle drag met"
                                + " from %.0f to %.0f m/s",
                        settings.discDiameter_m(),
                        idle.lowest_mps(),
                        idle.highest_mps()));
        if (otherFlap) {
            notes.add("the flap was set in reverse as never at idle: Tc′ then includes its drag");
        }
        return new ForceBalance(share, force_N, coefficient, sigma, Optional.of(idle), notes);
    }

    boolean hasCoefficient() {
        return Arrays.stream(coefficient).anyMatch(Double::isFinite);
    }
}
