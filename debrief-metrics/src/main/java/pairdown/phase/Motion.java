package pairdown.phase;

import java.util.Arrays;
import java.util.Optional;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.height.AlignedLog;
import pairdown.motion.Trajectory;
import pairdown.track.EvenSeries;
import pairdown.track.Velocities;
import pairdown.units.Estimate;
import pairdown.vector.Vec3;

/**
 * One participant's velocity as phases are read from it: smoothed and even for the long view, and
 * the samples themselves for the instant of an exit.
 */
final class Motion {
    /** A log slower than this share of the kernel a sample needs a wider one. */
    private static final double KERNEL_PER_STEP = 0.8;

    /** A log of days is looked at more coarsely, to bound memory: 28 h at the usual spacing. */
    private static final int MOST_POINTS = 500_000;

    private final EvenSeries east;
    private final EvenSeries north;
    private final EvenSeries up;
    private final Samples samples;
    private final double clockSigma_s;

    private Motion(
            EvenSeries east,
            EvenSeries north,
            EvenSeries up,
            Samples samples,
            double clockSigma_s) {
        this.east = east;
        this.north = north;
        this.up = up;
        this.samples = samples;
        this.clockSigma_s = clockSigma_s;
    }

    /**
     * Samples in order of time: velocities, level and vertical ones at their own times, and places
     * from the first fix on (east and north, up), which a trajectory has none of.
     */
    record Samples(Columns level, Columns vertical, Columns place, Columns height, double step_s) {}

    /** Columns of samples, read by index; each is a mean over {@code blur_s}. */
    static final class Columns {
        static final Columns NONE = new Columns(new double[0], new double[0], new double[0], 0);

        private final double[] time_s;
        private final double[] first;
        private final double[] second;

        private final double blur_s;

        Columns(double[] time_s, double[] first, double[] second, double blur_s) {
            this.blur_s = blur_s;
            this.time_s = time_s;
            this.first = first;
            this.second = second;
        }

        int size() {
            return time_s.length;
        }

        /** The first sample at or after an instant. */
        int firstFrom(double t_s) {
            int at = Arrays.binarySearch(time_s, t_s);
            return at >= 0 ? at : -at - 1;
        }

        /** Differences of positions are mean velocities; 0 for a receiver's own. */
        double blur_s() {
            return blur_s;
        }

        double time_s(int i) {
            return time_s[i];
        }

        /** East, or up. */
        double first(int i) {
            return first[i];
        }

        /** North, or as {@link #first}. */
        double second(int i) {
            return second[i];
        }
    }

    static Motion of(AlignedLog log, PhaseSettings settings) {
        Velocities v =
                Velocities.of(
                        log.track(),
                        log::time_s,
                        row -> log.hasFix(row) ? log.position(row).height_m() : Double.NaN);
        double step_s = Double.isNaN(v.medianStep_s()) ? settings.step_s() : v.medianStep_s();
        Columns level =
                new Columns(
                        shifted(v.levelTimes_s(), log, v.isLevelDifferenced()),
                        v.east_mps(),
                        v.north_mps(),
                        v.isLevelDifferenced() ? step_s : 0);
        double[] up = v.up_mps();
        Columns vertical =
                new Columns(
                        shifted(v.verticalTimes_s(), log, v.isVerticalDifferenced()),
                        up,
                        up,
                        v.isVerticalDifferenced() ? step_s : 0);
        Columns[] places = places(log);
        return of(
                new Samples(level, vertical, places[0], places[1], step_s),
                log.start_s(),
                log.end_s(),
                log.clock().doubt().absolute_s(),
                settings);
    }

    /** Places in a level frame at the first fix: east and north, and up. */
    private static Columns[] places(AlignedLog log) {
        double[][] c = new double[4][log.size()];
        int count = 0;
        Optional<LocalFrame> frame = Optional.empty();
        for (int row = 0; row < log.size(); row++) {
            if (log.hasFix(row)) {
                Geodetic at = log.position(row);
                LocalFrame used = frame.orElseGet(() -> LocalFrame.at(at));
                frame = Optional.of(used);
                Vec3 p = used.toEnu(at);
                c[0][count] = log.time_s(row);
                c[1][count] = p.x();
                c[2][count] = p.y();
                c[3][count++] = p.z();
            }
        }
        for (int i = 0; i < c.length; i++) {
            c[i] = Arrays.copyOf(c[i], count);
        }
        return new Columns[] {new Columns(c[0], c[1], c[2], 0), new Columns(c[0], c[3], c[3], 0)};
    }

    /** A receiver's filtered velocities are late against its positions; differences are not. */
    private static double[] shifted(double[] time_s, AlignedLog log, boolean differenced) {
        double late_s = log.clock().latency_s().map(Estimate::value).orElse(0.0);
        for (int i = 0; !differenced && i < time_s.length; i++) {
            time_s[i] += late_s;
        }
        return time_s;
    }

