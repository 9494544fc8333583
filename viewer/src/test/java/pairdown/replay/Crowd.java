package pairdown.replay;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import pairdown.air.Wind;
import pairdown.attempt.AirSettings;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Attempt;
import pairdown.attempt.BreakOff;
import pairdown.attempt.ChosenSettings;
import pairdown.attempt.ClosureSettings;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Limits;
import pairdown.attempt.MatchedSettings;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.attempt.Target;
import pairdown.debrief.Debrief;
import pairdown.debrief.DebriefSettings;
import pairdown.debrief.ParticipantDebrief;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Attitude;
import pairdown.pair.Approach;
import pairdown.pair.Axes;
import pairdown.pair.Matched;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;
import pairdown.phase.Event;
import pairdown.phase.EventKind;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.units.Estimate;
import pairdown.vector.Vec3;

/**
 * A made-up attempt as large as wanted, to time drawing with: one lead that climbs in circuits and
 * descends, a jump ship, and flyers round the lead who wander as people do, each a log of 10 Hz.
 * Where everyone is means nothing; how much there is to draw does.
 */
public final class Crowd {
    private static final double RATE_HZ = 10;

    /** Share of the time at which the flights end. */
    private static final double OPENING_SHARE = 0.95;

    /** Longer than any real one: at the target's sink 4.3 km. */
    private static final double FLIGHT_S = 240;

    private static final double TOP_M = 3600;

    /** Level circuits of the climb. */
    private static final double TURN_S = 150;

    private static final double SPEED_MPS = 38;
    private static final double[] WANDER_PERIOD_S = {61, 23, 7, 1.7};
    private static final double[] WANDER_M = {18, 5, 0.8, 0.05};
    private static final LeverArm LEFT = new LeverArm(0.4, -6.2, 0.9);
    private static final LeverArm RIGHT = new LeverArm(0.4, 6.2, 0.9);

    private final int participants;
    private final double end_s;

    private Crowd(int participants, double minutes) {
        this.participants = participants;
        this.end_s = minutes * 60;
    }

    /**
     * @param participants lead and jump ship among them; at least 3
     */
    public static Debrief of(int participants, double minutes) {
        return new Crowd(participants, minutes).build();
    }

    private double exit_s() {
        return Math.max(0.1 * end_s, opening_s() - FLIGHT_S);
    }

    private double opening_s() {
        return end_s * OPENING_SHARE;
    }

    private Debrief build() {
        List<Participant> people = new ArrayList<>();
        people.add(person("lead", Role.LEAD, Optional.empty()));
        people.add(person("ship", Role.JUMPSHIP, Optional.empty()));
        for (int i = 2; i < participants; i++) {
            people.add(person("flyer" + i, Role.FLYER, Optional.of(i % 2 == 0 ? "left" : "right")));
        }
        LoggedPath lead = LoggedPath.of(end_s, RATE_HZ, this::lead);
        List<LoggedPath> paths =
                IntStream.range(0, participants)
                        .parallel()
                        .mapToObj(i -> i == 0 ? lead : LoggedPath.of(end_s, RATE_HZ, place(i)))
                        .toList();
        List<ParticipantDebrief> bodies =
                IntStream.range(0, participants)
                        .parallel()
                        .mapToObj(i -> body(people.get(i), paths.get(i)))
                        .toList();
        List<PairDebrief> pairs =
                IntStream.range(2, participants)
                        .parallel()
                        .mapToObj(i -> pair(people.get(i), paths.get(i), lead))
                        .toList();
        return new Debrief(
                attempt(people),
                DebriefSettings.DEFAULT,
                new TimeAxis(Instant.parse("2031-05-14T15:00:00Z")),
                LocalFrame.at(Geodetic.ofDegrees(-22.5, 15.2, 900)),
                new Span(0, end_s),
                List.of(),
                List.of(),
                List.of(),
                Wind.none(List.of()),
                bodies,
                events(people),
                pairs,
                Optional.empty(),
                List.of(),
                List.of());
    }

