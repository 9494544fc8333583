package pairdown.debrief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.clock.LoadedLog;
import pairdown.height.AlignedLog;
import pairdown.time.Span;
import pairdown.track.LogReport;
import pairdown.track.Track;

/** What to think of each log that was read. */
final class Qualities {
    /** Longer than this without a fix is a gap. */
    private static final double GAP_S = 2;

    /** A log slower than the gap has a gap only beyond this many of its own steps. */
    private static final double GAP_STEPS = 2.5;

    private Qualities() {}

    /** Of a log that was placed on the attempt's axis. */
    static LogQuality of(AlignedLog log, int rejected, List<String> more) {
        double[] fixes_s = fixTimes(log);
        Optional<Span> span =
                fixes_s.length == 0
                        ? Optional.of(new Span(log.start_s(), log.end_s()))
                        : Optional.of(new Span(fixes_s[0], fixes_s[fixes_s.length - 1]));
        double[] steps_s = steps(fixes_s);
        OptionalDouble median_s = median(steps_s);
        return quality(
                log.participant().id(),
                log.track().report(),
                fixes_s.length,
                rate_Hz(median_s),
                span,
                gaps(fixes_s, median_s),
                rejected,
                more);
    }

    /** Of a log that was read but can't be placed in time. */
    static LogQuality unplaced(LoadedLog log, List<String> why) {
        Track track = log.track();
        double[] fixes_s = new double[track.size()];
        int n = 0;
        for (int i = 0; i < track.size(); i++) {
            if (track.hasPosition(i)) {
                fixes_s[n++] = track.time_s(i);
            }
        }
        OptionalDouble median_s = median(steps(Arrays.copyOf(fixes_s, n)));
        return quality(
                log.participant().id(),
                track.report(),
                n,
                rate_Hz(median_s),
                Optional.empty(),
                List.of(),
                0,
                why);
    }

    private static LogQuality quality(
            String participant,
            LogReport report,
            int fixes,
            OptionalDouble rate_Hz,
            Optional<Span> span,
            List<Span> gaps,
            int rejected,
            List<String> more) {
        List<String> warnings = new ArrayList<>(report.warnings());
        warnings.addAll(more);
        return new LogQuality(
                participant,
                report.file(),
                Optional.of(report.format()),
                fixes,
                rate_Hz,
                span,
                gaps,
                report.skipped(),
                report.skippedCount(),
                rejected,
                warnings);
    }

    private static double[] fixTimes(AlignedLog log) {
        double[] t_s = new double[log.size()];
        int n = 0;
        for (int i = 0; i < log.size(); i++) {
            if (log.track().hasPosition(i)) {
                t_s[n++] = log.time_s(i);
            }
        }
        return Arrays.copyOf(t_s, n);
    }

    private static double[] steps(double[] t_s) {
        double[] steps_s = new double[Math.max(0, t_s.length - 1)];
        for (int i = 0; i < steps_s.length; i++) {
            steps_s[i] = t_s[i + 1] - t_s[i];
        }
        return steps_s;
    }

    private static OptionalDouble median(double[] values) {
        double[] sorted = Arrays.stream(values).filter(v -> v > 0).sorted().toArray();
        return sorted.length == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(sorted[sorted.length / 2]);
    }

    private static OptionalDouble rate_Hz(OptionalDouble median_s) {
        return median_s.isPresent()
                ? OptionalDouble.of(1 / median_s.getAsDouble())
                : OptionalDouble.empty();
    }

    private static List<Span> gaps(double[] t_s, OptionalDouble median_s) {
        double threshold_s = Math.max(GAP_S, GAP_STEPS * median_s.orElse(0));
        List<Span> gaps = new ArrayList<>();
        for (int i = 1; i < t_s.length; i++) {
            if (t_s[i] - t_s[i - 1] > threshold_s) {
                gaps.add(new Span(t_s[i - 1], t_s[i]));
            }
        }
        return gaps;
    }
}
