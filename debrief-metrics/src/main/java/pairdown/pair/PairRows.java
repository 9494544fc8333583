package pairdown.pair;

import java.util.Arrays;
import java.util.Optional;
import pairdown.geodesy.Wgs84;
import pairdown.time.Span;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * A pair's relative motion on the regular grid from exit to opening, as columns: what every finder
 * in this package reads. NaN where a figure can't be known. Columns are open to the package only,
 * and written here alone: millions of reads make getters not worth their lines.
 */
final class PairRows {
    final double start_s;
    final double step_s;
    final int size;
    final double[] time_s;

    /** Both logs have fixes around the row, none more than a second apart. */
    final boolean[] measured;

    final double[] separation_m;
    final double[] separationSigma_m;
    final double[] gap_m;
    final double[] gapSigma_m;
    final double[] gapRate_mps;
    final double[] closure_mps;
    final double[] closureSigma_mps;
    final double[][] position_m;
    final double[][] rate_mps;
    final double[][] matchRate_mps;

    /** Relative velocity's sigma per level axis, and up. */
    final double[] levelSigma_mps;

    final double[] verticalSigma_mps;

    /** The turn rate's sigma times the level range. */
    final double[] turnAllowance_mps;

    /** Where the two pass if neither changes its velocity; NaN while they hold. */
    final double[] miss_m;

    final double[] missSigma_m;
    final double[] missIn_s;

    /** The flyer's height above the ellipsoid. */
    final double[] flyerHeight_m;

    final double[] leadSink_mps;
    final double[] flyerSink_mps;

    /** Squared distance from the slot in sigmas. */
    final double[] slotSigmas2;

    /** Squared relative velocity's expected noise, all axes together. */
    final double[] rateNoise2;

    private PairRows(double start_s, double step_s, int size) {
        this.start_s = start_s;
        this.step_s = step_s;
        this.size = size;
        this.time_s = new double[size];
        this.measured = new boolean[size];
        this.separation_m = unknown(size);
        this.separationSigma_m = unknown(size);
        this.gap_m = unknown(size);
        this.gapSigma_m = unknown(size);
        this.gapRate_mps = unknown(size);
        this.closure_mps = unknown(size);
        this.closureSigma_mps = unknown(size);
        this.position_m = new double[][] {unknown(size), unknown(size), unknown(size)};
        this.rate_mps = new double[][] {unknown(size), unknown(size), unknown(size)};
        this.matchRate_mps = new double[][] {unknown(size), unknown(size), unknown(size)};
        this.levelSigma_mps = unknown(size);
        this.verticalSigma_mps = unknown(size);
        this.turnAllowance_mps = unknown(size);
        this.miss_m = unknown(size);
        this.missSigma_m = unknown(size);
        this.missIn_s = unknown(size);
        this.flyerHeight_m = unknown(size);
        this.leadSink_mps = unknown(size);
        this.flyerSink_mps = unknown(size);
        this.slotSigmas2 = unknown(size);
        this.rateNoise2 = unknown(size);
    }

    private static double[] unknown(int size) {
        double[] column = new double[size];
        Arrays.fill(column, Double.NaN);
        return column;
    }

    static PairRows of(PairInput input, RelativeMotion motion, Span flight, PairSettings settings) {
        double fastest_Hz =
                Math.max(input.lead().grade().rate_Hz(), input.flyer().grade().rate_Hz());
        double step_s = 1 / Math.max(settings.rows_Hz(), nearlyWhole(fastest_Hz));
        int size = 1 + (int) Math.floor(flight.duration_s() / step_s + 1e-6);
        PairRows rows = new PairRows(flight.start_s(), step_s, size);
        for (int i = 0; i < size; i++) {
            rows.time_s[i] = flight.start_s() + i * step_s;
        }
        for (int i = 0; i < size; i++) {
            rows.measured[i] = motion.measured(rows.time_s[i]);
            if (rows.measured[i]) {
                rows.fill(i, motion, settings);
            }
        }
        return rows;
    }

