package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import pairdown.demo.truth.TrueEpisode;
import pairdown.demo.truth.TruePowerChange;

/**
 * A flight of a single turboprop with a tail behind its disc, by simple equations whose truth is
 * known: idle and forward flight, a descent in reverse, moves of power that blank the tail and
 * moves that do not, rough air and slips that are none. Not an aircraft: numbers are chosen to be
 * generic, and no published source stands behind them.
 *
 * <p>Pitch rate obeys q̇ = 6·η·δ·Q − 2·√Q·q + d with η the tail's share of dynamic pressure, Q
 * dynamic pressure over that of the descent; yaw rate likewise with a term for sideslip. η falls
 * with Tc′, and deeper where Tc′ has been over 1.2 for 0.4 s, until it is under 1.0 again.
 */
final class ModelDive {
    static final double STEP_S = 0.02;
    static final double MASS_KG = 1650;
    static final double DISC_M2 = Math.PI * 2.8 * 2.8 / 4;
    static final double REFERENCE_PA = 650;
    private static final double WING_M2 = 27;
    private static final double TRAVEL_RAD = Math.toRadians(25);
    private static final double G = 9.80665;
    private static final double GUST_S = 0.2;

    /** What a flight is made of: what the seed draws. */
    record Script(
            double delay_s,
            double gain,
            double remnant,
            double turbulence_dps2,
            double trim_dps2,
            double powerTrim_dps2,
            double buffetShare,
            List<LeverMove> lever,
            List<Burst> bursts,
            List<Burst> slips,
            double descent_s,
            double recovery_s,
            double end_s) {}

    /** A move of the lever that begins at an instant. */
    record LeverMove(double time_s, double to_pct, boolean lookedFor) {}

    /** A stretch of rough air or of slip. */
    record Burst(double start_s, double end_s, double size) {}

    final Script script;
    final int rows;
    final double[] lever;
    final double[] blade;
    final double[] airspeed_mps;
    final double[] sink_mps;
    final double[] height_m;
    final double[] pitch_rad;
    final double[] pitchRate_dps;
    final double[] yawRate_dps;
    final double[] elevator_pct;
    final double[] rudder_pct;
    final double[] lateral_g;
    final double[] buffet_dps;
    final double[] coefficient;
    final double[] effectiveness;
    final double[] flap_deg;
    private final Random random;

    ModelDive(Script script, long seed) {
        this.script = script;
        this.random = new Random(seed);
        this.rows = (int) Math.round(script.end_s() / STEP_S) + 1;
        lever = new double[rows];
        blade = new double[rows];
        airspeed_mps = new double[rows];
        sink_mps = new double[rows];
        height_m = new double[rows];
        pitch_rad = new double[rows];
        pitchRate_dps = new double[rows];
        yawRate_dps = new double[rows];
        elevator_pct = new double[rows];
        rudder_pct = new double[rows];
        lateral_g = new double[rows];
        buffet_dps = new double[rows];
        coefficient = new double[rows];
        effectiveness = new double[rows];
        flap_deg = new double[rows];
        fly();
    }

