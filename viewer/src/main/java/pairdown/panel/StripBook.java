package pairdown.panel;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairdown.attempt.MatchedSettings;
import pairdown.attempt.Target;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Trajectory;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Recording;
import pairdown.settings.StripKind;
import pairdown.tail.TailControl;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.vector.Vec3;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The strips of one debrief, their pyramids made once. */
final class StripBook {
    /** Heights and sinks change over seconds (Hz). */
    private static final double MOTION_RATE_HZ = 5;

    /** A gap strip that showed more would flatten what matters (m). */
    private static final double FAR_M = 100;

    /** Likewise in gates. */
    private static final double FAR_GATES = 5;

    /** Travel from which on a control counts as near its stop (%), as the episode's sign has it. */
    private static final double NEAR_STOP_PCT = 85;

    /** Effectiveness under which a drop counts as a sign, as the episode's sign has it. */
    private static final double LOST_EFFECTIVENESS = 0.6;

    private final Recording recording;
    private final Debrief debrief;
    private final Words words;
    private final Heights heights;
    private final Map<StripKind, StripData> strips = new EnumMap<>(StripKind.class);

    StripBook(Recording recording, Heights heights, Words words) {
        this.recording = recording;
        this.debrief = recording.debrief();
        this.heights = heights;
        this.words = words;
        for (StripKind kind : StripKind.values()) {
            strips.put(kind, strip(kind));
        }
    }

    StripData get(StripKind kind) {
        StripData strip = strips.get(kind);
        if (strip == null) {
            throw new IllegalArgumentException("no strip " + kind);
        }
        return strip;
    }

    private StripData strip(StripKind kind) {
        return switch (kind) {
            case GAP -> gap();
            case CLOSURE -> closure();
            case RATES -> rates();
            case AIRSPEED -> airspeed();
            case SINK -> sink();
            case HEIGHT -> height();
            case POWER -> power();
            case ELEVATOR -> control(StripKind.ELEVATOR, Channel.ELEVATOR);
            case RUDDER -> control(StripKind.RUDDER, Channel.RUDDER);
            case EFFECTIVENESS -> effectiveness();
            case RETARDING -> retarding();
            case TRUST -> trust();
        };
    }

    private StripData gap() {
        List<Curve> curves = new ArrayList<>();
        forPairs(
                (pair, i, flyer) -> {
                    Figure shown = pair.slot().isPresent() ? Figure.GAP : Figure.SEPARATION;
                    curves.add(pairCurve(pair, i, flyer, shown, false));
                });
        List<StripData.Level> gate = new ArrayList<>();
        debrief.attempt()
                .gate_m()
                .ifPresent(g -> gate.add(new StripData.Level(g, words.get("strip.gate"))));
        return new StripData(
                StripKind.GAP,
                Measure.DISTANCE,
                false,
                0,
                10,
                0,
                Math.max(FAR_M, FAR_GATES * debrief.attempt().gate_m().orElse(0)),
                curves,
                gate,
                List.of(),
                whyNoPair());
    }

    private StripData closure() {
        List<Curve> curves = new ArrayList<>();
        forPairs(
                (pair, i, flyer) -> {
                    curves.add(pairCurve(pair, i, flyer, Figure.CLOSURE_RATE, false));
                    curves.add(pairCurve(pair, i, flyer, Figure.CLOSING_LIMIT, true));
                });
        return new StripData(
                StripKind.CLOSURE,
                Measure.CLOSURE,
                true,
                -2,
                4,
                -10,
                15,
                curves,
                List.of(),
                List.of(),
                whyNoPair());
    }

    private StripData rates() {
        List<Curve> curves = new ArrayList<>();
        forPairs(
                (pair, i, flyer) -> {
                    curves.add(rate(pair, i, 0, "strip.ahead", Figure.AHEAD_RATE));
                    curves.add(rate(pair, i, 1, "strip.right", Figure.RIGHT_RATE));
                    curves.add(rate(pair, i, 2, "strip.above", Figure.ABOVE_RATE));
                });
        MatchedSettings matched = debrief.attempt().matched();
        return new StripData(
                StripKind.RATES,
                Measure.CLOSURE,
                true,
                -3,
                3,
                -8,
                8,
                curves,
                List.of(),
                List.of(
                        new StripData.Band(-matched.horizontal_mps(), matched.horizontal_mps()),
                        new StripData.Band(-matched.vertical_mps(), matched.vertical_mps())),
                whyNoPair());
    }

    private Curve rate(PairDebrief pair, int i, int number, String label, Figure figure) {
        return new Curve(words.get(label), number, i, false, Pyramid.of(pair.series(), figure));
    }

