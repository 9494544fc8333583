package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import pairdown.clock.ClockDoubt;
import pairdown.vector.Vec3;

class PairClocksTest {
    private static final double STEADY_MPS = 38;

    private static SmoothedTrajectory track(ClockDoubt clock) throws Exception {
        LogFixture log = new LogFixture().clock(clock);
        for (int i = 0; i < 10; i++) {
            log.fix(i, new Vec3(STEADY_MPS * i, 0, 1000));
        }
        return Smoother.smooth(
                log.build(), LogFixture.FRAME, SmootherSettings.DEFAULT, JerkProfile.constant(1));
    }

    private static double variance(ClockDoubt l, ClockDoubt f, double lead_mps, double flyer_mps)
            throws Exception {
        return PairClocks.of(track(l), track(f))
                .covariance(lead_mps, flyer_mps, lead_mps, flyer_mps);
    }

    @Test
    void whatALogHasOfItsOwnMovesItsBodyAlongItsPath() throws Exception {
        double found = variance(ClockDoubt.own(0.03), ClockDoubt.own(0.04), 38, 20);
        assertEquals(Math.pow(0.03 * 38, 2) + Math.pow(0.04 * 20, 2), found, 1e-12);
    }

    @Test
    void whatAGroupSharesMattersByTheDifferenceOfVelocities() throws Exception {
        ClockDoubt ride = new ClockDoubt(0, 4, 0.1, 0.15);
        assertEquals(0, variance(ride, ride, 38, 38), 1e-12);
        assertEquals((0.1 * 0.1 + 0.15 * 0.15) * 18 * 18, variance(ride, ride, 38, 20), 1e-12);
    }

    @Test
    void groupsThatNoRideTiesErrApart() throws Exception {
        ClockDoubt lead = new ClockDoubt(0, 0, 0.1, 0.15);
        ClockDoubt ride = new ClockDoubt(0, 4, 0.1, 0.15);
        assertEquals(2 * 0.01 * 38 * 38, variance(lead, ride, 38, 38), 1e-12);
    }
}
