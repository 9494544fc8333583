package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairdown.attempt.Role;
import pairdown.clock.LoadedLog;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.debrief.ParticipantDebrief;
import pairdown.debrief.SeriesCsv;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.Simulation;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;
import pairdown.track.Track;

/** A recorder that logs what is also computed. */
class SeriesColumnsTest {
    private static Track withTrueAirspeed(Track track) {
        Track.Builder rows = new Track.Builder();
        for (int i = 0; i < track.size(); i++) {
            rows.row(track.time_s(i));
            for (Channel c : track.channels()) {
                rows.set(c, track.value(c, i));
            }
            rows.set(Channel.TRUE_AIRSPEED, 41);
        }
        return rows.build(track.epoch(), track.datum(), track.report());
    }

    @Test
    void noTwoColumnsOfAFileHaveOneName() throws Exception {
        Truth truth = Simulation.run(Scenario.standard(3));
        SimulatedAttempt made = SimulatedAttempt.of(truth, 3);
        List<LoadedLog> logs = new ArrayList<>();
        for (LoadedLog log : made.logs()) {
            boolean lead = log.participant().role() == Role.LEAD;
            logs.add(
                    lead && !log.track().hasPositions()
                            ? new LoadedLog(
                                    log.participant(), log.ref(), withTrueAirspeed(log.track()))
                            : log);
        }
        Debrief debrief = Debriefer.debrief(made.attempt(), logs, step -> {});
        for (ParticipantDebrief participant : debrief.participants()) {
            StringWriter out = new StringWriter();
            new SeriesCsv(debrief).write(participant, out);
            List<String> names = List.of(out.toString().lines().findFirst().orElse("").split(","));
            assertEquals(names.size(), new HashSet<>(names).size(), names::toString);
            boolean lead = participant.participant().role() == Role.LEAD;
            assertEquals(lead, names.contains("loggedTrueAirspeed_mps"), names::toString);
            assertTrue(names.contains("trueAirspeed_mps"));
        }
    }
}
