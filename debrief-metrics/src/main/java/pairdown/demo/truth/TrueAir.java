package pairdown.demo.truth;

import java.util.function.DoubleFunction;
import pairdown.atmosphere.Atmosphere;
import pairdown.vector.Vec3;

/**
 * The air of a simulated day.
 *
 * @param atmosphere pressure, temperature and density by height above mean sea level
 * @param undulation_m height of mean sea level above the ellipsoid at the field
 * @param meanWind_mps mean wind (toward, east-north-up, m/s) by height above mean sea level
 */
public record TrueAir(
        Atmosphere atmosphere, double undulation_m, DoubleFunction<Vec3> meanWind_mps) {}