    private static Participant person(String name, Role role, Optional<String> slot) {
        return new Participant(
                name,
                role,
                List.of(),
                role == Role.LEAD ? Map.of("left", LEFT, "right", RIGHT) : Map.of(),
                slot,
                Optional.empty(),
                OptionalDouble.empty());
    }

    private static Attempt attempt(List<Participant> people) {
        return new Attempt(
                "2031-05-14-09",
                Optional.of("Made up for timing"),
                Path.of("."),
                people,
                Optional.of(new Target(38, AirspeedKind.CALIBRATED, 17.78, 1.5, 1.0, 10)),
                MatchedSettings.DEFAULT,
                OptionalDouble.of(30),
                new Limits(
                        Optional.of(new BreakOff(1676.4, BreakOff.Datum.MSL, 0)),
                        OptionalDouble.empty(),
                        ClosureSettings.DEFAULT,
                        OptionalDouble.empty()),
                AirSettings.NONE,
                ChosenSettings.NONE,
                List.of());
    }

    private Vec3 lead(double t) {
        double a = 2 * Math.PI * t / TURN_S;
        double radius = SPEED_MPS * TURN_S / (2 * Math.PI);
        double up =
                t < exit_s()
                        ? TOP_M * t / exit_s()
                        : TOP_M * Math.max(0, (end_s - t) / (end_s - exit_s()));
        return new Vec3(radius * Math.cos(a) + 0.4 * t, radius * Math.sin(a), up);
    }

    /** A place round the lead, closer as time goes on, with wander of its own. */
    private LoggedPath.Place place(int number) {
        Random random = new Random(number);
        double bearing = random.nextDouble() * 2 * Math.PI;
        double above = random.nextDouble() * 40 - 10;
        double[] phase = random.doubles(3L * WANDER_M.length).map(d -> d * 2 * Math.PI).toArray();
        return t -> {
            double away = 15 + 120 * Math.abs(Math.sin(number + t / 300));
            Vec3 off = new Vec3(away * Math.cos(bearing), away * Math.sin(bearing), above);
            return lead(t).plus(off).plus(wander(t, phase));
        };
    }

    private static Vec3 wander(double t, double[] phase) {
        double[] sum = new double[3];
        for (int k = 0; k < WANDER_M.length; k++) {
            for (int axis = 0; axis < 3; axis++) {
                double w = 2 * Math.PI / (WANDER_PERIOD_S[k] * (1 + 0.13 * axis));
                sum[axis] += WANDER_M[k] * Math.sin(w * t + phase[3 * k + axis]);
            }
        }
        return new Vec3(sum[0], sum[1], sum[2]);
    }

    private ParticipantDebrief body(Participant who, LoggedPath path) {
        Map<Channel, Series> logged =
                who.role() == Role.LEAD
                        ? Map.of(
                                Channel.POWER_LEVER, series(t -> -30 + 25 * Math.sin(t / 40)),
                                Channel.ELEVATOR, series(t -> 60 + 20 * Math.sin(t)),
                                Channel.RUDDER, series(t -> 25 * Math.sin(t / 2)),
                                Channel.AILERON, series(t -> 10 * Math.sin(t / 3)),
                                Channel.FLAP, series(t -> 30))
                        : Map.of();
        List<PhaseSpan> phases =
                who.role() == Role.FLYER
                        ? List.of(
                                new PhaseSpan(who.id(), Phase.ABOARD, new Span(0, exit_s())),
                                new PhaseSpan(
                                        who.id(), Phase.FLIGHT, new Span(exit_s(), opening_s())),
                                new PhaseSpan(who.id(), Phase.CANOPY, new Span(opening_s(), end_s)))
                        : List.of();
        return new ParticipantDebrief(
                who,
                Optional.of(path),
                logged,
                Optional.of(series(t -> 44 + 2 * Math.sin(t / 11))),
                Optional.of(series(t -> 38 + 2 * Math.sin(t / 11))),
                phases,
                t ->
                        Optional.of(
                                new Attitude(
                                        (360 - 360 * t / TURN_S) % 360,
                                        -10,
                                        6 * Math.sin(t / 3),
                                        Attitude.Source.LOGGED)));
    }

