package pairdown.format;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs {@link ReadersBenchmark} and prints its table: of each the best iteration, since what else a
 * machine does only ever makes one slower.
 */
public final class ReadersTable {
    private ReadersTable() {}

    /** No arguments. */
    public static void main(String[] args) throws RunnerException {
        Collection<RunResult> results =
                new Runner(new OptionsBuilder().include("ReadersBenchmark").build()).run();
        Map<String, Double> read_ms = new TreeMap<>();
        Map<String, Double> floor_ms = new TreeMap<>();
        for (RunResult result : results) {
            String format = result.getParams().getParam("format");
            boolean floor = result.getParams().getBenchmark().endsWith("floor");
            double best_ms = result.getPrimaryResult().getStatistics().getMin();
            (floor ? floor_ms : read_ms).put(format, best_ms);
        }
        System.out.println("| format | read, MB/s | compared with | MB/s | time of it |");
        System.out.println("| --- | --- | --- | --- | --- |");
        read_ms.forEach((format, ms) -> row(format, ms, floor_ms.getOrDefault(format, ms)));
    }

    private static void row(String format, double read_ms, double floor_ms) {
        double megabytes = LongLogs.BYTES / 1e6;
        System.out.printf(
                Locale.ROOT,
                "| %s | %.0f | %s | %.0f | × %.2f |%n",
                format,
                megabytes / read_ms * 1000,
                Floors.NAMES.get(format),
                megabytes / floor_ms * 1000,
                read_ms / floor_ms);
    }
}
