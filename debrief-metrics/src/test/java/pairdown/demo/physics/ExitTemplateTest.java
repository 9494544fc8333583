package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.units.Unit;

/**
 * The planned way from the exit to steady flight against a table of another simulation of the same
 * model: 95 kg, 12,000 ft, opening over 4 s from 1 s after the exit, target pose. The two differ in
 * how the flyer damps its own path, which no source tells, so only what follows from the balance of
 * speeds is held tightly: where the lead must be.
 */
class ExitTemplateTest {
    private static final double SINK_MPS = 17.78;
    private static final double LEVEL_MPS = Math.sqrt(37.998 * 37.998 - SINK_MPS * SINK_MPS);

    /** Exit true airspeed (kt), settled after (s), dropped (ft), lead ahead and below (m). */
    private static final double[][] TABLE = {
        {0, 11.6, 940, -157, 80},
        {40, 8.9, 620, -67, 30},
        {60, 7.9, 490, -26, 9},
        {75, 6.8, 390, 0, -2},
        {85, 5.9, 310, 16, -10},
        {100, 4.7, 210, 37, -18},
        {120, 5.8, 260, 71, -25},
    };

    private static ExitTemplate at(double kt) {
        return ExitTemplate.of(
                Math.max(0.01, Unit.KNOT.toBase(kt)),
                LEVEL_MPS,
                SINK_MPS,
                Atmosphere.STANDARD.density_kgpm3(3657.6),
                95);
    }

    private static double ahead_m(ExitTemplate t) {
        return t.forward_m() - LEVEL_MPS * t.settle_s();
    }

    private static double below_m(ExitTemplate t) {
        return t.drop_m() - SINK_MPS * t.settle_s();
    }

    @Test
    void theLeadsPlaceAtExitIsThatOfTheTable() {
        for (double[] row : TABLE) {
            ExitTemplate found = at(row[0]);
            String at = row[0] + " kt: " + found;
            assertEquals(row[3], ahead_m(found), 12 + 0.25 * Math.abs(row[3]), at);
            assertEquals(row[4], below_m(found), 16, at);
        }
    }

    @Test
    void slowExitsTakeAboutAsLongAndDropAboutAsMuchAsInTheTable() {
        for (double[] row : new double[][] {TABLE[0], TABLE[1], TABLE[2]}) {
            ExitTemplate found = at(row[0]);
            assertEquals(row[1], found.settle_s(), 1.3, row[0] + " kt: " + found);
            assertEquals(row[2], Unit.FOOT.fromBase(found.drop_m()), 80, row[0] + " kt: " + found);
        }
    }

    @Test
    void theFasterTheExitTheFurtherAheadTheLead() {
        for (int i = 1; i < TABLE.length; i++) {
            assertTrue(ahead_m(at(TABLE[i][0])) > ahead_m(at(TABLE[i - 1][0])));
        }
    }

    @Test
    void leavingAtTheLeadsOwnSpeedNeedsNoLead() {
        // V cos γ = 33.6 m/s = 65 kt: about two metres of lead a knot either side of it.
        double kt = Unit.KNOT.fromBase(LEVEL_MPS);
        assertEquals(65, kt, 0.5);
        double perKnot_m = (ahead_m(at(kt + 10)) - ahead_m(at(kt - 10))) / 20;
        assertEquals(2, perKnot_m, 0.7);
    }
}
