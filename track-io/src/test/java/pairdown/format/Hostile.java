package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.Optional;
import pairdown.track.Channel;
import pairdown.track.Flights;
import pairdown.track.Gaps;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * What must hold whatever bytes a reader is given: a track in order, or one line that says what is
 * wrong; memory and time in proportion to the bytes.
 */
public final class Hostile {
    /** Buffers, tables and one exception's text, whatever the size of the input. */
    private static final long LEAST_BYTES = 64L << 20;

    /** A row has some 30 channels at most, and is copied a few times while it is sorted. */
    private static final long BYTES_PER_BYTE = 4000;

    /** Far above what any input of a fuzzer takes, far below what a person would call a hang. */
    private static final Duration MOST_TIME = Duration.ofSeconds(10);

    private static final com.sun.management.ThreadMXBean THREADS =
            (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();

    private Hostile() {}

    /** What is tried. */
    @FunctionalInterface
    public interface Reading {
        Object read() throws UnusableInputException, IOException;
    }

    private record Cost(Optional<Object> result, long bytes, long time_ns) {
        static Cost of(Reading reading) {
            long thread = Thread.currentThread().getId();
            long bytesBefore = THREADS.getThreadAllocatedBytes(thread);
            long before_ns = THREADS.getCurrentThreadCpuTime();
            Optional<Object> result = resultOf(reading);
            return new Cost(
                    result,
                    THREADS.getThreadAllocatedBytes(thread) - bytesBefore,
                    THREADS.getCurrentThreadCpuTime() - before_ns);
        }

        boolean isTooMuchFor(int inputBytes) {
            return bytes > LEAST_BYTES + BYTES_PER_BYTE * inputBytes
                    || time_ns > MOST_TIME.toNanos();
        }
    }

    /** Reads, and checks what came of it. */
    public static void check(int inputBytes, Reading reading) {
        Cost cost = Cost.of(reading);
        if (cost.isTooMuchFor(inputBytes)) {
            // Once more, since loading a class costs memory and time on its first use.
            Cost again = Cost.of(reading);
            assertFalse(again.isTooMuchFor(inputBytes), again + " for bytes: " + inputBytes);
        }
        if (cost.result().orElse("") instanceof Track track) {
            checkTrack(track);
        }
    }

    private static Optional<Object> resultOf(Reading reading) {
        try {
            return Optional.of(reading.read());
        } catch (UnusableInputException e) {
            String message = String.valueOf(e.getMessage());
            assertFalse(message.lines().count() > 1, message);
            assertTrue(message.contains("; "), message);
            return Optional.empty();
        } catch (IOException e) {
            throw new AssertionError("bytes in memory can't fail", e);
        }
    }

    private static void checkTrack(Track track) {
        double last_s = Double.NEGATIVE_INFINITY;
        for (int row = 0; row < track.size(); row++) {
            assertTrue(track.time_s(row) >= last_s, "time falls at row " + row);
            last_s = track.time_s(row);
            for (Channel channel : track.channels()) {
                assertFalse(Double.isInfinite(track.value(channel, row)), channel.key());
            }
            assertEquals(
                    Double.isNaN(track.value(Channel.LATITUDE, row)),
                    Double.isNaN(track.value(Channel.LONGITUDE, row)),
                    "half a position");
        }
        assertFalse(Flights.of(track).isEmpty());
        Gaps.of(track);
        for (String format : LogFiles.writable()) {
            write(track, format);
        }
    }

    private static void write(Track track, String format) {
        try {
            LogFiles.write(track, format, OutputStream.nullOutputStream());
        } catch (UnusableInputException e) {
            assertTrue(String.valueOf(e.getMessage()).contains(format), e.getMessage());
        } catch (IOException e) {
            throw new AssertionError("nothing is written that could fail", e);
        }
    }
}
