package pairdown.demo.physics;

import java.util.Random;
import org.hipparchus.util.FastMath;

/** First-order Gauss–Markov noise of unit root mean square. */
final class Wander {
    private final Random random;
    private final double time_s;
    private double value;

    Wander(Random random, double time_s) {
        this.random = random;
        this.time_s = time_s;
        this.value = random.nextGaussian();
    }

    double step(double dt_s) {
        double keep = FastMath.exp(-dt_s / time_s);
        value = keep * value + Math.sqrt(1 - keep * keep) * random.nextGaussian();
        return value;
    }

    double value() {
        return value;
    }
}
