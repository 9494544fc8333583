package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueMotion;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;

/** What landings are like: common practice, no published source. */
class LandingTest {
    private static double most_g(TrueBody body, double from_s, double to_s) {
        double most = 0;
        for (double t = from_s; t < to_s; t += body.motion().step_s()) {
            int row = (int) Math.rint(t / body.motion().step_s());
            double square = 0;
            for (Channel c :
                    new Channel[] {
                        Channel.LONGITUDINAL_LOAD, Channel.LATERAL_LOAD, Channel.NORMAL_LOAD
                    }) {
                double g = Objects.requireNonNull(body.systems().get(c))[row];
                square += g * g;
            }
            most = Math.max(most, Math.sqrt(square));
        }
        return most;
    }

    /** When a body came to the ground for good. */
    private static double down_s(TrueMotion m) {
        int row = m.size() - 1;
        while (m.position_m(row).z() < 1) {
            row--;
        }
        return m.time_s(row);
    }

    @Test
    void flyersFlareAndTheirKneesTakeTheRest() {
        Truth truth = Flights.of(Flights.STANDARD);
        for (TrueBody body : truth.bodies()) {
            if (!body.role().isJumper()) {
                continue;
            }
            double down_s = down_s(body.motion());
            double sink_mps = -body.motion().velocityAt_mps(down_s).z();
            assertTrue(sink_mps < 4.5, body.id() + ": " + sink_mps + " m/s");
            double most = most_g(body, down_s - 1, down_s + 3);
            assertTrue(most < 5, body.id() + ": " + most + " g");
        }
    }

    @Test
    void theLeadTouchesDownGently() {
        TrueMotion lead = Flights.of(Flights.STANDARD).body("lead").motion();
        double sink_mps = -lead.velocityAt_mps(down_s(lead)).z();
        assertTrue(sink_mps < 1.5, sink_mps + " m/s");
    }
}
