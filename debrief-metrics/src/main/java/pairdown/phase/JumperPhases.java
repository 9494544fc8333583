package pairdown.phase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.phase.Runs.Run;
import pairdown.units.Estimate;

/** Phases of one who leaves an aircraft and opens a canopy. */
final class JumperPhases {
    /** The fall is looked at until this long after it is fast (s), and this many samples. */
    private static final double BEYOND_S = 1.5;

    private static final int FALL_SAMPLES = 3;

    /** A log that begins later than this before the fall missed the exit (s). */
    private static final double LEAST_ABOARD_S = 8;

    /** Riding together is judged over this long before that (s). */
    private static final double RIDE_S = 20;

    /** An opening is under way where its pull is this share of its most. */
    private static final double PULLING_SHARE = 0.5;

    private final String id;
    private final Motion motion;
    private final PhaseSettings settings;

    JumperPhases(String id, Motion motion, PhaseSettings settings) {
        this.id = id;
        this.motion = motion;
        this.settings = settings;
    }

    /** What was found; exit and opening where there were any. */
    record Found(List<PhaseSpan> spans, List<Event> events) {}

    Found find(Optional<Motion> ship) {
        SpanList spans = new SpanList(id);
        List<Event> events = new ArrayList<>();
        Optional<Run> flight = flight().filter(r -> ship.isEmpty() || !rides(ship.get(), r));
        if (flight.isEmpty()) {
            double moving_s = motion.movesFrom_s(2 * settings.groundSpeed_mps());
            spans.add(Phase.GROUND, motion.start_s(), moving_s);
            spans.add(Phase.ABOARD, moving_s, motion.end_s());
            return new Found(spans.all(), events);
        }
        int fast = flight.get().from();
        Optional<Estimate> exit = exit(fast, ship);
        double exit_s = exit.map(Estimate::value).orElse(motion.start_s());
        exit.ifPresent(
                e -> {
                    spans.add(Phase.ABOARD, motion.start_s(), e.value());
                    events.add(event(EventKind.EXIT, e, id + " leaves the aircraft"));
                });
        Optional<Estimate> opening = opening(flight.get());
        double flightEnd_s = opening.map(Estimate::value).orElse(motion.end_s());
        spans.add(Phase.FLIGHT, exit_s, flightEnd_s);
        stable(fast, flightEnd_s, exit_s)
                .ifPresent(e -> events.add(event(EventKind.STABLE, e, id + " flies steadily")));
        opening.ifPresent(
                e -> {
                    events.add(event(EventKind.OPENING, e, id + " opens the canopy"));
                    double landed_s = landing_s(e.value());
                    spans.add(Phase.CANOPY, e.value(), landed_s);
                    spans.add(Phase.GROUND, landed_s, motion.end_s());
                });
        return new Found(spans.all(), events);
    }

    /** The stretch of fast sink that lasts longest, shallow moments in it forgiven. */
    private Optional<Run> flight() {
        List<Run> runs =
                Runs.of(
                        motion.size(),
                        k -> motion.sink_mps(k) > settings.flightSink_mps(),
                        motion.points(settings.flightTime_s()),
                        motion.points(settings.canopyTime_s()));
        return runs.stream().max((a, b) -> Integer.compare(a.length(), b.length()));
    }

    /** Whether a sink is the ship's, with the jumper still in it. */
    private boolean rides(Motion ship, Run sink) {
        int together = 0;
        int known = 0;
        for (int k = sink.from(); k <= sink.to(); k++) {
            double apart_mps = motion.apart_mps(ship, k);
            known += Double.isNaN(apart_mps) ? 0 : 1;
            together += apart_mps < settings.shared_mps() ? 1 : 0;
        }
        return 2 * known > sink.length() && together * 4 > known * 3;
    }

    private Optional<Estimate> exit(int fast, Optional<Motion> ship) {
        double falling_s = falling_s(motion.time_s(fast));
        if (falling_s - LEAST_ABOARD_S < motion.start_s()) {
            return Optional.empty();
        }
        return ExitInstant.before(motion, ship.filter(s -> ridesWith(s, falling_s)), falling_s)
                .map(this::onTheClock);
    }

    private Estimate onTheClock(Estimate e) {
        return new Estimate(e.value(), Math.hypot(e.sigma(), motion.clockSigma_s()));
    }

    /** When enough of a fast fall was sampled, after a hole too. */
    private double falling_s(double fast_s) {
        Motion.Columns v = motion.samples().vertical();
        int first = v.firstFrom(fast_s);
        int last = Math.min(v.size() - 1, first + FALL_SAMPLES - 1);
        return first >= v.size()
                ? fast_s + BEYOND_S
                : Math.max(v.time_s(first) + BEYOND_S, v.time_s(last));
    }

