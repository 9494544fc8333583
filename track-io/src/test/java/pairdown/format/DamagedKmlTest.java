package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** A KML track keeps its instants and its places in two lists: a loss must never shift the one. */
class DamagedKmlTest {
    private static final int FIXES = 60;

    /** Fix number i stands at second i, latitude −24.5 + i / 10 000. */
    private static String track(boolean byTurns, int from) {
        StringBuilder kml = new StringBuilder("<gx:Track><altitudeMode>absolute</altitudeMode>\n");
        StringBuilder places = new StringBuilder();
        for (int i = from; i < from + FIXES; i++) {
            kml.append("<when>2031-05-14T15:%02d:%02dZ</when>\n".formatted(i / 60, i % 60));
            String place = "<gx:coord>15.5 -24.%04d %d</gx:coord>\n".formatted(5000 + i, 900 + i);
            (byTurns ? kml : places).append(place);
        }
        return kml.append(places) + "</gx:Track>\n";
    }

    private static String file(String tracks) {
        return "<kml xmlns:gx=\"urn:x\"><Document><Placemark><gx:MultiTrack>\n"
                + tracks
                + "</gx:MultiTrack></Placemark></Document></kml>\n";
    }

    private static Track read(String text) throws Exception {
        return TestLogs.read(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static String withRubbish(String text, int at, int length) {
        StringBuilder rubbish = new StringBuilder(text);
        for (int i = 0; i < length; i++) {
            rubbish.setCharAt(at + i, (char) ((i * 37 + 1) % 256));
        }
        return rubbish.toString();
    }

    /** Every fix stands where its instant says, whatever was lost. */
    private static void assertNothingShifted(Track track) {
        double zero_s = track.epoch().orElseThrow().getEpochSecond() % 3600;
        for (int row = 0; row < track.size(); row++) {
            if (!track.hasPosition(row)) {
                continue;
            }
            double i = zero_s + track.time_s(row);
            assertEquals(-24.5 - i / 1e4, track.value(Channel.LATITUDE, row), 1e-9);
            assertEquals(900 + i, track.value(Channel.HEIGHT, row), 1e-3);
        }
    }

    @Test
    void placesBeforeAndBehindRubbishAreKeptAndTheLostOnesCounted() throws Exception {
        String text = file(track(false, 0));
        Track track = read(withRubbish(text, text.indexOf("-24.5020"), 100));
        assertNothingShifted(track);
        assertTrue(track.size() >= FIXES - 5 && track.size() < FIXES, track.size() + " fixes");
        assertEquals(FIXES - track.size(), track.report().skippedCount());
        assertTrue(track.report().warnings().get(0).startsWith("cut or damaged at line"));
    }

    @Test
    void instantsBeforeAndBehindRubbishAreKeptAndTheLostOnesCounted() throws Exception {
        String text = file(track(false, 0));
        Track track = read(withRubbish(text, text.indexOf("15:00:20Z"), 100));
        assertNothingShifted(track);
        assertTrue(track.size() >= FIXES - 6 && track.size() < FIXES, track.size() + " fixes");
        assertEquals(FIXES - track.size(), track.report().skippedCount());
    }

    @Test
    void fixesByTurnsAreKeptOnBothSides() throws Exception {
        String text = file(track(true, 0));
        Track track = read(withRubbish(text, text.indexOf("-24.5020"), 100));
        assertNothingShifted(track);
        assertTrue(track.size() >= FIXES - 4 && track.size() < FIXES, track.size() + " fixes");
    }

    @Test
    void theTracksBehindADamagedOneAreKept() throws Exception {
        String text = file(track(false, 0) + track(false, FIXES));
        Track track = read(withRubbish(text, text.indexOf("-24.5020"), 100));
        assertNothingShifted(track);
        assertTrue(track.size() >= 2 * FIXES - 5, track.size() + " fixes");
    }

    @Test
    void aTrackCutInItsPlacesKeepsThoseBefore() throws Exception {
        String text = file(track(false, 0));
        Track track = read(text.substring(0, text.indexOf("-24.5020")));
        assertNothingShifted(track);
        assertEquals(20, track.size());
        assertEquals(FIXES - 20, track.report().skippedCount());
    }

    /** What is left where the border of two tracks is lost and the file is still XML. */
    @Test
    void twoListsOneBehindTheOtherAreNotByTurns() throws Exception {
        String border = "</gx:Track>\n<gx:Track><altitudeMode>absolute</altitudeMode>\n";
        String text = file((track(false, 0) + track(false, FIXES)).replace(border, ""));
        Track track = read(text);
        assertNothingShifted(track);
        assertEquals(2 * FIXES, track.size());
    }

    /** Bytes overwritten, cut out or doubled, wherever; more than one element of them. */
    @Test
    void noDamageAnywhereShiftsAFix() throws Exception {
        Random random = new Random(20310514);
        int kept = 0;
        for (int trial = 0; trial < 400; trial++) {
            // Cut out by turns, an instant may meet a later place in a file without any flaw.
            boolean byTurns = trial % 2 == 0 && trial % 3 != 1;
            String text = file(track(byTurns, 0) + track(false, FIXES));
            int at = text.indexOf("<when>") + random.nextInt(text.length() - 1000);
            int length = 100 + random.nextInt(300);
            String damaged =
                    switch (trial % 3) {
                        case 0 -> withRubbish(text, at, length);
                        case 1 -> text.substring(0, at) + text.substring(at + length);
                        default -> text.substring(0, at + length) + '\0' + text.substring(at);
                    };
            kept += keptUnshifted(damaged);
        }
        assertTrue(kept > 400 * FIXES, kept + " fixes kept");
    }

    /**
     * Whole elements cut out leave sound XML: that it may be shifted is then all one can say. Where
     * the border of two tracks is lost, so is which list is whose.
     */
    private static int keptUnshifted(String damaged) throws Exception {
        try {
            Track track = read(damaged);
            if (!track.report().warnings().toString().contains("is shifted")) {
                assertNothingShifted(track);
            }
            return TestLogs.fixes(track);
        } catch (UnusableInputException e) {
            return 0;
        }
    }
}
