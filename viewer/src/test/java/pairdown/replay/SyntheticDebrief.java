package pairdown.replay;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
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
import pairdown.pair.PairSettings;
import pairdown.pair.PredictedMiss;
import pairdown.phase.Event;
import pairdown.phase.EventKind;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.tail.Episode;
import pairdown.tail.PowerChange;
import pairdown.tail.PowerSource;
import pairdown.tail.TailControl;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.units.Estimate;
import pairdown.vector.Vec3;

/**
 * An attempt in closed form, made up: a lead that flies level to the east-north-east and then
 * descends steeply, a jump ship beside it, two flyers who exit and settle in their slots.
 * Everything in it is known exactly, so that a picture can be asked what geometry says.
 */
public final class SyntheticDebrief {
    private static final PredictedMiss HOLDING =
            new PredictedMiss(Double.NaN, Double.NaN, Double.NaN);

    /** When the flyers exit (s). */
    public static final double EXIT_S = 60;

    /** By when they are in their slots (s). */
    public static final double JOINED_S = 100;

    public static final double OPENING_S = 150;

    private static final int ROWS = (int) ((OPENING_S - EXIT_S) * 10) + 1;
    public static final double END_S = 170;

    public static final double HEADING_DEG = 60;
    private static final double HEADING_RAD = Math.toRadians(HEADING_DEG);
    private static final Vec3 AHEAD = new Vec3(Math.sin(HEADING_RAD), Math.cos(HEADING_RAD), 0);
    private static final Vec3 RIGHT = new Vec3(Math.cos(HEADING_RAD), -Math.sin(HEADING_RAD), 0);
    private static final Vec3 UP = new Vec3(0, 0, 1);
    private static final double LEVEL_MPS = 33.6;
    private static final double SINK_MPS = 17.78;
    private static final double TOP_M = 3300;

    public static final LeverArm LEFT_SLOT = new LeverArm(0.4, -6.2, 0.9);
    public static final LeverArm RIGHT_SLOT = new LeverArm(0.4, 6.2, 0.9);

    private double gapOf_s = Double.NaN;
    private double delay_s;
    private double gate_m = 30;
    private double breakOff_m = 1676.4;
    private String id = "2031-05-14-03";
    private boolean systems = true;
    private boolean positionsOnly;
    private Path folder = Path.of(".");

    /** A hole of 3 s in the right flyer's data from here on. */
    public SyntheticDebrief withGapAt(double t_s) {
        gapOf_s = t_s;
        return this;
    }

    /** Another attempt: the flyers join later and from further out. */
    public SyntheticDebrief joiningLater(double by_s, String attemptId) {
        delay_s = by_s;
        id = attemptId;
        return this;
    }

    /** As if its logs lay there. */
    public SyntheticDebrief in(Path place) {
        folder = place;
        return this;
    }

    public SyntheticDebrief withoutSystems() {
        systems = false;
        return this;
    }

    /** As of logs that tell neither whether speeds matched nor where a slot is. */
    public SyntheticDebrief ofPositionsOnly() {
        positionsOnly = true;
        return this;
    }

    public SyntheticDebrief withGate(double planned_m) {
        gate_m = planned_m;
        return this;
    }

    /** Above mean sea level. */
    public SyntheticDebrief withBreakOff(double height_m) {
        breakOff_m = height_m;
        return this;
    }

    public Debrief build() {
        List<Participant> people =
                List.of(
                        person("lead", Role.LEAD, Optional.empty()),
                        person("blue", Role.FLYER, Optional.of("left")),
                        person("amber", Role.FLYER, Optional.of("right")),
                        person("ship", Role.JUMPSHIP, Optional.empty()));
        Attempt attempt =
                new Attempt(
                        id,
                        Optional.of("Made up for tests"),
                        folder,
                        people,
                        Optional.of(
                                new Target(38, AirspeedKind.CALIBRATED, SINK_MPS, 1.5, 1.0, 10)),
                        MatchedSettings.DEFAULT,
                        OptionalDouble.of(gate_m),
                        new Limits(
                                Optional.of(new BreakOff(breakOff_m, BreakOff.Datum.MSL, 0)),
                                OptionalDouble.empty(),
                                ClosureSettings.DEFAULT,
                                OptionalDouble.empty()),
                        AirSettings.NONE,
                        ChosenSettings.NONE,
                        List.of());
        Span all = new Span(0, END_S);
        List<ParticipantDebrief> bodies =
                List.of(
                        body(people.get(0), this::lead, all, List.of(), -3),
                        body(people.get(1), t -> flyer(t, LEFT_SLOT, -1), all, List.of(), -12),
                        body(people.get(2), t -> flyer(t, RIGHT_SLOT, 1), all, gaps(), -12),
                        body(people.get(3), this::ship, new Span(0, 130), List.of(), 3));
        return new Debrief(
                attempt,
                DebriefSettings.DEFAULT,
                new TimeAxis(Instant.parse("2031-05-14T15:00:00Z")),
                LocalFrame.at(Geodetic.ofDegrees(-22.5, 15.2, 900)),
                all,
                List.of(),
                List.of(),
                List.of(),
                Wind.none(List.of()),
                bodies,
                events(),
                List.of(pair("blue", "left", LEFT_SLOT, -1), pair("amber", "right", RIGHT_SLOT, 1)),
                systems ? Optional.of(tail()) : Optional.empty(),
                List.of(),
                List.of());
    }

