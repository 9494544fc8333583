package pairdown.demo.physics;

import pairdown.atmosphere.Atmosphere;

/**
 * How the lead's pilot holds a sink with the lever: in steps, each once the last has shown. The
 * sink to come at the wanted airspeed is V·f less the air's own rise, f the retarding force over
 * weight.
 */
final class SinkHand {
    private final LeverHand lever;
    private final Lag retarding = new Lag(1.2, 0);

    SinkHand(LeverHand lever) {
        this.lever = lever;
    }

    void notice(Airframe a, double dt_s) {
        retarding.step(a.retarding, dt_s);
    }

    /**
     * Moves the lever if the sink to come is off.
     *
     * @param sink_mps wanted
     * @param airspeed_mps true airspeed wanted
     * @param rise_mps of the air around
     * @param least lever furthest toward reverse
     * @param wait_s rest between moves
     * @param slack_mps left alone
     */
    void hold(
            Airframe a,
            double time_s,
            double density_kgpm3,
            double sink_mps,
            double airspeed_mps,
            double rise_mps,
            double least,
            double wait_s,
            double slack_mps) {
        double ratio = airspeed_mps / a.airspeed_mps;
        double felt = retarding.value();
        double there = felt > 0 ? felt * ratio * ratio : felt;
        double coming_mps = airspeed_mps * there - rise_mps;
        double off_mps = sink_mps - coming_mps;
        boolean pastLimit = lever.wanted() < least - 0.01;
        if (lever.rested_s(time_s) < wait_s || (Math.abs(off_mps) < slack_mps && !pastLimit)) {
            return;
        }
        double more_N = a.mass_kg * Atmosphere.GRAVITY_MPS2 * off_mps / airspeed_mps;
        double now_N = Propeller.steady_N(lever.wanted(), a.airspeed_mps, density_kgpm3);
        double to = Propeller.lever(now_N - 0.9 * more_N, a.airspeed_mps, density_kgpm3);
        lever.move(time_s, Math.max(least, to));
    }
}