    private void fly() {
        double v = 38;
        double gamma = Math.toRadians(3);
        double theta = gamma + 0.08;
        double q = 0;
        double r = 0;
        double beta = 0;
        double h = 3200;
        double l = 60;
        double b = 60;
        double d = 0;
        double dy = 0;
        double remnant = 0;
        double remnantY = 0;
        double stick = 0;
        double pedal = 0;
        double buffet = 0;
        double buffetY = 0;
        double over_s = 0;
        double clear_s = 0;
        double clearAfter_s = 0.5;
        boolean deep = false;
        double believed = 1;
        double trimBelief = 0;
        double gammaTrim = 0;
        int late = (int) Math.round(script.delay_s() / STEP_S);
        double[] wantedStick = new double[late + 1];
        double[] wantedPedal = new double[late + 1];
        for (int i = 0; i < rows; i++) {
            double t = i * STEP_S;
            boolean down = t >= script.descent_s() && t < script.recovery_s();
            double rho = 0.95;
            double qbar = rho * v * v / 2;
            double ratio = qbar / REFERENCE_PA;
            l = towards(l, commanded(t), 60 * STEP_S);
            b += (l - b) * STEP_S / 0.4;
            double thrust = thrust(b, v, qbar, rho);
            double tc = Math.max(0, b < 0 ? -thrust / (qbar * DISC_M2) : 0);
            over_s = tc > 1.2 ? over_s + STEP_S : 0;
            clear_s = tc < 1.0 ? clear_s + STEP_S : 0;
            if (!deep && over_s > 0.4) {
                deep = true;
                clearAfter_s = 0.3 + 0.5 * random.nextDouble();
            } else if (deep && clear_s > clearAfter_s) {
                deep = false;
            }
            double eta = Math.max(0.1, 1 - 0.6 * Math.min(tc, 1)) * (deep ? 0.4 : 1);
            double etaY = Math.max(0.1, 1 - 0.75 * Math.min(tc, 1)) * (deep ? 0.4 : 1);
            // motion
            double drag =
                    qbar * WING_M2 * (t > script.descent_s() - 60 ? 0.11 : 0.05) + induced(qbar);
            double dv = -G * Math.sin(gamma) + (thrust - drag) / MASS_KG;
            double alpha = 0.08;
            gamma += 1.5 * (theta - alpha - gamma) * STEP_S;
            v = Math.max(25, v + dv * STEP_S);
            h += v * Math.sin(gamma) * STEP_S;
            // what the pilot wants
            double target = down ? (t < script.descent_s() + 10 ? 41 : 37) : 40;
            double balance = -Math.asin(clamp((drag - thrust) / (MASS_KG * G), -0.3, 0.6));
            gammaTrim += 0.004 * (v - target) * STEP_S;
            gammaTrim = Math.max(-0.15, Math.min(0.15, gammaTrim));
            double wantedPitch =
                    clamp(balance + gammaTrim + alpha + 0.015 * (v - target), -0.7, 0.35);
            double wantedRate = clamp(script.gain() * 0.9 * (wantedPitch - theta), -0.15, 0.15);
            believed += (eta - believed) * STEP_S / 1.2;
            trimBelief += 1.0 * (wantedRate - q) * STEP_S;
            double wanted =
                    (script.gain() * 3 * (wantedRate - q) + 2 * wantedRate + trimBelief)
                            / (6 * Math.max(0.1, believed) * ratio);
            remnant = ou(remnant, script.remnant(), 0.35);
            remnantY = ou(remnantY, script.remnant(), 0.35);
            stick +=
                    (delayed(wantedStick, i, clamp(wanted / TRAVEL_RAD + remnant, -1, 1)) - stick)
                            * STEP_S
                            / 0.1;
            double slip = size(script.slips(), t);
            double wantedY =
                    (-script.gain() * 3 * r + slip * 2.0)
                                    / (6 * Math.max(0.1, believed) * ratio * TRAVEL_RAD)
                            + remnantY;
            pedal += (delayed(wantedPedal, i, clamp(wantedY, -1, 1)) - pedal) * STEP_S / 0.1;
            // turning
            double rough = Math.max(1, size(script.bursts(), t));
            d = ou(d, Math.toRadians(script.turbulence_dps2()) * rough, GUST_S);
            dy = ou(dy, Math.toRadians(script.turbulence_dps2()) * rough * 0.7, GUST_S);
            double trim = -Math.toRadians(script.trim_dps2()) * ratio;
            double powerTrim = Math.toRadians(script.powerTrim_dps2()) * Math.min(tc, 1.5);
            double qdot =
                    6 * eta * ratio * stick * TRAVEL_RAD
                            - 2 * Math.sqrt(ratio) * q
                            + trim
                            + powerTrim
                            + d;
            double rdot =
                    5 * etaY * ratio * pedal * TRAVEL_RAD
                            - 1.5 * Math.sqrt(ratio) * r
                            - 3 * beta
                            + dy;
            q += qdot * STEP_S;
            theta += q * STEP_S;
            r += rdot * STEP_S;
            beta += (r - 1.2 * beta) * STEP_S;
            double rms = script.buffetShare() * (0.3 + 4 * Math.max(0, tc - 0.7));
            buffet = ou(buffet, rms, 0.04);
            buffetY = ou(buffetY, rms, 0.04);
            lever[i] = l;
            blade[i] = b;
            airspeed_mps[i] = v;
            sink_mps[i] = -v * Math.sin(gamma);
            height_m[i] = h;
            pitch_rad[i] = theta;
            pitchRate_dps[i] = Math.toDegrees(q) + buffet;
            yawRate_dps[i] = Math.toDegrees(r) + buffetY;
            elevator_pct[i] = 100 * stick;
            rudder_pct[i] = 100 * pedal;
            lateral_g[i] = -1.2 * beta;
            buffet_dps[i] = buffet;
            coefficient[i] = tc;
            effectiveness[i] = eta;
            flap_deg[i] = t > script.descent_s() - 60 ? 40 : 0;
        }
    }

