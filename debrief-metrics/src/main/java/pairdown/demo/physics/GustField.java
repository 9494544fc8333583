package pairdown.demo.physics;

import java.util.Random;
import org.hipparchus.util.FastMath;
import pairdown.vector.Vec3;

/**
 * One frozen field of gusts that all bodies fly through: a sum of shear waves with random
 * directions and phases, of unit root mean square a component.
 *
 * <p>The waves' energies follow the isotropic spectrum E(k) = (8/π)·L·(kL)⁴/(1+(kL)²)³, which along
 * any line gives the Dryden forms: correlation exp(−r/L) along it and exp(−r/L)·(1 − r/2L) across.
 * Scale L = 1,750 ft, MIL-F-8785C (1980), 3.7.2.1 above 2,000 ft. Method: Kraichnan's random
 * Fourier modes (1970). Waves shorter than 56 m are left out: 1 % of the energy.
 */
final class GustField {
    /** 1,750 ft. */
    static final double SCALE_M = 533.4;

    private static final int MODES = 96;
    private static final double LONGEST = 0.08;
    private static final double SHORTEST = 60;

    private final double[] kx = new double[MODES];
    private final double[] ky = new double[MODES];
    private final double[] kz = new double[MODES];
    private final double[] phase = new double[MODES];
    private final Vec3[] amplitude = new Vec3[MODES];

    GustField(Random random) {
        double ratio = FastMath.pow(SHORTEST / LONGEST, 1.0 / MODES);
        double low = LONGEST;
        for (int i = 0; i < MODES; i++) {
            double high = low * ratio;
            double x = low * FastMath.pow(ratio, random.nextDouble());
            double energy = 8 / Math.PI * x * x * x * x / cube(1 + x * x) * (high - low);
            Vec3 direction = direction(random);
            Vec3 any = direction(random);
            Vec3 across = any.minus(direction.times(any.dot(direction))).unit();
            kx[i] = direction.x() * x / SCALE_M;
            ky[i] = direction.y() * x / SCALE_M;
            kz[i] = direction.z() * x / SCALE_M;
            phase[i] = 2 * Math.PI * random.nextDouble();
            amplitude[i] = across.times(2 * Math.sqrt(energy));
            low = high;
        }
    }

    /** The gust at a place in the moving air, per unit root mean square. */
    Vec3 at(Vec3 place_m) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < MODES; i++) {
            double c =
                    FastMath.cos(
                            kx[i] * place_m.x()
                                    + ky[i] * place_m.y()
                                    + kz[i] * place_m.z()
                                    + phase[i]);
            x += amplitude[i].x() * c;
            y += amplitude[i].y() * c;
            z += amplitude[i].z() * c;
        }
        return new Vec3(x, y, z);
    }

    private static double cube(double v) {
        return v * v * v;
    }

    private static Vec3 direction(Random random) {
        while (true) {
            Vec3 v =
                    new Vec3(
                            2 * random.nextDouble() - 1,
                            2 * random.nextDouble() - 1,
                            2 * random.nextDouble() - 1);
            if (v.normSquared() <= 1 && v.normSquared() > 0.01) {
                return v.unit();
            }
        }
    }
}