    private List<Span> gaps() {
        return Double.isNaN(gapOf_s) ? List.of() : List.of(new Span(gapOf_s, gapOf_s + 3));
    }

    private static Participant person(String name, Role role, Optional<String> slot) {
        return new Participant(
                name,
                role,
                List.of(),
                role == Role.LEAD ? Map.of("left", LEFT_SLOT, "right", RIGHT_SLOT) : Map.of(),
                slot,
                Optional.empty(),
                OptionalDouble.empty());
    }

    /** Place of the lead: level until 50 s, then at the target's sink, eased over 10 s. */
    Vec3 lead(double t) {
        double down = t < 50 ? 0 : t < 60 ? 0.05 * (t - 50) * (t - 50) : 5 + (t - 60);
        return AHEAD.times(LEVEL_MPS * t - 2500).plus(UP.times(TOP_M - SINK_MPS * down));
    }

    /** Place of the jump ship: level, above and left of the lead. */
    Vec3 ship(double t) {
        return AHEAD.times(LEVEL_MPS * 60 - 2500 - 60 + 46 * (t - 60))
                .plus(RIGHT.times(-60))
                .plus(UP.times(TOP_M + 40));
    }

    /** Place of a flyer: aboard, then from its exit to its slot along a smooth way. */
    Vec3 flyer(double t, LeverArm slot, int side) {
        if (t < EXIT_S) {
            return ship(t);
        }
        double joined_s = JOINED_S + delay_s;
        double share = Math.min(1, (t - EXIT_S) / (joined_s - EXIT_S));
        double left = (1 - share) * (1 - share) * (1 + 2 * share);
        Vec3 start = ship(EXIT_S).minus(lead(EXIT_S));
        Vec3 there =
                AHEAD.times(slot.ahead_m())
                        .plus(RIGHT.times(slot.right_m()))
                        .plus(UP.times(slot.above_m()));
        Vec3 swing =
                RIGHT.times(side * (25 + delay_s) * share * left * 4)
                        .minus(AHEAD.times((30 + 4 * delay_s) * share * left * 2));
        Vec3 off = t < OPENING_S ? Vec3.ZERO : UP.times(6 * (t - OPENING_S) * (t - OPENING_S) / 4);
        return lead(t).plus(start.times(left)).plus(there.times(1 - left)).plus(swing).plus(off);
    }

    private ParticipantDebrief body(
            Participant who,
            CurveTrajectory.Curve curve,
            Span span,
            List<Span> gaps,
            double pitch_deg) {
        Map<Channel, Series> logged = new HashMap<>();
        if (who.role() == Role.LEAD && systems) {
            logged.put(Channel.POWER_LEVER, series(t -> t < 50 ? 40 : t < 95 ? -30 : -55));
            logged.put(Channel.ELEVATOR, series(t -> t < 50 ? 5 : 60 + 20 * Math.sin(t)));
            logged.put(Channel.RUDDER, series(t -> 25 * Math.sin(t / 2)));
            logged.put(Channel.PITCH_RATE, series(t -> 4 * Math.cos(t)));
            logged.put(Channel.YAW_RATE, series(t -> 12 * Math.cos(t / 2)));
            logged.put(Channel.AILERON, series(t -> 10 * Math.sin(t / 3)));
            logged.put(Channel.FLAP, series(t -> t < 40 ? 0 : 30));
        }
        List<PhaseSpan> phases =
                who.role() == Role.FLYER
                        ? List.of(
                                new PhaseSpan(who.id(), Phase.ABOARD, new Span(0, EXIT_S)),
                                new PhaseSpan(who.id(), Phase.FLIGHT, new Span(EXIT_S, OPENING_S)),
                                new PhaseSpan(who.id(), Phase.CANOPY, new Span(OPENING_S, END_S)))
                        : List.of();
        return new ParticipantDebrief(
                who,
                Optional.of(new CurveTrajectory(curve, span, gaps)),
                logged,
                Optional.empty(),
                Optional.empty(),
                phases,
                t ->
                        Optional.of(
                                new Attitude(
                                        HEADING_DEG,
                                        pitch_deg,
                                        who.role() == Role.FLYER ? 4 * Math.sin(t / 3) : 0,
                                        Attitude.Source.LOGGED)));
    }

    private interface Value {
        double at(double t_s);
    }

    private static Series series(Value value) {
        int n = (int) (END_S * 10) + 1;
        double[] time = new double[n];
        float[] values = new float[n];
        for (int i = 0; i < n; i++) {
            time[i] = i / 10.0;
            values[i] = (float) value.at(time[i]);
        }
        return Series.of(time, values, false);
    }

