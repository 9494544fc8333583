package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SteadySegmentsTest {
    /**
     * V 40 m/s on a path 25° down, gaining 0.5 m/s²: 14.87 m/s, by hand from the balance of forces
     * along the path, 40 · (0.42262 − 0.5 / 9.80665).
     */
    @Test
    void sinkOfSteadyFlightEqualsTheWorkedExample() {
        double sink_mps = 40 * Math.sin(Math.toRadians(25));
        assertEquals(14.87, SteadySegments.steadySink_mps(40, sink_mps, 0.5), 0.005);
    }

    @Test
    void steadyFlightSinksAsItDoes() {
        assertEquals(12.3, SteadySegments.steadySink_mps(40, 12.3, 0));
    }
}
