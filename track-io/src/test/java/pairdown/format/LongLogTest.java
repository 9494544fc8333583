package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.format.source.LogSource;
import pairdown.track.Track;

/**
 * A log is streamed: what is held grows with its fixes, not with its bytes. {@link LongLogStudy}
 * does the same with two gigabytes in a heap of 64 MB.
 */
class LongLogTest {
    private static final long BYTES = 12L << 20;

    /** What garbage collection leaves differs by some hundred kilobytes for reasons of its own. */
    private static final long MOST_GROWTH_BYTES = 2L << 20;

    private static Set<String> formats() {
        return EndlessLog.KINDS.keySet();
    }

    @ParameterizedTest
    @MethodSource("formats")
    void memoryDoesNotGrowWithBytesThatAreNoFixes(String format) throws Exception {
        EndlessLog.Kind kind = Objects.requireNonNull(EndlessLog.KINDS.get(format));
        List<Long> held = new ArrayList<>();
        Track track =
                LogFiles.read(
                        LogSource.of(
                                "long",
                                () ->
                                        EndlessLog.of(
                                                kind,
                                                BYTES,
                                                () -> held.add(heldBytes()),
                                                2 << 20,
                                                BYTES)),
                        Optional.empty());
        assertEquals(format, track.report().format());
        assertEquals(kind.fixes(), TestLogs.fixes(track), track.report().toString());
        assertEquals(2, held.size());
        long growth = held.get(1) - held.get(0);
        assertTrue(growth < MOST_GROWTH_BYTES, "grew by " + growth + " bytes of " + BYTES);
    }

    /** Heap still in use after a collection; what was allocated since doesn't count. */
    static long heldBytes() {
        System.gc();
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(pool -> pool.getCollectionUsage().getUsed())
                .sum();
    }
}
