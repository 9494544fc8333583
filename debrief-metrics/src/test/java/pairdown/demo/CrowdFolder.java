package pairdown.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pairdown.attempt.Role;
import pairdown.demo.physics.Scenario;
import pairdown.demo.receiver.GnssPlan;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.truth.Truth;

/**
 * Writes a simulated attempt of many flyers, each logged at 10 Hz from engine start to landing, for
 * timing the whole {@code debrief}: {@code CrowdFolder FOLDER [FLYERS]}, twelve unless told.
 */
public final class CrowdFolder {
    private CrowdFolder() {}

    public static void main(String[] args) throws IOException {
        int flyers = args.length > 1 ? Integer.parseInt(args[1]) : 12;
        DemoAttempt crowd =
                new DemoAttempt(
                        "crowd",
                        "many flyers",
                        Scenario.crowd(1, flyers),
                        AttemptPlan.STANDARD,
                        CrowdFolder::logs);
        DemoFolder.write(Path.of(args[0]), crowd, 1);
    }

    private static List<DemoLog> logs(Truth truth) {
        List<DemoLog> logs = new ArrayList<>();
        for (LogPlan plan : LogPlan.standard(truth)) {
            if (!(plan instanceof GnssPlan satellite)) {
                logs.add(DemoLog.of(plan, DemoForms.RECORDER));
            } else {
                Role role = truth.body(plan.participant()).role();
                GnssPlan fast = role == Role.JUMPSHIP ? satellite : satellite.rate(10);
                logs.add(
                        DemoLog.of(
                                fast,
                                switch (role) {
                                    case LEAD -> DemoForms.NMEA;
                                    case JUMPSHIP -> DemoForms.IGC;
                                    case FLYER, CAMERA -> DemoForms.CSV;
                                }));
            }
        }
        return logs;
    }
}
