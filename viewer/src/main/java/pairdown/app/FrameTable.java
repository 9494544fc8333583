package pairdown.app;

import com.sun.management.OperatingSystemMXBean;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/**
 * Times frames and what they allocate. A frame counts from its first instruction to the end of all
 * drawing it asked for.
 */
final class FrameTable {
    /** Frames before counting: samples are taken in the first. */
    private static final int LEAST_WARM_UP = 60;

    /**
     * Time before counting (ns): on a fast card the compiler is at work for hundreds of frames, and
     * what setting up left behind is collected meanwhile.
     */
    private static final long LEAST_WARM_UP_NS = 2_000_000_000L;

    /** Names of the columns of {@link #row}. */
    static final String HEAD =
            "shown                  size        segments  median ms   99 % ms  slowest ms"
                    + "  CPU ms a frame  bytes a frame";

    private final OperatingSystemMXBean system =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private final double[] time_ms;
    private final long[] allocated;
    private final long made_ns = System.nanoTime();
    private int warmUp;
    private boolean counts;
    private int frame;
    private long started_ns;
    private long allocatedBefore;
    private long cpuBefore_ns;
    private double cpu_ms;

    FrameTable(int frames) {
        time_ms = new double[frames];
        allocated = new long[frames];
    }

    boolean isFull() {
        return frame >= time_ms.length;
    }

    void begin() {
        counts =
                counts
                        || (warmUp >= LEAST_WARM_UP
                                && System.nanoTime() - made_ns >= LEAST_WARM_UP_NS);
        if (counts && frame == 0) {
            cpuBefore_ns = system.getProcessCpuTime();
        }
        allocatedBefore = threads.getCurrentThreadAllocatedBytes();
        started_ns = System.nanoTime();
    }

    void end() {
        double ms = (System.nanoTime() - started_ns) / 1e6;
        long bytes = threads.getCurrentThreadAllocatedBytes() - allocatedBefore;
        if (!counts) {
            warmUp++;
            return;
        }
        time_ms[frame] = ms;
        allocated[frame] = bytes;
        frame++;
        if (isFull()) {
            cpu_ms = (system.getProcessCpuTime() - cpuBefore_ns) / 1e6 / time_ms.length;
        }
    }

    /** The figures on one line, under {@link #HEAD}. */
    String row(String load, int width_px, int height_px, int segments) {
        double[] times = time_ms.clone();
        Arrays.sort(times);
        long[] bytes = allocated.clone();
        Arrays.sort(bytes);
        return String.format(
                Locale.ROOT,
                "%-22s %-11s %8d %10.2f %9.2f %11.2f %15.2f %14d",
                load,
                width_px + "×" + height_px,
                segments,
                at(times, 0.5),
                at(times, 0.99),
                times[times.length - 1],
                cpu_ms,
                bytes[bytes.length / 2]);
    }

    /** The table, as printed. */
    String print(String renderer, String place, int width_px, int height_px, String load) {
        double[] times = time_ms.clone();
        Arrays.sort(times);
        long[] bytes = allocated.clone();
        Arrays.sort(bytes);
        return String.format(
                Locale.ROOT,
                """
                renderer            %s
                drawn to            %s, %d×%d
                shown               %s
                frames              %d after %d to warm up
                median              %.2f ms
                99th percentile     %.2f ms
                slowest             %.2f ms
                processor time      %.2f ms a frame, all threads
                allocation, median  %d bytes a frame
                allocation, mean    %.0f bytes a frame""",
                renderer,
                place,
                width_px,
                height_px,
                load,
                times.length,
                warmUp,
                at(times, 0.5),
                at(times, 0.99),
                times[times.length - 1],
                cpu_ms,
                bytes[bytes.length / 2],
                Arrays.stream(bytes).average().orElse(0));
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1.0, Math.floor(share * sorted.length))];
    }
}
