package pairdown.demo.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.attempt.Role;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.TrueTail;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/** Writes down the lead, a row a step. */
final class LeadLog {
    private final LeadFlight flight;
    private final Air air;
    private final List<Vec3> place_m = new ArrayList<>();
    private final List<Vec3> velocity_mps = new ArrayList<>();
    private final Columns columns = new Columns();
    private final Column coefficient = new Column();
    private final Column elevator = new Column();
    private final Column rudder = new Column();
    private final Column diving = new Column();

    LeadLog(LeadFlight flight, Air air) {
        this.flight = flight;
        this.air = air;
    }

    void row() {
        Airframe b = flight.body();
        place_m.add(b.place_m);
        velocity_mps.add(b.velocity_mps);
        air(b);
        attitude(b);
        controls(b);
        coefficient.add(b.tail.coefficient());
        elevator.add(b.tail.elevator());
        rudder.add(b.tail.rudder());
        diving.add(flight.guide().stage() == LeadGuide.Stage.DIVE ? 1 : 0);
    }

    private void air(Airframe b) {
        double true_mps = flight.guide().isOnGround() ? flight.pitot_mps() : b.airspeed_mps;
        columns.putAir(air, air.height_m(b.place_m), true_mps);
    }

    private void attitude(Airframe b) {
        columns.putHeading(b.heading_rad);
        columns.put(Channel.PITCH, Math.toDegrees(b.pitch_rad));
        columns.put(Channel.ROLL, Math.toDegrees(b.roll_rad));
        columns.put(Channel.PITCH_RATE, Math.toDegrees(b.pitchRate_radps));
        columns.put(Channel.ROLL_RATE, Math.toDegrees(b.rollRate_radps));
        columns.put(Channel.YAW_RATE, Math.toDegrees(b.yawRate_radps));
        columns.put(Channel.LONGITUDINAL_LOAD, b.load_g.x());
        columns.put(Channel.LATERAL_LOAD, b.load_g.y());
        columns.put(Channel.NORMAL_LOAD, b.load_g.z());
    }

    private void controls(Airframe b) {
        Controls c = flight.controls();
        columns.put(Channel.POWER_LEVER, 100 * c.lever());
        columns.put(Channel.BLADE_ANGLE, b.propeller.bladeAngle_deg());
        columns.put(Channel.TORQUE, b.propeller.torque_pct());
        columns.put(Channel.PROPELLER_SPEED, b.propeller.speed_rpm());
        columns.put(Channel.FLAP, LeadFlight.FULL_FLAP_DEG * c.flap());
        columns.put(Channel.ELEVATOR, 100 * c.elevator());
        columns.put(Channel.RUDDER, 100 * c.rudder());
        columns.put(Channel.AILERON, 100 * c.aileron());
    }

    TrueTail tail() {
        double[] in = diving.toArray();
        boolean[] dive = new boolean[in.length];
        for (int i = 0; i < in.length; i++) {
            dive[i] = in[i] > 0;
        }
        return new TrueTail(coefficient.toArray(), elevator.toArray(), rudder.toArray(), dive);
    }

    TrueBody body(LeadPlan plan) {
        TrueMotion motion =
                new TrueMotion(
                        0,
                        Simulation.STEP_S,
                        place_m.toArray(Vec3[]::new),
                        velocity_mps.toArray(Vec3[]::new));
        return new TrueBody(
                plan.id(),
                Role.LEAD,
                motion,
                columns.toMap(),
                plan.mass_kg(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
