package pairdown.format;

import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import pairdown.format.source.LogSource;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * Reads logs of two gigabytes in every format, made while they are read. Run in a small heap
 * ({@code -Xmx64m}) it shows that memory is bounded by the fixes: it would run out otherwise.
 */
public final class LongLogStudy {
    private LongLogStudy() {}

    /** Gigabytes, 2 unless given. */
    public static void main(String[] args) throws UnusableInputException {
        long bytes = (args.length > 0 ? Long.parseLong(args[0]) : 2) * 1_000_000_000L;
        System.out.printf(
                Locale.ROOT, "heap of %d MB at most%n", Runtime.getRuntime().maxMemory() >> 20);
        for (var kind : new TreeMap<>(EndlessLog.KINDS).entrySet()) {
            long before_ns = System.nanoTime();
            LogSource log =
                    LogSource.of("long", () -> EndlessLog.of(kind.getValue(), bytes, () -> {}));
            Track track = LogFiles.read(log, Optional.empty());
            double took_s = (System.nanoTime() - before_ns) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "%s: %.1f GB, %d of %d fixes, %d skipped, %.0f s%n",
                    kind.getKey(),
                    bytes / 1e9,
                    TestLogs.fixes(track),
                    kind.getValue().fixes(),
                    track.report().skippedCount(),
                    took_s);
        }
    }
}
