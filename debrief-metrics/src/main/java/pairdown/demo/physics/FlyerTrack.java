package pairdown.demo.physics;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import pairdown.atmosphere.Atmosphere;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueContact;
import pairdown.demo.truth.TrueMotion;
import pairdown.track.Channel;
import pairdown.vector.Vec3;

/** One flyer's rows: standing beside the others, walking to the ship, riding, flying. */
final class FlyerTrack {
    private static final double WALK_FROM_S = 68;
    private static final double WALK_S = 18;

    private final FlyerPlan plan;
    private final FlyerFlight flight;
    private final double exit_s;
    private final Column[] load = {new Column(), new Column(), new Column()};
    private final List<Vec3> place_m = new ArrayList<>();
    private final List<Vec3> velocity_mps = new ArrayList<>();
    private final ShipTrack ship;
    private final Vec3 stands_m;
    private final Vec3 seat_m;
    private final int exitRow;

    FlyerTrack(
            Scenario scenario,
            FlyerPlan plan,
            int place,
            int exitRow,
            ShipTrack ship,
            Air air,
            Random random) {
        this.plan = plan;
        this.ship = ship;
        this.exitRow = exitRow;
        this.exit_s = exitRow * Simulation.STEP_S;
        this.stands_m = new Vec3(1.2 * place, -0.6 * (place % 2), 0);
        this.seat_m = new Vec3(1.2 - 0.3 * (place - place % 2), place % 2 == 0 ? -0.5 : 0.5, 0.6);
        Vec3 right = ship.right(exitRow);
        Vec3 ahead = new Vec3(-right.y(), right.x(), 0);
        Vec3 home_m =
                right.times(plan.side().sign() * (160 + 30 * place)).plus(ahead.times(60 * place));
        this.flight =
                new FlyerFlight(
                        plan,
                        air,
                        riding_m(exitRow),
                        ship.velocity_mps(exitRow),
                        right,
                        exit_s,
                        scenario.opening_m(),
                        home_m,
                        random);
        for (int i = 0; i < exitRow; i++) {
            ride(i);
        }
    }

    private void ride(int row) {
        Vec3 before_m = riding_m(row - 1);
        Vec3 here_m = riding_m(row);
        Vec3 next_m = riding_m(row + 1);
        double step_s = Simulation.STEP_S;
        place_m.add(here_m);
        velocity_mps.add(next_m.minus(before_m).times(0.5 / step_s));
        Vec3 a = next_m.minus(here_m.times(2)).plus(before_m).times(1 / (step_s * step_s));
        Vec3 right = ship.right(row);
        Vec3 ahead = new Vec3(-right.y(), right.x(), 0);
        load[0].add(a.dot(ahead) / Atmosphere.GRAVITY_MPS2);
        load[1].add(a.dot(right) / Atmosphere.GRAVITY_MPS2);
        load[2].add(1 + a.z() / Atmosphere.GRAVITY_MPS2);
    }

    private Vec3 riding_m(int row) {
        double u = (row * Simulation.STEP_S - WALK_FROM_S) / WALK_S;
        if (u <= 0) {
            return stands_m;
        }
        Vec3 there_m = ship.seat_m(row, seat_m);
        if (u >= 1) {
            return there_m;
        }
        double s = u * u * u * (10 - 15 * u + 6 * u * u);
        return stands_m.times(1 - s).plus(there_m.times(s));
    }

    void step(LeadView lead, Vec3 clear_mps, int row) {
        if (row < place_m.size()) {
            return;
        }
        if (row < exitRow) {
            ride(row);
            return;
        }
        FlyerBody body = flight.body();
        place_m.add(body.place_m);
        velocity_mps.add(body.velocity_mps);
        flight.step(lead, clear_mps, row * Simulation.STEP_S, Simulation.STEP_S);
        Vec3 felt_g = flight.load_g();
        load[0].add(felt_g.x());
        load[1].add(felt_g.y());
        load[2].add(felt_g.z());
    }

    FlyerPlan plan() {
        return plan;
    }

    /** Where it flies its suit; nothing before the exit and under canopy. */
    Optional<Vec3> inSuit_m() {
        return place_m.size() > exitRow && flight.isInSuit()
                ? Optional.of(flight.body().place_m)
                : Optional.empty();
    }

    boolean isJoining() {
        return flight.isJoining();
    }

    boolean isDone() {
        return flight.isDone();
    }

    Push push() {
        return flight.push();
    }

    void breakOff(double time_s) {
        if (time_s > exit_s) {
            flight.breakOff(time_s);
        }
    }

    boolean isGone() {
        return place_m.size() > exitRow && flight.isGone();
    }

    boolean isLanded() {
        return flight.isLanded();
    }

    Optional<TrueContact> contact(double end_s) {
        Grip grip = flight.grip();
        if (Double.isNaN(grip.since_s())) {
            return Optional.empty();
        }
        double until_s = grip.isHolding() ? end_s : grip.until_s();
        return Optional.of(new TrueContact(plan.id(), plan.side().key(), grip.since_s(), until_s));
    }

    TrueBody body(int rows) {
        Vec3[] place = new Vec3[rows];
        Vec3[] velocity = new Vec3[rows];
        double[][] felt = new double[3][rows];
        double[][] loads = {load[0].toArray(), load[1].toArray(), load[2].toArray()};
        for (int i = 0; i < rows; i++) {
            int k = Math.min(i, place_m.size() - 1);
            place[i] = place_m.get(k);
            velocity[i] = velocity_mps.get(k);
            for (int axis = 0; axis < 3; axis++) {
                felt[axis][i] = loads[axis][k];
            }
        }
        Map<Channel, double[]> systems = new EnumMap<>(Channel.class);
        systems.put(Channel.LONGITUDINAL_LOAD, felt[0]);
        systems.put(Channel.LATERAL_LOAD, felt[1]);
        systems.put(Channel.NORMAL_LOAD, felt[2]);
        double opening_s = flight.opening_s();
        return new TrueBody(
                plan.id(),
                plan.role(),
                new TrueMotion(0, Simulation.STEP_S, place, velocity),
                systems,
                plan.mass_kg(),
                OptionalDouble.of(exit_s),
                Double.isNaN(opening_s) ? OptionalDouble.empty() : OptionalDouble.of(opening_s));
    }
}
