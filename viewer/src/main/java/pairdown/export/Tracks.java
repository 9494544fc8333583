package pairdown.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.debrief.ResultFolder;
import pairdown.format.LogFiles;
import pairdown.geodesy.Geodetic;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * The smoothed tracks of an attempt, all on its common clock and heights, at the instants of the
 * fixes they were made from: {@code tracks/ID.FORMAT} for each participant and {@code
 * tracks.FORMAT} with all of them.
 */
public final class Tracks {
    private static final List<String> FORMATS = List.of("kml", "gpx", "geojson");

    private Tracks() {}

    /** Writes all of them into a folder; participants without a usable log have none. */
    public static void write(Debrief debrief, ResultFolder folder) throws IOException {
        Map<String, Track> tracks = of(debrief);
        for (String format : FORMATS) {
            if (!tracks.isEmpty()) {
                file(folder, "tracks." + format, tracks, format);
            }
            for (Map.Entry<String, Track> one : tracks.entrySet()) {
                Map<String, Track> alone = Map.of(one.getKey(), one.getValue());
                file(folder, "tracks/" + one.getKey() + "." + format, alone, format);
            }
        }
    }

    private static void file(
            ResultFolder folder, String name, Map<String, Track> tracks, String format)
            throws IOException {
        folder.file(
                name,
                beside -> {
                    try (OutputStream out = Files.newOutputStream(beside)) {
                        LogFiles.write(tracks, format, out);
                    } catch (UnusableInputException e) {
                        throw new IllegalStateException("a smoothed track has instants", e);
                    }
                });
    }

    /** By participant, in the attempt's order. */
    static Map<String, Track> of(Debrief debrief) {
        Map<String, Track> tracks = new LinkedHashMap<>();
        for (ParticipantDebrief p : debrief.participants()) {
            p.trajectory()
                    .filter(motion -> motion.fixCount() > 0)
                    .ifPresent(motion -> tracks.put(p.id(), track(debrief, p.id(), motion)));
        }
        return tracks;
    }

    private static Track track(Debrief debrief, String id, Trajectory motion) {
        Track.Builder rows = new Track.Builder();
        for (int i = 0; i < motion.fixCount(); i++) {
            double t_s = motion.fixTime_s(i);
            if (motion.covers(t_s)) {
                row(rows, debrief, motion.at(t_s));
            }
        }
        LogReport report = LogReport.whole(id, "pairdown");
        return rows.build(Optional.of(debrief.axis().epoch()), HeightDatum.ELLIPSOID, report);
    }

    private static void row(Track.Builder rows, Debrief debrief, State state) {
        Geodetic place = debrief.frame().toGeodetic(state.position_m());
        rows.row(state.time_s())
                .set(Channel.LATITUDE, place.latitude_deg())
                .set(Channel.LONGITUDE, place.longitude_deg())
                .set(Channel.HEIGHT, place.height_m())
                .set(Channel.VELOCITY_EAST, state.velocity_mps().x())
                .set(Channel.VELOCITY_NORTH, state.velocity_mps().y())
                .set(Channel.VELOCITY_DOWN, -state.velocity_mps().z());
    }
}
