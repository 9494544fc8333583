package pairdown.demo;

import java.time.Duration;
import java.time.Instant;
import pairdown.demo.physics.AirPlan;
import pairdown.demo.physics.Behaviour;
import pairdown.demo.physics.FlyerPlan;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.ShipPlan;
import pairdown.demo.physics.Side;
import pairdown.demo.receiver.Draws;
import pairdown.geodesy.Geodetic;

/** Days and places of the demo season: a made-up flat field, invented people, years ahead. */
final class DemoScenarios {
    private static final Geodetic FIELD = Geodetic.ofDegrees(-30.6215, 127.4372, 160);

    /** Between loads of a day. */
    private static final Duration BETWEEN = Duration.ofMinutes(70);

    private DemoScenarios() {}

    /** The lead alone, in the air of one load of a day. */
    static Scenario day(long seed, String morning, int load) {
        Instant start = Instant.parse(morning).plus(BETWEEN.multipliedBy(load));
        Draws draws = Draws.of(seed, morning, "air");
        double from_deg = 225 + draws.between(0, 50) + 4 * load;
        double aloft_mps = draws.between(8, 13);
        AirPlan air =
                AirPlan.USUAL
                        .withWeather(DemoPlans.QNH_HPA, DemoPlans.WARMER_C)
                        .withWind(from_deg, aloft_mps / 3, aloft_mps, 25);
        return Scenario.practice(seed + start.getEpochSecond())
                .withPlace(start, FIELD)
                .withAir(air);
    }

    /** Blue to the left slot and amber to the right one, both to a gate. */
    static FlyerPlan[] both(double gate_m, double hold_s) {
        return new FlyerPlan[] {left(gate_m, hold_s), right(gate_m, hold_s)};
    }

    static FlyerPlan left(double gate_m, double hold_s) {
        return FlyerPlan.hold("blue", Side.LEFT, gate_m)
                .withBehaviour(new Behaviour.Hold(hold_s))
                .withMass(92);
    }

    static FlyerPlan right(double gate_m, double hold_s) {
        return FlyerPlan.hold("amber", Side.RIGHT, gate_m)
                .withBehaviour(new Behaviour.Hold(hold_s))
                .withMass(97);
    }

    /** With the helicopter at 60 kt. */
    static Scenario joined(long seed, String morning, int load, FlyerPlan... flyers) {
        return day(seed, morning, load).withShip(ShipPlan.HELICOPTER).withFlyers(flyers);
    }
}
