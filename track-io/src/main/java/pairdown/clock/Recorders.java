package pairdown.clock;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.TimeAxis;
import pairdown.units.Estimate;

/** The clocks of logs without places, each from its own vehicle's satellite log. */
final class Recorders {
    /** A recorder's set clock is searched this far from what it says before anywhere else (s). */
    private static final double NEAR_S = 15;

    private final List<LoadedLog> logs;
    private final List<Mover> movers;
    private final TimeAxis rough;
    private final ClockSettings settings;

    Recorders(List<LoadedLog> logs, List<Mover> movers, TimeAxis rough, ClockSettings settings) {
        this.logs = logs;
        this.movers = movers;
        this.rough = rough;
        this.settings = settings;
    }

    /** Replaces the results of logs without places. */
    void align(List<ClockResult> results) {
        for (int i = 0; i < logs.size(); i++) {
            int index = i;
            if (movers.stream().noneMatch(m -> m.index() == index)) {
                results.set(i, align(i, results));
            }
        }
    }

    private ClockResult align(int i, List<ClockResult> results) {
        LoadedLog log = logs.get(i);
        Optional<Mover> vehicle =
                movers.stream()
                        .filter(m -> m.log().participant().id().equals(log.participant().id()))
                        .filter(m -> results.get(m.index()).isUsable())
                        .min(
                                Comparator.comparing(Mover::isDifferenced)
                                        .thenComparingDouble(Mover::medianStep_s));
        if (vehicle.isEmpty()) {
            String why = "its vehicle has no usable satellite log to match its air data with";
            return without(results.get(i), why);
        }
        ClockResult of = results.get(vehicle.get().index());
        double vehicle_s = vehicle.get().toRough_s(of, rough);
        AirDataMatch.Outcome outcome = match(log, vehicle.get(), vehicle_s);
        return outcome.match().isEmpty()
                ? without(results.get(i), outcome.refusal())
                : with(log, results.get(i), outcome.match().get(), vehicle_s, of);
    }

    /** Near what the recorder or a person says, where either does; then anywhere. */
    private AirDataMatch.Outcome match(LoadedLog log, Mover vehicle, double vehicle_s) {
        Optional<Estimate> near = said_s(log).map(said -> new Estimate(said - vehicle_s, NEAR_S));
        AirDataMatch.Outcome first = AirDataMatch.of(log.track(), vehicle, near, settings);
        return near.isPresent() && first.match().isEmpty()
                ? AirDataMatch.of(log.track(), vehicle, Optional.empty(), settings)
                : first;
    }

    /** The recorder's time 0 on the rough axis as it, or a mark, says. */
    private Optional<Double> said_s(LoadedLog log) {
        OptionalDouble mark_s = log.ref().clock().offset_s();
        return log.track()
                .epoch()
                .map(e -> rough.seconds(e) + mark_s.orElse(0))
                .or(() -> log.ref().clock().atZero().map(rough::seconds));
    }

    private static ClockResult without(ClockResult r, String why) {
        List<String> warnings = new ArrayList<>();
        warnings.add(why);
        return new ClockResult(
                r.participant(),
                r.file(),
                r.map(),
                r.offsetSigma_s(),
                r.doubt(),
                r.method(),
                Optional.empty(),
                OptionalDouble.empty(),
                r.zero(),
                Optional.empty(),
                Optional.empty(),
                warnings);
    }

    private ClockResult with(
            LoadedLog log,
            ClockResult before,
            AirDataMatch.Match match,
            double vehicle_s,
            ClockResult vehicle) {
        double zero_s = match.atZero_s() + vehicle_s;
        double sigma_s = Math.hypot(match.sigma_s(), vehicle.offsetSigma_s());
        List<String> words = new ArrayList<>(match.words());
        Optional<Double> said_s = said_s(log);
        Optional<Estimate> measured =
                log.track().epoch().map(e -> new Estimate(zero_s - rough.seconds(e), sigma_s));
        Verdict.Clock clock =
                log.track().hasAbsoluteTime()
                        ? new Verdict(log, settings).absolute(measured)
                        : new Verdict(log, settings)
                                .relative(
                                        Optional.of(
                                                new Estimate(
                                                        before.zero().isPresent()
                                                                ? zero_s - said_s.orElse(zero_s)
                                                                : zero_s,
                                                        sigma_s)),
                                        rough);
        words.addAll(clock.words());
        boolean taken = clock.method() == ClockMethod.SHARED_RIDE;
        double rate = taken ? match.rate() : 0;
        Optional<Instant> zero = clock.zero();
        return new ClockResult(
                before.participant(),
                before.file(),
                new ClockMap(clock.map().offset_s(), rate),
                clock.sigma_s(),
                taken ? vehicle.doubt().plusOwn(match.sigma_s()) : before.doubt(),
                taken ? ClockMethod.AIR_DATA_MATCH : clock.method(),
                measured,
                OptionalDouble.of(match.residual_mps()),
                zero,
                Optional.empty(),
                Optional.of(match.curve()),
                words);
    }
}