    private static double induced(double qbar) {
        double lift = MASS_KG * G;
        return 0.054 * lift * lift / (qbar * WING_M2);
    }

    private static double thrust(double lever_pct, double v, double qbar, double rho) {
        double l = lever_pct / 100;
        double idle = -qbar * 0.55;
        if (l >= 0) {
            return Math.min(12000, 0.75 * l * 560000 / v) + (1 - Math.min(1, l * 5)) * idle;
        }
        double reverse = -l * (4000 * rho / 1.225 + 1.2 * qbar * DISC_M2);
        return idle * Math.max(0, 1 + l * 5) - reverse;
    }

    private double commanded(double t_s) {
        double to = 60;
        for (LeverMove m : script.lever()) {
            to = t_s >= m.time_s() ? m.to_pct() : to;
        }
        return to;
    }

    private static double size(List<Burst> bursts, double t_s) {
        return bursts.stream()
                .filter(b -> t_s >= b.start_s() && t_s < b.end_s())
                .mapToDouble(Burst::size)
                .findFirst()
                .orElse(0);
    }

    private double ou(double value, double rms, double tau_s) {
        double keep = Math.exp(-STEP_S / tau_s);
        return value * keep + rms * Math.sqrt(1 - keep * keep) * random.nextGaussian();
    }

    private static double delayed(double[] ring, int i, double now) {
        double then = ring[(i + 1) % ring.length];
        ring[i % ring.length] = now;
        return ring.length == 1 ? now : then;
    }

    private static double towards(double from, double to, double most) {
        return from + Math.max(-most, Math.min(most, to - from));
    }

    private static double clamp(double v, double low, double high) {
        return Math.max(low, Math.min(high, v));
    }

    /** The dive's own level: median of the effectiveness in reverse. */
    double level() {
        double[] kept = new double[rows];
        int n = 0;
        for (int i = 0; i < rows; i++) {
            if (lever[i] < -20 && i * STEP_S < script.recovery_s()) {
                kept[n++] = effectiveness[i];
            }
        }
        double[] some = java.util.Arrays.copyOf(kept, n);
        java.util.Arrays.sort(some);
        return some[n / 2];
    }

    /** Stretches under 0.6 of the dive's own level until over 0.75 of it. */
    List<TrueEpisode> episodes() {
        double level = level();
        List<TrueEpisode> episodes = new ArrayList<>();
        int from = -1;
        for (int i = 0; i < rows; i++) {
            double share = effectiveness[i] / level;
            if (from < 0 && share < 0.6) {
                from = i;
            } else if (from >= 0 && share > 0.75) {
                episodes.add(episode(from * STEP_S, i * STEP_S));
                from = -1;
            }
        }
        return episodes;
    }

    private TrueEpisode episode(double start_s, double end_s) {
        Optional<TruePowerChange> before = Optional.empty();
        Optional<TruePowerChange> after = Optional.empty();
        for (TruePowerChange c : changes()) {
            if (c.to_pct() < c.from_pct() && c.time_s() <= start_s && c.time_s() > start_s - 4) {
                before = Optional.of(c);
            }
            if (c.to_pct() > c.from_pct()
                    && c.time_s() >= start_s
                    && c.time_s() <= end_s
                    && after.isEmpty()) {
                after = Optional.of(c);
            }
        }
        return new TrueEpisode(start_s, end_s, before, after);
    }

    /** The moves of the lever. */
    List<TruePowerChange> changes() {
        List<TruePowerChange> changes = new ArrayList<>();
        double from = 60;
        for (LeverMove m : script.lever()) {
            changes.add(new TruePowerChange(m.time_s(), from, m.to_pct()));
            from = m.to_pct();
        }
        return changes;
    }
}
