package pairdown.track;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import pairdown.geodesy.Wgs84;

/**
 * A log's velocity in east, north, up at its own place: the receiver's where it has one, else the
 * difference of positions, which is tagged with the middle of the two and flagged, since its noise
 * grows with the rate.
 */
public final class Velocities {
    /** Positions further apart than this are a hole, unless the log is slower throughout. */
    private static final double MAX_STEP_S = 2;

    /** … by this factor over its median step. */
    private static final double MAX_STEP_FACTOR = 2.5;

    /** A speed column that reads 0 while positions move this far is not a speed (m). */
    private static final double DEAD_SPEED_M = 200;

    private final Samples level;
    private final Samples vertical;
    private final double medianStep_s;

    private Velocities(Samples level, Samples vertical, double medianStep_s) {
        this.level = level;
        this.vertical = vertical;
        this.medianStep_s = medianStep_s;
    }

    /** On the log's own time and heights as read. */
    public static Velocities of(Track track) {
        return of(track, track::time_s, row -> track.value(Channel.HEIGHT, row));
    }

    /**
     * On another time and another height for each row.
     *
     * @param time_s by row, never falling
     * @param height_m by row, NaN where there is none
     */
    public static Velocities of(
            Track track, IntToDoubleFunction time_s, IntToDoubleFunction height_m) {
        double step_s = medianStep_s(track, time_s);
        double maxStep_s = Math.max(MAX_STEP_S, MAX_STEP_FACTOR * step_s);
        Samples level = ownLevel(track, time_s);
        if (2 * level.count < track.fixes() || isDead(level)) {
            Samples differenced = differencedLevel(track, time_s, maxStep_s);
            boolean ownWillDo = level.count > 0 && path_m(differenced) < DEAD_SPEED_M;
            level = ownWillDo && 2 * level.count >= track.fixes() ? level : differenced;
        }
        Samples vertical = ownVertical(track, time_s);
        if (2 * vertical.count < track.fixes()) {
            vertical = differencedHeight(track, time_s, height_m, maxStep_s);
        }
        return new Velocities(level, vertical, step_s);
    }

    /**
     * From positions and heights alone, on the log's own time: what its positions say by
     * themselves.
     */
    public static Velocities ofPositions(Track track) {
        double step_s = medianStep_s(track, track::time_s);
        double maxStep_s = Math.max(MAX_STEP_S, MAX_STEP_FACTOR * step_s);
        return new Velocities(
                differencedLevel(track, track::time_s, maxStep_s),
                differencedHeight(
                        track, track::time_s, row -> track.value(Channel.HEIGHT, row), maxStep_s),
                step_s);
    }

    /** Median time between fixes (s), NaN under two fixes. */
    public double medianStep_s() {
        return medianStep_s;
    }

    public boolean isLevelDifferenced() {
        return level.differenced;
    }

    public boolean isVerticalDifferenced() {
        return vertical.differenced;
    }

    public int levelCount() {
        return level.count;
    }

    public int verticalCount() {
        return vertical.count;
    }

    /** Times of the level samples, a copy. */
    public double[] levelTimes_s() {
        return Arrays.copyOf(level.time_s, level.count);
    }

    public double[] east_mps() {
        return Arrays.copyOf(level.a, level.count);
    }

    public double[] north_mps() {
        return Arrays.copyOf(level.b, level.count);
    }

    /** Times of the vertical samples, a copy. */
    public double[] verticalTimes_s() {
        return Arrays.copyOf(vertical.time_s, vertical.count);
    }

    public double[] up_mps() {
        return Arrays.copyOf(vertical.a, vertical.count);
    }

    private static double medianStep_s(Track track, IntToDoubleFunction time_s) {
        double[] steps = new double[track.size()];
        int count = 0;
        double last_s = Double.NaN;
        for (int i = 0; i < track.size(); i++) {
            if (!track.hasPosition(i)) {
                continue;
            }
            double step_s = time_s.applyAsDouble(i) - last_s;
            last_s = time_s.applyAsDouble(i);
            if (step_s > 0) {
                steps[count++] = step_s;
            }
        }
        Arrays.sort(steps, 0, count);
        return count == 0 ? Double.NaN : steps[count / 2];
    }

    private static Samples ownLevel(Track track, IntToDoubleFunction time_s) {
        Samples out = new Samples(track.size(), false);
        boolean components = track.has(Channel.VELOCITY_NORTH) && track.has(Channel.VELOCITY_EAST);
        for (int i = 0; i < track.size(); i++) {
            double north_mps = track.value(Channel.VELOCITY_NORTH, i);
            double east_mps = track.value(Channel.VELOCITY_EAST, i);
            if (!components) {
                double speed_mps = track.value(Channel.GROUND_SPEED, i);
                double track_rad = Math.toRadians(track.value(Channel.TRACK, i));
                boolean still = speed_mps == 0;
                north_mps = still ? 0 : speed_mps * Math.cos(track_rad);
                east_mps = still ? 0 : speed_mps * Math.sin(track_rad);
            }
            if (!Double.isNaN(north_mps) && !Double.isNaN(east_mps)) {
                out.add(time_s.applyAsDouble(i), east_mps, north_mps);
            }
        }
        return out;
    }

