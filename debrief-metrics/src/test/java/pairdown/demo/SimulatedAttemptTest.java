package pairdown.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.clock.LoadedLog;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.demo.receiver.InjectedFaults;
import pairdown.demo.receiver.MadeTruth;
import pairdown.demo.truth.Truth;

class SimulatedAttemptTest {
    private static final Truth TRUTH = MadeTruth.of();

    @Test
    void everyBodyIsLoggedAndTheLeadsSystemsToo() {
        SimulatedAttempt a = SimulatedAttempt.of(TRUTH, 1);
        assertEquals(
                List.of("lead.nmea", "lead-systems.csv", "ship.igc", "blue.csv"),
                a.logs().stream().map(l -> l.ref().file()).toList());
        assertEquals(
                a.logs().stream().map(l -> l.ref().file()).toList(),
                a.faults().stream().map(InjectedFaults::file).toList());
        assertEquals(Optional.of("left"), a.attempt().participant("blue").orElseThrow().slot());
    }

    @Test
    void trulyAlignedLogsHaveNoOffsetAndNoBias() {
        for (InjectedFaults f : SimulatedAttempt.trulyAligned(TRUTH, 1).faults()) {
            assertEquals(0, f.offset_s().orElseThrow());
            assertEquals(0, f.heightBias_m());
            assertEquals(0, f.velocityLag_s());
            assertEquals(0, f.pressureLag_s());
        }
    }

    @Test
    void anAttemptInMemoryIsDebriefedLikeOneInFiles() throws Exception {
        SimulatedAttempt a = SimulatedAttempt.of(TRUTH, 1);
        Debrief d = Debriefer.debrief(a.attempt(), a.logs(), step -> {});
        assertEquals(1, d.pairs().size());
        for (LoadedLog log : a.logs()) {
            assertTrue(
                    d.clock().stream().anyMatch(c -> c.file().equals(log.ref().file())),
                    log.ref().file());
        }
    }
}
