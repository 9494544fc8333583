package pairdown.demo.receiver;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.Role;
import pairdown.demo.truth.TrueAir;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.geodesy.LocalFrame;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/** Circles and climbs in place of flights: a lead, a jump ship and a flyer who leaves it. */
public final class MadeTruth {
    public static final double END_S = 400;
    public static final double EXIT_S = 250;
    private static final double STEP_S = 0.05;
    private static final double TURN_RADPS = Math.toRadians(4);
    private static final Geodetic FIELD = Geodetic.ofDegrees(-30.62, 127.44, 150);

    private MadeTruth() {}

    public static Truth of() {
        LocalFrame frame = LocalFrame.at(FIELD);
        double undulation_m =
                Geoid.egm96().undulation_m(FIELD.latitude_deg(), FIELD.longitude_deg());
        TrueAir air = new TrueAir(new Atmosphere(1018, 6), undulation_m, h -> Vec3.ZERO);
        return new Truth(
                Instant.parse("2031-05-14T15:00:00Z"),
                frame,
                air,
                List.of(
                        aircraft("lead", Role.LEAD, 1600),
                        aircraft("ship", Role.JUMPSHIP, 0),
                        flyer()),
                List.of(),
                List.of(),
                List.of());
    }

    /** Climbing circles of 45 m/s at 4 °/s. */
    private static Vec3 circle(double t_s, double east_m) {
        double radius_m = 45 / TURN_RADPS;
        return new Vec3(
                east_m - radius_m * Math.cos(TURN_RADPS * t_s),
                radius_m * Math.sin(TURN_RADPS * t_s),
                300 + 5 * t_s);
    }

    private static TrueBody aircraft(String id, Role role, double east_m) {
        TrueMotion motion = motion(t -> circle(t, east_m));
        Map<Channel, double[]> systems = new EnumMap<>(Channel.class);
        for (Channel c :
                List.of(
                        Channel.HEADING,
                        Channel.PITCH,
                        Channel.ROLL,
                        Channel.YAW_RATE,
                        Channel.PRESSURE_ALTITUDE,
                        Channel.INDICATED_AIRSPEED)) {
            systems.put(c, new double[motion.size()]);
        }
        for (int i = 0; i < motion.size(); i++) {
            double t_s = motion.time_s(i);
            rows(systems, Channel.HEADING)[i] = Math.toDegrees(TURN_RADPS * t_s) % 360;
            rows(systems, Channel.PITCH)[i] = 3;
            rows(systems, Channel.ROLL)[i] = 15;
            rows(systems, Channel.YAW_RATE)[i] = 4;
            rows(systems, Channel.PRESSURE_ALTITUDE)[i] = 400 + 5 * t_s;
            rows(systems, Channel.INDICATED_AIRSPEED)[i] = 42;
        }
        return new TrueBody(
                id, role, motion, systems, 1650, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static double[] rows(Map<Channel, double[]> systems, Channel channel) {
        return systems.getOrDefault(channel, new double[0]);
    }

    private static TrueBody flyer() {
        Vec3 exit_m = circle(EXIT_S, 0);
        DoubleFunction<Vec3> place =
                t_s ->
                        t_s < EXIT_S
                                ? circle(t_s, 0)
                                : exit_m.plus(new Vec3(33, 0, -17.8).times(t_s - EXIT_S));
        return new TrueBody(
                "blue",
                Role.FLYER,
                motion(place),
                Map.of(),
                95,
                OptionalDouble.of(EXIT_S),
                OptionalDouble.of(END_S - 20));
    }

    private static TrueMotion motion(DoubleFunction<Vec3> place_m) {
        int n = (int) (END_S / STEP_S) + 1;
        Vec3[] p = new Vec3[n];
        Vec3[] v = new Vec3[n];
        for (int i = 0; i < n; i++) {
            double t_s = i * STEP_S;
            p[i] = place_m.apply(t_s);
            v[i] = place_m.apply(t_s + 1e-3).minus(place_m.apply(t_s - 1e-3)).times(500);
        }
        return new TrueMotion(0, STEP_S, p, v);
    }
}
