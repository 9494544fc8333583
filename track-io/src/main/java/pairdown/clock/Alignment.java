package pairdown.clock;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairdown.attempt.Role;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.track.Track;
import pairdown.units.Estimate;

/** One run of {@link CommonClock}: rides between all logs that moved, then each log's result. */
final class Alignment {
    /** Fewer fixes than this are no motion. */
    private static final int LEAST_FIXES = 10;

    private final List<LoadedLog> logs;
    private final ClockSettings settings;
    private final TimeAxis rough;
    private final List<Mover> movers;
    private final RideSearch search;
    private final OffsetNetwork network;
    private final List<Tie> ties = new ArrayList<>();
    private final Map<Integer, List<String>> warnings = new TreeMap<>();

    Alignment(List<LoadedLog> logs, ClockSettings settings) {
        this.logs = logs;
        this.settings = settings;
        this.rough = new TimeAxis(roughEpoch());
        this.search = new RideSearch(settings, logs.stream().anyMatch(Alignment::isMovingShip));
        this.network = new OffsetNetwork(logs.size());
        this.movers = frame().map(this::movers).orElse(List.of());
    }

    private List<Mover> movers(LocalFrame frame) {
        return IntStream.range(0, logs.size())
                .parallel()
                .filter(i -> fixes(logs.get(i).track()) >= LEAST_FIXES)
                .mapToObj(i -> Mover.of(i, logs.get(i), rough, frame, settings))
                .toList();
    }

    /** A ride and between whom. Rides compare velocities; clocks are those of positions. */
    private record Tie(Mover first, Mover second, RideFit.Ride ride) {
        /** What takes a lag of velocities to one of positions. */
        double correction_s() {
            return second.velocityLag_s() - first.velocityLag_s();
        }

        double lag_s() {
            return ride.lag_s() + correction_s();
        }

        double sigma_s() {
            return Math.hypot(
                    ride.sigma_s(),
                    Math.hypot(first.velocityLagSigma_s(), second.velocityLagSigma_s()));
        }
    }

    private static boolean isMovingShip(LoadedLog log) {
        return log.participant().role() == Role.JUMPSHIP && fixes(log.track()) >= LEAST_FIXES;
    }

    private Instant roughEpoch() {
        return logs.stream()
                .flatMap(l -> l.track().epoch().or(() -> l.ref().clock().zero()).stream())
                .findFirst()
                .orElse(Instant.EPOCH);
    }

    private Optional<LocalFrame> frame() {
        for (LoadedLog log : logs) {
            Track track = log.track();
            for (int i = 0; track.hasPositions() && i < track.size(); i++) {
                if (track.hasPosition(i)) {
                    Geodetic at = track.positionAsRead(i);
                    return Optional.of(
                            LocalFrame.at(new Geodetic(at.latitude_deg(), at.longitude_deg(), 0)));
                }
            }
        }
        return Optional.empty();
    }

    /** Rows with a position, counted only as far as needed. */
    private static int fixes(Track track) {
        int count = 0;
        for (int i = 0; track.hasPositions() && i < track.size() && count < LEAST_FIXES; i++) {
            count += track.hasPosition(i) ? 1 : 0;
        }
        return count;
    }

    ClockSolution solve() {
        rideTogether();
        joinGroups();
        double[] offset_s = network.offsets();
        int[] group = network.groups();
        Map<Integer, Placed> placed = new HashMap<>();
        for (Mover m : movers) {
            place(m, group, offset_s).ifPresent(p -> placed.put(m.index(), p));
        }
        noticeSwaps();
        List<ClockResult> results = new ArrayList<>();
        for (int i = 0; i < logs.size(); i++) {
            results.add(result(i, group[i], Optional.ofNullable(placed.get(i))));
        }
        results = new Meetings(movers, results, rough).doubted();
        new Recorders(logs, movers, rough, settings).align(results);
        results = new Strangers(logs, results, rough).refuse();
        TimeAxis axis = CommonClock.axis(logs, results);
        return new ClockSolution(axis, results, sharedRides(results, axis));
    }

    /** Pairs whose clocks agree, or nearly. */
    private void rideTogether() {
        IntStream.range(0, movers.size())
                .parallel()
                .boxed()
                .flatMap(this::ridesOfLater)
                .toList()
                .forEach(this::tie);
    }

    private Stream<Tie> ridesOfLater(int first) {
        return movers.subList(first + 1, movers.size()).stream()
                .flatMap(later -> rideOf(movers.get(first), later).stream());
    }

    private Optional<Tie> rideOf(Mover a, Mover b) {
        if (!a.isAbsolute() || !b.isAbsolute() || !search.mayShare(a, b)) {
            return Optional.empty();
        }
        return search.near(a, b).map(r -> new Tie(a, b, r));
    }

    private void tie(Tie tie) {
        ties.add(tie);
        if (isObservable(tie)) {
            network.tie(tie.first().index(), tie.second().index(), tie.lag_s(), tie.sigma_s());
        }
    }

    private boolean isObservable(Tie tie) {
        return tie.sigma_s() <= settings.unobservable_s();
    }

