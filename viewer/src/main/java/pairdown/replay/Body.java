package pairdown.replay;

import java.util.Optional;
import org.joml.Quaternionf;
import pairdown.attempt.Role;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Trajectory;
import pairdown.phase.Phase;

/**
 * One participant at the moment shown. Filled anew in every frame, so that none is made: read it,
 * keep no reference to it.
 */
public final class Body {
    private final ParticipantDebrief participant;
    private final double[] state = new double[Trajectory.VALUES];
    private final float[] attitude = new float[4];
    private final float[] sigma = new float[3];
    private final Quaternionf bodyToEnu = new Quaternionf();
    private boolean present;
    private boolean predicted;
    private double sinceData_s;

    Body(ParticipantDebrief participant) {
        this.participant = participant;
    }

    void fill(Recording recording, int number, double t_s) {
        Trajectory path = recording.trajectory(number);
        present = path.covers(t_s);
        // Outside its track a body stays at the nearest end, so that a camera has a place to be.
        double at_s = Math.max(path.start_s(), Math.min(path.end_s(), t_s));
        recording.readState(number, at_s, state);
        recording.readSigma(number, at_s, sigma);
        recording.readAttitude(number, at_s, attitude);
        if (!Float.isNaN(attitude[0])) {
            bodyToEnu.set(attitude[0], attitude[1], attitude[2], attitude[3]).normalize();
        } else {
            alongThePath();
        }
        predicted = false;
        sinceData_s = 0;
        for (int i = 0; i < path.gaps().size(); i++) {
            if (t_s > path.gaps().get(i).start_s() && t_s < path.gaps().get(i).end_s()) {
                predicted = true;
                sinceData_s = t_s - path.gaps().get(i).start_s();
            }
        }
    }

    private void alongThePath() {
        double level = Math.hypot(state[3], state[4]);
        bodyToEnu
                .identity()
                .rotateZ((float) -Math.atan2(state[3], state[4]))
                .rotateX((float) Math.atan2(state[5], level));
    }

    public ParticipantDebrief participant() {
        return participant;
    }

    public String id() {
        return participant.id();
    }

    public Role role() {
        return participant.participant().role();
    }

    /**
     * Whether its trajectory covers the moment. If not, all else here is of the nearest end of it.
     */
    public boolean isPresent() {
        return present;
    }

    /** Whether the moment lies in a gap of its data, where the model alone speaks. */
    public boolean isPredicted() {
        return predicted;
    }

    /** How long its data have been missing (s); 0 outside a gap. */
    public double sinceData_s() {
        return sinceData_s;
    }

    public double east_m() {
        return state[0];
    }

    public double north_m() {
        return state[1];
    }

    public double up_m() {
        return state[2];
    }

    public double velocityEast_mps() {
        return state[3];
    }

    public double velocityNorth_mps() {
        return state[4];
    }

    public double velocityUp_mps() {
        return state[5];
    }

    /** One standard deviation per axis (m), absolute. */
    public float sigmaEast_m() {
        return sigma[0];
    }

    public float sigmaNorth_m() {
        return sigma[1];
    }

    public float sigmaUp_m() {
        return sigma[2];
    }

    /** The rotation from right, ahead, above of the machine to east, north, up; do not change. */
    public Quaternionf bodyToEnu() {
        return bodyToEnu;
    }

    public Optional<Phase> phase(double t_s) {
        return participant.phaseAt(t_s);
    }
}
