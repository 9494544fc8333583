package pairdown.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.track.Channel;
import pairdown.track.UnusableInputException;
import pairdown.vector.Vec3;

class SmootherTest {
    private static final SmootherSettings SETTINGS = SmootherSettings.DEFAULT;

    /** A gentle turn with sink: 40 m/s over the ground, 6°/s, 15 m/s down. */
    static Vec3 place(double t) {
        double w = Math.toRadians(6);
        return new Vec3(40 / w * Math.sin(w * t), 40 / w * (1 - Math.cos(w * t)), 1000 - 15 * t);
    }

    static Vec3 velocity(double t) {
        double w = Math.toRadians(6);
        return new Vec3(40 * Math.cos(w * t), 40 * Math.sin(w * t), -15);
    }

    private static Vec3 noise(Random random, double level, double vertical) {
        return new Vec3(
                level * random.nextGaussian(),
                level * random.nextGaussian(),
                vertical * random.nextGaussian());
    }

    private static LogFixture flight(double seconds, double dt, long seed) {
        Random random = new Random(seed);
        LogFixture log = new LogFixture();
        for (int i = 0; i * dt <= seconds; i++) {
            double t = i * dt;
            log.fix(t, place(t).plus(noise(random, 0.2, 0.35)))
                    .velocity(velocity(t).plus(noise(random, 0.1, 0.18)));
        }
        return log;
    }

    private static SmoothedTrajectory smooth(LogFixture log) throws UnusableInputException {
        return Smoother.smooth(log.build(), LogFixture.FRAME, SETTINGS, JerkProfile.constant(5));
    }

    @Test
    void aCleanTurnIsFollowedToDecimetres() throws Exception {
        SmoothedTrajectory track = smooth(flight(120, 0.2, 1));
        for (double t = 5; t < 115; t += 0.37) {
            State s = track.at(t);
            assertTrue(s.position_m().minus(place(t)).norm() < 2.0, "at " + t);
            assertTrue(s.velocity_mps().minus(velocity(t)).norm() < 0.4, "at " + t);
            assertFalse(s.predicted());
        }
    }

    @Test
    void shapeIsFarBetterKnownThanBias() throws Exception {
        State s = smooth(flight(120, 0.2, 2)).at(60.1);
        assertTrue(s.shapeSigma_m().x() < 0.15, s.toString());
        assertTrue(s.biasSigma_m().x() > 0.5, s.toString());
        assertTrue(s.positionSigma_m().z() > s.positionSigma_m().x());
    }

    @Test
    void aJumpedFixIsRefusedAndSaid() throws Exception {
        Random random = new Random(3);
        LogFixture log = new LogFixture();
        for (int i = 0; i <= 300; i++) {
            double t = 0.2 * i;
            Vec3 off = i == 150 ? new Vec3(25, 0, 0) : Vec3.ZERO;
            log.fix(t, place(t).plus(noise(random, 0.2, 0.35)).plus(off))
                    .velocity(velocity(t).plus(noise(random, 0.1, 0.18)));
        }
        SmoothedTrajectory track = smooth(log);
        assertTrue(
                track.rejected().stream().anyMatch(r -> r.row() == 150),
                track.rejected()::toString);
        assertTrue(track.rejected().size() <= 3, track.rejected()::toString);
        assertTrue(track.at(30).position_m().minus(place(30)).norm() < 0.8);
    }