    /** Groups that nothing ties yet are searched for a ride at any lag, one pair after another. */
    private void joinGroups() {
        for (int i = 0; i < movers.size(); i++) {
            for (int j = i + 1; j < movers.size(); j++) {
                Mover a = movers.get(i);
                Mover b = movers.get(j);
                int[] group = network.groups();
                boolean open =
                        group[a.index()] != group[b.index()]
                                && search.mayShare(a, b)
                                && !knowEachOther(a, b);
                if (open) {
                    search.anywhere(a, b).ifPresent(f -> join(a, b, f));
                }
            }
        }
    }

    /** Whether the two rode together, though too straight to tie their clocks. */
    private boolean knowEachOther(Mover a, Mover b) {
        return ties.stream().anyMatch(t -> t.first == a && t.second == b);
    }

    private void join(Mover a, Mover b, RideSearch.Found found) {
        if (found.rival().isPresent()) {
            String text =
                    "shares a ride with the other at two lags alike, "
                            + Told.seconds(found.ride().lag_s())
                            + " and "
                            + Told.seconds(found.rival().get().lag_s())
                            + ": ambiguous, not used";
            warn(a.index(), text.replace("the other", b.name()));
            warn(b.index(), text.replace("the other", a.name()));
        } else {
            Tie tie = new Tie(a, b, found.ride());
            if (isObservable(tie)) {
                tie(tie);
            }
        }
    }

    /** Loggers that changed hands. */
    private void noticeSwaps() {
        for (Mover m : movers) {
            String words = Swaps.ofRole(m, movers);
            if (!words.isEmpty()) {
                warn(m.index(), words);
            }
        }
        for (Mover a : movers) {
            for (Mover b : movers) {
                if (a.index() < b.index() && search.twoAircraftInOne(a, b)) {
                    warn(a.index(), inOne(b));
                    warn(b.index(), inOne(a));
                }
                if (a.index() < b.index() && a.isOf(b) && part(a, b)) {
                    String words = "it parts from the participant's other log: worn by another?";
                    warn(a.index(), words);
                    warn(b.index(), words);
                }
            }
        }
    }

    private static String inOne(Mover other) {
        return "it moves as if in one cabin with "
                + other.name()
                + ", though both are given as aircraft: loggers swapped?";
    }

    private boolean part(Mover a, Mover b) {
        double lag_s =
                ties.stream()
                        .filter(t -> t.first == a && t.second == b)
                        .mapToDouble(t -> t.ride.lag_s())
                        .findFirst()
                        .orElse(b.hypothesis_s() - a.hypothesis_s());
        return a.isAbsolute() && b.isAbsolute() && Swaps.part(a, b, lag_s);
    }

    private void warn(int index, String text) {
        List<String> all = warnings.computeIfAbsent(index, k -> new ArrayList<>());
        if (!all.contains(text)) {
            all.add(text);
        }
    }

    /** A log's measured offset, from its group and the group's reference. */
    private record Placed(
            Estimate offset_s,
            double residual_mps,
            Lateness lateness,
            Optional<OffsetCurve> curve) {}

    private Optional<Placed> place(Mover m, int[] group, double[] offset_s) {
        List<Mover> together =
                movers.stream().filter(o -> group[o.index()] == group[m.index()]).toList();
        if (together.size() < 2) {
            return Optional.empty();
        }
        List<Mover> others = movers.stream().filter(o -> !together.contains(o)).toList();
        Optional<Reference.Choice> choice =
                Reference.of(together, offset_s, others, 4 * settings.latencySigma_s());
        choice.flatMap(Reference.Choice::doubt).ifPresent(d -> warn(m.index(), d));
        Tie best = bestTie(m);
        return choice.map(
                c -> {
                    double x_s = offset_s[m.index()] + c.constant_s();
                    double seat_s = settings.seat_m() / Math.max(1, best.ride.speed_mps());
                    return new Placed(
                            new Estimate(x_s, Math.hypot(best.sigma_s(), seat_s)),
                            best.ride.residual_mps(),
                            new Lateness(
                                    settings.latencySigma_s(), c.by().size(), c.by().contains(m)),
                            Optional.of(curve(best, m, x_s, offset_s)));
                });
    }

    private Tie bestTie(Mover m) {
        return ties.stream()
                .filter(t -> isObservable(t) && (t.first == m || t.second == m))
                .min((s, t) -> Double.compare(s.sigma_s(), t.sigma_s()))
                .orElseThrow();
    }

    /** The pair's curve against this log's own offset. */
    private static OffsetCurve curve(Tie tie, Mover m, double x_s, double[] offset_s) {
        boolean second = tie.second == m;
        double other_s = offset_s[second ? tie.first.index() : tie.second.index()];
        double shift_s = x_s - offset_s[m.index()] + other_s;
        List<OffsetCurve.Point> points = new ArrayList<>();
        for (OffsetCurve.Point p : tie.ride.curve().points()) {
            double lag_s = p.offset_s() + tie.correction_s();
            double own_s = second ? lag_s : -lag_s;
            points.add(new OffsetCurve.Point(shift_s + own_s, p.residual_mps()));
        }
        points.sort((p, q) -> Double.compare(p.offset_s(), q.offset_s()));
        return new OffsetCurve(points);
    }

