package pairdown.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Attitude;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/** Finds the stretches in which a machine flew steadily enough to be a point of its envelope. */
final class SteadySegments {
    /** Standard gravity (m/s²), exact: ISO 2533. */
    private static final double G_MPS2 = 9.80665;

    private final SeasonSettings settings;

    SteadySegments(SeasonSettings settings) {
        this.settings = settings;
    }

    List<SteadySegment> of(Debrief debrief) {
        List<SteadySegment> segments = new ArrayList<>();
        for (ParticipantDebrief p : debrief.participants()) {
            for (PhaseSpan span : p.phases()) {
                if (span.phase() == Phase.DESCENT || span.phase() == Phase.FLIGHT) {
                    SpeedSeries.of(p, span.span()).ifPresent(s -> add(segments, p, s));
                }
            }
        }
        return segments;
    }

    /** Takes windows of the least length that are steady, then goes on behind each. */
    private void add(List<SteadySegment> segments, ParticipantDebrief p, SpeedSeries s) {
        int n = (int) Math.round(settings.segment_s() / SpeedSeries.STEP_S);
        int i = 0;
        while (i + n < s.size()) {
            Optional<SteadySegment> segment = segment(p, s, i, n);
            if (segment.isPresent()) {
                segments.add(segment.get());
                i += n;
            } else {
                i++;
            }
        }
    }

    private Optional<SteadySegment> segment(ParticipantDebrief p, SpeedSeries s, int from, int n) {
        double cas = 0;
        double tas = 0;
        double sink = 0;
        double cas2 = 0;
        double sink2 = 0;
        for (int i = from; i <= from + n; i++) {
            cas += s.calibrated_mps(i);
            tas += s.true_mps(i);
            sink += s.sink_mps(i);
            cas2 += s.calibrated_mps(i) * s.calibrated_mps(i);
            sink2 += s.sink_mps(i) * s.sink_mps(i);
        }
        int count = n + 1;
        double casSd = sd(cas, cas2, count);
        double sinkSd = sd(sink, sink2, count);
        double acceleration_mps2 =
                (s.true_mps(from + n) - s.true_mps(from)) / (n * SpeedSeries.STEP_S);
        boolean steady =
                casSd <= settings.airspeedSd_mps()
                        && sinkSd <= settings.sinkSd_mps()
                        && Math.abs(acceleration_mps2) <= settings.acceleration_mps2();
        double middle_s = s.time_s(from + n / 2);
        if (!steady || banked(p, middle_s)) {
            return Optional.empty();
        }
        double corrected_mps = sink / count - tas / count * acceleration_mps2 / G_MPS2;
        return Optional.of(
                new SteadySegment(
                        p.id(),
                        p.participant().role().key(),
                        configuration(p.systems(), new Span(s.time_s(from), s.time_s(from + n))),
                        s.time_s(from),
                        n * SpeedSeries.STEP_S,
                        cas / count,
                        tas / count,
                        corrected_mps,
                        p.participant().mass_kg()));
    }

    private static double sd(double sum, double sumOfSquares, int n) {
        return Math.sqrt(Math.max(0, sumOfSquares / n - sum / n * (sum / n)));
    }

    private boolean banked(ParticipantDebrief p, double t_s) {
        return p.attitudes()
                .at(t_s)
                .map(Attitude::roll_deg)
                .filter(roll -> Math.abs(roll) > settings.bank_deg())
                .isPresent();
    }

    /**
     * Flap to ten degrees and power as forward, idle or reverse; what was not logged is not in it.
     */
    private String configuration(Map<Channel, Series> systems, Span span) {
        double t_s = (span.start_s() + span.end_s()) / 2;
        List<String> parts = new ArrayList<>();
        value(systems, Channel.FLAP, t_s)
                .ifPresent(
                        f ->
                                parts.add(
                                        String.format(
                                                Locale.ROOT,
                                                "flap %.0f°",
                                                Math.rint(f / 10) * 10)));
        value(systems, Channel.POWER_LEVER, t_s).ifPresent(l -> parts.add(power(l)));
        return parts.isEmpty() ? "as flown" : String.join(", ", parts);
    }

    private String power(double lever_pct) {
        if (lever_pct < settings.reverse_pct()) {
            return "reverse";
        }
        return lever_pct <= -settings.reverse_pct() ? "idle" : "forward power";
    }

    private static Optional<Double> value(Map<Channel, Series> systems, Channel c, double t_s) {
        return Optional.ofNullable(systems.get(c))
                .map(s -> s.at(t_s))
                .filter(v -> !Double.isNaN(v));
    }
}
