package pairdown.demo.physics;

import pairdown.vector.Vec3;

/**
 * Where the exit aircraft must be, and when, for its jumpers to arrive beside and behind the lead:
 * the lead's place, plus what it flies while a jumper settles, less what the jumper flies, plus the
 * place of arrival. In the air's frame: wind moves both alike.
 */
final class ExitPlan {
    /** Arrival to the right of the lead, so that nobody unsteady flies through it (m). */
    private static final double BESIDE_M = 60;

    private static final double BEHIND_M = 50;
    private static final double ABOVE_M = 12;

    private final double exit_m;
    private final double forward_m;
    private final double up_m;
    private final boolean flown;

    ExitPlan(Scenario scenario, Air air) {
        LeadPlan lead = scenario.lead();
        ShipPlan ship = scenario.ship().orElse(ShipPlan.HELICOPTER);
        this.exit_m = ship.exitHeight_m();
        double middle_m = exit_m - 80;
        double speed_mps = air.true_mps(lead.kind(), lead.airspeed_mps(), middle_m);
        double sink_mps = lead.dive() == LeadPlan.Dive.IDLE ? 8 : lead.sink_mps();
        double level_mps = Math.sqrt(speed_mps * speed_mps - sink_mps * sink_mps);
        double mass_kg =
                scenario.flyers().stream().mapToDouble(FlyerPlan::mass_kg).average().orElse(95);
        ExitTemplate way =
                ExitTemplate.of(
                        ship.exitAirspeed_mps(),
                        level_mps,
                        sink_mps,
                        air.density_kgpm3(middle_m),
                        mass_kg);
        double gate_m = scenario.flyers().stream().mapToDouble(FlyerPlan::gate_m).max().orElse(0);
        double behind_m = BEHIND_M + 0.7 * Math.min(gate_m, 150);
        this.forward_m = level_mps * way.settle_s() - way.forward_m() - behind_m;
        this.up_m = way.drop_m() - sink_mps * way.settle_s() + ABOVE_M;
        this.flown = scenario.ship().isPresent();
    }

    /** Whether the lead has come down to where the first jumper must leave. */
    boolean isDue(LeadFlight lead) {
        return flown
                && lead.guide().stage() == LeadGuide.Stage.DIVE
                && lead.height_m() <= exit_m - up_m;
    }

    ShipFlight.Exit exit(LeadFlight lead, ShipPlan ship, double time_s) {
        double heading_rad = Route.course_rad(lead.body().airVelocity_mps);
        Vec3 off_m =
                Route.ahead(heading_rad)
                        .times(forward_m)
                        .plus(Route.right(heading_rad).times(BESIDE_M))
                        .plus(new Vec3(0, 0, up_m));
        return new ShipFlight.Exit(
                time_s, lead.body().place_m.plus(off_m), heading_rad, ship.exitAirspeed_mps());
    }
}