    private ClockResult result(int i, int group, Optional<Placed> placed) {
        LoadedLog log = logs.get(i);
        Verdict verdict = new Verdict(log, settings);
        Verdict.Clock clock =
                log.track().hasAbsoluteTime()
                        ? verdict.absolute(placed.map(Placed::offset_s))
                        : verdict.relative(placed.map(Placed::offset_s), rough);
        clock.words().forEach(w -> warn(i, w));
        if (placed.isEmpty() && clock.method() != ClockMethod.NONE && logs.size() > 1) {
            warn(i, untested(i));
            mover(i).flatMap(Alignment::atItsWord).ifPresent(w -> warn(i, w));
        }
        return new ClockResult(
                log.participant().id(),
                log.ref().file(),
                clock.map(),
                clock.sigma_s(),
                doubt(clock, group, placed),
                clock.method(),
                placed.map(Placed::offset_s).filter(e -> log.track().hasAbsoluteTime()),
                placed.map(p -> OptionalDouble.of(p.residual_mps)).orElse(OptionalDouble.empty()),
                clock.zero(),
                mover(i).flatMap(Mover::latency_s),
                placed.flatMap(Placed::curve),
                warnings.getOrDefault(i, List.of()));
    }

    /** What an untested clock would do, where the log's format does not tell UTC itself. */
    private static Optional<String> atItsWord(Mover m) {
        OptionalDouble speed_mps = m.speed_mps();
        return m.role() != Role.LEAD || m.isNative() || speed_mps.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        String.format(
                                Locale.ROOT,
                                "its times are taken at their word: each second they are off moves it"
                                        + " %.0f m against the others",
                                speed_mps.getAsDouble()));
    }

    private ClockDoubt doubt(Verdict.Clock clock, int group, Optional<Placed> placed) {
        Lateness lateness =
                placed.map(Placed::lateness).orElse(Lateness.alone(settings.latencySigma_s()));
        double outside_s =
                clock.beside_s().map(lateness::kept_s).orElse(lateness.shifted_s(clock.own_s()));
        return new ClockDoubt(clock.own_s(), group, outside_s, settings.commonLatency_s());
    }

    private Optional<Mover> mover(int i) {
        return movers.stream().filter(m -> m.index() == i).findFirst();
    }

    private String untested(int i) {
        for (Tie t : ties) {
            if (t.first.index() == i || t.second.index() == i) {
                Mover other = t.first.index() == i ? t.second : t.first;
                return "rode with "
                        + other.name()
                        + ", but too straight to test the clock (sigma "
                        + Told.seconds(t.sigma_s()).substring(1)
                        + ")";
            }
        }
        Optional<Mover> jumper = mover(i).filter(m -> m.role().isJumper());
        return ties.stream()
                .filter(t -> jumper.isPresent() && ranDuring(jumper.get(), t))
                .findFirst()
                .map(
                        t ->
                                "no ride shared with another log, though "
                                        + t.first.name()
                                        + " and "
                                        + t.second.name()
                                        + " share one: a log of another flight? its clock could not"
                                        + " be tested")
                .orElse("no ride shared with another log: the clock could not be tested");
    }

    /** Whether a log ran while two others rode together, long enough to show that it was aboard. */
    private boolean ranDuring(Mover m, Tie tie) {
        double shift_s = tie.second.base_s() + tie.second.hypothesis_s();
        double together_s =
                tie.ride.spans().stream()
                        .mapToDouble(
                                s ->
                                        Math.min(m.end_s(), s.end_s() + shift_s)
                                                - Math.max(m.start_s(), s.start_s() + shift_s))
                        .filter(s -> s > 0)
                        .sum();
        return m.isAbsolute() && together_s >= settings.minimumRide_s();
    }

    private List<SharedRide> sharedRides(List<ClockResult> results, TimeAxis axis) {
        List<SharedRide> out = new ArrayList<>();
        for (Tie t : ties) {
            ClockResult first = results.get(t.first.index());
            ClockResult second = results.get(t.second.index());
            if (!first.isUsable() || !second.isUsable()) {
                continue;
            }
            double shift_s = onAxis(t.second, second, axis);
            List<Span> spans = new ArrayList<>();
            for (Span s : t.ride.spans()) {
                spans.add(new Span(s.start_s() + shift_s, s.end_s() + shift_s));
            }
            out.add(
                    new SharedRide(
                            t.first.index(),
                            t.second.index(),
                            new Estimate(t.lag_s(), Math.min(t.sigma_s(), Double.MAX_VALUE)),
                            t.ride.residual_mps(),
                            t.ride.speed_mps(),
                            spans));
        }
        return out;
    }

    /** What takes a mover's time on the rough axis to the attempt's. */
    private double onAxis(Mover m, ClockResult r, TimeAxis axis) {
        return m.toRough_s(r, rough) - rough.seconds(axis.epoch());
    }
}
