package pairdown.air;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairdown.vector.Vec3;

class CircleTest {
    private static WindArc.Sample sample(double heading_deg, double tas, Vec3 wind) {
        double h = Math.toRadians(heading_deg);
        return new WindArc.Sample(
                heading_deg, 1000, tas * Math.sin(h) + wind.x(), tas * Math.cos(h) + wind.y());
    }

    /**
     * K. Horton, Kitplanes, "Finding TAS from GPS data": TAS 100, wind 270/20, headings 000 090 180
     * 270 give ground speeds 102, 120, 102, 80.
     */
    @Test
    void fourHeadingsGiveWindAndAirspeed() {
        List<WindArc.Sample> legs = new ArrayList<>();
        double[] published = {102, 120, 102, 80};
        for (int i = 0; i < 4; i++) {
            WindArc.Sample leg = sample(90 * i, 100, new Vec3(20, 0, 0));
            assertEquals(published[i], Math.hypot(leg.east_mps(), leg.north_mps()), 0.5);
            legs.add(leg);
        }
        Circle c = Circle.through(legs);
        assertEquals(20, c.east_mps(), 1e-9);
        assertEquals(0, c.north_mps(), 1e-9);
        assertEquals(100, c.radius_mps(), 1e-9);
    }

    /** K. Horton, 2004: headings 300, 120, 305 give 83.3, 117.7, 84.4. */
    @Test
    void threeUnevenHeadingsDoToo() {
        List<WindArc.Sample> legs = new ArrayList<>();
        double[] heading = {300, 120, 305};
        double[] published = {83.3, 117.7, 84.4};
        for (int i = 0; i < 3; i++) {
            WindArc.Sample leg = sample(heading[i], 100, new Vec3(20, 0, 0));
            assertEquals(published[i], Math.hypot(leg.east_mps(), leg.north_mps()), 0.05);
            legs.add(leg);
        }
        assertEquals(20, Circle.through(legs).east_mps(), 1e-6);
    }

    /**
     * Ground speeds on headings 40, 160, 280 in a wind of 20: E. Williams, Aviation Formulary,
     * gives true airspeed 100 and wind 20 back.
     */
    @Test
    void threeEvenHeadingsGiveBackTheFormularysWind() {
        List<WindArc.Sample> legs = new ArrayList<>();
        double[] heading = {40, 160, 280};
        double[] published = {113.8909585, 108.4807844, 80.3789089};
        for (int i = 0; i < 3; i++) {
            WindArc.Sample leg = sample(heading[i], 100, new Vec3(20, 0, 0));
            assertEquals(published[i], Math.hypot(leg.east_mps(), leg.north_mps()), 1e-6);
            legs.add(leg);
        }
        Circle c = Circle.through(legs);
        assertEquals(20, Math.hypot(c.east_mps(), c.north_mps()), 1e-9);
        assertEquals(100, c.radius_mps(), 1e-9);
    }
}
