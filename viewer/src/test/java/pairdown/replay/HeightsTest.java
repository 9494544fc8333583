package pairdown.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import pairdown.debrief.Debrief;
import pairdown.geodesy.Geoid;
import pairdown.vector.Vec3;

class HeightsTest {
    private static final Debrief DEBRIEF = new SyntheticDebrief().build();
    private static final Heights HEIGHTS = Heights.of(DEBRIEF);

    /**
     * Against the exact conversion through earth-centred coordinates, less the undulation there.
     */
    @Test
    void twentyKilometresAwayTheHeightIsRightToADecimetre() {
        Vec3 place = new Vec3(14_000, -14_000, 2_500);
        var exact = DEBRIEF.frame().toGeodetic(place);
        var origin = DEBRIEF.frame().origin();
        double geoid_m = Geoid.egm96().undulation_m(origin.latitude_deg(), origin.longitude_deg());
        double height_m = HEIGHTS.height_m(place.x(), place.y(), place.z());
        assertEquals(exact.height_m() - geoid_m, height_m, 0.15);
    }

    @Test
    void thereAndBackIsTheSamePlace() {
        double height_m = HEIGHTS.height_m(5_000, 3_000, 1_000);
        assertEquals(1_000, HEIGHTS.up_m(5_000, 3_000, height_m), 1e-9);
    }
}
