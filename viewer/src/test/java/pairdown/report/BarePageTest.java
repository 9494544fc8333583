package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.debrief.ParticipantDebrief;
import pairdown.geodesy.Geodetic;
import pairdown.motion.Trajectory;
import pairdown.replay.SyntheticDebrief;
import pairdown.words.Units;
import pairdown.words.Words;

/** The page of two GPX logs with a position a second and nothing else, no manifest beside them. */
class BarePageTest {
    private final Path folder;

    BarePageTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private String page() throws Exception {
        Debrief flown = new SyntheticDebrief().build();
        for (String id : List.of("lead", "blue")) {
            write(flown, flown.participant(id).orElseThrow());
        }
        Debrief debrief = Debriefer.debrief(AttemptFolder.open(folder), step -> {});
        assertFalse(debrief.pairs().get(0).matched().isKnown(), "these data tell too much");
        return Report.html(debrief, List.of(), Units.MILES, Words.of(Locale.ENGLISH), new Drawn())
                .replace("&#39;", "'");
    }

    private void write(Debrief flown, ParticipantDebrief participant) throws IOException {
        StringBuilder gpx =
                new StringBuilder(
                        "<gpx version=\"1.1\" creator=\"test\""
                                + " xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n");
        Trajectory path = participant.trajectory().orElseThrow();
        for (double t_s = Math.ceil(path.start_s()); t_s <= path.end_s(); t_s++) {
            Geodetic place = flown.frame().toGeodetic(path.at(t_s).position_m());
            gpx.append(
                    String.format(
                            Locale.ROOT,
                            "<trkpt lat=\"%.7f\" lon=\"%.7f\"><ele>%.1f</ele><time>%s</time></trkpt>%n",
                            place.latitude_deg(),
                            place.longitude_deg(),
                            place.height_m(),
                            flown.axis().instant(t_s)));
        }
        Files.writeString(folder.resolve(participant.id() + ".gpx"), gpx + "</trkseg></trk></gpx>");
    }

    /** "Never over" and "no match" are findings; these logs can't tell. */
    @Test
    void whatCannotBeToldIsNotToldAsFindingNone() throws Exception {
        String page = page();
        assertFalse(page.contains("never over"), "the closing limit was not judged");
        assertTrue(page.contains("can't tell"));
        assertFalse(page.contains("no match found"));
    }

    @Test
    void captionsSpeakOfWhatIsDrawn() throws Exception {
        String page = page();
        assertFalse(page.contains("heavy dashes"), "no limit is drawn");
        assertFalse(page.contains("with the planned gate"));
        assertFalse(page.contains("Speeds match while"));
        assertTrue(page.contains("too rough to say whether speeds matched"));
    }
}
