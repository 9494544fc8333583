package pairdown.height;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pairdown.clock.LoadedLog;
import pairdown.track.HeightDatum;

/**
 * Decides which datum a log's heights are from where its format leaves that open: a constant offset
 * near the undulation against logs that are surer of theirs.
 */
final class DatumEvidence {
    private final List<LoadedLog> logs;
    private final List<EllipsoidHeights> heights;
    private final List<BiasNetwork.Difference> differences;
    private final double tolerance_m;

    DatumEvidence(
            List<LoadedLog> logs,
            List<EllipsoidHeights> heights,
            List<BiasNetwork.Difference> differences,
            double tolerance_m) {
        this.logs = logs;
        this.heights = heights;
        this.differences = differences;
        this.tolerance_m = tolerance_m;
    }

    /** What the evidence says of one log. */
    record Finding(HeightDatum datum, String words) {}

    /** The other datum, if the evidence is for it. */
    Optional<Finding> of(int i) {
        EllipsoidHeights h = heights.get(i);
        double undulation_m = h.undulation_m();
        if (h.carriesGeoid() || Math.abs(undulation_m) < 2 * tolerance_m) {
            return Optional.empty();
        }
        Optional<Double> above = above_m(i);
        boolean isMsl = h.datum() == HeightDatum.MSL;
        double expected_m = isMsl ? undulation_m : -undulation_m;
        if (above.isEmpty() || Math.abs(above.get() - expected_m) > tolerance_m) {
            return Optional.empty();
        }
        HeightDatum other = isMsl ? HeightDatum.ELLIPSOID : HeightDatum.MSL;
        return Optional.of(
                new Finding(
                        other,
                        String.format(
                                Locale.ROOT,
                                "heights read as %s lie %.1f m off the others aboard, the undulation"
                                        + " here is %.1f m: taken as %s",
                                h.datum().key(),
                                above.get(),
                                undulation_m,
                                other.key())));
    }

    /** Median height above the logs that are surer, or above at least two others that are not. */
    private Optional<Double> above_m(int i) {
        List<Double> surer = new ArrayList<>();
        List<Double> equal = new ArrayList<>();
        for (BiasNetwork.Difference d : differences) {
            if (d.first() != i && d.second() != i) {
                continue;
            }
            int other = d.first() == i ? d.second() : d.first();
            double above_m = d.first() == i ? d.above_m() : -d.above_m();
            if (rank(other) > rank(i)) {
                surer.add(above_m);
            } else if (rank(other) == rank(i)) {
                equal.add(above_m);
            }
        }
        List<Double> all = surer.isEmpty() && equal.size() >= 2 ? equal : surer;
        all.sort(Double::compare);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get((all.size() - 1) / 2));
    }

    /** How sure a log is of its datum: its own geoid, a format that states it, a word, nothing. */
    private int rank(int i) {
        String format = logs.get(i).track().report().format();
        if (heights.get(i).carriesGeoid()) {
            return 3;
        }
        boolean open =
                logs.get(i).track().datum() == HeightDatum.UNKNOWN
                        || format.equals("gpx")
                        || format.equals("kml");
        return open ? 0 : format.equals("igc") ? 2 : 1;
    }
}
