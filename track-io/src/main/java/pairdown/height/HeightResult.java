package pairdown.height;

import java.util.List;
import java.util.Optional;
import pairdown.track.HeightDatum;
import pairdown.units.Estimate;

/**
 * What was found out about one log's heights.
 *
 * @param datumRead what its heights are measured from, stated, assumed or decided by evidence
 * @param undulation_m what was added to reach the ellipsoid (mean over the log); 0 for ellipsoid
 *     heights
 * @param bias_m log minus consensus as measured on a shared ride, if it was; it is taken off
 * @param biasSigma_m one standard deviation of the constant left in the heights
 * @param warnings assumptions and disagreements, in words
 */
public record HeightResult(
        String participant,
        String file,
        HeightDatum datumRead,
        double undulation_m,
        Optional<Estimate> bias_m,
        double biasSigma_m,
        List<String> warnings) {
    public HeightResult {
        warnings = List.copyOf(warnings);
    }
}
