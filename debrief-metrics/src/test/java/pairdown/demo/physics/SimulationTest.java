package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import pairdown.attempt.Role;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;

class SimulationTest {
    private static void assertSame(TrueBody a, TrueBody b) {
        assertEquals(a.exit_s(), b.exit_s());
        assertEquals(a.opening_s(), b.opening_s());
        assertMotion(a.motion(), b.motion(), a.motion().size());
        assertEquals(a.systems().keySet(), b.systems().keySet());
        for (Channel c : a.systems().keySet()) {
            assertArrayEquals(a.systems().get(c), b.systems().get(c), c.key());
        }
    }

    private static void assertMotion(TrueMotion a, TrueMotion b, int rows) {
        for (int i = 0; i < rows; i++) {
            assertEquals(a.position_m(i), b.position_m(i));
            assertEquals(a.velocity_mps(i), b.velocity_mps(i));
        }
    }

    @Test
    void oneSeedGivesTheSameFlightToTheLastBit() {
        Truth once = Flights.of(Flights.STANDARD);
        Truth again = Simulation.run(Flights.STANDARD);
        assertEquals(once.bodies().size(), again.bodies().size());
        for (TrueBody body : once.bodies()) {
            TrueBody other = again.body(body.id());
            assertEquals(body.motion().size(), other.motion().size());
            assertSame(body, other);
        }
        assertEquals(once.powerChanges(), again.powerChanges());
        assertEquals(once.contacts(), again.contacts());
        assertEquals(once.episodes(), again.episodes());
    }

    @Test
    void anotherSeedGivesAnotherFlight() {
        TrueMotion one = Flights.of(Flights.STANDARD).body("lead").motion();
        TrueMotion two = Simulation.run(Flights.STANDARD.withSeed(77)).body("lead").motion();
        assertNotEquals(one.position_m(15_000), two.position_m(15_000));
    }

    @Test
    void whoElseJumpsChangesNothingBeforeTheExit() {
        Truth two = Flights.of(Flights.STANDARD);
        Truth one =
                Simulation.run(Flights.STANDARD.withFlyers(FlyerPlan.hold("blue", Side.LEFT, 30)));
        double exit_s = one.body("blue").exit_s().orElseThrow();
        int rows = (int) (exit_s / Simulation.STEP_S) - 1;
        assertMotion(one.body("lead").motion(), two.body("lead").motion(), rows);
        assertEquals(exit_s, two.body("blue").exit_s().orElseThrow());
        assertMotion(one.body("blue").motion(), two.body("blue").motion(), rows);
    }

    @Test
    void plansThatCannotBeFlownAreRefused() {
        Scenario alone = Scenario.practice(1);
        assertThrows(
                IllegalArgumentException.class,
                () -> alone.withFlyers(FlyerPlan.hold("blue", Side.LEFT, 30)));
        assertThrows(IllegalArgumentException.class, () -> Scenario.crowd(1, 13));
        assertThrows(IllegalArgumentException.class, () -> FlyerPlan.hold("blue", Side.LEFT, -1));
        assertThrows(IllegalArgumentException.class, () -> ShipPlan.HELICOPTER.withExit(54, 3600));
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        new FlyerPlan(
                                "lead", Role.LEAD, Side.LEFT, 30, 90, new Behaviour.Hold(5), 0, 0));
    }
}
