package pairdown.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * What anchors do to a pair's relative track.
 *
 * <p>Given both logs, the error e(t) of the relative position is Gaussian with a known covariance
 * between any two instants K(t, s): both smoothers' posterior covariances, the heights' constants
 * and the clocks' errors times the velocities. Anchors observe e(s₁) … e(sₙ); so with M = K + R
 *
 * <pre>
 * correction(t) = k(t)ᵀ M⁻¹ y        covariance(t) = K(t, t) − k(t)ᵀ M⁻¹ k(t)
 * </pre>
 *
 * which is what one smoother over both machines' states with the anchors as measurements would
 * give, without ever building it. Source: conditioning of a joint Gaussian; C. E. Rasmussen and C.
 * K. I. Williams, Gaussian Processes for Machine Learning (2006), equations 2.23 and 2.24.
 */
final class AnchorCorrection {
    private static final int MOST_INSTANTS = 24;
    private static final int INSTANTS_AN_ANCHOR = 8;
    private static final double LEAST_SPACING_S = 1;

    /** Jitter of a held place from instant to instant (m): a hand on a wing is not welded to it. */
    private static final double JITTER_M = 0.1;

    private final ReferencePoint lead;
    private final ReferencePoint flyer;
    private final double[] instants_s;
    private final PosteriorResponse leadResponse;
    private final PosteriorResponse flyerResponse;
    private final double clocks_s2;
    private final double[][] flyerVelocity;
    private final DecompositionSolver solver;
    private final RealVector weights;
    private final double misfit;

    private record Instant(double t_s, int anchor) {}

    /** Correction and what it takes off the covariances. */
    record At(Vec3 position_m, Vec3 velocity_mps, Mat3 positionLess_m2, Mat3 velocityLess_m2ps2) {}

    static Optional<AnchorCorrection> of(
            ReferencePoint lead, ReferencePoint flyer, List<RelativeAnchor> anchors) {
        List<Instant> instants = instants(lead, flyer, anchors);
        return instants.isEmpty()
                ? Optional.empty()
                : Optional.of(new AnchorCorrection(lead, flyer, anchors, instants));
    }

    private static List<Instant> instants(
            ReferencePoint lead, ReferencePoint flyer, List<RelativeAnchor> anchors) {
        double start_s = Math.max(lead.start_s(), flyer.start_s());
        double end_s = Math.min(lead.end_s(), flyer.end_s());
        int each =
                Math.max(
                        1,
                        Math.min(INSTANTS_AN_ANCHOR, MOST_INSTANTS / Math.max(1, anchors.size())));
        List<Instant> found = new ArrayList<>();
        for (int a = 0; a < anchors.size(); a++) {
            double from_s = Math.max(start_s, anchors.get(a).span().start_s());
            double to_s = Math.min(end_s, anchors.get(a).span().end_s());
            int n = (int) Math.min(each, 1 + Math.floor((to_s - from_s) / LEAST_SPACING_S));
            for (int i = 0; i < n; i++) {
                found.add(new Instant(from_s + (i + 0.5) * (to_s - from_s) / n, a));
            }
        }
        found.sort((x, y) -> Double.compare(x.t_s(), y.t_s()));
        return found;
    }

    private AnchorCorrection(
            ReferencePoint lead,
            ReferencePoint flyer,
            List<RelativeAnchor> anchors,
            List<Instant> instants) {
        this.lead = lead;
        this.flyer = flyer;
        int n = instants.size();
        instants_s = instants.stream().mapToDouble(Instant::t_s).toArray();
        leadResponse = PosteriorResponse.of(lead.antenna(), instants_s);
        flyerResponse = PosteriorResponse.of(flyer.antenna(), instants_s);
        clocks_s2 = RelativeCovariance.clocks_s2(lead, flyer);
        flyerVelocity = velocities(flyer);
        RealMatrix m = MatrixUtils.createRealMatrix(3 * n, 3 * n);
        RealVector y = MatrixUtils.createRealVector(new double[3 * n]);
        for (int i = 0; i < n; i++) {
            double[][] k = covariances(instants_s[i], false);
            for (int axis = 0; axis < 3; axis++) {
                m.setRow(3 * i + axis, k[axis]);
            }
            setMisfit(y, i, anchors.get(instants.get(i).anchor()));
        }
        addNoise(m, instants, anchors);
        solver = new CholeskyDecomposition(symmetric(m), 1e-6, 1e-12).getSolver();
        weights = solver.solve(y);
        misfit = y.dotProduct(weights) / (3 * n);
    }

