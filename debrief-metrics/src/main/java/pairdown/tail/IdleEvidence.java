package pairdown.tail;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * What flight at idle says about an aircraft's drag: the normal equations of {@link IdleDrag}'s
 * coefficients, weighted. Those of several logs of one aircraft add up.
 *
 * @param normal information on a, b, c and d
 * @param right their right-hand side, in a column
 * @param met where it comes from
 */
public record IdleEvidence(RealMatrix normal, RealMatrix right, IdleDrag.Met met) {
    /** Nothing is known of the areas beforehand. */
    private static final double ANY_AREA_M2 = 50;

    /**
     * How far an area midway between flap up and flap full may lie from halfway between theirs: c
     * is four times that (common practice, no published source).
     */
    private static final double BEND_M2 = 0.5;

    /**
     * 1/(π·e·span²), the induced drag of a wing of some 14 m with e = 0.8, half as much of it
     * uncertain: spans from 11 to 20 m. Source of the relation: L. Prandtl, lifting-line theory
     * (1918).
     */
    private static final double USUAL_LIFT_PERM2 = 0.002;

    private static final double USUAL_LIFT_SIGMA_PERM2 = 0.001;

    static final IdleEvidence NONE =
            new IdleEvidence(
                    new Array2DRowRealMatrix(IdleDrag.TERMS, IdleDrag.TERMS),
                    new Array2DRowRealMatrix(IdleDrag.TERMS, 1),
                    new IdleDrag.Met(
                            Double.POSITIVE_INFINITY,
                            Double.NEGATIVE_INFINITY,
                            Double.NaN,
                            Double.NaN,
                            0));

    /** The same with that of another flight of the same aircraft. */
    public IdleEvidence and(IdleEvidence other) {
        return new IdleEvidence(
                normal.add(other.normal), right.add(other.right), met.and(other.met));
    }

    /** All of it as plain numbers, to be kept in a file. */
    List<Double> numbers() {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < IdleDrag.TERMS; i++) {
            for (int j = 0; j < IdleDrag.TERMS; j++) {
                all.add(normal.getEntry(i, j));
            }
            all.add(right.getEntry(i, 0));
        }
        all.addAll(
                List.of(
                        met.lowest_mps(),
                        met.highest_mps(),
                        met.lowestFlap_deg(),
                        met.highestFlap_deg(),
                        met.duration_s()));
        return all;
    }

    static IdleEvidence of(List<Double> numbers) {
        RealMatrix normal = new Array2DRowRealMatrix(IdleDrag.TERMS, IdleDrag.TERMS);
        RealMatrix right = new Array2DRowRealMatrix(IdleDrag.TERMS, 1);
        int k = 0;
        for (int i = 0; i < IdleDrag.TERMS; i++) {
            for (int j = 0; j < IdleDrag.TERMS; j++) {
                normal.setEntry(i, j, numbers.get(k++));
            }
            right.setEntry(i, 0, numbers.get(k++));
        }
        return new IdleEvidence(
                normal,
                right,
                new IdleDrag.Met(
                        numbers.get(k),
                        numbers.get(k + 1),
                        numbers.get(k + 2),
                        numbers.get(k + 3),
                        numbers.get(k + 4)));
    }

    /** The drag by this evidence and by what is usual. */
    public IdleDrag drag() {
        double[] sigma = {ANY_AREA_M2, ANY_AREA_M2, BEND_M2, USUAL_LIFT_SIGMA_PERM2};
        double[] usual = {0, 0, 0, USUAL_LIFT_PERM2};
        RealMatrix all = normal.copy();
        RealMatrix sum = right.copy();
        for (int i = 0; i < sigma.length; i++) {
            double weight = 1 / (sigma[i] * sigma[i]);
            all.addToEntry(i, i, weight);
            sum.addToEntry(i, 0, weight * usual[i]);
        }
        RealMatrix covariance =
                new CholeskyDecomposition(all, 1e-9, 1e-15)
                        .getSolver()
                        .solve(MatrixUtils.createRealIdentityMatrix(IdleDrag.TERMS));
        return new IdleDrag(covariance.multiply(sum), covariance, met);
    }
}
