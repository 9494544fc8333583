package pairdown.attempt;

import java.util.Optional;
import pairdown.geodesy.Wgs84;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.Track;

/**
 * Tells whether two logs are one receiver's in two forms, a CSV log and a GPX made from it, say:
 * they have the same places at the same instants. Two receivers of people who sit side by side in
 * the climb part at the exit.
 */
final class SameFlight {
    /** Times as formats round them (s). */
    private static final double SAME_S = 0.02;

    /**
     * IGC has steps of a thousandth of a minute, 1.85 m: half of one in each direction and more.
     */
    private static final double SAME_M = 1.5;

    /** Places that a damaged record may have put elsewhere. */
    private static final int STRAYS = 3;

    /** Fewer common fixes show nothing, nor does what stays within {@link #STILL_M}. */
    private static final int LEAST_COMMON = 30;

    private static final double STILL_M = 200;

    private final Track few;
    private final Track many;

    /** Seconds from the axis of {@code few} to that of {@code many}. */
    private final double shift_s;

    private SameFlight(Track few, Track many, double shift_s) {
        this.few = few;
        this.many = many;
        this.shift_s = shift_s;
    }

    /** Only logs with absolute time and positions can be told to be the same. */
    static boolean of(Track a, Track b) {
        Optional<TimeAxis> axisA = a.axis();
        Optional<TimeAxis> axisB = b.axis();
        if (axisA.isEmpty() || axisB.isEmpty()) {
            return false;
        }
        double aToB_s = axisB.get().seconds(axisA.get().epoch());
        return a.fixes() <= b.fixes()
                ? new SameFlight(a, b, aToB_s).isSame()
                : new SameFlight(b, a, -aToB_s).isSame();
    }

    private boolean isSame() {
        int common = 0;
        int strays = 0;
        int first = -1;
        double widest_m = 0;
        int near = 0;
        for (int row = 0; row < few.size() && strays <= STRAYS; row++) {
            double t_s = few.time_s(row) + shift_s;
            while (near < many.size() && many.time_s(near) < t_s - SAME_S) {
                near++;
            }
            boolean both =
                    near < many.size()
                            && many.time_s(near) <= t_s + SAME_S
                            && few.hasPosition(row)
                            && many.hasPosition(near);
            if (both) {
                first = first < 0 ? row : first;
                widest_m = Math.max(widest_m, level_m(few, first, few, row));
                common++;
                strays += level_m(few, row, many, near) > SAME_M ? 1 : 0;
            }
        }
        return strays <= STRAYS
                && common >= LEAST_COMMON
                && 2 * common >= few.fixes()
                && widest_m > STILL_M;
    }

    private static double level_m(Track a, int rowA, Track b, int rowB) {
        double lat_deg = a.value(Channel.LATITUDE, rowA);
        double north = b.value(Channel.LATITUDE, rowB) - lat_deg;
        double east =
                Math.IEEEremainder(
                                b.value(Channel.LONGITUDE, rowB) - a.value(Channel.LONGITUDE, rowA),
                                360)
                        * Math.cos(Math.toRadians(lat_deg));
        return Math.hypot(north, east) * Wgs84.MEAN_DEGREE_M;
    }
}