    private PairDebrief pair(String name, String slotName, LeverArm slot, int side) {
        Map<Figure, float[]> columns = new EnumMap<>(Figure.class);
        double least = Double.POSITIVE_INFINITY;
        double least_s = EXIT_S;
        double start = Double.NaN;
        for (int i = 0; i < ROWS; i++) {
            double t = EXIT_S + i / 10.0;
            Vec3 r = flyer(t, slot, side).minus(lead(t));
            Vec3 v = flyer(t + 0.01, slot, side).minus(lead(t + 0.01)).minus(r).times(100);
            double gap = gapAt(t, slot, side);
            double closure = -r.dot(v) / r.norm();
            boolean matched = v.norm() < 1 && !positionsOnly;
            start = matched && Double.isNaN(start) ? t : start;
            set(columns, Figure.SEPARATION, i, r.norm());
            set(columns, Figure.SEPARATION_SIGMA, i, 0.9);
            set(columns, Figure.GAP, i, gap);
            set(columns, Figure.GAP_SIGMA, i, 0.9);
            set(columns, Figure.CLOSURE_RATE, i, closure);
            set(columns, Figure.CLOSURE_SIGMA, i, 0.1);
            double over = Math.max(0, gap - 2);
            set(columns, Figure.CLOSING_LIMIT, i, Math.max(0.5, Math.sqrt(0.5 + over) - 0.5));
            set(columns, Figure.MATCHED, i, matched ? 1 : 0);
            set(columns, Figure.TOUCH, i, 0);
            set(columns, Figure.AHEAD, i, r.dot(AHEAD));
            set(columns, Figure.RIGHT, i, r.dot(RIGHT));
            set(columns, Figure.ABOVE, i, r.z());
            PredictedMiss miss =
                    PredictedMiss.of(r, v, 0.9, 0.1, PairSettings.DEFAULT).orElse(HOLDING);
            set(columns, Figure.PREDICTED_MISS, i, miss.miss_m());
            set(columns, Figure.PREDICTED_MISS_SIGMA, i, miss.sigma_m());
            set(columns, Figure.PREDICTED_MISS_IN, i, miss.in_s());
            if (r.norm() < least - 1e-6) {
                least = r.norm();
                least_s = t;
            }
        }
        Approach closest =
                new Approach(
                        least_s,
                        new Estimate(least, 0.9),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        0,
                        0,
                        0);
        List<MatchedWindow> windows =
                Double.isNaN(start) || positionsOnly
                        ? List.of()
                        : List.of(
                                new MatchedWindow(
                                        new Span(start, OPENING_S),
                                        0.5,
                                        0.5,
                                        OptionalDouble.empty(),
                                        0,
                                        least,
                                        least,
                                        MatchedWindow.EndedBy.VERTICAL,
                                        OptionalDouble.of(-2),
                                        0));
        return new PairDebrief(
                "lead",
                name,
                Optional.of(slotName).filter(s -> !positionsOnly),
                Optional.of(slot).filter(s -> !positionsOnly),
                Axes.BODY,
                Optional.of(closest),
                Optional.empty(),
                Optional.empty(),
                new Matched(
                        windows,
                        0,
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        positionsOnly
                                ? List.of("lead–" + name + ": a match must hold for 4 s at 1 Hz")
                                : List.of()),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.of(OPENING_S),
                List.of(),
                new PairSeries(EXIT_S, 0.1, ROWS, columns),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** From a flyer to its slot in the lead's body axes (m). */
    double gapAt(double t, LeverArm slot, int side) {
        Attitude attitude = new Attitude(HEADING_DEG, -3, 0, Attitude.Source.LOGGED);
        Vec3 place = lead(t).plus(attitude.enuToBody().transposeTimes(slot.vector_m()));
        return flyer(t, slot, side).minus(place).norm();
    }

    private static void set(Map<Figure, float[]> columns, Figure figure, int row, double value) {
        columns.computeIfAbsent(figure, f -> new float[ROWS])[row] = (float) value;
    }

    private List<Event> events() {
        List<Event> events = new ArrayList<>();
        events.add(event(EXIT_S, EventKind.EXIT, "blue"));
        events.add(event(EXIT_S, EventKind.EXIT, "amber"));
        events.add(event(JOINED_S + delay_s, EventKind.CLOSEST, "blue"));
        events.add(event(OPENING_S, EventKind.OPENING, "blue"));
        return events;
    }

    private static Event event(double t, EventKind kind, String who) {
        return new Event(t, 0, kind, List.of(who), kind.key() + " of " + who);
    }

    private static TailControl tail() {
        PowerChange change =
                new PowerChange(95, PowerSource.POWER_LEVER, -30, -55, true, OptionalInt.of(0));
        Episode episode =
                new Episode(
                        new Span(96, 99),
                        0.6,
                        List.of(Episode.Sign.LOST_EFFECTIVENESS),
                        Episode.Grade.MILD,
                        OptionalDouble.of(0.3),
                        OptionalDouble.of(12),
                        Optional.of(new Episode.Link(change, 1, 0.6)),
                        Optional.empty(),
                        "made up");
        return new TailControl(
                "lead",
                OptionalDouble.of(0.46),
                List.of(episode),
                List.of(change),
                Map.of(),
                List.of());
    }
}
