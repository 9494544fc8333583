package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import pairdown.track.Channel;
import pairdown.track.Track;

/** A hole in a file puts the rest of one record behind the beginning of another. */
class TornCsvTest {
    private static final String HEADER = "time,latitude,longitude,altitude msl (m),speed (m/s)";
    private static final int ROWS = 120;

    private static List<String> rows() {
        List<String> rows = new ArrayList<>();
        rows.add(HEADER);
        for (int i = 0; i < ROWS; i++) {
            rows.add(
                    String.format(
                            Locale.ROOT,
                            "2031-05-14T15:%02d:%02dZ,%.6f,15.500000,%.1f,38.%d",
                            i / 60,
                            i % 60,
                            -24.5 - i * 3e-4,
                            3600 - 17.8 * i,
                            i % 10));
        }
        return rows;
    }

    private static Track read(List<String> rows) throws Exception {
        String text = String.join("\n", rows) + "\n";
        return TestLogs.read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static void assertTold(Track track, long line, String reason) {
        assertEquals(1, track.report().skippedCount(), () -> track.report().toString());
        assertEquals(line, track.report().skipped().get(0).line());
        assertEquals(reason, track.report().skipped().get(0).reason());
    }

    @Test
    void twoRecordsRunTogetherAreNeither() throws Exception {
        List<String> rows = rows();
        String first = rows.get(50);
        String second = rows.remove(51);
        rows.set(50, first.substring(0, first.length() - 3) + second.substring(25));
        Track track = read(rows);
        assertEquals(ROWS - 2, TestLogs.fixes(track));
        assertTold(track, 51, "records run together: 8 cells, not 5");
    }

    @Test
    void aRecordWithItsMiddleLostIsNone() throws Exception {
        List<String> rows = rows();
        String row = rows.get(50);
        rows.set(50, row.substring(0, row.indexOf(',') + 4) + row.substring(row.lastIndexOf(',')));
        Track track = read(rows);
        assertEquals(ROWS - 1, TestLogs.fixes(track));
        assertTold(track, 51, "part of a record: 3 cells, not 5");
    }

    @Test
    void rowsThatLeaveTheirLastCellsOutAreWhole() throws Exception {
        List<String> rows = rows();
        for (int i = 1; i <= ROWS; i++) {
            if (i % 8 == 0 || i > 80) {
                rows.set(i, rows.get(i).replaceFirst(",[^,]*$", ""));
            }
        }
        Track track = read(rows);
        assertEquals(ROWS, TestLogs.fixes(track));
        assertEquals(0, track.report().skippedCount(), () -> track.report().toString());
    }

    @Test
    void aSensorThatFallsSilentLosesTwoRecordsAtMost() throws Exception {
        List<String> rows = rows();
        for (int i = 60; i <= ROWS; i++) {
            rows.set(i, rows.get(i).replaceFirst(",[^,]*$", ""));
        }
        Track track = read(rows);
        assertTrue(TestLogs.fixes(track) >= ROWS - 2);
        assertEquals(ROWS - TestLogs.fixes(track), track.report().skippedCount());
        assertTrue(Double.isNaN(track.value(Channel.GROUND_SPEED, track.size() - 1)));
    }

    @Test
    void remarksWithCommasAndADelimiterAtTheEndAreNoSecondRecord() throws Exception {
        List<String> rows = rows();
        rows.set(40, rows.get(40) + ",exit, go");
        rows.set(41, rows.get(41) + ",");
        Track track = read(rows);
        assertEquals(ROWS, TestLogs.fixes(track));
        assertEquals(0, track.report().skippedCount(), () -> track.report().toString());
    }

    @Test
    void columnsWithoutANameAreReadOver() throws Exception {
        List<String> rows = rows();
        for (int i = 1; i <= ROWS; i++) {
            rows.set(i, rows.get(i) + ",1,2");
        }
        Track track = read(rows);
        assertEquals(ROWS, TestLogs.fixes(track));
        assertEquals(0, track.report().skippedCount(), () -> track.report().toString());
    }
}
