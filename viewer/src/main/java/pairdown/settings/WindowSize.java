package pairdown.settings;

/**
 * How large a window is, in the system's units of layout.
 *
 * @param width {@value #LEAST} to {@value #MOST}
 * @param height likewise
 */
public record WindowSize(int width, int height) {
    static final int LEAST = 200;
    static final int MOST = 16_384;

    public static final WindowSize DEFAULT = new WindowSize(1280, 720);

    public WindowSize {
        if (!isPossible(width, height)) {
            throw new IllegalArgumentException(
                    "a window of " + width + "×" + height + " is outside " + LEAST + " to " + MOST);
        }
    }

    /** Whether a window can be so large. */
    public static boolean isPossible(int width, int height) {
        return Math.min(width, height) >= LEAST && Math.max(width, height) <= MOST;
    }
}
