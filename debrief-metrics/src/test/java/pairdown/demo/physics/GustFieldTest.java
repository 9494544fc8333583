package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.geodesy.Geodetic;
import pairdown.units.Unit;
import pairdown.vector.Vec3;

/**
 * The gust field against the Dryden forms of MIL-F-8785C (1980), 3.7.2.1: unit variance a
 * component, correlation exp(−r/L) along the line and exp(−r/L)·(1 − r/2L) across it, L = 1,750 ft.
 */
class GustFieldTest {
    private static final int FIELDS = 400;
    private static final double FAR_M = 5e5;
    private static final double L_M = GustField.SCALE_M;

    /** Mean products of the gusts at two ends of a line: along it and across it. */
    private static double[] products(double apart_m) {
        double along = 0;
        double across = 0;
        int n = 0;
        Random random = new Random(11);
        for (int i = 0; i < FIELDS; i++) {
            GustField field = new GustField(new Random(random.nextLong()));
            for (int k = 0; k < 6; k++) {
                Vec3 from_m =
                        new Vec3(
                                        random.nextGaussian(),
                                        random.nextGaussian(),
                                        random.nextGaussian())
                                .times(FAR_M);
                Vec3 a = field.at(from_m);
                Vec3 b = field.at(from_m.plus(new Vec3(0, apart_m, 0)));
                along += a.y() * b.y();
                across += (a.x() * b.x() + a.z() * b.z()) / 2;
                n++;
            }
        }
        return new double[] {along / n, across / n};
    }

    @Test
    void everyComponentHasUnitVariance() {
        double[] here = products(0);
        // A mean of 2,400 squares of a normal component has a sigma of √(2/2400) = 0.029.
        assertEquals(1, here[0], 3 * 0.029);
        assertEquals(1, here[1], 3 * 0.029);
    }

    @Test
    void theCorrelationFallsAsDrydensDoes() {
        // 2,400 products of unit components: sigma 0.02 to 0.03.
        for (double share : new double[] {0.1, 0.25, 0.5, 1, 2}) {
            double[] found = products(share * L_M);
            assertEquals(Math.exp(-share), found[0], 0.07, "along, at " + share + " L");
            assertEquals(
                    Math.exp(-share) * (1 - share / 2),
                    found[1],
                    0.07,
                    "across, at " + share + " L");
        }
    }

    @Test
    void theScaleIsThatOfTheSpecification() {
        assertEquals(Unit.FOOT.toBase(1750), L_M, 0.05);
    }

    @Test
    void airIsNeitherMadeNorLost() {
        // Shear waves have no divergence: Kraichnan (1970). Central differences over 1 m.
        GustField field = new GustField(new Random(3));
        Random random = new Random(4);
        for (int i = 0; i < 50; i++) {
            Vec3 at =
                    new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                            .times(3000);
            double east = slope(field, at, new Vec3(0.5, 0, 0)).x();
            double north = slope(field, at, new Vec3(0, 0.5, 0)).y();
            double up = slope(field, at, new Vec3(0, 0, 0.5)).z();
            double shear = slope(field, at, new Vec3(0, 0.5, 0)).x();
            assertEquals(0, east + north + up, 1e-6 + 1e-3 * Math.abs(shear));
        }
    }

    private static Vec3 slope(GustField field, Vec3 at, Vec3 half) {
        return field.at(at.plus(half)).minus(field.at(at.minus(half)));
    }

    @Test
    void twoBodiesTenMetresApartShareTheirGusts() {
        double[] near = products(10);
        // exp(−10/533) = 0.981 of the variance: the difference is a fifth of a gust or less.
        assertTrue(near[0] > 0.9 * products(0)[0]);
    }

    @Test
    void levelsAreThoseOfTheFigure() {
        // MIL-F-8785C figure 7, curves 2 to 4, ft/s converted: at 7,500 and 15,000 ft.
        double low_m = Unit.FOOT.toBase(7500);
        double high_m = Unit.FOOT.toBase(15_000);
        double[][] rows = {{0.5, 0}, {2.0, 1.4}, {3.1, 2.4}};
        GustLevel[] levels = {GustLevel.SMOOTH, GustLevel.LIGHT, GustLevel.MODERATE};
        for (int i = 0; i < levels.length; i++) {
            assertEquals(rows[i][0], levels[i].rms_mps(low_m), 1e-9);
            assertEquals(rows[i][1], levels[i].rms_mps(high_m), 1e-9);
            assertTrue(levels[i].rms_mps(20_000) >= 0);
        }
        assertEquals(0, GustLevel.STILL.rms_mps(1000));
    }

    @Test
    void gustsFadeOutAboveTheGround() {
        AirPlan rough = AirPlan.USUAL.withGusts(GustLevel.MODERATE);
        Air air = new Air(rough, Geodetic.ofDegrees(-30, 127, 160), new Random(1));
        assertEquals(0, air.gust_mps(new Vec3(200, 0, 0), 30).norm(), 0.05);
        double squares = 0;
        for (int t_s = 0; t_s < 40_000; t_s += 20) {
            squares += air.gust_mps(new Vec3(0, 0, 2000), t_s).normSquared() / 3;
        }
        // One field and 400 km of it: a fifth covers three sigma.
        assertEquals(3.1, Math.sqrt(squares / 2000), 0.6);
    }
}
