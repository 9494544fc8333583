package pairdown.panel;

/**
 * A running 64-bit mix of whatever a kept picture depends on. Two states that differ give the same
 * key with a chance of about 2⁻⁶⁴. The mixing step is that of SplitMix64 (Steele, Lea and Flood,
 * "Fast splittable pseudorandom number generators", 2014).
 */
final class Key64 {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private Key64() {}

    static long mix(long key, long value) {
        long z = key + GOLDEN + value;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    static long mix(long key, double value) {
        return mix(key, Double.doubleToLongBits(value));
    }

    static long mix(long key, boolean value) {
        return mix(key, value ? 1L : 0L);
    }
}