    private StripData airspeed() {
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
                debrief.attempt()
                        .target()
                        .map(t -> t.kind() == pairdown.attempt.AirspeedKind.TRUE)
                        .orElse(false);
        return wantsTrue ? participant.trueAirspeed_mps() : participant.calibratedAirspeed_mps();
    }

    private StripData sink() {
        List<Curve> curves = new ArrayList<>();
        forAll(
                (participant, number) ->
                        curves.add(
                                new Curve(
                                        participant.id(),
                                        number,
                                        pairOf(participant, number),
                                        false,
                                        motion(number, (state) -> -state[5]))));
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

    private StripData height() {
        List<Curve> curves = new ArrayList<>();
        forAll(
                (participant, number) ->
                        curves.add(
                                new Curve(
                                        participant.id(),
                                        number,
                                        pairOf(participant, number),
                                        false,
                                        motion(number, heights::of))));
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

    private StripData power() {
        List<Curve> curves = new ArrayList<>();
        logged(Channel.POWER_LEVER, 0, "strip.lever").ifPresent(curves::add);
        logged(Channel.TORQUE, 1, "strip.torque").ifPresent(curves::add);
        return new StripData(
                StripKind.POWER,
                Measure.SHARE,
                true,
                -60,
                60,
                -100,
                120,
                curves,
                List.of(new StripData.Level(0, words.get("strip.idle"))),
                List.of(),
                words.get("strip.why.systems"));
    }

    private StripData control(StripKind kind, Channel channel) {
        List<Curve> curves = new ArrayList<>();
        logged(channel, 0, "strip." + kind.key()).ifPresent(curves::add);
        return new StripData(
                kind,
                Measure.SHARE,
                true,
                -100,
                100,
                -100,
                100,
                curves,
                List.of(
                        new StripData.Level(NEAR_STOP_PCT, words.get("strip.near-stop")),
                        new StripData.Level(-NEAR_STOP_PCT, words.get("strip.near-stop"))),
                List.of(),
                words.get("strip.why.systems"));
    }

    private Optional<Curve> logged(Channel channel, int number, String label) {
        return debrief.lead()
                .map(lead -> lead.systems().get(channel))
                .map(s -> new Curve(words.get(label), number, Curve.ALWAYS, false, Pyramid.of(s)));
    }

    private StripData effectiveness() {
        List<StripData.Level> lines = new ArrayList<>();
        lines.add(new StripData.Level(LOST_EFFECTIVENESS, words.get("strip.lost")));
        debrief.tailControl()
                .map(TailControl::standingEffectiveness)
                .ifPresent(
                        s ->
                                s.ifPresent(
                                        v ->
                                                lines.add(
                                                        new StripData.Level(
                                                                v, words.get("strip.standing")))));
        return figure(StripKind.EFFECTIVENESS, "effectiveness", 0, 1.2, lines);
    }

    private StripData retarding() {
        return figure(StripKind.RETARDING, "retardingCoefficient", 0, 1.2, List.of());
    }

    private StripData figure(
            StripKind kind, String name, double least, double greatest, List<StripData.Level> to) {
        List<Curve> curves = new ArrayList<>();
        debrief.tailControl()
                .map(tail -> tail.figures().get(name))
                .ifPresent(
                        s ->
                                curves.add(
                                        new Curve(
                                                words.get("strip." + kind.key()),
                                                0,
                                                Curve.ALWAYS,
                                                false,
                                                Pyramid.of(s))));
        return new StripData(
                kind,
                Measure.RATIO,
                false,
                least,
                greatest,
                -0.5,
                3,
                curves,
                to,
                List.of(),
                words.get("strip.why.systems"));
    }

    /** A curve of uncertainty for each participant, drawn as bars by the painter. */
    private StripData trust() {
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

    private static Curve pairCurve(
            PairDebrief pair, int i, int flyer, Figure figure, boolean isLimit) {
        return new Curve(pair.flyer(), flyer, i, isLimit, Pyramid.of(pair.series(), figure));
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

    private String whyNoPair() {
        return words.get("strip.why.pair");
    }

    private interface ForPair {
        void accept(PairDebrief pair, int index, int flyer);
    }

    private void forPairs(ForPair each) {
        for (int i = 0; i < debrief.pairs().size(); i++) {
            PairDebrief pair = debrief.pairs().get(i);
            if (pair.series().size() > 0) {
                each.accept(pair, i, recording.indexOf(pair.flyer()).orElse(i + 1));
            }
        }
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
