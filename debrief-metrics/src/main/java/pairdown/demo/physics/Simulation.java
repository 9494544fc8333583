package pairdown.demo.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueContact;
import pairdown.demo.truth.Truth;
import pairdown.geodesy.LocalFrame;
import pairdown.vector.Vec3;

/**
 * Flies a scenario. The lead flies alone up to the exit, the exit aircraft's flight is laid to meet
 * it there, and from then on lead and flyers fly together, a hundredth and a fiftieth of a second
 * at a time.
 */
public final class Simulation {
    /** From row to row (s). */
    static final double STEP_S = 0.02;

    private static final double LEAD_STEP_S = STEP_S / 2;

    /** All stand side by side this long, before and after (s). */
    private static final double STILL_S = 65;

    private static final double SHIP_TAKE_OFF_S = 90;
    private static final double LEAD_TAKE_OFF_S = 105;
    private static final double LONGEST_S = 2400;

    /** From one jumper to the next (s), for a few and for many. */
    private static final double BETWEEN_EXITS_S = 1.5;

    private static final double BETWEEN_MANY_S = 0.8;
    private static final int FEW = 4;

    private static final Vec3 SHIP_STANDS_M = new Vec3(14, 8, 0);
    private static final Vec3 LEAD_STANDS_M = new Vec3(-18, 6, 0);

    private final Scenario scenario;
    private final Air air;
    private final LeadFlight lead;
    private final LeadLog log;
    private final ExitPlan exitPlan;
    private final List<FlyerTrack> flyers = new ArrayList<>();
    private final Neighbours neighbours = new Neighbours(flyers);
    private Optional<ShipTrack> ship = Optional.empty();
    private Vec3 ahead = new Vec3(0, 1, 0);
    private Vec3 acceleration_mps2 = Vec3.ZERO;
    private int row;

    private Simulation(Scenario scenario) {
        this.scenario = scenario;
        this.air = new Air(scenario.air(), scenario.field(), Streams.of(scenario.seed(), "air"));
        Random random = Streams.of(scenario.seed(), "plan");
        Vec3 aloft_mps = air.meanWind_mps(air.field_m() + AirPlan.TOP_M);
        double course_rad =
                Route.course_rad(aloft_mps.times(-1)) + 0.4 * (random.nextDouble() - 0.5);
        this.lead = new LeadFlight(scenario, air, LEAD_STANDS_M, LEAD_TAKE_OFF_S, course_rad);
        this.log = new LeadLog(lead, air);
        this.exitPlan = new ExitPlan(scenario, air);
    }

    /** The truth of a scenario: the same for the same scenario, to the last bit. */
    public static Truth run(Scenario scenario) {
        Simulation simulation = new Simulation(scenario);
        simulation.upToExit();
        simulation.together();
        return simulation.truth();
    }

    private double time_s() {
        return row * STEP_S;
    }

    private void upToExit() {
        if (scenario.ship().isEmpty()) {
            return;
        }
        ShipPlan plan = scenario.ship().get();
        while (!exitPlan.isDue(lead)) {
            leadStep();
            if (time_s() > LONGEST_S) {
                throw new IllegalStateException("the lead never came to the exit");
            }
        }
        ShipFlight.Exit exit = exitPlan.exit(lead, plan, time_s());
        double stay_s = between_s() * scenario.flyers().size() + 12;
        Vec3[] rows =
                ShipFlight.fly(
                        air,
                        SHIP_STANDS_M,
                        SHIP_TAKE_OFF_S,
                        exit,
                        stay_s,
                        Streams.of(scenario.seed(), "ship"));
        ship = Optional.of(new ShipTrack(plan, rows, air));
        for (int i = 0; i < scenario.flyers().size(); i++) {
            flyers.add(flyer(i, exit, ship.get()));
        }
    }

    private double between_s() {
        return scenario.flyers().size() > FEW ? BETWEEN_MANY_S : BETWEEN_EXITS_S;
    }

