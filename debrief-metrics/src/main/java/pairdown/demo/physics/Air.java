package pairdown.demo.physics;

import java.util.Random;
import org.hipparchus.util.FastMath;
import pairdown.air.Airspeed;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.AirspeedKind;
import pairdown.demo.truth.TrueAir;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.vector.Vec3;

/** The day's air over the field: density, mean wind and gusts by place. */
final class Air {
    /** Mean radius of the Earth (m), for the fall of the ground away from the field's plane. */
    private static final double EARTH_M = 6_371_000;

    private static final double STEP_M = 10;
    private static final double BOTTOM_M = -300;
    private static final int ROWS = 800;

    /** Waves are carried along with the wind of this height above the field (m). */
    private static final double CARRIED_M = 2500;

    private final AirPlan plan;
    private final Atmosphere atmosphere;
    private final double undulation_m;
    private final double field_m;
    private final GustField gusts;
    private final double[] pressure_hPa = new double[ROWS];
    private final double[] temperature_C = new double[ROWS];
    private final double[] density_kgpm3 = new double[ROWS];
    private final Vec3[] wind_mps = new Vec3[ROWS];

    Air(AirPlan plan, Geodetic field, Random random) {
        this.plan = plan;
        this.atmosphere = new Atmosphere(plan.qnh_hPa(), plan.temperatureDeviation_C());
        this.undulation_m = Geoid.egm96().undulation_m(field.latitude_deg(), field.longitude_deg());
        this.field_m = field.height_m() - undulation_m;
        this.gusts = new GustField(random);
        for (int i = 0; i < ROWS; i++) {
            double h_m = BOTTOM_M + i * STEP_M;
            pressure_hPa[i] = (float) atmosphere.pressure_hPa(h_m);
            temperature_C[i] = (float) atmosphere.temperature_C(h_m);
            density_kgpm3[i] = (float) atmosphere.density_kgpm3(h_m);
            wind_mps[i] = planned_mps(h_m);
        }
    }

    /** The field's height above mean sea level (m). */
    double field_m() {
        return field_m;
    }

    /** Height above the ground of a place in the field's frame (m). */
    double aboveGround_m(Vec3 place_m) {
        return place_m.z()
                + (place_m.x() * place_m.x() + place_m.y() * place_m.y()) / (2 * EARTH_M);
    }

    /** Height above mean sea level (m). */
    double height_m(Vec3 place_m) {
        return aboveGround_m(place_m) + field_m;
    }

    double pressure_hPa(double height_m) {
        return look(pressure_hPa, height_m);
    }

    double temperature_C(double height_m) {
        return look(temperature_C, height_m);
    }

    double density_kgpm3(double height_m) {
        return look(density_kgpm3, height_m);
    }

    private static double look(double[] table, double height_m) {
        double x = (height_m - BOTTOM_M) / STEP_M;
        int i = Math.max(0, Math.min(ROWS - 2, (int) Math.floor(x)));
        return table[i] + (table[i + 1] - table[i]) * (x - i);
    }

    /** True airspeed that shows as this airspeed (m/s). */
    double true_mps(AirspeedKind kind, double airspeed_mps, double height_m) {
        return kind == AirspeedKind.TRUE
                ? airspeed_mps
                : (float)
                        Airspeed.true_mps(
                                airspeed_mps, pressure_hPa(height_m), temperature_C(height_m));
    }

    double calibrated_mps(double true_mps, double height_m) {
        return (float)
                Airspeed.calibrated_mps(true_mps, pressure_hPa(height_m), temperature_C(height_m));
    }

    /** Mean wind, the way it blows (m/s). */
    Vec3 meanWind_mps(double height_m) {
        double x = (height_m - BOTTOM_M) / STEP_M;
        int i = Math.max(0, Math.min(ROWS - 2, (int) Math.floor(x)));
        double u = Math.max(0, Math.min(1, x - i));
        return wind_mps[i].times(1 - u).plus(wind_mps[i + 1].times(u));
    }

    private Vec3 planned_mps(double height_m) {
        double up = Math.max(0, Math.min(1, (height_m - field_m) / AirPlan.TOP_M));
        double toward_rad = FastMath.toRadians(plan.from_deg() + 180 + up * plan.veer_deg());
        double speed_mps = plan.field_mps() + up * (plan.aloft_mps() - plan.field_mps());
        return new Vec3(
                speed_mps * FastMath.sin(toward_rad), speed_mps * FastMath.cos(toward_rad), 0);
    }

    /** The gust at a place and time (m/s), fading out over the last 60 m above the ground. */
    Vec3 gust_mps(Vec3 place_m, double time_s) {
        double rms_mps = plan.gusts().rms_mps(height_m(place_m));
        if (rms_mps == 0) {
            return Vec3.ZERO;
        }
        double near = Math.max(0, Math.min(1, aboveGround_m(place_m) / 60));
        Vec3 carried_m = meanWind_mps(field_m + CARRIED_M).times(time_s);
        return gusts.at(place_m.minus(carried_m)).times(rms_mps * near);
    }

    TrueAir truth() {
        return new TrueAir(atmosphere, undulation_m, this::meanWind_mps);
    }
}
