package pairdown.demo.physics;

import java.util.Random;

/** Random numbers by seed and purpose, so that one more body leaves the others as they were. */
final class Streams {
    private Streams() {}

    /** The same for the same seed and purpose, on any machine. */
    static Random of(long seed, String purpose) {
        long mixed = seed * 0x9E3779B97F4A7C15L;
        for (int i = 0; i < purpose.length(); i++) {
            mixed = (mixed ^ purpose.charAt(i)) * 0xBF58476D1CE4E5B9L;
            mixed ^= mixed >>> 29;
        }
        return new Random(mixed);
    }
}
