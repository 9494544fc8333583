package pairdown.season;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Attitude;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;

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

    /** Takes each window of a segment's length that is steady, then goes on behind it. */
    private void add(List<SteadySegment> segments, ParticipantDebrief p, SpeedSeries s) {
        int n = (int) Math.round(settings.segment_s() / SpeedSeries.STEP_S);
        int i = 0;
        while (i + n < s.size()) {
            Window w = new Window(s, i, i + n);
            if (w.steady(settings) && !banked(p, w)) {
                segments.add(segment(p, w));
                i += n;
            } else {
                i++;
            }
        }
    }

    /** A window of the grid, both ends included. */
    private record Window(SpeedSeries s, int from, int to) {
        double start_s() {
            return s.time_s(from);
        }

        double middle_s() {
            return s.time_s((from + to) / 2);
        }

        double length_s() {
            return (to - from) * SpeedSeries.STEP_S;
        }

        StreamingStatistics over(IntToDoubleFunction value) {
            StreamingStatistics stats = new StreamingStatistics();
            for (int i = from; i <= to; i++) {
                stats.addValue(value.applyAsDouble(i));
            }
            return stats;
        }

        double acceleration_mps2() {
            return (s.true_mps(to) - s.true_mps(from)) / length_s();
        }

        double pathRate_dps() {
            return (s.path_deg(to) - s.path_deg(from)) / length_s();
        }

        /** NaN in any figure makes a comparison, and so the window, fail. */
        boolean steady(SeasonSettings settings) {
            return Math.abs(acceleration_mps2()) <= settings.acceleration_mps2()
                    && Math.abs(pathRate_dps()) <= settings.pathRate_dps()
                    && over(s::calibrated_mps).getStandardDeviation() <= settings.airspeedSd_mps()
                    && over(s::sink_mps).getStandardDeviation() <= settings.sinkSd_mps();
        }
    }

    /** Whether the bank went beyond what is steady anywhere in a window; false where unknown. */
    private boolean banked(ParticipantDebrief p, Window w) {
        for (int i = w.from(); i <= w.to(); i++) {
            boolean over =
                    p.attitudes()
                            .at(w.s().time_s(i))
                            .map(Attitude::roll_deg)
                            .filter(roll -> Math.abs(roll) > settings.bank_deg())
                            .isPresent();
            if (over) {
                return true;
            }
        }
        return false;
    }

    /**
     * Sink as it would be at the same speed without the change of speed: V_z = V (sin γ − V̇/g), V
     * sin γ the sink flown, from the balance of forces along the path.
     */
    static double steadySink_mps(double true_mps, double sink_mps, double acceleration_mps2) {
        return sink_mps - true_mps * acceleration_mps2 / G_MPS2;
    }

    /** The mean point, its sink that of steady flight. */
    private SteadySegment segment(ParticipantDebrief p, Window w) {
        double true_mps = w.over(w.s()::true_mps).getMean();
        double sink_mps =
                steadySink_mps(true_mps, w.over(w.s()::sink_mps).getMean(), w.acceleration_mps2());
        return new SteadySegment(
                p.id(),
                p.participant().role().key(),
                Configurations.at(p.systems(), w.middle_s(), settings.reverse_pct()),
                w.start_s(),
                w.length_s(),
                w.over(w.s()::calibrated_mps).getMean(),
                true_mps,
                sink_mps,
                p.participant().mass_kg());
    }
}
