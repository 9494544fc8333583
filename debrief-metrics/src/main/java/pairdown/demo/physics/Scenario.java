package pairdown.demo.physics;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.LeverArm;
import pairdown.geodesy.Geodetic;

/**
 * What is to be flown; {@link Simulation#run} flies it.
 *
 * @param seed two runs with one seed are alike to the last bit
 * @param field where all stand at the start, height above the ellipsoid
 * @param ship the exit aircraft; none for a practice dive
 * @param flyers in the order of their exits
 * @param breakOff_m height above the field at which flyers leave at the latest
 * @param opening_m height above the field at which flyers open their canopies
 */
public record Scenario(
        long seed,
        Instant start,
        Geodetic field,
        AirPlan air,
        LeadPlan lead,
        Optional<ShipPlan> ship,
        List<FlyerPlan> flyers,
        double breakOff_m,
        double opening_m) {
    public static final LeverArm LEFT_SLOT = Side.LEFT.slot();
    public static final LeverArm RIGHT_SLOT = Side.RIGHT.slot();

    private static final List<String> COLOURS =
            List.of(
                    "blue", "amber", "green", "white", "violet", "red", "teal", "grey", "lime",
                    "rose", "sand", "plum");

    public Scenario {
        flyers = List.copyOf(flyers);
        if (!flyers.isEmpty() && ship.isEmpty()) {
            throw new IllegalArgumentException("flyers need an exit aircraft");
        }
    }

    /** A 30 m attempt: exit aircraft, lead, a flyer either side, smooth air. */
    public static Scenario standard(long seed) {
        return practice(seed)
                .withShip(ShipPlan.HELICOPTER)
                .withFlyers(
                        FlyerPlan.hold("blue", Side.LEFT, 30),
                        FlyerPlan.hold("amber", Side.RIGHT, 30));
    }

    /**
     * So many flyers, alternating between the sides, each pair with a gate 35 m further out.
     *
     * @throws IllegalArgumentException for more than twelve
     */
    public static Scenario crowd(long seed, int n) {
        if (n < 1 || n > COLOURS.size()) {
            throw new IllegalArgumentException(n + " flyers is outside 1 to " + COLOURS.size());
        }
        List<FlyerPlan> flyers = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Side side = i % 2 == 0 ? Side.LEFT : Side.RIGHT;
            flyers.add(
                    FlyerPlan.hold(COLOURS.get(i), side, 30 + 17.5 * (i - i % 2))
                            .withMass(85 + i * 2.5));
        }
        return standard(seed).withFlyers(flyers.toArray(FlyerPlan[]::new));
    }

    /** The lead alone, at the target. */
    public static Scenario practice(long seed) {
        return new Scenario(
                seed,
                Instant.parse("2031-05-14T15:00:00Z"),
                Geodetic.ofDegrees(-30.6215, 127.4372, 160),
                AirPlan.USUAL,
                LeadPlan.USUAL,
                Optional.empty(),
                List.of(),
                1800,
                1150);
    }

    /** The lead alone, at idle. */
    public static Scenario idleDive(long seed) {
        return practice(seed).withLead(LeadPlan.USUAL.withDive(LeadPlan.Dive.IDLE));
    }

    public Scenario withSeed(long other) {
        return new Scenario(other, start, field, air, lead, ship, flyers, breakOff_m, opening_m);
    }

    public Scenario withPlace(Instant when, Geodetic where) {
        return new Scenario(seed, when, where, air, lead, ship, flyers, breakOff_m, opening_m);
    }

    public Scenario withAir(AirPlan other) {
        return new Scenario(seed, start, field, other, lead, ship, flyers, breakOff_m, opening_m);
    }

    public Scenario withLead(LeadPlan other) {
        return new Scenario(seed, start, field, air, other, ship, flyers, breakOff_m, opening_m);
    }

    public Scenario withShip(ShipPlan other) {
        return new Scenario(
                seed, start, field, air, lead, Optional.of(other), flyers, breakOff_m, opening_m);
    }

    public Scenario withFlyers(FlyerPlan... others) {
        return new Scenario(
                seed, start, field, air, lead, ship, List.of(others), breakOff_m, opening_m);
    }

    public Scenario withHeights(double breakOffAgl_m, double openingAgl_m) {
        return new Scenario(
                seed, start, field, air, lead, ship, flyers, breakOffAgl_m, openingAgl_m);
    }
}
