package pairdown.motion;

import java.util.Arrays;
import java.util.stream.IntStream;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.geodesy.Wgs84;
import pairdown.height.AlignedLog;
import pairdown.track.Channel;
import pairdown.track.UnusableInputException;
import pairdown.vector.Vec3;

/**
 * Turns a log's rows into measurements in the attempt's frame. Rows without a position and rows
 * that merely repeat the fix before (a recorder faster than its receiver) are left out; a row
 * without a height still measures east and north. Velocities are turned from the axes at the fix
 * into the frame's; where only speed and track are logged the sink needed for that turn is taken
 * from the heights, and no vertical velocity is claimed.
 */
final class FixReader {
    private static final double MOVING_MPS = 1;
    private static final double FASTEST_MPS = 350;
    private static final int LEADERS = 4;
    private static final double LATENCY_SIGMAS = 3;
    private static final double LEAST_LATENCY_S = 0.03;

    private final AlignedLog log;
    private final LocalFrame frame;
    private final int[] rows;
    private final double[] time_s;
    private final double[][] position;
    private final double[][] velocity;

    private FixReader(AlignedLog log, LocalFrame frame) throws UnusableInputException {
        this.log = log;
        this.frame = frame;
        int[] all = IntStream.range(0, log.size()).filter(this::isFix).toArray();
        if (all.length < 2) {
            throw new UnusableInputException(
                    "fewer than two fixes with a position",
                    log.ref().file(),
                    "use another log of " + log.participant().id() + ", or leave it out");
        }
        this.rows = Arrays.stream(all).skip(firstSound(all)).toArray();
        double latency_s = latency_s();
        this.time_s = Arrays.stream(rows).mapToDouble(r -> log.time_s(r) + latency_s).toArray();
        this.position = new double[Fixes.AXES][rows.length];
        this.velocity = new double[Fixes.AXES][rows.length];
    }

    /**
     * @throws UnusableInputException if the log has fewer than two positions
     */
    static Fixes read(AlignedLog log, LocalFrame frame, SmootherSettings settings)
            throws UnusableInputException {
        return new FixReader(log, frame).read(settings);
    }

    private boolean isFix(int row) {
        if (!log.track().hasPosition(row)) {
            return false;
        }
        return row == 0 || !repeats(row);
    }

    private boolean repeats(int row) {
        if (log.time_s(row) <= log.time_s(row - 1)) {
            return log.track().hasPosition(row - 1);
        }
        return same(Channel.LATITUDE, row)
                && same(Channel.LONGITUDE, row)
                && same(Channel.HEIGHT, row)
                && same(Channel.VELOCITY_NORTH, row)
                && same(Channel.GROUND_SPEED, row)
                && speed(row) > MOVING_MPS;
    }

    private boolean same(Channel channel, int row) {
        return Double.compare(log.value(channel, row), log.value(channel, row - 1)) == 0;
    }

    private double speed(int row) {
        double north = log.value(Channel.VELOCITY_NORTH, row);
        double v = Math.hypot(north, log.value(Channel.VELOCITY_EAST, row));
        return Double.isNaN(v) ? log.value(Channel.GROUND_SPEED, row) : v;
    }

    /** The first fix that its next few followers agree with: a cold start may begin anywhere. */
    private int firstSound(int[] all) {
        for (int i = 0; i + LEADERS < all.length && i < 10 * LEADERS; i++) {
            Geodetic here = log.track().positionAsRead(all[i]);
            boolean agreed = true;
            for (int j = i + 1; j <= i + LEADERS; j++) {
                double reach_m = FASTEST_MPS * (log.time_s(all[j]) - log.time_s(all[i])) + 100;
                Vec3 there = LocalFrame.at(here).toEnu(log.track().positionAsRead(all[j]));
                agreed &= there.norm() < reach_m;
            }
            if (agreed) {
                return i;
            }
        }
        return 0;
    }

    private Fixes read(SmootherSettings settings) throws UnusableInputException {
        readPositions();
        readVelocities();
        ReceiverNoise noise = ReceiverGrade.of(log, settings.receiver());
        return new Fixes(
                time_s,
                rows,
                position,
                velocity,
                positionVariances(noise),
                velocityVariances(noise),
                -latency_s(),
                noise);
    }

    private void readPositions() throws UnusableInputException {
        double height_m = firstHeight();
        for (int i = 0; i < rows.length; i++) {
            boolean hasHeight = log.hasFix(rows[i]);
            Geodetic place =
                    hasHeight
                            ? log.position(rows[i])
                            : new Geodetic(
                                    log.value(Channel.LATITUDE, rows[i]),
                                    log.value(Channel.LONGITUDE, rows[i]),
                                    height_m);
            height_m = place.height_m();
            Vec3 enu_m = frame.toEnu(place);
            position[0][i] = enu_m.x();
            position[1][i] = enu_m.y();
            position[2][i] = hasHeight ? enu_m.z() : Double.NaN;
        }
    }

    private double firstHeight() throws UnusableInputException {
        for (int row : rows) {
            if (log.hasFix(row)) {
                return log.position(row).height_m();
            }
        }
        throw new UnusableInputException(
                "no satellite heights",
                log.ref().file(),
                "use a log with heights: a pressure height alone is no place in space");
    }

    private void readVelocities() {
        boolean components = log.has(Channel.VELOCITY_NORTH) && log.has(Channel.VELOCITY_EAST);
        for (int i = 0; i < rows.length; i++) {
            Vec3 atFix = components ? components(rows[i]) : speedAndTrack(rows[i]);
            boolean hasVertical = !Double.isNaN(atFix.z());
            Vec3 whole = hasVertical ? atFix : new Vec3(atFix.x(), atFix.y(), climb_mps(i));
            Vec3 turned = turn(whole, i);
            velocity[0][i] = turned.x();
            velocity[1][i] = turned.y();
            velocity[2][i] = hasVertical ? turned.z() : Double.NaN;
        }
    }

