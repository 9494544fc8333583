package pairdown.demo.physics;

import pairdown.vector.Vec3;

/**
 * A flyer's way from the exit to steady flight at the target, in still air: what an exit is planned
 * with. Small for a second, opening over four, damping its own path.
 *
 * @param settle_s until airspeed and sink stay within 1.5 and 1.0 m/s of the target's
 * @param forward_m flown by then
 * @param drop_m lost by then
 */
record ExitTemplate(double settle_s, double forward_m, double drop_m) {
    private static final double STEP_S = 0.02;
    private static final double LONGEST_S = 25;
    private static final double DAMPING_PERS = 0.9;

    /**
     * @param exit_mps true airspeed at exit
     * @param forward_mps level speed through the air to be reached
     * @param sink_mps sink to be reached
     */
    static ExitTemplate of(
            double exit_mps,
            double forward_mps,
            double sink_mps,
            double density_kgpm3,
            double mass_kg) {
        Vec3 target_mps = new Vec3(0, forward_mps, -sink_mps);
        FlyerBody body =
                new FlyerBody(mass_kg, Vec3.ZERO, new Vec3(0, exit_mps, 0), new Vec3(1, 0, 0));
        double settled_s = 0;
        Vec3 settled_m = Vec3.ZERO;
        for (int i = 0; i * STEP_S < LONGEST_S; i++) {
            double t_s = i * STEP_S;
            body.feel(Vec3.ZERO, density_kgpm3);
            double open = Math.max(0, Math.min(1, (t_s - 1) / 4));
            double[] pose = {0.15 + 1.05 * open, 0.55 - 0.21 * open};
            Vec3 want = target_mps.minus(body.velocity_mps).times(DAMPING_PERS);
            body.pose(FlyerPilot.limited(want, target_mps), open, pose, STEP_S);
            body.step(Vec3.ZERO, 0, STEP_S);
            double off_mps = Math.abs(body.velocity_mps.norm() - target_mps.norm());
            if (off_mps > 1.5 || Math.abs(body.velocity_mps.z() + sink_mps) > 1.0) {
                settled_s = t_s + STEP_S;
                settled_m = body.place_m;
            }
        }
        return new ExitTemplate(settled_s, settled_m.y(), -settled_m.z());
    }
}
