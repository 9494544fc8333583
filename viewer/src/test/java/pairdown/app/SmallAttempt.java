package pairdown.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.geodesy.Geodetic;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.replay.SyntheticDebrief;

/** A folder of short logs, one fix a second, flown by the made-up attempt: read in a moment. */
public final class SmallAttempt {
    private SmallAttempt() {}

    /** Writes logs and {@code attempt.json}. */
    public static Path write(Path folder, String id, double laterBy_s) throws IOException {
        Debrief flown = new SyntheticDebrief().joiningLater(laterBy_s, id).build();
        Files.createDirectories(folder);
        for (ParticipantDebrief p : flown.participants()) {
            Files.writeString(folder.resolve(p.id() + ".csv"), log(flown, p));
        }
        Files.writeString(
                folder.resolve("attempt.json"),
                """
                {"attempt": "%s", "gate": "30 m", "participants": [
                  {"id": "lead", "role": "lead", "logs": [{"file": "lead.csv"}]},
                  {"id": "blue", "role": "flyer", "logs": [{"file": "blue.csv"}]},
                  {"id": "amber", "role": "flyer", "logs": [{"file": "amber.csv"}]},
                  {"id": "ship", "role": "jumpship", "logs": [{"file": "ship.csv"}]}]}
                """
                        .formatted(id));
        return folder;
    }

    private static String log(Debrief flown, ParticipantDebrief participant) {
        StringBuilder text =
                new StringBuilder(
                        "time,latitude_deg,longitude_deg,heightEllipsoid_m,velocityNorth_mps,"
                                + "velocityEast_mps,velocityDown_mps\n");
        Trajectory path = participant.trajectory().orElseThrow();
        for (double t_s = Math.ceil(path.start_s()); t_s <= path.end_s(); t_s++) {
            State state = path.at(t_s);
            Geodetic place = flown.frame().toGeodetic(state.position_m());
            text.append(
                    String.format(
                            Locale.ROOT,
                            "%s,%.8f,%.8f,%.2f,%.2f,%.2f,%.2f%n",
                            flown.axis().instant(t_s),
                            place.latitude_deg(),
                            place.longitude_deg(),
                            place.height_m(),
                            state.velocity_mps().y(),
                            state.velocity_mps().x(),
                            -state.velocity_mps().z()));
        }
        return text.toString();
    }
}