    /** A rate measured as 9.998 is 10. */
    private static double nearlyWhole(double rate_Hz) {
        double whole = Math.rint(rate_Hz);
        return Math.abs(rate_Hz - whole) < 0.02 * rate_Hz ? whole : rate_Hz;
    }

    private void fill(int i, RelativeMotion motion, PairSettings settings) {
        RelativeMotion.Sample s = motion.sample(time_s[i]);
        Relative r = s.relative;
        separation_m[i] = s.separation_m;
        separationSigma_m[i] = s.separationSigma_m;
        closure_mps[i] = s.hasDirection() ? s.closure.rate_mps() : Double.NaN;
        closureSigma_mps[i] = s.closure.sigma_mps();
        put(position_m, i, s.position_m);
        put(rate_mps, i, s.rate_mps);
        put(matchRate_mps, i, s.matchRate_mps);
        Vec3 sigma_mps = r.velocitySigma_mps();
        levelSigma_mps[i] = sigma_mps.levelNorm() / Math.sqrt(2);
        verticalSigma_mps[i] = sigma_mps.z();
        rateNoise2[i] = sigma_mps.normSquared();
        turnAllowance_mps[i] = s.turnSigma_radps * r.offset_m().levelNorm();
        s.predictedMiss().ifPresent(m -> put(i, m));
        // Level at the lead; the ellipsoid falls away by d²/2R, 8 cm at 1 km.
        double level_m = r.offset_m().levelNorm();
        flyerHeight_m[i] =
                r.leadHeight_m() + r.offset_m().z() + level_m * level_m / (2 * Wgs84.A_M);
        leadSink_mps[i] = -r.leadVelocity_mps().z();
        flyerSink_mps[i] = -r.flyerVelocity_mps().z();
        Optional<Vec3> gap = s.gapVector_m();
        if (gap.isPresent()) {
            fillGap(i, s, gap.get(), motion, settings);
        }
    }

    private void fillGap(
            int i,
            RelativeMotion.Sample s,
            Vec3 gap,
            RelativeMotion motion,
            PairSettings settings) {
        double reach2 = settings.touch().reach_m() * settings.touch().reach_m();
        Mat3 covariance_m2 = s.gapCovariance_m2(motion.slot_m().orElseThrow());
        gap_m[i] = gap.norm();
        gapSigma_m[i] = OffsetCovariance.sigmaAlong(covariance_m2, gap);
        gapRate_mps[i] = gap_m[i] > 0 ? gap.dot(s.rate_mps) / gap_m[i] : 0;
        slotSigmas2[i] =
                OffsetCovariance.squaredSigmas(
                        gap,
                        OffsetCovariance.sum(
                                covariance_m2, Mat3.diagonal(new Vec3(reach2, reach2, reach2))));
    }

    private void put(int i, PredictedMiss miss) {
        miss_m[i] = miss.miss_m();
        missSigma_m[i] = miss.sigma_m();
        missIn_s[i] = miss.in_s();
    }

    private static void put(double[][] columns, int i, Vec3 v) {
        columns[0][i] = v.x();
        columns[1][i] = v.y();
        columns[2][i] = v.z();
    }

    double last_s() {
        return time_s[size - 1];
    }

    /** The first row at or after an instant; {@link #size} after the last. */
    int rowAtOrAfter(double t_s) {
        return (int) Math.max(0, Math.min(size, Math.ceil((t_s - start_s) / step_s - 1e-9)));
    }

    /** The last row at or before an instant; −1 before the first. */
    int rowAtOrBefore(double t_s) {
        return (int) Math.max(-1, Math.min(size - 1, Math.floor((t_s - start_s) / step_s + 1e-9)));
    }

    /** Where a quantity passes zero between row {@code i} − 1 and row {@code i}. */
    double crossing_s(int i, double before, double after) {
        double share = before == after ? 0 : before / (before - after);
        return time_s[i - 1] + Math.min(1, Math.max(0, share)) * step_s;
    }
}