    /** Without velocities nothing but the fixes after it can tell. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void aJumpedFixAtTheStartIsRefusedToo(int jumped) throws Exception {
        Random random = new Random(3);
        LogFixture log = new LogFixture();
        for (int i = 0; i <= 300; i++) {
            double t = 0.2 * i;
            Vec3 off = i == jumped ? new Vec3(30, -25, 20) : Vec3.ZERO;
            log.fix(t, place(t).plus(noise(random, 0.2, 0.35)).plus(off));
        }
        SmoothedTrajectory track = smooth(log);
        assertTrue(
                track.rejected().stream().anyMatch(r -> r.row() == jumped),
                track.rejected()::toString);
        assertTrue(track.rejected().size() <= 3, track.rejected()::toString);
        for (double t = 1; t < 60; t++) {
            assertTrue(track.at(t).position_m().minus(place(t)).norm() < 3, "at " + t);
        }
    }

    @Test
    void aFiveSecondHoleIsAGapAndItsSigmaGrows() throws Exception {
        Random random = new Random(4);
        LogFixture log = new LogFixture();
        for (int i = 0; i <= 300; i++) {
            double t = 0.2 * i;
            if (t <= 30 || t >= 35) {
                log.fix(t, place(t).plus(noise(random, 0.2, 0.35)))
                        .velocity(velocity(t).plus(noise(random, 0.1, 0.18)));
            }
        }
        SmoothedTrajectory track = smooth(log);
        assertEquals(1, track.gaps().size());
        assertTrue(track.at(32.5).predicted());
        assertTrue(
                track.at(32.5).velocitySigma_mps().x() > 3 * track.at(20).velocitySigma_mps().x());
    }

    @Test
    void speedAndTrackAloneStillGiveAVerticalMotion() throws Exception {
        Random random = new Random(5);
        LogFixture log = new LogFixture();
        for (int i = 0; i <= 300; i++) {
            double t = 0.2 * i;
            Vec3 v = velocity(t);
            log.fix(t, place(t).plus(noise(random, 0.2, 0.35)))
                    .set(Channel.GROUND_SPEED, v.levelNorm())
                    .set(Channel.TRACK, Math.toDegrees(Math.atan2(v.x(), v.y())));
        }
        State s = smooth(log).at(30);
        assertEquals(-15, s.velocity_mps().z(), 0.5);
        assertTrue(s.velocitySigma_mps().z() > 1.5 * s.velocitySigma_mps().x());
    }

    @Test
    void aRowWithoutHeightStillMeasuresEastAndNorth() throws Exception {
        Random random = new Random(6);
        LogFixture log = new LogFixture();
        for (int i = 0; i <= 300; i++) {
            double t = 0.2 * i;
            Vec3 z = place(t).plus(noise(random, 0.2, 0.35));
            if (i % 3 == 1) {
                log.fixWithoutHeight(t, z);
            } else {
                log.fix(t, z);
            }
        }
        SmoothedTrajectory track = smooth(log);
        assertEquals(301, track.fixCount());
        assertTrue(track.at(30).position_m().minus(place(30)).norm() < 1.0);
    }

    @Test
    void aLogOfOneFixCannotBeUsed() {
        LogFixture log = new LogFixture().fix(0, Vec3.ZERO);
        assertThrows(UnusableInputException.class, () -> smooth(log));
    }

    @Test
    void velocitiesThatLagPositionsMoveNeitherPlaceNorVelocity() throws Exception {
        double lag_s = 0.25;
        Random random = new Random(8);
        LogFixture log = new LogFixture().latency(-lag_s, 0.002);
        for (double t = 0; t <= 120; t += 0.2) {
            log.fix(t, place(t).plus(noise(random, 0.2, 0.35)))
                    .velocity(velocity(t - lag_s).plus(noise(random, 0.1, 0.18)));
        }
        SmoothedTrajectory track = smooth(log);
        double alongside_m = 0;
        int n = 0;
        for (double t = 10; t < 110; t += 0.5) {
            State s = track.at(t);
            Vec3 ahead = velocity(t).unit();
            alongside_m += s.position_m().minus(place(t)).dot(ahead);
            n++;
            assertTrue(s.velocity_mps().minus(velocity(t)).norm() < 0.4, "at " + t);
        }
        // The slow bias has a mean of its own; the lag alone would be 11 m.
        assertEquals(0, alongside_m / n, 1);
    }

    @Test
    void readAndAtAgree() throws Exception {
        SmoothedTrajectory track = smooth(flight(20, 0.2, 7));
        double[] values = new double[Trajectory.VALUES];
        track.read(11.13, values);
        State s = track.at(11.13);
        assertEquals(values[1], s.position_m().y());
        assertEquals(values[5], s.velocity_mps().z());
        assertEquals(values[6], s.acceleration_mps2().x());
        assertThrows(IllegalArgumentException.class, () -> track.at(20.5));
    }
}
