package pairdown.tail;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import pairdown.stats.Bootstrap;
import pairdown.track.Series;

/**
 * A figure averaged about all power changes of one direction in the dives, with a bootstrap band
 * over the changes: what usually followed. Each curve has its own mean over the second before the
 * change taken off, and the average of those means is added again, so that levels of different
 * descents do not widen the band.
 *
 * @param figure its name in {@link TailControl#figures}
 * @param towardReverse which changes
 * @param changes how many had the figure about them
 * @param start_s first instant, relative to the change
 * @param step_s from one point to the next
 * @param band pointwise mean and 95 % interval
 */
public record EventAverage(
        String figure,
        boolean towardReverse,
        int changes,
        double start_s,
        double step_s,
        List<Bootstrap.BandPoint> band) {
    /** The level before a change is taken over this long. */
    private static final double BEFORE_S = 1;

    public EventAverage {
        band = List.copyOf(band);
    }

    /** Instant of a point, relative to the change. */
    public double time_s(int i) {
        return start_s + i * step_s;
    }

    /**
     * The average over the dives' power changes of any number of attempts: one for an attempt's
     * own, all for a season's.
     */
    public static EventAverage over(
            Collection<TailControl> attempts,
            String figure,
            boolean towardReverse,
            TailSettings.Review settings) {
        List<double[]> curves = new ArrayList<>();
        for (TailControl t : attempts) {
            t.figure(figure).ifPresent(s -> add(curves, s, t, towardReverse, settings));
        }
        return of(figure, towardReverse, curves, settings);
    }

    /** Of curves made by {@link #about}; those with no level before the change don't count. */
    static EventAverage of(
            String figure,
            boolean towardReverse,
            List<double[]> about,
            TailSettings.Review settings) {
        List<double[]> curves =
                about.stream().filter(c -> Double.isFinite(before(c, settings))).toList();
        return new EventAverage(
                figure,
                towardReverse,
                curves.size(),
                -settings.averageBefore_s(),
                settings.averageStep_s(),
                settings.bootstrap().band(level(curves, settings), settings.confidence()));
    }

    private static void add(
            List<double[]> curves,
            Series series,
            TailControl t,
            boolean towardReverse,
            TailSettings.Review settings) {
        for (PowerChange change : t.powerChanges()) {
            boolean counts =
                    change.towardReverse() == towardReverse && t.review().inDive(change.time_s());
            if (!counts) {
                continue;
            }
            curves.add(about(series, change.time_s(), settings));
        }
    }

    /** A figure at the steps about an instant, to a thousandth. */
    static double[] about(Series series, double time_s, TailSettings.Review settings) {
        double step_s = settings.averageStep_s();
        int points =
                (int) Math.round((settings.averageBefore_s() + settings.averageAfter_s()) / step_s)
                        + 1;
        double[] curve = new double[points];
        for (int i = 0; i < points; i++) {
            double value = series.at(time_s - settings.averageBefore_s() + i * step_s);
            curve[i] = Math.rint(1000 * value) / 1000;
        }
        return curve;
    }

    private static List<double[]> level(List<double[]> curves, TailSettings.Review settings) {
        double common = curves.stream().mapToDouble(c -> before(c, settings)).average().orElse(0);
        List<double[]> levelled = new ArrayList<>();
        for (double[] curve : curves) {
            double shift = common - before(curve, settings);
            double[] moved = curve.clone();
            for (int i = 0; i < moved.length; i++) {
                moved[i] += shift;
            }
            levelled.add(moved);
        }
        return levelled;
    }

    private static double before(double[] curve, TailSettings.Review settings) {
        int zero = (int) Math.round(settings.averageBefore_s() / settings.averageStep_s());
        int from = Math.max(0, zero - (int) Math.round(BEFORE_S / settings.averageStep_s()));
        double sum = 0;
        int n = 0;
        for (int i = from; i <= zero; i++) {
            if (Double.isFinite(curve[i])) {
                sum += curve[i];
                n++;
            }
        }
        return n == 0 ? Double.NaN : sum / n;
    }
}
