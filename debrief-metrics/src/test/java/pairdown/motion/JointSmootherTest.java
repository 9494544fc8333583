package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.clock.ClockDoubt;
import pairdown.time.Span;
import pairdown.vector.Vec3;

class JointSmootherTest {
    private static final Vec3 APART = new Vec3(3, 4, 1);

    static SmoothedTrajectory track(Vec3 shift, long seed) throws Exception {
        Random random = new Random(seed);
        LogFixture log = new LogFixture().heightSigma(0.5).clockSigma(0.001);
        for (int i = 0; i <= 600; i++) {
            double t = 0.2 * i;
            log.fix(t, SmootherTest.place(t).plus(shift).plus(noise(random, 0.2)))
                    .velocity(SmootherTest.velocity(t).plus(noise(random, 0.1)));
        }
        return Smoother.smooth(
                log.build(), LogFixture.FRAME, SmootherSettings.DEFAULT, JerkProfile.constant(5));
    }

    private static Vec3 noise(Random random, double sigma) {
        return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                .times(sigma);
    }

    @Test
    void withoutAnchorsItIsTheDifferenceOfTheTwo() throws Exception {
        SmoothedTrajectory lead = track(Vec3.ZERO, 1);
        SmoothedTrajectory flyer = track(APART.plus(new Vec3(1, -1, 2)), 2);
        RelativeSample s = JointSmoother.relative(lead, flyer, List.of()).at(60.05);
        Vec3 difference = flyer.at(60.05).position_m().minus(lead.at(60.05).position_m());
        assertEquals(0, s.position_m().minus(difference).norm(), 0.005);
        assertFalse(s.anchored());
        AxisCovariance a = lead.covariance(0, 60.05);
        AxisCovariance b = flyer.covariance(0, 60.05);
        assertTrue(s.positionCovariance_m2().row0().x() > a.position_m2() + b.position_m2());
    }

    private static double east_m2(ClockDoubt lead, ClockDoubt flyer) throws Exception {
        SmoothedTrajectory l = steady(lead);
        SmoothedTrajectory f = steady(flyer);
        double all =
                JointSmoother.relative(l, f, List.of()).at(5).positionCovariance_m2().row0().x();
        return all - l.covariance(0, 5).position_m2() - f.covariance(0, 5).position_m2();
    }

    private static SmoothedTrajectory steady(ClockDoubt clock) throws Exception {
        LogFixture log = new LogFixture().clock(clock);
        for (int i = 0; i < 11; i++) {
            log.fix(i, new Vec3(38 * i, 0, 1000));
        }
        return Smoother.smooth(
                log.build(), LogFixture.FRAME, SmootherSettings.DEFAULT, JerkProfile.constant(1));
    }

    @Test
    void aClockMovesTheFlyerByWhatItIsOffAgainstTheLeads() throws Exception {
        double own = east_m2(ClockDoubt.own(0.03), ClockDoubt.own(0.04));
        assertEquals((0.03 * 0.03 + 0.04 * 0.04) * 38 * 38, own, 0.02);
        ClockDoubt ride = new ClockDoubt(0, 4, 0.1, 0.15);
        assertEquals(0, east_m2(ride, ride), 0.02);
        double apart = east_m2(new ClockDoubt(0, 0, 0.1, 0.15), ride);
        assertEquals(2 * 0.1 * 0.1 * 38 * 38, apart, 0.2);
    }

    @Test
    void anAnchorTakesTheSlowBiasOutAndForgetsAwayFromIt() throws Exception {
        SmoothedTrajectory lead = track(Vec3.ZERO, 1);
        SmoothedTrajectory flyer = track(APART.plus(new Vec3(1, -1, 2)), 2);
        RelativeAnchor anchor = RelativeAnchor.fixed(new Span(58, 62), APART, 0.3);
        RelativeTrajectory joint = JointSmoother.relative(lead, flyer, List.of(anchor));
        RelativeSample at = joint.at(60);
        assertEquals(0, at.position_m().minus(APART).norm(), 0.6);
        assertTrue(at.anchored(), at::toString);
        Vec3 east = new Vec3(1, 0, 0);
        assertTrue(at.positionSigma_m(east) < 0.5, "" + at.positionSigma_m(east));
        assertTrue(joint.at(80).positionSigma_m(east) > at.positionSigma_m(east));
        assertTrue(joint.at(115).positionSigma_m(east) > joint.at(80).positionSigma_m(east));
        double raw = JointSmoother.relative(lead, flyer, List.of()).at(115).positionSigma_m(east);
        assertTrue(joint.at(115).positionSigma_m(east) < raw);
        assertTrue(joint.anchorMisfit().orElseThrow() < 3);
    }
}
