package pairdown.replay;

import org.jspecify.annotations.Nullable;

/**
 * Several smooth figures over time, taken at a fixed rate the first time they are asked for, in
 * blocks, and linearly interpolated. It lets a frame read what is costly to compute without
 * computing or allocating anything once the block is there. For one thread.
 */
final class Samples {
    private static final int BLOCK = 32;

    private final double start_s;
    private final double step_s;
    private final int size;
    private final int width;
    private final Source source;
    private final boolean rotation;
    private final float[] @Nullable [] blocks;

    /** Computes the figures at an instant; NaN where unknown. */
    @FunctionalInterface
    interface Source {
        void at(double t_s, float[] into, int from);
    }

    /** Independent figures, {@code width} at each instant. */
    static Samples ofFigures(
            double start_s, double end_s, double rate_Hz, int width, Source source) {
        return new Samples(start_s, end_s, rate_Hz, width, source, false);
    }

    /** A rotation's four figures x, y, z, w; read back not quite of length one. */
    static Samples ofRotation(double start_s, double end_s, double rate_Hz, Source source) {
        return new Samples(start_s, end_s, rate_Hz, 4, source, true);
    }

    private Samples(
            double start_s,
            double end_s,
            double rate_Hz,
            int width,
            Source source,
            boolean rotation) {
        this.rotation = rotation;
        this.start_s = start_s;
        this.size = 1 + (int) Math.ceil(Math.max(0, end_s - start_s) * rate_Hz);
        this.step_s = size == 1 ? 1 : (end_s - start_s) / (size - 1);
        this.width = width;
        this.source = source;
        this.blocks = new float[(size + BLOCK - 1) / BLOCK][];
    }

    /** Interpolates into {@code into}; NaN where either neighbour is unknown. */
    void read(double t_s, float[] into) {
        double at = Math.max(0, Math.min(size - 1.0, (t_s - start_s) / step_s));
        int i = Math.min(Math.max(0, size - 2), (int) at);
        int j = Math.min(size - 1, i + 1);
        float share = (float) (at - i);
        float[] a = block(i / BLOCK);
        float[] b = block(j / BLOCK);
        int ai = i % BLOCK * width;
        int bi = j % BLOCK * width;
        float sign = rotation && dot(a, ai, b, bi) < 0 ? -1 : 1;
        for (int k = 0; k < width; k++) {
            into[k] = share == 0 ? a[ai + k] : a[ai + k] + share * (sign * b[bi + k] - a[ai + k]);
        }
    }

    /**
     * Takes the samples on both sides of the block an instant is in, so that no later frame must.
     */
    void takeBeside(double t_s) {
        int own = (int) Math.max(0, Math.min(size - 1.0, (t_s - start_s) / step_s)) / BLOCK;
        if (own + 1 < blocks.length) {
            block(own + 1);
        }
        if (own > 0) {
            block(own - 1);
        }
    }

    /** A rotation and its negative are the same: of the two, the way must go to the nearer. */
    private static float dot(float[] a, int ai, float[] b, int bi) {
        return a[ai] * b[bi]
                + a[ai + 1] * b[bi + 1]
                + a[ai + 2] * b[bi + 2]
                + a[ai + 3] * b[bi + 3];
    }

    private float[] block(int index) {
        float[] block = blocks[index];
        if (block == null) {
            block = new float[BLOCK * width];
            for (int i = 0; i < BLOCK && index * BLOCK + i < size; i++) {
                source.at(start_s + (index * BLOCK + i) * step_s, block, i * width);
            }
            blocks[index] = block;
        }
        return block;
    }
}
