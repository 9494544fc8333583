package pairdown.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairdown.motion.Attitude;
import pairdown.motion.JerkProfile;
import pairdown.motion.LogFixture;
import pairdown.motion.Smoother;
import pairdown.motion.SmootherSettings;
import pairdown.motion.Trajectory;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.units.Unit;
import pairdown.vector.Vec3;

class AttitudeFinderTest {
    private static Trajectory straight(Vec3 v) throws Exception {
        LogFixture log = new LogFixture();
        for (int i = 0; i <= 100; i++) {
            log.fix(0.2 * i, v.times(0.2 * i)).velocity(v);
        }
        return Smoother.smooth(
                log.build(),
                LogFixture.FRAME,
                SmootherSettings.DEFAULT.withoutTuning(),
                JerkProfile.constant(1));
    }

    private static Vec3 toward(double deg, double speed_mps) {
        double rad = Math.toRadians(deg);
        return new Vec3(Math.sin(rad), Math.cos(rad), 0).times(speed_mps);
    }

    private static Wind from(double from_deg, double speed_mps) {
        Vec3 w = toward(from_deg + 180, speed_mps);
        return new Wind(
                "winds-aloft", List.of(new Wind.Layer(0, 5000, w.x(), w.y(), 1)), List.of());
    }

    /**
     * Wind triangles, track and ground speed given, heading asked: ATPL general-navigation question
     * (TH 254, TAS 163, wind 130/30, track 262, GS 182); PPL worked examples 2 and 3 (TT 270, wind
     * 180/30, WCA 14.5 left, GS 116; TT 045, wind 090/25, WCA 9.3 right, GS 91); a flight-computer
     * help page (course 000, wind 270/10, heading 354, GS 89.4). Published to a degree and a knot.
     * A US wartime computer manual, example 16, as transcribed by the Smithsonian (TH 104, track
     * 94, GS 146: wind 154/33 exactly, printed as 34); CNATRA P-203, figure 4.6-2 (TH 52, track 45,
     * GS 220: wind 092.3/41.5 computed); FAA Pilot's Handbook, wind-triangle example, from memory
     * and recomputed (course 090, wind 045/40, GS 88, WCA 13.6 left).
     */
    @ParameterizedTest
    @CsvSource({
        "261.877, 181.488, 130, 30, 254",
        "270, 116.190, 180, 30, 255.5",
        "45, 90.893, 90, 25, 54.3",
        "0, 89.443, 270, 10, 353.6",
        "94, 146, 154.07, 33.06, 104",
        "45, 220, 92.278, 41.472, 52",
        "90, 88.34, 45, 40, 76.37"
    })
    void theHeadingSolvesTheWindTriangle(
            double track, double groundSpeed_kt, double windFrom, double wind_kt, double heading)
            throws Exception {
        Trajectory t = straight(toward(track, Unit.KNOT.toBase(groundSpeed_kt)));
        AttitudeFinder finder =
                new AttitudeFinder(
                        t, Map.of(), from(windFrom, Unit.KNOT.toBase(wind_kt)), LogFixture.FRAME);
        Attitude a = finder.at(10).orElseThrow();
        assertEquals(0, Math.IEEEremainder(heading - a.heading_deg(), 360), 0.6);
        assertEquals(Attitude.Source.AIR_MOTION, a.source());
        assertEquals(0, a.roll_deg(), 0.3);
    }

    @Test
    void withNoWindItIsTheGroundTrack() throws Exception {
        AttitudeFinder finder =
                new AttitudeFinder(
                        straight(new Vec3(30, 0, -15)),
                        Map.of(),
                        Wind.none(List.of()),
                        LogFixture.FRAME);
        Attitude a = finder.at(10).orElseThrow();
        assertEquals(90, a.heading_deg(), 0.1);
        assertEquals(-26.6, a.pitch_deg(), 0.3);
        assertEquals(Attitude.Source.GROUND_TRACK, a.source());
    }

    @Test
    void aLoggedAttitudeIsTakenAsItIs() throws Exception {
        double[] time = {0, 1};
        Map<Channel, Series> systems =
                Map.of(
                        Channel.HEADING, Series.of(time, new float[] {359, 1}, true),
                        Channel.PITCH, Series.of(time, new float[] {4, 4}, false),
                        Channel.ROLL, Series.of(time, new float[] {-10, -10}, false));
        Attitude a =
                new AttitudeFinder(
                                straight(new Vec3(30, 0, 0)),
                                systems,
                                Wind.none(List.of()),
                                LogFixture.FRAME)
                        .at(0.5)
                        .orElseThrow();
        assertEquals(0, Math.IEEEremainder(a.heading_deg(), 360), 1e-4);
        assertEquals(-10, a.roll_deg());
        assertEquals(Attitude.Source.LOGGED, a.source());
    }
}
