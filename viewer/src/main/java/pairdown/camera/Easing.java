package pairdown.camera;

/** How a move begins and ends without a jerk. */
public final class Easing {
    private Easing() {}

    /** From 0 at 0 to 1 at 1 with no speed at both ends: 3x² − 2x³; held outside. */
    public static double smooth(double x) {
        double in = Math.max(0, Math.min(1, x));
        return in * in * (3 - 2 * in);
    }
}