    private double[][] velocities(ReferencePoint point) {
        double[][] v = new double[instants_s.length][3];
        double[] values = new double[Trajectory.VALUES];
        for (int i = 0; i < v.length; i++) {
            point.read(instants_s[i], values);
            System.arraycopy(values, 3, v[i], 0, 3);
        }
        return v;
    }

    private void setMisfit(RealVector y, int i, RelativeAnchor anchor) {
        double t_s = instants_s[i];
        double[] l = new double[Trajectory.VALUES];
        double[] f = new double[Trajectory.VALUES];
        lead.read(t_s, l);
        flyer.read(t_s, f);
        Vec3 known = anchor.relative_m().apply(t_s);
        y.setEntry(3 * i, known.x() - (f[0] - l[0]));
        y.setEntry(3 * i + 1, known.y() - (f[1] - l[1]));
        y.setEntry(3 * i + 2, known.z() - (f[2] - l[2]));
    }

    private void addNoise(RealMatrix m, List<Instant> instants, List<RelativeAnchor> anchors) {
        for (int i = 0; i < instants.size(); i++) {
            double arm_m = Math.hypot(lead.armSigma_m(instants_s[i]), JITTER_M);
            for (int j = 0; j < instants.size(); j++) {
                boolean together = instants.get(i).anchor() == instants.get(j).anchor();
                double sigma_m = anchors.get(instants.get(i).anchor()).sigma_m();
                double shared = together ? sigma_m * sigma_m : 0;
                double own = i == j ? arm_m * arm_m : 0;
                for (int axis = 0; axis < 3; axis++) {
                    m.addToEntry(3 * i + axis, 3 * j + axis, shared + own);
                }
            }
        }
    }

    private static RealMatrix symmetric(RealMatrix m) {
        return m.add(m.transpose()).scalarMultiply(0.5);
    }

    double misfit() {
        return misfit;
    }

    At at(double t_s) {
        double[][] kp = covariances(t_s, false);
        double[][] kv = covariances(t_s, true);
        return new At(correction(kp), correction(kv), explained(kp), explained(kv));
    }

    private Vec3 correction(double[][] k) {
        return new Vec3(dot(k[0], weights), dot(k[1], weights), dot(k[2], weights));
    }

    private static double dot(double[] a, RealVector b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b.getEntry(i);
        }
        return sum;
    }

    private Mat3 explained(double[][] k) {
        RealMatrix rows = MatrixUtils.createRealMatrix(k);
        RealMatrix e = rows.multiply(solver.solve(rows.transpose()));
        return Mat3.ofRows(row(e, 0), row(e, 1), row(e, 2));
    }

    private static Vec3 row(RealMatrix m, int i) {
        return new Vec3(m.getEntry(i, 0), m.getEntry(i, 1), m.getEntry(i, 2));
    }

    /**
     * Covariance of the error at {@code t_s} (of position, or of velocity) with that of position at
     * every instant: a row an axis, three columns an instant.
     */
    private double[][] covariances(double t_s, boolean ofVelocity) {
        int n = instants_s.length;
        double[] f = new double[Trajectory.VALUES];
        flyer.read(t_s, f);
        int from = ofVelocity ? 6 : 3;
        double[][] k = new double[3][3 * n];
        for (int j = 0; j < n; j++) {
            for (int axis = 0; axis < 3; axis++) {
                k[axis][3 * j + axis] +=
                        leadResponse.covariance(t_s, axis, j, ofVelocity)
                                + flyerResponse.covariance(t_s, axis, j, ofVelocity);
                for (int other = 0; other < 3; other++) {
                    k[axis][3 * j + other] += clocks_s2 * f[from + axis] * flyerVelocity[j][other];
                }
            }
            if (!ofVelocity) {
                k[2][3 * j + 2] += RelativeCovariance.heights(lead, flyer);
            }
        }
        return k;
    }
}
