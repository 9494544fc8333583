package pairdown.demo.receiver;

import java.util.Random;
import pairdown.vector.Vec3;

/**
 * Random numbers of one purpose: a seed and names give one stream, so that one more draw for one
 * log changes no other.
 */
public final class Draws {
    private static final long PRIME = 0x100000001b3L;

    private final Random random;

    private Draws(long seed) {
        this.random = new Random(seed);
    }

    /** The stream of these names under a seed. */
    public static Draws of(long seed, String... names) {
        return new Draws(seed(seed, names));
    }

    /** A seed of these names under another. */
    public static long seed(long seed, String... names) {
        long hash = 0xcbf29ce484222325L ^ seed * 0x9e3779b97f4a7c15L;
        for (String name : names) {
            for (int i = 0; i < name.length(); i++) {
                hash = (hash ^ name.charAt(i)) * PRIME;
            }
            hash = (hash ^ 0xff) * PRIME;
        }
        return hash;
    }

    /** Standard normal. */
    public double gaussian() {
        return random.nextGaussian();
    }

    /** Level and vertical components of their own standard deviations. */
    public Vec3 gaussian(double level, double vertical) {
        return new Vec3(level * gaussian(), level * gaussian(), vertical * gaussian());
    }

    public double between(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    public boolean chance(double share) {
        return random.nextDouble() < share;
    }

    /** A waiting time of this mean. */
    public double exponential(double mean) {
        return -mean * StrictMath.log(1 - random.nextDouble());
    }

    /** A direction, all alike. */
    public Vec3 direction() {
        return gaussian(1, 1).unit();
    }
}