    private Series series(DoubleUnaryOperator value) {
        int n = (int) (end_s * RATE_HZ) + 1;
        double[] time = new double[n];
        float[] values = new float[n];
        for (int i = 0; i < n; i++) {
            time[i] = i / RATE_HZ;
            values[i] = (float) value.applyAsDouble(time[i]);
        }
        return Series.of(time, values, false);
    }

    private PairDebrief pair(Participant who, LoggedPath path, LoggedPath lead) {
        int n = (int) ((opening_s() - exit_s()) * RATE_HZ) + 1;
        Map<Figure, float[]> columns = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            columns.put(figure, new float[n]);
        }
        double[] own = new double[9];
        double[] of = new double[9];
        for (int i = 0; i < n; i++) {
            double t = exit_s() + i / RATE_HZ;
            path.read(t, own);
            lead.read(t, of);
            row(columns, i, own, of);
        }
        Span window = new Span(exit_s() + 20, exit_s() + 35);
        Approach closest =
                new Approach(
                        window.start_s(),
                        new Estimate(12, 0.9),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        0,
                        0,
                        0);
        MatchedWindow matched =
                new MatchedWindow(
                        window,
                        0.5,
                        0.5,
                        OptionalDouble.empty(),
                        0,
                        12,
                        12,
                        MatchedWindow.EndedBy.VERTICAL,
                        OptionalDouble.of(-2),
                        0);
        return new PairDebrief(
                "lead",
                who.id(),
                who.slot(),
                Optional.of(who.slot().orElse("left").equals("left") ? LEFT : RIGHT),
                Axes.BODY,
                Optional.of(closest),
                Optional.empty(),
                Optional.empty(),
                new Matched(
                        List.of(matched),
                        0,
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        List.of()),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.of(opening_s()),
                List.of(),
                new PairSeries(exit_s(), 1 / RATE_HZ, n, columns),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static void row(Map<Figure, float[]> columns, int i, double[] own, double[] of) {
        Vec3 r = new Vec3(own[0] - of[0], own[1] - of[1], own[2] - of[2]);
        Vec3 v = new Vec3(own[3] - of[3], own[4] - of[4], own[5] - of[5]);
        double closure = -r.dot(v) / Math.max(1, r.norm());
        columns.forEach(
                (figure, column) ->
                        column[i] =
                                (float)
                                        switch (figure) {
                                            case SEPARATION, GAP -> r.norm();
                                            case CLOSURE_RATE -> closure;
                                            case CLOSING_LIMIT -> Math.sqrt(1 + r.norm());
                                            case AHEAD -> r.x();
                                            case RIGHT -> r.y();
                                            case ABOVE -> r.z();
                                            case AHEAD_RATE -> v.x();
                                            case RIGHT_RATE -> v.y();
                                            case ABOVE_RATE -> v.z();
                                            case MATCHED -> v.norm() < 1.5 ? 1 : 0;
                                            case TOUCH -> 0;
                                            default -> 0.9;
                                        });
    }

    private List<Event> events(List<Participant> people) {
        List<Event> events = new ArrayList<>();
        for (Participant who : people) {
            if (who.role() == Role.FLYER) {
                events.add(event(exit_s(), EventKind.EXIT, who.id()));
                events.add(event(exit_s() + 20, EventKind.MATCH_START, who.id()));
                events.add(event(exit_s() + 35, EventKind.MATCH_END, who.id()));
                events.add(event(opening_s(), EventKind.OPENING, who.id()));
            }
        }
        return events;
    }

    private static Event event(double t, EventKind kind, String who) {
        return new Event(t, 0, kind, List.of(who), kind.key() + " of " + who);
    }
}
