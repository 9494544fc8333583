package pairdown.theme;

/**
 * Sizes on the glass. All are millimetres turned into pixels, so that a gloved finger finds a
 * target and a figure reads at arm's length whatever the display.
 *
 * @param perMm pixels a millimetre
 */
public record Sizes(float perMm) {
    /** Pixels a millimetre at 100 %, 96 to the inch (CSS Values 3, reference pixel). */
    public static final float AT_100_PERCENT = 96 / 25.4f;

    /** Least side of anything that can be pressed (mm): for gloves. */
    public static final float TARGET_MM = 15;

    /** A window smaller than this shrinks everything, or it would not fit (mm). */
    private static final float LEAST_WIDTH_MM = 310;

    private static final float LEAST_HEIGHT_MM = 172;

    /** Displays that claim pixels outside this are not believed (mm a pixel): projectors do. */
    private static final double FINEST_PIXEL_MM = 0.05;

    private static final double COARSEST_PIXEL_MM = 0.32;

    public Sizes {
        if (!(perMm > 0)) {
            throw new IllegalArgumentException("pixels a millimetre must be positive: " + perMm);
        }
    }

    /**
     * Sizes for a window.
     *
     * @param width_px of the picture
     * @param height_px of the picture
     * @param scale pixels a unit of layout, as the system says
     * @param pixel_mm side of a pixel as the display says; 0 where it does not
     * @param zoom the person's own factor
     */
    public static Sizes of(int width_px, int height_px, float scale, double pixel_mm, double zoom) {
        boolean believed = pixel_mm >= FINEST_PIXEL_MM && pixel_mm <= COARSEST_PIXEL_MM;
        float natural = believed ? (float) (1 / pixel_mm) : AT_100_PERCENT * scale;
        float fitting = Math.min(width_px / LEAST_WIDTH_MM, height_px / LEAST_HEIGHT_MM);
        return new Sizes(Math.max(0.5f, Math.min((float) (natural * zoom), fitting)));
    }

    /** At 100 %, and multiples of it. */
    public static Sizes atPercent(double percent) {
        return new Sizes((float) (AT_100_PERCENT * percent / 100));
    }

    public float mm(double mm) {
        return (float) (mm * perMm);
    }

    /** Side of a target. */
    public float target() {
        return mm(TARGET_MM);
    }

    /** Text in lists. */
    public float text() {
        return mm(3.8);
    }

    /** Axis numbers and hints. */
    public float small() {
        return mm(3.1);
    }

    /** Heads of panels. */
    public float heading() {
        return mm(4.8);
    }

    /** The figures that matter most, at arm's length. */
    public float figure() {
        return mm(6.2);
    }

    /**
     * Figures read at 2 m: capitals of 12.4 mm, 21 minutes of arc. ISO 9241-303 recommends 20 to 22
     * for reading; quoted from memory.
     */
    public float bigFigure() {
        return mm(17);
    }

    /** Between parts. */
    public float gap() {
        return mm(1.6);
    }

    /** Of a curve. */
    public float curve() {
        return Math.max(1.5f, mm(0.45));
    }

    /** Of an edge or a grid line. */
    public float hair() {
        return Math.max(1, mm(0.26));
    }

    /** Of a marker standing for a participant, half its width. */
    public float marker() {
        return mm(1.25);
    }
}
