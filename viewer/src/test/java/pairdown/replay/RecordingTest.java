package pairdown.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.app.Sample;
import pairdown.motion.ReferencePoint;
import pairdown.motion.Trajectory;

class RecordingTest {
    private static final int INSTANTS = 500;

    /** Between samples the arm is drawn straight: a millimetre or two, and what rounding adds. */
    @Test
    void theLeadIsShownWhereItsReferencePointIs() {
        Recording recording = Recording.of(Sample.debrief());
        int lead = recording.subject();
        Trajectory path = recording.trajectory(lead);
        assertTrue(path instanceof ReferencePoint point && point.hasArm(), "the sample has an arm");
        Random random = new Random(1);
        double[] exact = new double[Trajectory.VALUES];
        double[] shown = new double[Trajectory.VALUES];
        for (int i = 0; i < INSTANTS; i++) {
            double t_s = path.start_s() + random.nextDouble() * (path.end_s() - path.start_s());
            path.read(t_s, exact);
            recording.readState(lead, t_s, shown);
            for (int k = 0; k < 3; k++) {
                assertEquals(exact[k], shown[k], 0.01, "place at " + t_s);
                assertEquals(exact[3 + k], shown[3 + k], 0.1, "velocity at " + t_s);
            }
        }
    }
}
