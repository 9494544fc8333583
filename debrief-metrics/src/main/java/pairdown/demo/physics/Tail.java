package pairdown.demo.physics;

import java.util.Random;

/**
 * The air at the lead's tail. Braking slows the wake in which part of the tail lies: q_t/q =
 * max(0.1, 1 − f·min(Tc′, 1)) with f = 0.6 for the elevator and 0.75 for the rudder; over Tc′ = 1.2
 * for 0.4 s the wake closes up and the ratio falls to 0.4 of that, until Tc′ has been under 1.0 for
 * 0.3 to 0.8 s. Buffet shakes the rates by (0.3 + 4·max(0, Tc′ − 0.7))°/s root mean square.
 *
 * <p>Momentum theory gives 1 − Tc′ in the wake; the rest is common practice, no published source.
 */
final class Tail {
    /** Share of the elevator that lies in the wake. */
    static final double ELEVATOR_SHARE = 0.6;

    static final double RUDDER_SHARE = 0.75;

    private static final double LEAST = 0.1;
    private static final double CLOSES = 1.2;
    private static final double CLOSES_AFTER_S = 0.4;
    private static final double OPENS = 1.0;
    private static final double CLOSED_SHARE = 0.4;

    /** The wake takes this long from disc to tail (s). */
    private static final double TRANSIT_S = 0.3;

    private final Random random;
    private double coefficient;
    private boolean closed;
    private double over_s;
    private double under_s;
    private double opensAfter_s = 0.5;
    private double share = 1;
    private double elevator = 1;
    private double rudder = 1;

    Tail(Random random) {
        this.random = random;
    }

    void step(double atDisc, double dt_s) {
        coefficient = atDisc;
        over_s = atDisc > CLOSES ? over_s + dt_s : 0;
        under_s = atDisc < OPENS ? under_s + dt_s : 0;
        if (!closed && over_s >= CLOSES_AFTER_S) {
            closed = true;
            opensAfter_s = 0.3 + 0.5 * random.nextDouble();
        } else if (closed && under_s >= opensAfter_s) {
            closed = false;
        }
        double braking = Math.max(0, Math.min(1, atDisc));
        double lag = dt_s / TRANSIT_S;
        share += ((closed ? CLOSED_SHARE : 1) - share) * lag;
        elevator += (open(ELEVATOR_SHARE, braking) - elevator) * lag;
        rudder += (open(RUDDER_SHARE, braking) - rudder) * lag;
    }

    private static double open(double immersed, double braking) {
        return Math.max(LEAST, 1 - immersed * braking);
    }

    /** Dynamic pressure at the elevator over that of the flight. */
    double elevator() {
        return elevator * share;
    }

    double rudder() {
        return rudder * share;
    }

    double coefficient() {
        return coefficient;
    }

    boolean isClosed() {
        return closed;
    }

    /** Root mean square of the rates that buffet makes (°/s). */
    double buffet_dps() {
        return 0.3 + 4 * Math.max(0, coefficient - 0.7);
    }
}
