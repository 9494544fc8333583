package pairdown.replay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joml.Quaternionf;
import pairdown.attempt.Role;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Attitude;
import pairdown.motion.ReferencePoint;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.phase.Event;

/**
 * A debrief made ready to be drawn: participants by number, the lead's axes, attitudes and sigmas
 * sampled as they are first needed. For one thread.
 */
public final class Recording {
    /** Attitudes change within tenths of a second; the path between samples is a great arc. */
    private static final double ATTITUDE_RATE_HZ = 10;

    /** A lever arm of 2 m turned at 60°/s is off by 1 mm between two samples. */
    private static final double ARM_RATE_HZ = 20;

    /** Place and velocity: of what {@link Trajectory#read} fills, what an arm changes. */
    private static final int ARM_VALUES = 6;

    /** How long before the closest approach a replay opens: the joining is seen at once. */
    private static final double LEAD_IN_S = 20;

    /** Sigmas change over seconds. */
    private static final double SIGMA_RATE_HZ = 2;

    private final Debrief debrief;
    private final List<ParticipantDebrief> participants;
    private final Map<String, Integer> indexOf = new HashMap<>();
    private final List<Samples> attitudes = new ArrayList<>();
    private final List<Samples> sigmas = new ArrayList<>();
    private final List<Optional<Samples>> arms = new ArrayList<>();
    private final float[] arm = new float[ARM_VALUES];
    private int ahead;
    private final int subject;
    private final Optional<LeadAxes> axes;
    private final List<Event> events;
    private final double[] eventTimes_s;

    private Recording(Debrief debrief) {
        this.debrief = debrief;
        this.participants =
                debrief.participants().stream().filter(p -> p.trajectory().isPresent()).toList();
        for (int i = 0; i < participants.size(); i++) {
            indexOf.put(participants.get(i).id(), i);
            attitudes.add(attitudesOf(participants.get(i)));
            sigmas.add(sigmasOf(trajectory(i)));
            arms.add(armOf(trajectory(i)));
        }
        this.subject = subjectOf(participants);
        this.axes =
                subject < 0
                        ? Optional.empty()
                        : Optional.of(
                                LeadAxes.of(trajectory(subject), debrief.wind(), debrief.frame()));
        this.events =
                debrief.events().stream()
                        .sorted(Comparator.comparingDouble(Event::time_s))
                        .toList();
        this.eventTimes_s = events.stream().mapToDouble(Event::time_s).toArray();
    }

    public static Recording of(Debrief debrief) {
        return new Recording(debrief);
    }

    /** The lead; without one the first who moves. */
    private static int subjectOf(List<ParticipantDebrief> participants) {
        for (int i = 0; i < participants.size(); i++) {
            if (participants.get(i).participant().role() == Role.LEAD) {
                return i;
            }
        }
        return participants.isEmpty() ? -1 : 0;
    }

    private static Samples attitudesOf(ParticipantDebrief participant) {
        Trajectory path = participant.trajectory().orElseThrow();
        return Samples.ofRotation(
                path.start_s(),
                path.end_s(),
                ATTITUDE_RATE_HZ,
                (t_s, into, from) -> {
                    Optional<Attitude> attitude = participant.attitudes().at(t_s);
                    Quaternionf q = attitude.map(Recording::bodyToEnu).orElse(UNKNOWN);
                    into[from] = q.x;
                    into[from + 1] = q.y;
                    into[from + 2] = q.z;
                    into[from + 3] = q.w;
                });
    }

    private static final Quaternionf UNKNOWN =
            new Quaternionf(Float.NaN, Float.NaN, Float.NaN, Float.NaN);

    /** The rotation from a machine's right, ahead, above to east, north, up. */
    static Quaternionf bodyToEnu(Attitude attitude) {
        return new Quaternionf()
                .rotateZ((float) -Math.toRadians(attitude.heading_deg()))
                .rotateX((float) Math.toRadians(attitude.pitch_deg()))
                .rotateY((float) Math.toRadians(attitude.roll_deg()));
    }