    static Motion of(Trajectory trajectory, PhaseSettings settings) {
        int count = 1 + (int) ((trajectory.end_s() - trajectory.start_s()) / settings.step_s());
        double[][] columns = new double[4][count];
        double[] state = new double[Trajectory.VALUES];
        for (int k = 0; k < count; k++) {
            columns[0][k] =
                    Math.min(trajectory.end_s(), trajectory.start_s() + k * settings.step_s());
            trajectory.read(columns[0][k], state);
            for (int axis = 0; axis < 3; axis++) {
                columns[axis + 1][k] = state[3 + axis];
            }
        }
        return of(
                new Samples(
                        new Columns(columns[0], columns[1], columns[2], 0),
                        new Columns(columns[0], columns[3], columns[3], 0),
                        Columns.NONE,
                        Columns.NONE,
                        settings.step_s()),
                trajectory.start_s(),
                trajectory.end_s(),
                0,
                settings);
    }

    private static Motion of(
            Samples s, double start_s, double end_s, double clockSigma_s, PhaseSettings settings) {
        double kernel_s = Math.max(settings.kernel_s(), KERNEL_PER_STEP * s.step_s());
        double step_s = Math.max(settings.step_s(), (end_s - start_s) / MOST_POINTS);
        int count = 1 + (int) Math.ceil((end_s - start_s) / step_s);
        return new Motion(
                EvenSeries.smooth(
                        s.level().time_s, s.level().first, start_s, step_s, count, kernel_s),
                EvenSeries.smooth(
                        s.level().time_s, s.level().second, start_s, step_s, count, kernel_s),
                EvenSeries.smooth(
                        s.vertical().time_s, s.vertical().first, start_s, step_s, count, kernel_s),
                s,
                clockSigma_s);
    }

    int size() {
        return up.size();
    }

    double time_s(int k) {
        return up.time_s(k);
    }

    double start_s() {
        return up.start_s();
    }

    double end_s() {
        return up.end_s();
    }

    /** Point at or before an instant, held inside the series. */
    int index(double t_s) {
        return Math.max(0, Math.min(size() - 1, (int) ((t_s - start_s()) / up.step_s())));
    }

    int points(double duration_s) {
        return Math.max(1, (int) Math.round(duration_s / up.step_s()));
    }

    double step_s() {
        return up.step_s();
    }

    /** Whether the smoothed motion does not reach all through a stretch. */
    boolean isHoled(double from_s, double to_s) {
        for (double t_s = from_s; t_s <= to_s; t_s += up.step_s()) {
            if (Double.isNaN(east.at(t_s) + north.at(t_s) + up.at(t_s))) {
                return true;
            }
        }
        return false;
    }

    EvenSeries east() {
        return east;
    }

    EvenSeries north() {
        return north;
    }

    EvenSeries up() {
        return up;
    }

    Samples samples() {
        return samples;
    }

    double clockSigma_s() {
        return clockSigma_s;
    }

    /** Sink, positive down (m/s); NaN in a hole. */
    double sink_mps(int k) {
        return -up.value(k);
    }

    double levelSpeed_mps(int k) {
        return Math.hypot(east.value(k), north.value(k));
    }

    double speed_mps(int k) {
        return Math.hypot(levelSpeed_mps(k), up.value(k));
    }

    /** When it first is faster than this; its end if it never is. */
    double movesFrom_s(double speed_mps) {
        for (int k = 0; k < size(); k++) {
            if (speed_mps(k) > speed_mps) {
                return time_s(k);
            }
        }
        return end_s();
    }

    /** Rate of change of speed (m/s²), NaN at ends and holes. */
    double speedRate_mps2(int k) {
        return k < 1 || k + 1 >= size()
                ? Double.NaN
                : (speed_mps(k + 1) - speed_mps(k - 1)) / (2 * up.step_s());
    }

    /** Size of the acceleration (m/s²), NaN at ends and holes. */
    double acceleration_mps2(int k) {
        if (k < 1 || k + 1 >= size()) {
            return Double.NaN;
        }
        double level =
                Math.hypot(
                        east.value(k + 1) - east.value(k - 1),
                        north.value(k + 1) - north.value(k - 1));
        return Math.hypot(level, up.value(k + 1) - up.value(k - 1)) / (2 * up.step_s());
    }

    /** Size of the velocity difference to another at one of this motion's points; NaN in a hole. */
    double apart_mps(Motion other, int k) {
        double t_s = time_s(k);
        double level =
                Math.hypot(
                        east.value(k) - other.east.at(t_s), north.value(k) - other.north.at(t_s));
        return Math.hypot(level, up.value(k) - other.up.at(t_s));
    }
}
