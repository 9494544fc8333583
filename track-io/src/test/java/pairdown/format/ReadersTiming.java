package pairdown.format;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How fast the importers read logs of 52 MB beside {@link Floors}, in processor time of the reading
 * thread, so that it can be told on a machine with other work on it: the best of some rounds, by
 * turns. ReadersTable does the same with JMH on a machine that has nothing else to do.
 */
public final class ReadersTiming {
    private static final int ROUNDS = 7;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private ReadersTiming() {}

    @FunctionalInterface
    private interface Work {
        void run() throws Exception;
    }

    /** No arguments. */
    public static void main(String[] args) throws Exception {
        System.out.println("| format | read, MB/s | compared with | MB/s | time of it |");
        System.out.println("| --- | --- | --- | --- | --- |");
        for (String format : List.of("csv", "igc", "nmea", "gpx", "kml")) {
            Path folder = Files.createTempDirectory("pairdown-timing");
            Path file = LongLogs.write(format, folder);
            try {
                row(format, file);
            } finally {
                Files.delete(file);
                Files.delete(folder);
            }
        }
    }

    private static void row(String format, Path file) throws Exception {
        double read_s = Double.POSITIVE_INFINITY;
        double floor_s = Double.POSITIVE_INFINITY;
        for (int round = 0; round < ROUNDS; round++) {
            read_s = Math.min(read_s, cpu_s(() -> LogFiles.read(file, Optional.empty())));
            floor_s = Math.min(floor_s, cpu_s(() -> Floors.walk(format, file)));
        }
        double megabytes = Files.size(file) / 1e6;
        System.out.printf(
                Locale.ROOT,
                "| %s | %.0f | %s | %.0f | × %.2f |%n",
                format,
                megabytes / read_s,
                Floors.NAMES.get(format),
                megabytes / floor_s,
                read_s / floor_s);
    }

    private static double cpu_s(Work work) throws Exception {
        long before_ns = THREADS.getCurrentThreadCpuTime();
        work.run();
        return (THREADS.getCurrentThreadCpuTime() - before_ns) / 1e9;
    }
}
