package pairdown.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairdown.format.LogFiles;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.stats.Robust;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.vector.Vec3;

/**
 * Two real receivers at fixed points (GEONET 0759 and 3040, observations by the Geographical Survey
 * Institute of Japan, from the RINEX files in RTKLIB 2.4.3's source, BSD-2-Clause; solved by
 * RTKLIB, single point). Truth from RTKLIB's carrier-phase fixed baseline, good to 0.02 m; expected
 * figures from an independent computation over the same files, in an exact east-north-up frame.
 */
class TwoReceiversTest {
    private static final Vec3 TRUTH_M = new Vec3(-953.336, 3196.237, -6.401);
    private static final double STEP_S = 30;
    private static final double TOLERANCE_M = 0.005;

    private static Vec3[] error_m = {};
    private static double[] separation_m = {};

    @BeforeAll
    static void readBoth() throws Exception {
        Track trackA = read("pair-a.nmea");
        Track trackB = read("pair-b.nmea");
        LocalFrame frame = LocalFrame.at(place(trackB, 0));
        Vec3[] a = places(trackA, frame);
        Vec3[] b = places(trackB, frame);
        RelativeTrack track = new TrajectoryDifference(member("b", b), member("a", a), frame);
        error_m = new Vec3[a.length];
        separation_m = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            Vec3 offset_m = track.at(i * STEP_S).offset_m();
            error_m[i] = offset_m.minus(TRUTH_M);
            separation_m[i] = offset_m.norm();
        }
    }

    private static Track read(String name) throws Exception {
        Path file = Path.of(TwoReceiversTest.class.getResource(name).toURI());
        return LogFiles.read(file, Optional.empty());
    }

    private static Geodetic place(Track track, int row) {
        return new Geodetic(
                track.value(Channel.LATITUDE, row),
                track.value(Channel.LONGITUDE, row),
                track.value(Channel.HEIGHT, row) + track.value(Channel.GEOID_SEPARATION, row));
    }

    private static Vec3[] places(Track track, LocalFrame frame) {
        Vec3[] places = new Vec3[track.size()];
        for (int i = 0; i < places.length; i++) {
            places[i] = frame.toEnu(place(track, i));
        }
        return places;
    }

    private static PairMember member(String id, Vec3[] places) {
        return Scene.member(
                id,
                KnownMotion.of(
                        (places.length - 1) * STEP_S,
                        1 / STEP_S,
                        t_s -> places[(int) Math.round(t_s / STEP_S)]));
    }

    private static double[] axis(ToDoubleFunction<Vec3> component) {
        return Arrays.stream(error_m).mapToDouble(component).toArray();
    }

    private static void assertAxes(double[] expected, ToDoubleFunction<double[]> of) {
        assertEquals(expected[0], of.applyAsDouble(axis(Vec3::x)), TOLERANCE_M, "east");
        assertEquals(expected[1], of.applyAsDouble(axis(Vec3::y)), TOLERANCE_M, "north");
        assertEquals(expected[2], of.applyAsDouble(axis(Vec3::z)), TOLERANCE_M, "up");
    }

    @Test
    void eachHasAHundredAndFifteenFixes() {
        assertEquals(115, error_m.length);
    }

    @Test
    void theirOffsetIsOffTheTruthByDecimetres() {
        assertAxes(new double[] {-0.089, 0.115, 0.140}, StatUtils::mean);
        assertAxes(new double[] {-0.094, 0.149, 0.160}, v -> StatUtils.percentile(v, 50));
    }

    @Test
    void itScattersLessThanEitherAlone() {
        assertAxes(new double[] {0.213, 0.297, 0.588}, v -> Math.sqrt(StatUtils.variance(v)));
    }

    @Test
    void aFewWildFixesDoNotMoveItsSpread() {
        assertAxes(new double[] {0.225, 0.288, 0.596}, v -> Robust.sigma(v).orElseThrow());
    }

    @Test
    void itsWorstIsUnderTwoMetres() {
        assertAxes(
                new double[] {0.54, 0.88, 1.54},
                v -> Arrays.stream(v).map(Math::abs).max().orElseThrow());
    }

    @Test
    void theirSeparationIsTheBaseline() {
        assertEquals(3335.524, StatUtils.mean(separation_m), TOLERANCE_M);
        assertEquals(0.285, Math.sqrt(StatUtils.variance(separation_m)), TOLERANCE_M);
    }
}