    private static Samples ownVertical(Track track, IntToDoubleFunction time_s) {
        Samples out = new Samples(track.size(), false);
        for (int i = 0; track.has(Channel.VELOCITY_DOWN) && i < track.size(); i++) {
            double down_mps = track.value(Channel.VELOCITY_DOWN, i);
            if (!Double.isNaN(down_mps)) {
                out.add(time_s.applyAsDouble(i), -down_mps, 0);
            }
        }
        return out;
    }

    private static Samples differencedLevel(
            Track track, IntToDoubleFunction time_s, double maxStep_s) {
        Samples out = new Samples(track.size(), true);
        int last = -1;
        for (int i = 0; i < track.size(); i++) {
            if (!track.hasPosition(i)) {
                continue;
            }
            double step_s = last < 0 ? 0 : time_s.applyAsDouble(i) - time_s.applyAsDouble(last);
            if (step_s > 0 && step_s <= maxStep_s) {
                Radii radii = Radii.at(track.value(Channel.LATITUDE, i));
                double north_m =
                        radii.north_m(
                                track.value(Channel.LATITUDE, i)
                                        - track.value(Channel.LATITUDE, last));
                double turn_deg =
                        track.value(Channel.LONGITUDE, i) - track.value(Channel.LONGITUDE, last);
                double east_m = radii.east_m(Math.IEEEremainder(turn_deg, 360));
                out.add(time_s.applyAsDouble(last) + step_s / 2, east_m / step_s, north_m / step_s);
            }
            last = step_s > 0 || last < 0 ? i : last;
        }
        return out;
    }

    /**
     * Metres to a radian north and east on the ellipsoid. Good to 1e-6 over the step between two
     * fixes.
     */
    private record Radii(double meridian_m, double parallel_m) {
        static Radii at(double latitude_deg) {
            double phi_rad = Math.toRadians(latitude_deg);
            double sin = Math.sin(phi_rad);
            double w2 = 1 - Wgs84.E2 * sin * sin;
            double n_m = Wgs84.A_M / Math.sqrt(w2);
            return new Radii(n_m * (1 - Wgs84.E2) / w2, n_m * Math.cos(phi_rad));
        }

        double north_m(double dLatitude_deg) {
            return Math.toRadians(dLatitude_deg) * meridian_m;
        }

        double east_m(double dLongitude_deg) {
            return Math.toRadians(dLongitude_deg) * parallel_m;
        }
    }

    private static Samples differencedHeight(
            Track track, IntToDoubleFunction time_s, IntToDoubleFunction height, double maxStep_s) {
        Samples out = new Samples(track.size(), true);
        int last = -1;
        for (int i = 0; i < track.size(); i++) {
            if (Double.isNaN(height.applyAsDouble(i))) {
                continue;
            }
            double step_s = last < 0 ? 0 : time_s.applyAsDouble(i) - time_s.applyAsDouble(last);
            if (step_s > 0 && step_s <= maxStep_s) {
                double rise_m = height.applyAsDouble(i) - height.applyAsDouble(last);
                out.add(time_s.applyAsDouble(last) + step_s / 2, rise_m / step_s, 0);
            }
            last = step_s > 0 || last < 0 ? i : last;
        }
        return out;
    }

    private static boolean isDead(Samples s) {
        for (int i = 0; i < s.count; i++) {
            if (s.a[i] != 0 || s.b[i] != 0) {
                return false;
            }
        }
        return true;
    }

    private static double path_m(Samples s) {
        double sum_m = 0;
        for (int i = 1; i < s.count; i++) {
            double step_s = Math.min(MAX_STEP_S, s.time_s[i] - s.time_s[i - 1]);
            sum_m += Math.hypot(s.a[i], s.b[i]) * step_s;
        }
        return sum_m;
    }

    /** Growing columns of one or two components. */
    private static final class Samples {
        final double[] time_s;
        final double[] a;
        final double[] b;
        final boolean differenced;
        int count;

        Samples(int capacity, boolean differenced) {
            this.time_s = new double[capacity];
            this.a = new double[capacity];
            this.b = new double[capacity];
            this.differenced = differenced;
        }

        void add(double t_s, double first, double second) {
            time_s[count] = t_s;
            a[count] = first;
            b[count++] = second;
        }
    }
}