    private Vec3 components(int row) {
        return new Vec3(
                log.value(Channel.VELOCITY_EAST, row),
                log.value(Channel.VELOCITY_NORTH, row),
                -log.value(Channel.VELOCITY_DOWN, row));
    }

    private Vec3 speedAndTrack(int row) {
        double speed_mps = log.value(Channel.GROUND_SPEED, row);
        double track_rad = Math.toRadians(log.value(Channel.TRACK, row));
        return new Vec3(
                speed_mps * Math.sin(track_rad),
                speed_mps * Math.cos(track_rad),
                -log.value(Channel.VELOCITY_DOWN, row));
    }

    /** Rate of height over the neighbours; 0 where they have none. */
    private double climb_mps(int i) {
        int a = Math.max(0, i - 1);
        int b = Math.min(rows.length - 1, i + 1);
        double rate = (position[2][b] - position[2][a]) / (time_s[b] - time_s[a]);
        return Double.isFinite(rate) && Math.abs(rate) < FASTEST_MPS ? rate : 0;
    }

    /**
     * From the level axes at the fix to the frame's. For e and n from the origin the fix's axes are
     * tilted by e/r and n/r and, meridians converging, turned by e·tan(φ)/r: first order, good to
     * 1e-5 of the velocity 20 km out.
     */
    private Vec3 turn(Vec3 v, int i) {
        double east = position[0][i] / Wgs84.MEAN_RADIUS_M;
        double north = position[1][i] / Wgs84.MEAN_RADIUS_M;
        double turn = east * Math.tan(Math.toRadians(frame.origin().latitude_deg()));
        return new Vec3(
                v.x() - turn * v.y() + east * v.z(),
                v.y() + turn * v.x() + north * v.z(),
                v.z() - east * v.x() - north * v.y());
    }

    private float[][] positionVariances(ReceiverNoise noise) {
        double level2 = square(Quantisation.sigma(degreeStep() * Wgs84.MEAN_DEGREE_M));
        double vertical2 =
                square(
                        Quantisation.sigma(
                                Quantisation.metreStep(
                                        rows.length, i -> log.value(Channel.HEIGHT, rows[i]))));
        double[] levelShare = relative(Channel.HORIZONTAL_ACCURACY);
        double[] verticalShare = relative(Channel.VERTICAL_ACCURACY);
        double jitter_s = hasWholeSecondTimes() ? WholeSeconds.jitter_s(time_s, position) : 0;
        float[][] variance = new float[Fixes.AXES][rows.length];
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            double[] share = axis == 2 ? verticalShare : levelShare;
            for (int i = 0; i < rows.length; i++) {
                double late_m = jitter_s > 0 ? jitter_s * differenced(axis, i) : 0;
                variance[axis][i] =
                        (float)
                                (square(noise.white_m(axis) * share[i])
                                        + (axis == 2 ? vertical2 : level2)
                                        + square(late_m));
            }
        }
        return variance;
    }

    private double degreeStep() {
        return Math.min(
                Quantisation.degreeStep(rows.length, i -> log.value(Channel.LATITUDE, rows[i])),
                Quantisation.degreeStep(rows.length, i -> log.value(Channel.LONGITUDE, rows[i])));
    }

    /** Plain IGC times may be cut to whole seconds, whenever the receiver had its fix. */
    private boolean hasWholeSecondTimes() {
        return log.track().report().format().equals("igc") && WholeSeconds.only(log.track());
    }

    /** Over more than the neighbours, whose own times were cut, too. */
    private double differenced(int axis, int i) {
        int a = Math.max(0, i - WholeSeconds.REACH);
        int b = Math.min(rows.length - 1, i + WholeSeconds.REACH);
        double rate = (position[axis][b] - position[axis][a]) / (time_s[b] - time_s[a]);
        return Double.isFinite(rate) ? Math.min(FASTEST_MPS, Math.abs(rate)) : 0;
    }

    private float[][] velocityVariances(ReceiverNoise noise) {
        double[] share = relative(Channel.SPEED_ACCURACY);
        float[][] variance = new float[Fixes.AXES][rows.length];
        for (int axis = 0; axis < Fixes.AXES; axis++) {
            for (int i = 0; i < rows.length; i++) {
                variance[axis][i] = (float) square(noise.velocity_mps(axis) * share[i]);
            }
        }
        return variance;
    }

    /** A stated accuracy over its own median, by fix: when it was better or worse than usual. */
    private double[] relative(Channel channel) {
        double[] values = new double[rows.length];
        Arrays.setAll(values, i -> log.value(channel, rows[i]));
        double median = ReceiverGrade.median(values);
        for (int i = 0; i < values.length; i++) {
            boolean stated = values[i] > 0 && median > 0;
            values[i] = stated ? Math.max(0.3, Math.min(30, values[i] / median)) : 1;
        }
        return values;
    }

    /**
     * How far position lags velocity, where the log itself showed it clearly. The common clock is
     * that of positions, and the smoother's states are at the instants velocities are of: those lie
     * this much later than the row's time (earlier, where velocities lag).
     */
    private double latency_s() {
        return log.clock()
                .latency_s()
                .filter(e -> Math.abs(e.value()) > LATENCY_SIGMAS * e.sigma())
                .filter(e -> Math.abs(e.value()) > LEAST_LATENCY_S)
                .map(e -> e.value())
                .orElse(0.0);
    }

    private static double square(double x) {
        return x * x;
    }
}
