package pairdown.clock;

import java.util.Arrays;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.track.Channel;
import pairdown.track.EvenSeries;
import pairdown.track.Track;
import pairdown.track.Velocities;
import pairdown.vector.Vec3;

/**
 * One log's motion made ready for comparison: velocity and level position, smoothed alike and on
 * points of one spacing, by the log's own clock.
 *
 * <p>Times are the log's own plus {@code base_s}, which puts logs with absolute time on one axis; a
 * log without has base 0.
 */
final class RideMotion {
    /** A log whose step is this share of the kernel is smoothed, not interpolated. */
    private static final double STEPS_PER_KERNEL = 0.8;

    /** Points per kernel width: a smoothed signal holds nothing finer. */
    private static final double POINTS_PER_KERNEL = 2;

    /** Longer logs are looked at for this long from their start (s); it bounds memory and time. */
    private static final double LONGEST_S = 36 * 3600.0;

    /** Effective samples in a kernel, per width over step: ∫w² of the triweight. */
    private static final double SAMPLES_PER_WIDTH = 3.5;

    final double start_s;
    final double step_s;
    final double kernel_s;

    /** East, north, up (m/s), NaN in holes. */
    final double[][] velocity;

    /** East, north (m) in a frame all logs share, NaN in holes. */
    final double[][] position;

    final boolean hasUp;
    final boolean differenced;

    /** Noise left after smoothing, one standard deviation over all axes together (m/s). */
    final double noise_mps;

    private RideMotion(
            double start_s,
            double step_s,
            double kernel_s,
            double[][] velocity,
            double[][] position,
            boolean hasUp,
            boolean differenced,
            double noise_mps) {
        this.start_s = start_s;
        this.step_s = step_s;
        this.kernel_s = kernel_s;
        this.velocity = velocity;
        this.position = position;
        this.hasUp = hasUp;
        this.differenced = differenced;
        this.noise_mps = noise_mps;
    }

    /** The least kernel of the doubling series from {@code least_s} that smooths the log. */
    static double kernelFor(Velocities v, double least_s) {
        double kernel_s = least_s;
        while (kernel_s < STEPS_PER_KERNEL * v.medianStep_s() * 0.999) {
            kernel_s *= 2;
        }
        return kernel_s;
    }

    static RideMotion of(
            Track track, Velocities v, double base_s, double kernel_s, LocalFrame frame) {
        double step_s = kernel_s / POINTS_PER_KERNEL;
        double first_s = Math.floor(track.start_s() / step_s) * step_s;
        double span_s = Math.min(LONGEST_S, track.end_s() - first_s);
        Grid grid = new Grid(first_s, step_s, 2 + (int) (span_s / step_s), kernel_s);
        double[][] velocity = {
            grid.smooth(v.levelTimes_s(), v.east_mps()),
            grid.smooth(v.levelTimes_s(), v.north_mps()),
            grid.smooth(v.verticalTimes_s(), v.up_mps())
        };
        double noise_mps =
                Math.hypot(
                        grid.noise(v.levelTimes_s(), v.east_mps(), velocity[0]) * Math.sqrt(2),
                        v.verticalCount() == 0
                                ? 0
                                : grid.noise(v.verticalTimes_s(), v.up_mps(), velocity[2]));
        double smoothed = Math.sqrt(Math.max(1, SAMPLES_PER_WIDTH * kernel_s / v.medianStep_s()));
        return new RideMotion(
                first_s + base_s,
                step_s,
                kernel_s,
                velocity,
                positions(track, grid, frame),
                v.verticalCount() > 0,
                v.isLevelDifferenced() || v.isVerticalDifferenced(),
                noise_mps / smoothed);
    }

    private static double[][] positions(Track track, Grid grid, LocalFrame frame) {
        double[] time_s = new double[track.size()];
        double[] east_m = new double[track.size()];
        double[] north_m = new double[track.size()];
        for (int i = 0; i < time_s.length; i++) {
            time_s[i] = track.time_s(i);
            boolean has = track.hasPosition(i);
            Vec3 p = has ? level(track, i, frame) : Vec3.ZERO;
            east_m[i] = has ? p.x() : Double.NaN;
            north_m[i] = has ? p.y() : Double.NaN;
        }
        return new double[][] {grid.smooth(time_s, east_m), grid.smooth(time_s, north_m)};
    }

    private static Vec3 level(Track track, int row, LocalFrame frame) {
        return frame.toEnu(
                new Geodetic(
                        track.value(Channel.LATITUDE, row),
                        track.value(Channel.LONGITUDE, row),
                        0));
    }

    int size() {
        return velocity[0].length;
    }

    double time_s(int k) {
        return start_s + k * step_s;
    }

    double end_s() {
        return time_s(size() - 1);
    }

    /** Even points by a log's own clock. */
    private record Grid(double start_s, double step_s, int count, double kernel_s) {
        double[] smooth(double[] time_s, double[] y) {
            EvenSeries s = EvenSeries.smooth(time_s, y, start_s, step_s, count, kernel_s);
            double[] out = new double[count];
            for (int k = 0; k < count; k++) {
                out[k] = s.value(k);
            }
            return out;
        }

        /**
         * Scatter of samples about the smoothed signal: 1.4826 × the median size, some 500 asked.
         */
        double noise(double[] time_s, double[] y, double[] smooth) {
            EvenSeries s = EvenSeries.of(start_s, step_s, smooth);
            int stride = Math.max(1, y.length / 500);
            double[] off = new double[y.length / stride + 1];
            int n = 0;
            for (int i = 0; i < y.length; i += stride) {
                double d = Math.abs(y[i] - s.at(time_s[i]));
                if (!Double.isNaN(d)) {
                    off[n++] = d;
                }
            }
            Arrays.sort(off, 0, n);
            return n == 0 ? 0 : 1.4826 * off[n / 2];
        }
    }
}
