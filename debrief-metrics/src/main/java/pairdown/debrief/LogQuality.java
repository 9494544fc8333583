package pairdown.debrief;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;
import pairdown.track.Skipped;

/**
 * What to think of one log.
 *
 * @param format as read; empty if it could not be
 * @param fixes positions read, duplicates dropped
 * @param rate_Hz median, where there are two fixes
 * @param span on the attempt's axis; empty if it could not be placed
 * @param gaps without a fix
 * @param skipped first examples
 * @param skippedCount all of them
 * @param rejected fixes the smoother refused
 */
public record LogQuality(
        String participant,
        String file,
        Optional<String> format,
        int fixes,
        OptionalDouble rate_Hz,
        Optional<Span> span,
        List<Span> gaps,
        List<Skipped> skipped,
        long skippedCount,
        int rejected,
        List<String> warnings) {
    public LogQuality {
        gaps = List.copyOf(gaps);
        skipped = List.copyOf(skipped);
        warnings = List.copyOf(warnings);
    }
}
