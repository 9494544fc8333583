package pairdown.replay;

import java.util.OptionalDouble;
import pairdown.camera.Ground;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Trajectory;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;

/**
 * Where the ground is taken to be without a terrain tile: level, at the height at which those who
 * landed stood; with nobody landing, at the lowest height anyone was at.
 */
public final class GroundLevel {
    private static final double STEP_S = 5;

    private GroundLevel() {}

    public static Ground of(Recording recording) {
        OptionalDouble landed =
                recording.participants().stream()
                        .flatMap(
                                p ->
                                        p.phases().stream()
                                                .filter(s -> s.phase() == Phase.GROUND)
                                                .map(s -> stood_m(p, s)))
                        .mapToDouble(d -> d)
                        .min();
        return Ground.flat(landed.orElseGet(() -> lowest_m(recording)));
    }

    private static double stood_m(ParticipantDebrief who, PhaseSpan ground) {
        Trajectory path = who.trajectory().orElseThrow();
        double middle_s = (ground.span().start_s() + ground.span().end_s()) / 2;
        double[] state = new double[Trajectory.VALUES];
        path.read(Math.max(path.start_s(), Math.min(path.end_s(), middle_s)), state);
        return state[2];
    }

    private static double lowest_m(Recording recording) {
        double low = Double.POSITIVE_INFINITY;
        double[] state = new double[Trajectory.VALUES];
        for (int i = 0; i < recording.participants().size(); i++) {
            Trajectory path = recording.trajectory(i);
            for (double t = path.start_s(); t <= path.end_s(); t += STEP_S) {
                path.read(t, state);
                low = Math.min(low, state[2]);
            }
        }
        return Double.isFinite(low) ? low : 0;
    }
}
