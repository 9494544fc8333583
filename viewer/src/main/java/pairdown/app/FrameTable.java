package pairdown.app;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;

/**
 * Times frames and what they allocate. A frame counts from its first instruction to the end of all
 * drawing it asked for.
 */
final class FrameTable {
    /** Frames before counting: the compiler is still at work, samples are taken first. */
    private static final int WARM_UP = 60;

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private final double[] time_ms;
    private final long[] allocated;
    private int frame = -WARM_UP;
    private long started_ns;
    private long allocatedBefore;

    FrameTable(int frames) {
        time_ms = new double[frames];
        allocated = new long[frames];
    }

    boolean isFull() {
        return frame >= time_ms.length;
    }

    void begin() {
        allocatedBefore = threads.getCurrentThreadAllocatedBytes();
        started_ns = System.nanoTime();
    }

    void end() {
        double ms = (System.nanoTime() - started_ns) / 1e6;
        long bytes = threads.getCurrentThreadAllocatedBytes() - allocatedBefore;
        if (frame >= 0) {
            time_ms[frame] = ms;
            allocated[frame] = bytes;
        }
        frame++;
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
                allocation, median  %d bytes a frame
                allocation, mean    %.0f bytes a frame""",
                renderer,
                place,
                width_px,
                height_px,
                load,
                times.length,
                WARM_UP,
                at(times, 0.5),
                at(times, 0.99),
                times[times.length - 1],
                bytes[bytes.length / 2],
                Arrays.stream(bytes).average().orElse(0));
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1.0, Math.floor(share * sorted.length))];
    }
}
