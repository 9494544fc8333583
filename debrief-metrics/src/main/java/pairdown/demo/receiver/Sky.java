package pairdown.demo.receiver;

import pairdown.vector.Vec3;

/** The error that all receivers under one sky share, in the shares that each has of it. */
final class Sky {
    private static final double STEP_S = 1;

    private final double start_s;
    private final Vec3[] unit;

    /**
     * @param time_s how long the error keeps, τ of a first-order Gauss–Markov process
     */
    Sky(double start_s, double end_s, double time_s, Draws draws) {
        this.start_s = start_s;
        this.unit = new Vec3[(int) Math.ceil((end_s - start_s) / STEP_S) + 2];
        Wander wander = new Wander(1, 1, time_s);
        unit[0] = wander.first(draws);
        for (int i = 1; i < unit.length; i++) {
            unit[i] = wander.next(unit[i - 1], STEP_S, draws);
        }
    }

    /** The shared error at a time (m, east-north-up) of a receiver with this much of it. */
    Vec3 error_m(double time_s, Wander share) {
        double at = Math.max(0, Math.min(unit.length - 1.001, (time_s - start_s) / STEP_S));
        int i = (int) at;
        Vec3 between = unit[i].times(1 - (at - i)).plus(unit[i + 1].times(at - i));
        return between.scaledBy(new Vec3(share.level_m(), share.level_m(), share.vertical_m()));
    }
}
