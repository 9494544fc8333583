package pairdown.attempt;

import java.util.Locale;
import pairdown.geodesy.Wgs84;
import pairdown.track.Channel;
import pairdown.track.Track;

/**
 * What a log's motion says about who carried it, coarsely: from heights and places ten seconds
 * apart, so that noise and rate hardly matter.
 *
 * @param stem the log's name without its ending
 * @param hasSystems whether it has power or control channels
 * @param descendsSteeply whether it sank at 10 m/s or more for 20 s
 * @param opensCanopy whether after such a descent it sank at 2 to 8 m/s and slower than 20 m/s for
 *     a minute
 * @param fliesLikeAircraft whether it was faster than 25 m/s for a minute without sinking
 */
record MotionTraits(
        String stem,
        boolean hasSystems,
        boolean descendsSteeply,
        boolean opensCanopy,
        boolean fliesLikeAircraft) {
    private static final double STEP_S = 10;
    private static final double STEEP_MPS = 10;

    static MotionTraits of(String stem, Track track) {
        int steep = 0;
        int canopy = 0;
        int level = 0;
        boolean wasSteep = false;
        int from = nextFix(track, 0);
        while (from >= 0) {
            int to = nextFixAfter(track, track.time_s(from) + STEP_S);
            if (to < 0) {
                break;
            }
            double dt_s = track.time_s(to) - track.time_s(from);
            if (dt_s < 3 * STEP_S) {
                double sink_mps = -(height(track, to) - height(track, from)) / dt_s;
                double speed_mps = level_m(track, from, to) / dt_s;
                steep += sink_mps >= STEEP_MPS ? 1 : 0;
                wasSteep |= steep >= 2;
                canopy += wasSteep && sink_mps > 2 && sink_mps < 8 && speed_mps < 20 ? 1 : 0;
                level += speed_mps > 25 && sink_mps < 2 ? 1 : 0;
            }
            from = to;
        }
        return new MotionTraits(
                stem,
                track.has(Channel.POWER_LEVER)
                        || track.has(Channel.ELEVATOR)
                        || track.has(Channel.TORQUE)
                        || track.has(Channel.BLADE_ANGLE),
                steep >= 2,
                canopy >= 6,
                level >= 6);
    }

    boolean namedLike(String word) {
        return stem.toLowerCase(Locale.ROOT).contains(word);
    }

    private static int nextFix(Track track, int from) {
        for (int i = from; i < track.size(); i++) {
            if (track.hasPosition(i) && !Double.isNaN(height(track, i))) {
                return i;
            }
        }
        return -1;
    }

    private static int nextFixAfter(Track track, double t_s) {
        return nextFix(track, track.rowAtOrBefore(t_s) + 1);
    }

    private static double height(Track track, int row) {
        return track.value(Channel.HEIGHT, row);
    }

    private static double level_m(Track track, int a, int b) {
        double lat_deg = track.value(Channel.LATITUDE, a);
        double north = track.value(Channel.LATITUDE, b) - lat_deg;
        double east =
                Math.IEEEremainder(
                                track.value(Channel.LONGITUDE, b)
                                        - track.value(Channel.LONGITUDE, a),
                                360)
                        * Math.cos(Math.toRadians(lat_deg));
        return Math.hypot(north, east) * Wgs84.MEAN_DEGREE_M;
    }
}
