package pairdown.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.app.Sample;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.debrief.ResultFolder;
import pairdown.format.LogFiles;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.track.Channel;
import pairdown.track.EllipsoidHeight;
import pairdown.track.Track;

class TracksTest {
    private static final Debrief DEBRIEF = Sample.debrief();

    @TempDir private Path folder;

    @Test
    void whatIsWrittenReadsBackWhereEverybodyWas() throws Exception {
        Tracks.write(DEBRIEF, ResultFolder.at(folder));
        for (ParticipantDebrief p : DEBRIEF.participants()) {
            for (String format : new String[] {"kml", "gpx", "geojson"}) {
                Path file = folder.resolve("tracks").resolve(p.id() + "." + format);
                Track back = LogFiles.read(file, Optional.empty());
                assertEquals(p.trajectory().orElseThrow().fixCount(), back.size(), file.toString());
                for (int row = 0; row < back.size(); row += 50) {
                    assertTrue(apart_m(p, back, row) < 2e-3, file + " at " + row);
                }
            }
        }
    }

    private static double apart_m(ParticipantDebrief p, Track back, int row) {
        Trajectory flown = p.trajectory().orElseThrow();
        double read_s = DEBRIEF.axis().seconds(back.axis().orElseThrow().instant(back.time_s(row)));
        // Files keep microseconds: a track's ends may be read a little outside it.
        double t_s = Math.max(flown.start_s(), Math.min(flown.end_s(), read_s));
        LocalFrame frame = DEBRIEF.frame();
        Geodetic read =
                new Geodetic(
                        back.value(Channel.LATITUDE, row),
                        back.value(Channel.LONGITUDE, row),
                        EllipsoidHeight.of(back, row));
        return frame.toEnu(read).minus(flown.at(t_s).position_m()).norm();
    }

    @Test
    void oneFileHoldsEverybodyUnderTheirNames() throws Exception {
        Tracks.write(DEBRIEF, ResultFolder.at(folder));
        String kml = Files.readString(folder.resolve("tracks.kml"));
        for (ParticipantDebrief p : DEBRIEF.participants()) {
            assertTrue(kml.contains("<name>" + p.id() + "</name>"), p.id());
        }
    }
}
