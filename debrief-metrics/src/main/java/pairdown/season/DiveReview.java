package pairdown.season;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
    private final SeasonSettings settings;

    private DiveReview(SpeedSeries speeds, Target target, SeasonSettings settings) {
        this.speeds = speeds;
        this.target = target;
        this.settings = settings;
    }

    /** Empty without a lead in descent, a target, or airspeeds to judge it by. */
    static Optional<Dive> of(Debrief debrief, SeasonSettings settings) {
        Optional<ParticipantDebrief> lead = debrief.lead();
        Optional<Span> descent = lead.flatMap(DiveReview::descent);
        if (lead.isEmpty() || descent.isEmpty() || debrief.attempt().target().isEmpty()) {
            return Optional.empty();
        }
        return SpeedSeries.of(lead.get(), descent.get())
                .filter(DiveReview::anyKnown)
                .map(s -> new DiveReview(s, debrief.attempt().target().get(), settings))
                .map(r -> r.dive(lead.get().systems()));
    }

    /** The longest descent. */
    static Optional<Span> descent(ParticipantDebrief lead) {
        return lead.phases().stream()
                .filter(p -> p.phase() == Phase.DESCENT)
                .map(PhaseSpan::span)
                .max((a, b) -> Double.compare(a.duration_s(), b.duration_s()));
    }

    private static boolean anyKnown(SpeedSeries s) {
        for (int i = 0; i < s.size(); i++) {
            if (!Double.isNaN(s.calibrated_mps(i))) {
                return true;
            }
        }
        return false;
    }

    private Dive dive(Map<Channel, Series> systems) {
        double longest_s = longest_s();
        int trigger = trigger(Optional.ofNullable(systems.get(Channel.POWER_LEVER)));
        return new Dive(
                longest_s >= target.hold_s() - SpeedSeries.STEP_S / 2,
                longest_s,
                stabilise_s(trigger),
                (speeds.size() - 1 - trigger) * SpeedSeries.STEP_S);
    }

    private boolean within(int i) {
        double v_mps =
                target.kind() == AirspeedKind.TRUE ? speeds.true_mps(i) : speeds.calibrated_mps(i);
        return Math.abs(v_mps - target.airspeed_mps()) <= target.airspeedTolerance_mps()
                && Math.abs(speeds.sink_mps(i) - target.sink_mps()) <= target.sinkTolerance_mps();
    }

    private double longest_s() {
        int best = 0;
        int run = 0;
        for (int i = 0; i < speeds.size(); i++) {
            run = within(i) ? run + 1 : 0;
            best = Math.max(best, run);
        }
        return Math.max(0, best - 1) * SpeedSeries.STEP_S;
    }

    /** Lever behind flight idle, else a steep path. */
    private int trigger(Optional<Series> lever) {
        for (int i = 0; i < speeds.size(); i++) {
            boolean reverse =
                    lever.isPresent() && lever.get().at(speeds.time_s(i)) < settings.reverse_pct();
            double path_deg =
                    Math.toDegrees(Math.asin(clamp(speeds.sink_mps(i) / speeds.true_mps(i))));
            if (lever.isPresent() ? reverse : path_deg > settings.steepPath_deg()) {
                return i;
            }
        }
        return 0;
    }

    private static double clamp(double v) {
        return Math.max(-1, Math.min(1, v));
    }

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
