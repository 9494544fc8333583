package pairdown.motion;

import java.util.List;
import java.util.Optional;
import pairdown.attempt.LeverArm;
import pairdown.time.Span;
import pairdown.vector.Vec3;

/**
 * A participant's reference point, carried by its antenna: the lead's centre of gravity, or the
 * antenna itself. The lever arm is laid in the logged attitude; without one, level along the
 * heading; without a heading it is left on and its length becomes uncertainty.
 */
public final class ReferencePoint implements Trajectory {
    /** Attitude error of a logged attitude, and of an assumed one, as a share of the arm. */
    private static final double LOGGED_SHARE = Math.toRadians(1.5);

    /** Heading to 4°, pitch and bank not modelled: some 8°. */
    private static final double AIR_SHARE = Math.toRadians(9);

    /** Drift angle unknown: some 15°. */
    private static final double GROUND_SHARE = Math.toRadians(17);

    /** Half the time over which the arm's own motion is measured. */
    private static final double RATE_STEP_S = 0.5;

    private final SmoothedTrajectory antenna;
    private final Vec3 arm_m;
    private final AttitudeSource attitudes;

    private ReferencePoint(SmoothedTrajectory antenna, Vec3 arm_m, AttitudeSource attitudes) {
        this.antenna = antenna;
        this.arm_m = arm_m;
        this.attitudes = attitudes;
    }

    /** The antenna itself. */
    public static ReferencePoint antennaOf(SmoothedTrajectory antenna) {
        return new ReferencePoint(antenna, Vec3.ZERO, AttitudeSource.unknown());
    }

    /**
     * The centre of gravity of an aircraft.
     *
     * @param antennaArm where its antenna sits
     */
    public static ReferencePoint centreOfGravity(
            SmoothedTrajectory antenna, LeverArm antennaArm, AttitudeSource attitudes) {
        return new ReferencePoint(antenna, antennaArm.vector_m(), attitudes);
    }

    /** The trajectory of the antenna. */
    public SmoothedTrajectory antenna() {
        return antenna;
    }

    /** Whether the reference point lies elsewhere than the antenna. */
    public boolean hasArm() {
        return !arm_m.equals(Vec3.ZERO);
    }

    /** From the antenna to the reference point, east, north, up (m); zero where unknown. */
    public Vec3 fromAntenna_m(double t_s) {
        if (arm_m.equals(Vec3.ZERO)) {
            return Vec3.ZERO;
        }
        return attitudes.at(t_s).map(this::laid).orElse(Vec3.ZERO);
    }

    private Vec3 laid(Attitude attitude) {
        Attitude used =
                attitude.source() == Attitude.Source.LOGGED
                        ? attitude
                        : new Attitude(attitude.heading_deg(), 0, 0, attitude.source());
        return used.enuToBody().transposeTimes(arm_m).times(-1);
    }

    /** One standard deviation per axis of {@link #fromAntenna_m} (m). */
    public double armSigma_m(double t_s) {
        if (arm_m.equals(Vec3.ZERO)) {
            return 0;
        }
        double share =
                attitudes
                        .at(t_s)
                        .map(
                                a ->
                                        switch (a.source()) {
                                            case LOGGED -> LOGGED_SHARE;
                                            case AIR_MOTION -> AIR_SHARE;
                                            case GROUND_TRACK -> GROUND_SHARE;
                                        })
                        .orElse(1.0);
        return share * arm_m.norm();
    }

    /** How fast the reference point moves about the antenna (m/s). */
    Vec3 armRate_mps(double t_s) {
        if (arm_m.equals(Vec3.ZERO)) {
            return Vec3.ZERO;
        }
        double a_s = Math.max(start_s(), t_s - RATE_STEP_S);
        double b_s = Math.min(end_s(), t_s + RATE_STEP_S);
        Optional<Attitude> before = attitudes.at(a_s);
        Optional<Attitude> after = attitudes.at(b_s);
        if (before.isEmpty() || after.isEmpty() || !(b_s > a_s)) {
            return Vec3.ZERO;
        }
        return laid(after.get()).minus(laid(before.get())).times(1 / (b_s - a_s));
    }

    @Override
    public double start_s() {
        return antenna.start_s();
    }

    @Override
    public double end_s() {
        return antenna.end_s();
    }

    @Override
    public State at(double t_s) {
        State s = antenna.at(t_s);
        if (arm_m.equals(Vec3.ZERO)) {
            return s;
        }
        double arm2 = armSigma_m(t_s) * armSigma_m(t_s);
        return new State(
                t_s,
                s.position_m().plus(fromAntenna_m(t_s)),
                s.velocity_mps().plus(armRate_mps(t_s)),
                s.acceleration_mps2(),
                widened(s.positionSigma_m(), arm2),
                s.shapeSigma_m(),
                widened(s.biasSigma_m(), arm2),
                s.velocitySigma_mps(),
                s.predicted());
    }

    private static Vec3 widened(Vec3 sigma, double extra2) {
        return new Vec3(
                Math.sqrt(sigma.x() * sigma.x() + extra2),
                Math.sqrt(sigma.y() * sigma.y() + extra2),
                Math.sqrt(sigma.z() * sigma.z() + extra2));
    }

    @Override
    public void read(double t_s, double[] into) {
        antenna.read(t_s, into);
        if (arm_m.equals(Vec3.ZERO)) {
            return;
        }
        Vec3 offset_m = fromAntenna_m(t_s);
        Vec3 rate_mps = armRate_mps(t_s);
        into[0] += offset_m.x();
        into[1] += offset_m.y();
        into[2] += offset_m.z();
        into[3] += rate_mps.x();
        into[4] += rate_mps.y();
        into[5] += rate_mps.z();
    }

    @Override
    public List<Span> gaps() {
        return antenna.gaps();
    }

    @Override
    public int fixCount() {
        return antenna.fixCount();
    }

    @Override
    public double fixTime_s(int i) {
        return antenna.fixTime_s(i);
    }
}
