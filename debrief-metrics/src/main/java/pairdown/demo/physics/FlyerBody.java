package pairdown.demo.physics;

import org.hipparchus.util.FastMath;
import pairdown.atmosphere.Atmosphere;
import pairdown.vector.Vec3;

/**
 * A flyer as a point mass under lift q·CLS and drag q·CDS, CDS = D₀ + 0.21·CLS² (m²), the lift
 * turned about the motion through the air by the bank. D₀ is 0.15 with a clean pose to 0.50 fully
 * braked, CLS up to 1.7 at the stall. The pose follows the pilot at 0.4 of its range a second.
 * Coefficients: common practice, no published source.
 */
final class FlyerBody {
    static final double INDUCED_PERM2 = 0.21;
    static final double CLEAN_M2 = 0.15;
    static final double BRAKED_M2 = 0.50;
    static final double STALL_M2 = 1.7;
    static final double SMALL_LIFT_M2 = 0.15;
    static final double SMALL_DRAG_M2 = 0.55;

    /** Lift and drag area of the open canopy: 12 m/s at a glide of two for 95 kg. */
    private static final double CANOPY_LIFT_M2 = 9.7;

    private static final double CANOPY_DRAG_M2 = 4.6;
    private static final double POSE_PERS = 0.4;
    private static final double BANK_RADPS = 1.2;
    private static final double MOST_BANK_RAD = 1.05;

    final double mass_kg;
    Vec3 place_m;
    Vec3 velocity_mps;
    Vec3 airVelocity_mps = Vec3.ZERO;

    /** Acceleration less gravity (m/s², east, north, up). */
    Vec3 felt_mps2 = new Vec3(0, 0, Atmosphere.GRAVITY_MPS2);

    double lift_m2 = SMALL_LIFT_M2;
    double plainDrag_m2 = SMALL_DRAG_M2 - INDUCED_PERM2 * SMALL_LIFT_M2 * SMALL_LIFT_M2;
    double bank_rad;

    /** How far the canopy is open, 0 to 1. */
    double canopy;

    /** Pulled toggles: more of both forces. */
    double flare;

    private Vec3 right = new Vec3(1, 0, 0);
    private Vec3 along = new Vec3(0, 1, 0);
    private double dynamicPressure_Pa;

    FlyerBody(double mass_kg, Vec3 place_m, Vec3 velocity_mps, Vec3 right) {
        this.mass_kg = mass_kg;
        this.place_m = place_m;
        this.velocity_mps = velocity_mps;
        this.right = right;
    }

    /** Looks at the air: to be called before a pose is taken and a step made. */
    void feel(Vec3 wind_mps, double density_kgpm3) {
        airVelocity_mps = velocity_mps.minus(wind_mps);
        double speed_mps = airVelocity_mps.norm();
        along = speed_mps > 0.5 ? airVelocity_mps.times(1 / speed_mps) : new Vec3(0, 0, -1);
        dynamicPressure_Pa = 0.5 * density_kgpm3 * speed_mps * speed_mps;
        Vec3 level = new Vec3(airVelocity_mps.x(), airVelocity_mps.y(), 0);
        if (level.normSquared() > 16) {
            Vec3 ahead = level.unit();
            right = new Vec3(ahead.y(), -ahead.x(), 0);
        }
    }

    /** Direction of the lift without bank. */
    private Vec3 up() {
        return right.cross(along).unit();
    }

    /**
     * Takes the pose that gives an acceleration, as far as pose and its rate reach.
     *
     * @param share how much of the pilot's command counts against the pose the suit is opening to
     * @param opening_m2 lift and plain drag of that pose
     */
    void pose(Vec3 wanted_mps2, double share, double[] opening_m2, double dt_s) {
        Vec3 need = wanted_mps2.plus(new Vec3(0, 0, Atmosphere.GRAVITY_MPS2));
        double area = mass_kg / Math.max(40, dynamicPressure_Pa);
        double drag_m2 = -need.dot(along) * area;
        Vec3 across = need.plus(along.times(drag_m2 / area));
        double up_m2 = across.dot(up()) * area;
        double side_m2 = across.dot(right) * area;
        double lift = Math.min(STALL_M2 - 0.1, Math.hypot(up_m2, side_m2));
        lift = Math.max(0.1, lift);
        double plain = drag_m2 - INDUCED_PERM2 * lift * lift;
        plain = Math.max(CLEAN_M2, Math.min(BRAKED_M2, plain));
        double bank = FastMath.atan2(side_m2, Math.max(0.2, up_m2));
        bank = share * LeadPilot.bounded(bank, -MOST_BANK_RAD, MOST_BANK_RAD);
        take(
                share * lift + (1 - share) * opening_m2[0],
                share * plain + (1 - share) * opening_m2[1],
                bank,
                share < 1 ? 4 : 1,
                dt_s);
    }

    /** Moves the pose toward one, {@code pace} times as fast as a careful pilot would. */
    void take(double lift, double plain, double bank, double pace, double dt_s) {
        double liftStep = pace * POSE_PERS * (STALL_M2 - SMALL_LIFT_M2) * dt_s;
        double dragStep = pace * POSE_PERS * (BRAKED_M2 - CLEAN_M2) * dt_s;
        double bankStep = BANK_RADPS * dt_s;
        lift_m2 += LeadPilot.bounded(lift - lift_m2, -liftStep, liftStep);
        plainDrag_m2 += LeadPilot.bounded(plain - plainDrag_m2, -dragStep, dragStep);
        bank_rad += LeadPilot.bounded(bank - bank_rad, -bankStep, bankStep);
    }

    /**
     * One step in the air.
     *
     * @param push_N from outside (east, north, up)
     * @param roll_rad lift turned by uneven air, right positive
     */
    void step(Vec3 push_N, double roll_rad, double dt_s) {
        double lift = lift_m2 * (1 - canopy) + CANOPY_LIFT_M2 * canopy * (1 + 0.5 * flare);
        double drag =
                (plainDrag_m2 + INDUCED_PERM2 * lift_m2 * lift_m2)
                        + CANOPY_DRAG_M2 * canopy * (1 + 0.9 * flare)
                        + 3 * canopy * (1 - canopy);
        double turned = bank_rad + roll_rad;
        Vec3 lifting = up().times(FastMath.cos(turned)).plus(right.times(FastMath.sin(turned)));
        Vec3 force_N =
                lifting.times(dynamicPressure_Pa * lift)
                        .plus(along.times(-dynamicPressure_Pa * drag))
                        .plus(push_N);
        felt_mps2 = force_N.times(1 / mass_kg);
        Vec3 acceleration = felt_mps2.plus(new Vec3(0, 0, -Atmosphere.GRAVITY_MPS2));
        velocity_mps = velocity_mps.plus(acceleration.times(dt_s));
        place_m = place_m.plus(velocity_mps.times(dt_s));
    }

    /** What a logger on the body feels: along the motion, to the right, away from the belly (g). */
    Vec3 load_g() {
        Vec3 up = up();
        Vec3 roof = up.times(FastMath.cos(bank_rad)).plus(right.times(FastMath.sin(bank_rad)));
        Vec3 side = along.cross(roof);
        return new Vec3(felt_mps2.dot(along), felt_mps2.dot(side), felt_mps2.dot(roof))
                .times(1 / Atmosphere.GRAVITY_MPS2);
    }

    double dynamicPressure_Pa() {
        return dynamicPressure_Pa;
    }
}
