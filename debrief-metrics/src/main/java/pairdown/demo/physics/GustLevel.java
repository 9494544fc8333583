package pairdown.demo.physics;

/**
 * How rough the air is: root mean square of a gust component at two heights, between them linear,
 * below the lower held, above the higher extrapolated down to none.
 *
 * <p>Source: MIL-F-8785C (1980), figure 7, curves 2 to 4 of exceedance, ft/s converted. The figure
 * goes on below 7,500 ft; here its value there is held.
 */
public enum GustLevel {
    STILL(0, 0),
    SMOOTH(0.5, 0),
    LIGHT(2.0, 1.4),
    MODERATE(3.1, 2.4);

    /** 7,500 ft. */
    private static final double LOWER_M = 2286;

    /** 15,000 ft. */
    private static final double HIGHER_M = 4572;

    private final double lower_mps;
    private final double higher_mps;

    GustLevel(double lower_mps, double higher_mps) {
        this.lower_mps = lower_mps;
        this.higher_mps = higher_mps;
    }

    /** Root mean square of one component at a height above mean sea level (m/s). */
    public double rms_mps(double height_m) {
        double up = Math.max(0, (height_m - LOWER_M) / (HIGHER_M - LOWER_M));
        return Math.max(0, lower_mps + (higher_mps - lower_mps) * up);
    }
}
