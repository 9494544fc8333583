package pairdown.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.clock.LoadedLog;
import pairdown.height.AlignedLog;
import pairdown.time.Span;
import pairdown.track.Gaps;
import pairdown.track.LogReport;
import pairdown.track.Track;

/** What to think of each log that was read. */
final class Qualities {
    private Qualities() {}

    /** Of a log that was placed on the attempt's axis. */
    static LogQuality of(AlignedLog log, int rejected, List<String> more) {
        Track track = log.track();
        int first = track.firstFix().orElse(0);
        int last = track.lastFix().orElse(track.size() - 1);
        return quality(
                log.participant().id(),
                track,
                Optional.of(new Span(log.time_s(first), log.time_s(last))),
                Gaps.of(track, log::time_s),
                rejected,
                more);
    }

    /** Of a log that was read but can't be placed in time. */
    static LogQuality unplaced(LoadedLog log, List<String> why) {
        return quality(log.participant().id(), log.track(), Optional.empty(), List.of(), 0, why);
    }

    private static LogQuality quality(
            String participant,
            Track track,
            Optional<Span> span,
            List<Span> gaps,
            int rejected,
            List<String> more) {
        LogReport report = track.report();
        double step_s = Gaps.usualStep_s(track);
        List<String> warnings = new ArrayList<>(report.warnings());
        warnings.addAll(more);
        return new LogQuality(
                participant,
                report.file(),
                Optional.of(report.format()),
                track.fixes(),
                step_s > 0 ? OptionalDouble.of(1 / step_s) : OptionalDouble.empty(),
                span,
                gaps,
                report.skipped(),
                report.skippedCount(),
                rejected,
                warnings);
    }
}
