package pairdown.demo.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.Role;
import pairdown.demo.truth.TrueAir;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.vector.Vec3;

/** A recorder on a body whose readings step from one level to another after 60 s. */
class RecorderTest {
    private static final double STEP_S = 0.02;
    private static final double STEP_AT_S = 60;
    private static final int ROWS = 6001;

    private static Truth truth(Map<Channel, double[]> levels) {
        Vec3[] still = new Vec3[ROWS];
        java.util.Arrays.fill(still, Vec3.ZERO);
        Map<Channel, double[]> systems = new java.util.EnumMap<>(Channel.class);
        levels.forEach(
                (channel, two) ->
                        systems.put(
                                channel,
                                IntStream.range(0, ROWS)
                                        .mapToDouble(i -> i * STEP_S < STEP_AT_S ? two[0] : two[1])
                                        .toArray()));
        TrueBody lead =
                new TrueBody(
                        "lead",
                        Role.LEAD,
                        new TrueMotion(0, STEP_S, still, still),
                        systems,
                        1650,
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        return new Truth(
                Instant.parse("2031-05-14T15:00:00Z"),
                LocalFrame.at(Geodetic.ofDegrees(-30, 127, 0)),
                new TrueAir(Atmosphere.STANDARD, -19, h -> Vec3.ZERO),
                List.of(lead),
                List.of(),
                List.of(),
                List.of());
    }

    private static Track log(Truth truth, RecorderPlan plan) {
        return Logging.of(truth, List.of(plan), Map.of(), 3).get(0).track();
    }

    private static RecorderPlan plan() {
        return RecorderPlan.of("lead", "systems.csv").zero(0).rate(20);
    }

    @Test
    void pressureStepsShowAsAFirstOrderLag() {
        Truth truth = truth(Map.of(Channel.PRESSURE_ALTITUDE, new double[] {1000, 1200}));
        Track track = log(truth, plan().pressureLag(0.5));
        for (double after_s : new double[] {0.25, 0.5, 1, 2}) {
            double mean = 0;
            int n = 0;
            for (int i = 0; i < track.size(); i++) {
                double true_s = track.time_s(i) * (1 + 30e-6);
                if (Math.abs(true_s - STEP_AT_S - after_s) < 0.06) {
                    mean += track.value(Channel.PRESSURE_ALTITUDE, i);
                    n++;
                }
            }
            // 1 − exp(−t/τ) of the step; noise of 0.5 m and the mean over a tenth of a second.
            assertEquals(1000 + 200 * (1 - Math.exp(-after_s / 0.5)), mean / n, 5, after_s + " s");
        }
    }

    @Test
    void otherReadingsAreNotLate() {
        Truth truth = truth(Map.of(Channel.PITCH, new double[] {-5, 12}));
        Track track = log(truth, plan());
        int row = track.rowAtOrBefore(STEP_AT_S / (1 + 30e-6));
        assertEquals(-5, track.value(Channel.PITCH, row - 1), 1);
        assertEquals(12, track.value(Channel.PITCH, row + 1), 1);
    }

    @Test
    void itsClockIsSlowByItsRate() {
        Track track = log(truth(Map.of(Channel.PITCH, new double[] {0, 0})), plan().rate(1));
        // 120 true seconds are 119.9964 of a clock 30 ppm slow: the row at 120 is not reached.
        assertEquals(119, track.time_s(track.size() - 1));
    }

    @Test
    void aClockSetByHandTellsAbsoluteTimes() {
        Truth truth = truth(Map.of(Channel.PITCH, new double[] {0, 0}));
        Track track = log(truth, plan().clockOff(4.3));
        // UTC = logged + 4.3 s at the recorder's zero.
        assertEquals(Instant.parse("2031-05-14T14:59:55.700Z"), track.epoch().orElseThrow());
    }

    @ParameterizedTest
    @EnumSource(
            value = Channel.class,
            names = {
                "PRESSURE_ALTITUDE",
                "PITCH",
                "ROLL_RATE",
                "NORMAL_LOAD",
                "ELEVATOR",
                "TORQUE"
            })
    void readingsHaveTheirNoiseAndTheirSteps(Channel channel) {
        Instrument instrument = Instrument.of(channel);
        Draws draws = Draws.of(1, channel.key());
        double squares = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double read = instrument.read(3.21, draws);
            double steps = read / instrument.step();
            assertEquals(Math.rint(steps), steps, 1e-6, channel.key());
            squares += (read - 3.21) * (read - 3.21);
        }
        // Rounding adds step²/12.
        double expected = Math.sqrt(square(instrument.noise()) + square(instrument.step()) / 12);
        assertEquals(expected, Math.sqrt(squares / n), 0.04 * expected, channel.key());
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void aHeadingStaysWithinTheFullTurn() {
        Truth truth = truth(Map.of(Channel.HEADING, new double[] {359.9, 0.1}));
        Track track = log(truth, plan());
        for (int i = 0; i < track.size(); i++) {
            double heading_deg = track.value(Channel.HEADING, i);
            assertTrue(heading_deg >= 0 && heading_deg < 360, heading_deg + "°");
        }
    }

    @Test
    void aBodyWithoutSystemsCannotBeRecorded() {
        Truth truth = truth(Map.of());
        assertThrows(IllegalArgumentException.class, () -> log(truth, plan()));
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        log(
                                truth(Map.of(Channel.PITCH, new double[] {0, 0})),
                                plan().channels(Set.of(Channel.ROLL))));
    }
}
