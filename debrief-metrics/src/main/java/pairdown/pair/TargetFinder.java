package pairdown.pair;

import java.util.Optional;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Target;
import pairdown.track.Series;

/** Finds where both machines met the target's airspeed and sink at once. */
final class TargetFinder {
    private TargetFinder() {}

    /** Empty where either airspeed of the target's kind is not known. */
    static Optional<OnTarget> find(PairInput input, Target target, PairRows rows) {
        Optional<Series> lead_mps = airspeed(input.lead(), target.kind());
        Optional<Series> flyer_mps = airspeed(input.flyer(), target.kind());
        if (lead_mps.isEmpty() || flyer_mps.isEmpty()) {
            return Optional.empty();
        }
        double[] margin = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            double t_s = rows.time_s[i];
            margin[i] =
                    rows.measured[i]
                            ? Math.min(
                                    margin(lead_mps.get().at(t_s), rows.leadSink_mps[i], target),
                                    margin(flyer_mps.get().at(t_s), rows.flyerSink_mps[i], target))
                            : Double.NaN;
        }
        return Optional.of(
                new OnTarget(Stretches.lasting(Stretches.of(rows, margin), target.hold_s())));
    }

    private static Optional<Series> airspeed(PairMember member, AirspeedKind kind) {
        return kind == AirspeedKind.CALIBRATED
                ? member.calibratedAirspeed_mps()
                : member.trueAirspeed_mps();
    }

    private static double margin(double airspeed_mps, double sink_mps, Target target) {
        return Math.min(
                target.airspeedTolerance_mps() - Math.abs(airspeed_mps - target.airspeed_mps()),
                target.sinkTolerance_mps() - Math.abs(sink_mps - target.sink_mps()));
    }
}
