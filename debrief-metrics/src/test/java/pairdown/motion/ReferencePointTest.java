package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Role;
import pairdown.track.UnusableInputException;
import pairdown.vector.Vec3;

class ReferencePointTest {
    private static final LeverArm ARM = new LeverArm(2, 1, 3);
    private static final double AT_S = 20;

    /** Flies north at 40 m/s, level. */
    private static SmoothedTrajectory north() throws UnusableInputException {
        LogFixture log = new LogFixture().role(Role.LEAD);
        Vec3 velocity_mps = new Vec3(0, 40, 0);
        for (int i = 0; i <= 200; i++) {
            log.fix(i / 5.0, velocity_mps.times(i / 5.0));
            log.velocity(velocity_mps);
        }
        return Smoother.smooth(
                log.build(), LogFixture.FRAME, SmootherSettings.DEFAULT, JerkProfile.constant(1));
    }

    private static ReferencePoint with(AttitudeSource attitudes) throws UnusableInputException {
        return ReferencePoint.centreOfGravity(north(), ARM, attitudes);
    }

    private static void assertNear(Vec3 expected, Vec3 actual) {
        assertTrue(expected.minus(actual).norm() < 1e-9, () -> expected + " but was " + actual);
    }

    @Test
    void withoutAnAttitudeTheArmStaysOnAndBecomesUncertainty() throws Exception {
        ReferencePoint point = with(t -> Optional.empty());
        assertNear(Vec3.ZERO, point.fromAntenna_m(AT_S));
        assertEquals(Math.sqrt(14), point.armSigma_m(AT_S), 1e-9);
    }

    @Test
    void aLoggedAttitudeLaysTheArmTilted() throws Exception {
        // Right wing straight down, heading north: body right is down, body above is east.
        Attitude onItsSide = new Attitude(0, 0, 90, Attitude.Source.LOGGED);
        assertNear(new Vec3(-3, -2, 1), with(t -> Optional.of(onItsSide)).fromAntenna_m(AT_S));
    }

    @Test
    void anAttitudeFromMotionLaysTheArmLevelAlongTheHeading() throws Exception {
        Attitude east = new Attitude(90, -25, 30, Attitude.Source.AIR_MOTION);
        assertNear(new Vec3(-2, 1, -3), with(t -> Optional.of(east)).fromAntenna_m(AT_S));
    }

    @Test
    void aTurningArmCarriesItsOwnVelocity() throws Exception {
        ReferencePoint point =
                with(t -> Optional.of(new Attitude(10 * t, 0, 0, Attitude.Source.LOGGED)));
        double rate_radps = Math.toRadians(10);
        Vec3 v = point.at(AT_S).velocity_mps().minus(point.antenna().at(AT_S).velocity_mps());
        // The level arm of √5 m turns at 10°/s; over one second's chord that is 0.13 % less.
        assertEquals(rate_radps * Math.sqrt(5), v.levelNorm(), 2e-3);
        assertEquals(0, v.dot(point.fromAntenna_m(AT_S)), 1e-3);
    }

    @Test
    void readingWithoutAllocationAgreesWithTheState() throws Exception {
        ReferencePoint point =
                with(t -> Optional.of(new Attitude(3 * t, 5, 7, Attitude.Source.LOGGED)));
        double[] values = new double[Trajectory.VALUES];
        point.read(AT_S, values);
        State s = point.at(AT_S);
        assertNear(s.position_m(), new Vec3(values[0], values[1], values[2]));
        assertNear(s.velocity_mps(), new Vec3(values[3], values[4], values[5]));
    }

    @Test
    void theArmWidensTheSlowPartAndNotTheShape() throws Exception {
        ReferencePoint point =
                with(t -> Optional.of(new Attitude(0, 0, 0, Attitude.Source.GROUND_TRACK)));
        State s = point.at(AT_S);
        State antenna = point.antenna().at(AT_S);
        assertEquals(antenna.shapeSigma_m(), s.shapeSigma_m());
        assertEquals(
                Math.hypot(antenna.biasSigma_m().x(), point.armSigma_m(AT_S)),
                s.biasSigma_m().x(),
                1e-9);
    }
}