    private static Samples sigmasOf(Trajectory path) {
        return Samples.ofFigures(
                path.start_s(),
                path.end_s(),
                SIGMA_RATE_HZ,
                3,
                (t_s, into, from) -> {
                    State state = path.at(Math.min(path.end_s(), Math.max(path.start_s(), t_s)));
                    into[from] = (float) state.positionSigma_m().x();
                    into[from + 1] = (float) state.positionSigma_m().y();
                    into[from + 2] = (float) state.positionSigma_m().z();
                });
    }

    /** What a reference point adds to its antenna's place and velocity. */
    private static Optional<Samples> armOf(Trajectory path) {
        if (!(path instanceof ReferencePoint point) || !point.hasArm()) {
            return Optional.empty();
        }
        double[] own = new double[Trajectory.VALUES];
        double[] antenna = new double[Trajectory.VALUES];
        return Optional.of(
                Samples.ofFigures(
                        path.start_s(),
                        path.end_s(),
                        ARM_RATE_HZ,
                        ARM_VALUES,
                        (t_s, into, from) -> {
                            double at_s = Math.min(path.end_s(), Math.max(path.start_s(), t_s));
                            path.read(at_s, own);
                            point.antenna().read(at_s, antenna);
                            for (int k = 0; k < ARM_VALUES; k++) {
                                into[from + k] = (float) (own[k] - antenna[k]);
                            }
                        }));
    }

    public Debrief debrief() {
        return debrief;
    }

    /** Those with a trajectory; numbers elsewhere in this package are places in this list. */
    public List<ParticipantDebrief> participants() {
        return participants;
    }

    /** Their ids, in the same order. */
    public List<String> ids() {
        return participants.stream().map(ParticipantDebrief::id).toList();
    }

    /** The number of a participant; empty if it has no trajectory. */
    public Optional<Integer> indexOf(String id) {
        return Optional.ofNullable(indexOf.get(id));
    }

    /** The number of the one the lead-fixed view follows; −1 where nobody moves. */
    public int subject() {
        return subject;
    }

    /** The axes of the lead-fixed view; empty where nobody moves. */
    public Optional<LeadAxes> axes() {
        return axes;
    }

    public Trajectory trajectory(int participant) {
        return participants.get(participant).trajectory().orElseThrow();
    }

    /** The instant an attempt is about: the closest approach, else a quarter after the exit. */
    public double middle_s() {
        return Framing.middle_s(this);
    }

    /** The instant a replay opens at, some seconds before the {@link #middle_s}. */
    public double beginning_s() {
        return Math.max(debrief.span().start_s(), middle_s() - LEAD_IN_S);
    }

    /** All events by time. */
    public List<Event> events() {
        return events;
    }

    /** Their instants, rising: what the jump keys go through. */
    public double[] eventTimes_s() {
        return eventTimes_s.clone();
    }

    /**
     * A participant's state as {@link Trajectory#read} gives it, allocating nothing: an arm's part
     * is sampled.
     */
    void readState(int participant, double t_s, double[] into) {
        Trajectory path = trajectory(participant);
        Optional<Samples> sampled = arms.get(participant);
        if (sampled.isPresent() && path instanceof ReferencePoint point) {
            point.antenna().read(t_s, into);
            sampled.get().read(t_s, arm);
            for (int k = 0; k < ARM_VALUES; k++) {
                into[k] += arm[k];
            }
        } else {
            path.read(t_s, into);
        }
    }

    /**
     * Takes samples that the next seconds will ask for, of one participant at each call: those of
     * all together would make a frame late.
     */
    void takeAhead(double t_s) {
        if (participants.isEmpty()) {
            return;
        }
        ahead = (ahead + 1) % participants.size();
        attitudes.get(ahead).takeBeside(t_s);
        sigmas.get(ahead).takeBeside(t_s);
        if (arms.get(ahead).isPresent()) {
            arms.get(ahead).get().takeBeside(t_s);
        }
    }

    void readAttitude(int participant, double t_s, float[] xyzw) {
        attitudes.get(participant).read(t_s, xyzw);
    }

    void readSigma(int participant, double t_s, float[] eastNorthUp_m) {
        sigmas.get(participant).read(t_s, eastNorthUp_m);
    }
}