    private boolean ridesWith(Motion ship, double falling_s) {
        int together = 0;
        int known = 0;
        int to = motion.index(falling_s - LEAST_ABOARD_S / 2);
        for (int k = Math.max(0, to - motion.points(RIDE_S)); k < to; k++) {
            double apart_mps = motion.apart_mps(ship, k);
            known += Double.isNaN(apart_mps) ? 0 : 1;
            together += apart_mps < settings.shared_mps() ? 1 : 0;
        }
        return known > motion.points(RIDE_S) / 4 && together * 4 > known * 3;
    }

    /**
     * The first instant after flight began at which the sink falls through the flight's limit
     * behind an opening's pull and stays slow on average from then on: a canopy surges after it
     * opens.
     */
    private Optional<Estimate> opening(Run flight) {
        int reach = motion.points(settings.openingReach_s());
        for (int k = flight.from() + 1; k + reach < motion.size(); k++) {
            boolean crossed =
                    motion.sink_mps(k) <= settings.flightSink_mps()
                            && motion.sink_mps(k - 1) > settings.flightSink_mps();
            if (crossed
                    && pull_mps2(k - reach, k + reach / 3) >= settings.openingDeceleration_mps2()
                    && isCanopy(k)) {
                return Optional.of(onTheClock(OpeningInstant.before(motion, pulling_s(k))));
            }
        }
        return Optional.empty();
    }

    /** When the pull that ends in a slow sink at a point is first well under way. */
    private double pulling_s(int slow) {
        int reach = motion.points(settings.openingReach_s());
        int peak = slow;
        double most_mps2 = 0;
        for (int k = Math.max(1, slow - reach);
                k < Math.min(motion.size(), slow + reach / 3);
                k++) {
            double pull_mps2 = -motion.speedRate_mps2(k);
            if (pull_mps2 > most_mps2) {
                most_mps2 = pull_mps2;
                peak = k;
            }
        }
        int pulling = peak;
        while (pulling > Math.max(1, slow - 2 * reach)
                && -motion.speedRate_mps2(pulling) > PULLING_SHARE * most_mps2) {
            pulling--;
        }
        return motion.time_s(pulling);
    }

    /** The strongest loss of speed between two points (m/s²). */
    private double pull_mps2(int from, int to) {
        double pull_mps2 = 0;
        for (int k = Math.max(1, from); k < Math.min(motion.size(), to); k++) {
            double rate = motion.speedRate_mps2(k);
            pull_mps2 = Double.isNaN(rate) ? pull_mps2 : Math.max(pull_mps2, -rate);
        }
        return pull_mps2;
    }

    /** Whether sink and level speed, on average, are a canopy's from here on. */
    private boolean isCanopy(int from) {
        double sink = 0;
        double level = 0;
        int known = 0;
        int to = Math.min(motion.size(), from + 2 * motion.points(settings.canopyTime_s()));
        for (int k = from; k < to; k++) {
            if (!Double.isNaN(motion.speed_mps(k))) {
                sink += motion.sink_mps(k);
                level += motion.levelSpeed_mps(k);
                known++;
            }
        }
        return known > motion.points(settings.openingReach_s()) / 2
                && sink < settings.flightSink_mps() * known
                && level < settings.canopySpeed_mps() * known;
    }

    private Optional<Estimate> stable(int fast, double end_s, double exit_s) {
        int need = motion.points(settings.stableTime_s());
        int run = 0;
        for (int k = Math.max(1, motion.index(exit_s)); k < motion.index(end_s); k++) {
            boolean calm =
                    k >= fast && motion.acceleration_mps2(k) < settings.stableAcceleration_mps2();
            run = calm ? run + 1 : 0;
            if (run == need) {
                return Optional.of(
                        new Estimate(motion.time_s(k - need + 1), settings.stableTime_s() / 3));
            }
        }
        return Optional.empty();
    }

    private double landing_s(double opening_s) {
        int need = motion.points(settings.groundTime_s());
        int run = 0;
        for (int k = motion.index(opening_s); k < motion.size(); k++) {
            run = motion.speed_mps(k) < settings.groundSpeed_mps() ? run + 1 : 0;
            if (run == need) {
                return motion.time_s(k - need + 1);
            }
        }
        return motion.end_s();
    }

    private Event event(EventKind kind, Estimate at, String text) {
        return new Event(at.value(), at.sigma(), kind, List.of(id), text);
    }
}
