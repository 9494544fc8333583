package pairdown.season;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.hipparchus.stat.StatUtils;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Target;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.season.AttemptSummary.Dive;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/** Holds the lead's descent against the attempt's target. */
final class DiveReview {
    private final SpeedSeries speeds;
    private final Target target;
    private final Map<Channel, Series> systems;
    private final SeasonSettings settings;

    private DiveReview(
            SpeedSeries speeds,
            Target target,
            Map<Channel, Series> systems,
            SeasonSettings settings) {
        this.speeds = speeds;
        this.target = target;
        this.systems = systems;
        this.settings = settings;
    }

    /** Empty without a lead in descent, a target, or airspeeds to judge it by. */
    static Optional<Dive> of(Debrief debrief, SeasonSettings settings) {
        Optional<ParticipantDebrief> lead = debrief.lead();
        Optional<Span> descent = lead.flatMap(DiveReview::descent);
        Optional<Target> target = debrief.attempt().target();
        if (descent.isEmpty() || target.isEmpty()) {
            return Optional.empty();
        }
        return SpeedSeries.of(lead.get(), descent.get())
                .filter(SpeedSeries::anyAirspeed)
                .map(s -> new DiveReview(s, target.get(), lead.get().systems(), settings).dive());
    }

    /** The longest descent. */
    private static Optional<Span> descent(ParticipantDebrief lead) {
        return lead.phases().stream()
                .filter(p -> p.phase() == Phase.DESCENT)
                .map(PhaseSpan::span)
                .max((a, b) -> Double.compare(a.duration_s(), b.duration_s()));
    }

    /** A run of samples within both tolerances, ends included. */
    private record Hold(int from, int to) {
        double length_s() {
            return (to - from) * SpeedSeries.STEP_S;
        }
    }

    private Dive dive() {
        Optional<Hold> longest = longest();
        int trigger = trigger();
        double longest_s = longest.map(Hold::length_s).orElse(0.0);
        return new Dive(
                Configurations.at(systems, middle_s(longest, trigger), settings.reverse_pct()),
                longest_s >= target.hold_s() - SpeedSeries.STEP_S / 2,
                longest_s,
                stabilise_s(trigger),
                (speeds.size() - 1 - trigger) * SpeedSeries.STEP_S,
                longest.map(this::airspeedSd_mps).orElse(OptionalDouble.empty()),
                peakElevator_pct());
    }

    private double middle_s(Optional<Hold> longest, int trigger) {
        int middle =
                longest.map(h -> (h.from() + h.to()) / 2).orElse((trigger + speeds.size() - 1) / 2);
        return speeds.time_s(middle);
    }

    private boolean within(int i) {
        return Math.abs(airspeed_mps(i) - target.airspeed_mps()) <= target.airspeedTolerance_mps()
                && Math.abs(speeds.sink_mps(i) - target.sink_mps()) <= target.sinkTolerance_mps();
    }

    private double airspeed_mps(int i) {
        return target.kind() == AirspeedKind.TRUE ? speeds.true_mps(i) : speeds.calibrated_mps(i);
    }

    private Optional<Hold> longest() {
        Optional<Hold> best = Optional.empty();
        int from = 0;
        for (int i = 0; i < speeds.size(); i++) {
            if (!within(i)) {
                from = i + 1;
            } else if (best.isEmpty() || i - from > best.get().to() - best.get().from()) {
                best = Optional.of(new Hold(from, i));
            }
        }
        return best;
    }

    private OptionalDouble airspeedSd_mps(Hold hold) {
        double[] v_mps =
                IntStream.rangeClosed(hold.from(), hold.to())
                        .mapToDouble(this::airspeed_mps)
                        .toArray();
        return v_mps.length < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.sqrt(StatUtils.variance(v_mps)));
    }

    private OptionalDouble peakElevator_pct() {
        Optional<Series> elevator = Optional.ofNullable(systems.get(Channel.ELEVATOR));
        return elevator.isEmpty()
                ? OptionalDouble.empty()
                : IntStream.range(0, speeds.size())
                        .mapToDouble(i -> Math.abs(elevator.get().at(speeds.time_s(i))))
                        .filter(v -> !Double.isNaN(v))
                        .max();
    }

    /** Lever behind flight idle; where no lever was logged, a steep path. */
    private int trigger() {
        Optional<Series> lever = Optional.ofNullable(systems.get(Channel.POWER_LEVER));
        for (int i = 0; i < speeds.size(); i++) {
            boolean begun =
                    lever.isPresent()
                            ? lever.get().at(speeds.time_s(i)) < settings.reverse_pct()
                            : speeds.path_deg(i) > settings.steepPath_deg();
            if (begun) {
                return i;
            }
        }
        return 0;
    }

    /** From the trigger to the first instant after which both tolerances held long enough. */
    private OptionalDouble stabilise_s(int trigger) {
        int need = (int) Math.round(settings.stable_s() / SpeedSeries.STEP_S);
        int run = 0;
        for (int i = trigger; i < speeds.size(); i++) {
            run = within(i) ? run + 1 : 0;
            if (run > need) {
                return OptionalDouble.of((i - need - trigger) * SpeedSeries.STEP_S);
            }
        }
        return OptionalDouble.empty();
    }
}