    private FlyerTrack flyer(int place, ShipFlight.Exit exit, ShipTrack aboard) {
        FlyerPlan plan = scenario.flyers().get(place);
        Random random = Streams.of(scenario.seed(), "flyer " + plan.id());
        double exit_s =
                exit.time_s()
                        + between_s() * place
                        + plan.exitDelay_s()
                        + 0.1 * random.nextGaussian();
        int exitRow = Math.max(row, (int) Math.rint(exit_s / STEP_S));
        return new FlyerTrack(scenario, plan, place, exitRow, aboard, air, random);
    }

    private void leadStep() {
        log.row();
        for (int k = 0; k < 2; k++) {
            Vec3 before_mps = lead.body().velocity_mps;
            lead.step(time_s() + k * LEAD_STEP_S, LEAD_STEP_S);
            look(before_mps);
        }
        row++;
    }

    private void look(Vec3 before_mps) {
        Vec3 now_mps2 = lead.body().velocity_mps.minus(before_mps).times(1 / LEAD_STEP_S);
        acceleration_mps2 =
                acceleration_mps2.plus(now_mps2.minus(acceleration_mps2).times(LEAD_STEP_S / 0.3));
        Vec3 mean_mps = air.meanWind_mps(air.height_m(lead.body().place_m));
        Vec3 through = lead.body().velocity_mps.minus(mean_mps);
        Vec3 level = new Vec3(through.x(), through.y(), 0);
        if (level.normSquared() > 100) {
            ahead = ahead.plus(level.unit().minus(ahead).times(LEAD_STEP_S / 1.5)).unit();
        }
    }

    private void together() {
        double stopped_s = Double.NaN;
        while (Double.isNaN(stopped_s) || time_s() < stopped_s + STILL_S) {
            Push push = Push.NONE;
            LeadView view = view();
            for (FlyerTrack f : flyers) {
                f.step(view, neighbours.clear_mps(f), row);
                push = push.plus(f.push());
            }
            callOff();
            lead.push(push);
            leadStep();
            if (Double.isNaN(stopped_s) && allStand()) {
                stopped_s = time_s();
            }
            if (time_s() > LONGEST_S) {
                throw new IllegalStateException("not all were down after " + LONGEST_S + " s");
            }
        }
    }

    private void callOff() {
        if (flyers.isEmpty()) {
            return;
        }
        boolean low = air.aboveGround_m(lead.body().place_m) < scenario.breakOff_m();
        boolean diving = lead.guide().stage() == LeadGuide.Stage.DIVE;
        boolean allGone = true;
        for (FlyerTrack f : flyers) {
            if (low || !diving || neighbours.mayLeave(f)) {
                f.breakOff(time_s());
            }
            allGone &= f.isGone();
        }
        if (allGone) {
            lead.guide().recall(time_s());
        }
    }

    private LeadView view() {
        Airframe body = lead.body();
        double density_kgpm3 = air.density_kgpm3(air.height_m(body.place_m));
        boolean diving = lead.guide().stage() == LeadGuide.Stage.DIVE;
        TipWake wake = new TipWake(body, body.lift_N(lead.controls().flap()), density_kgpm3);
        return new LeadView(
                body.place_m, body.velocity_mps, ahead, acceleration_mps2, body, wake, diving);
    }

    private boolean allStand() {
        return lead.guide().stage() == LeadGuide.Stage.STOPPED
                && ship.map(s -> s.stands(row)).orElse(true)
                && flyers.stream().allMatch(FlyerTrack::isLanded);
    }

    private Truth truth() {
        List<TrueBody> bodies = new ArrayList<>();
        bodies.add(log.body(scenario.lead()));
        ship.ifPresent(s -> bodies.add(s.body(air, row)));
        List<TrueContact> contacts = new ArrayList<>();
        for (FlyerTrack f : flyers) {
            bodies.add(f.body(row));
            f.contact(time_s()).ifPresent(contacts::add);
        }
        return new Truth(
                scenario.start(),
                LocalFrame.at(scenario.field()),
                air.truth(),
                bodies,
                contacts,
                lead.powerChanges(),
                Episodes.of(log.tail(), lead.powerChanges(), STEP_S),
                Optional.of(log.tail()));
    }
}
