package pairdown.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.AirSettings;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.geodesy.Geoid;
import pairdown.motion.LogFixture;
import pairdown.pair.KnownMotion;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.vector.Vec3;

class DayAirTest {
    private static final Atmosphere TRUTH = new Atmosphere(1021.7, 8.5);
    private static final double CLIMB_MPS = 5;

    private static double msl_m(double t_s) {
        double latitude_deg = LogFixture.FRAME.origin().latitude_deg();
        double longitude_deg = LogFixture.FRAME.origin().longitude_deg();
        return LogFixture.FRAME.origin().height_m()
                + CLIMB_MPS * t_s
                - Geoid.egm96().undulation_m(latitude_deg, longitude_deg);
    }

    private static Series logged(int seconds, Logged what) {
        double[] t_s = new double[seconds];
        float[] v = new float[seconds];
        for (int i = 0; i < seconds; i++) {
            t_s[i] = i;
            v[i] = (float) what.at(msl_m(i));
        }
        return Series.of(t_s, v, false);
    }

    private interface Logged {
        double at(double msl_m);
    }

    private static WindSource climbing(Map<Channel, Series> systems, double climb_mps) {
        Participant ship =
                new Participant(
                        "ship",
                        Role.JUMPSHIP,
                        List.of(),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty());
        KnownMotion motion = KnownMotion.straight(200, Vec3.ZERO, new Vec3(0, 0, climb_mps));
        return new WindSource(ship, motion, List.of(), systems);
    }

    private static DayAir found(AirSettings typed, WindSource... sources) {
        return DayAir.find(typed, LogFixture.FRAME, List.of(sources));
    }

    @Test
    void staticPressureAndTemperatureOfALogGiveTheDay() {
        WindSource ship =
                climbing(
                        Map.of(
                                Channel.STATIC_PRESSURE, logged(200, TRUTH::pressure_hPa),
                                Channel.OUTSIDE_AIR_TEMPERATURE, logged(200, TRUTH::temperature_C)),
                        CLIMB_MPS);
        DayAir air = found(AirSettings.NONE, ship);
        assertEquals(TRUTH.qnh_hPa(), air.atmosphere().qnh_hPa(), 0.1);
        assertEquals(8.5, air.atmosphere().temperatureDeviation_C(), 0.05);
        assertTrue(air.notes().stream().allMatch(n -> n.contains("ship")), air.notes()::toString);
    }

    @Test
    void pressureAltitudeServesWhereNoStaticPressureWasLogged() {
        WindSource ship =
                climbing(
                        Map.of(
                                Channel.PRESSURE_ALTITUDE,
                                logged(
                                        200,
                                        h -> Atmosphere.pressureAltitude_m(TRUTH.pressure_hPa(h)))),
                        CLIMB_MPS);
        AirSettings typed =
                new AirSettings(OptionalDouble.empty(), OptionalDouble.of(8.5), List.of());
        assertEquals(TRUTH.qnh_hPa(), found(typed, ship).atmosphere().qnh_hPa(), 0.1);
    }

    @Test
    void whatWasTypedOutranksALog() {
        WindSource ship =
                climbing(
                        Map.of(Channel.STATIC_PRESSURE, logged(200, TRUTH::pressure_hPa)),
                        CLIMB_MPS);
        AirSettings typed =
                new AirSettings(OptionalDouble.of(1002), OptionalDouble.of(-4), List.of());
        assertEquals(new Atmosphere(1002, -4), found(typed, ship).atmosphere());
    }

    @Test
    void pressureOfASteepDescentIsNotTrusted() {
        WindSource ship =
                climbing(Map.of(Channel.STATIC_PRESSURE, logged(60, TRUTH::pressure_hPa)), 17.8);
        DayAir air = found(AirSettings.NONE, ship);
        assertEquals(Atmosphere.STANDARD, air.atmosphere());
        assertTrue(air.notes().contains("no QNH known: the standard 1013.25 hPa is used"));
    }

    @Test
    void anImpossiblePressureIsPassedOver() {
        WindSource broken =
                climbing(Map.of(Channel.STATIC_PRESSURE, logged(200, h -> 300)), CLIMB_MPS);
        assertEquals(Atmosphere.STANDARD, found(AirSettings.NONE, broken).atmosphere());
    }

    @Test
    void airspeedsConvertThereAndBack() {
        DayAir air = new DayAir(TRUTH, 30, List.of());
        double true_mps = air.true_mps(38, 3100);
        assertEquals(38, air.calibrated_mps(true_mps, 3100), 1e-9);
        // At low speed TAS/CAS is near the square root of the density ratio.
        assertEquals(
                Math.sqrt(
                        Atmosphere.SEA_LEVEL_DENSITY_KGPM3
                                / Atmosphere.densityOf_kgpm3(
                                        air.pressure_hPa(3100), air.temperature_C(3100))),
                true_mps / 38,
                2e-3);
    }
}
