package pairdown.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Target;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Trajectory;
import pairdown.replay.Heights;
import pairdown.replay.Recording;
import pairdown.settings.StripKind;
import pairdown.track.Series;
import pairdown.vector.Vec3;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The strips of each participant's own motion: airspeed, sink, height, and how sure it is. */
final class MotionStrips {
    /** Heights and sinks change over seconds (Hz). */
    private static final double MOTION_RATE_HZ = 5;

    private final Recording recording;
    private final Debrief debrief;
    private final Heights heights;
    private final Words words;

    MotionStrips(Recording recording, Heights heights, Words words) {
        this.recording = recording;
        this.debrief = recording.debrief();
        this.heights = heights;
        this.words = words;
    }

    StripData airspeed() {
        List<Curve> curves = new ArrayList<>();
        forAll(
                (participant, number) ->
                        airspeedOf(participant)
                                .ifPresent(s -> curves.add(own(participant, number, s))));
        Optional<Target> target = debrief.attempt().target();
        return new StripData(
                StripKind.AIRSPEED,
                Measure.AIRSPEED,
                false,
                target.map(t -> t.airspeed_mps() - 5).orElse(30.0),
                target.map(t -> t.airspeed_mps() + 5).orElse(45.0),
                0,
                90,
                curves,
                target.map(t -> List.of(new StripData.Level(t.airspeed_mps(), targetLabel())))
                        .orElse(List.of()),
                target.map(t -> List.of(around(t.airspeed_mps(), t.airspeedTolerance_mps())))
                        .orElse(List.of()),
                words.get("strip.why.air"));
    }

    /** Of the kind the target is given in, calibrated without a target. */
    private Optional<Series> airspeedOf(ParticipantDebrief participant) {
        boolean wantsTrue =
                debrief.attempt().target().map(t -> t.kind() == AirspeedKind.TRUE).orElse(false);
        return wantsTrue ? participant.trueAirspeed_mps() : participant.calibratedAirspeed_mps();
    }

    StripData sink() {
        List<Curve> curves = new ArrayList<>();
        forAll(
                (participant, number) ->
                        curves.add(
                                new Curve(
                                        participant.id(),
                                        number,
                                        pairOf(participant, number),
                                        false,
                                        motion(number, s -> -s[5]))));
        Optional<Target> target = debrief.attempt().target();
        return new StripData(
                StripKind.SINK,
                Measure.SINK,
                false,
                0,
                target.map(t -> t.sink_mps() + 5).orElse(20.0),
                -5,
                60,
                curves,
                target.map(t -> List.of(new StripData.Level(t.sink_mps(), targetLabel())))
                        .orElse(List.of()),
                target.map(t -> List.of(around(t.sink_mps(), t.sinkTolerance_mps())))
                        .orElse(List.of()),
                words.get("strip.why.track"));
    }

    private String targetLabel() {
        return words.get("strip.target");
    }

    private static StripData.Band around(double middle, double tolerance) {
        return new StripData.Band(middle - tolerance, middle + tolerance);
    }

    StripData height() {
        List<Curve> curves = new ArrayList<>();
        forAll(
                (participant, number) ->
                        curves.add(
                                new Curve(
                                        participant.id(),
                                        number,
                                        pairOf(participant, number),
                                        false,
                                        motion(number, s -> heights.height_m(s[0], s[1], s[2])))));
        List<StripData.Level> lines = new ArrayList<>();
        heights.breakOff_m()
                .ifPresent(h -> lines.add(new StripData.Level(h, words.get("strip.break-off"))));
        return new StripData(
                StripKind.HEIGHT,
                Measure.HEIGHT,
                false,
                heights.breakOff_m().orElse(1000) - 100,
                heights.breakOff_m().orElse(1000) + 500,
                -500,
                10_000,
                curves,
                lines,
                List.of(),
                words.get("strip.why.track"));
    }

    /** A curve of uncertainty for each participant, drawn as bars by the painter. */
    StripData trust() {
        List<Curve> curves = new ArrayList<>();
        forAll(
                (participant, number) ->
                        curves.add(
                                new Curve(
                                        participant.id(),
                                        number,
                                        Curve.ALWAYS,
                                        false,
                                        sigma(number))));
        return new StripData(
                StripKind.TRUST,
                Measure.DISTANCE,
                false,
                0,
                1,
                0,
                1,
                curves,
                List.of(),
                List.of(),
                words.get("strip.why.track"));
    }

    private Pyramid sigma(int number) {
        Trajectory path = recording.trajectory(number);
        return sampled(
                path,
                1,
                t_s -> {
                    Vec3 s = path.at(t_s).positionSigma_m();
                    return (float) Math.max(s.x(), Math.max(s.y(), s.z()));
                });
    }

    /** A figure of a state: east, north, up, their velocities and accelerations. */
    interface OfState {
        double of(double[] state);
    }

    private Pyramid motion(int number, OfState figure) {
        Trajectory path = recording.trajectory(number);
        double[] state = new double[Trajectory.VALUES];
        return sampled(
                path,
                1 / MOTION_RATE_HZ,
                t_s -> {
                    path.read(t_s, state);
                    return (float) figure.of(state);
                });
    }

    private interface At {
        float at(double t_s);
    }

    private static Pyramid sampled(Trajectory path, double step_s, At value) {
        int size = 1 + (int) Math.floor((path.end_s() - path.start_s()) / step_s);
        float[] values = new float[size];
        for (int i = 0; i < size; i++) {
            double t_s = Math.min(path.end_s(), path.start_s() + i * step_s);
            values[i] = path.inGap(t_s) ? Float.NaN : value.at(t_s);
        }
        return Pyramid.of(path.start_s(), step_s, values);
    }

    private Curve own(ParticipantDebrief participant, int number, Series series) {
        return new Curve(
                participant.id(), number, pairOf(participant, number), false, Pyramid.of(series));
    }

    /** The pair a participant flies in, or how it is shown without one. */
    private int pairOf(ParticipantDebrief participant, int number) {
        for (int i = 0; i < debrief.pairs().size(); i++) {
            if (debrief.pairs().get(i).flyer().equals(participant.id())) {
                return i;
            }
        }
        boolean isLead = recording.subject() == number;
        return isLead ? Curve.ALWAYS : Curve.BESIDE;
    }

    private interface ForParticipant {
        void accept(ParticipantDebrief participant, int number);
    }

    private void forAll(ForParticipant each) {
        for (int i = 0; i < recording.participants().size(); i++) {
            each.accept(recording.participants().get(i), i);
        }
    }
}
