package pairdown.air;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import pairdown.attempt.AirSettings;

/**
 * One robust least-squares fit of all that is known of the wind.
 *
 * <p>Unknowns: the wind (east, north) at the middle of every layer, linear in between; each arc's
 * airspeed at its ends, linear in between; each heading run's scale and heading error; the mean
 * change from layer to layer, which layers that no turn was flown in go on with. Rows: |v − w| = Va
 * over arcs; v − w = (1 + s + iφ) · air velocity over heading runs; w = typed wind; neighbours
 * apart by the mean change, within the shear; an arc's airspeed alike at both ends. Gauss–Newton
 * with Huber weights, the arcs' circles as start. Errors last {@code wanderTime_s}, so each row's
 * weight is cut by how many rows share one error; the inverse of the normal matrix is then an
 * honest covariance.
 */
final class WindFit {
    private static final int ITERATIONS = 12;
    private static final double HUBER = 1.5;

    /** Nobody flies formation in more wind than this: keeps what no row sees from running off. */
    private static final double ANY_WIND_MPS = 30;

    private static final double ARC_STEP_S = 1;
    private static final double RUN_STEP_S = 2;

    private final List<WindArc> arcs;
    private final List<HeadingRun> runs;
    private final List<AirSettings.WindAloft> typed;
    private final double undulation_m;
    private final WindSettings settings;
    private final double bottom_m;
    private final int layers;
    private final double[] x;
    private RealMatrix normal;
    private RealVector right;

    WindFit(
            List<WindArc> arcs,
            List<HeadingRun> runs,
            List<AirSettings.WindAloft> typed,
            double undulation_m,
            WindSettings settings) {
        this.arcs = arcs;
        this.runs = runs;
        this.typed = typed;
        this.undulation_m = undulation_m;
        this.settings = settings;
        double[] range = heights();
        this.bottom_m = Math.floor(range[0] / settings.layer_m()) * settings.layer_m();
        this.layers = (int) Math.max(1, Math.ceil((range[1] - bottom_m) / settings.layer_m()));
        this.x = new double[2 * layers + 2 * arcs.size() + 2 * runs.size() + 2];
        this.normal = MatrixUtils.createRealIdentityMatrix(x.length);
        this.right = MatrixUtils.createRealVector(new double[x.length]);
        solve();
    }

    private double[] heights() {
        List<Double> all = new ArrayList<>();
        arcs.forEach(a -> a.samples().forEach(k -> all.add(k.height_m())));
        runs.forEach(r -> r.samples().forEach(s -> all.add(s[0])));
        typed.forEach(w -> all.add(w.height_m() + undulation_m));
        return new double[] {
            all.stream().mapToDouble(Double::doubleValue).min().orElse(0),
            all.stream().mapToDouble(Double::doubleValue).max().orElse(0)
        };
    }

    private void solve() {
        start();
        for (int i = 0; i < ITERATIONS; i++) {
            normal = MatrixUtils.createRealMatrix(x.length, x.length);
            right = MatrixUtils.createRealVector(new double[x.length]);
            addPriors();
            addArcs();
            addRuns();
            addTyped();
            // Sums in another order differ in the last bits, by any share where they come near 0.
            normal = normal.add(normal.transpose()).scalarMultiply(0.5);
            RealVector step =
                    new CholeskyDecomposition(normal, 1e-9, 1e-15).getSolver().solve(right);
            for (int k = 0; k < x.length; k++) {
                x[k] += step.getEntry(k);
            }
        }
    }

    private void start() {
        double east = 0;
        double north = 0;
        for (int i = 0; i < arcs.size(); i++) {
            Circle c = arcs.get(i).circle();
            east += c.east_mps() / arcs.size();
            north += c.north_mps() / arcs.size();
            x[arcAt(i)] = c.radius_mps();
            x[arcAt(i) + 1] = c.radius_mps();
        }
        for (int i = 0; i < layers; i++) {
            x[2 * i] = east;
            x[2 * i + 1] = north;
        }
    }

    private int arcAt(int i) {
        return 2 * layers + 2 * i;
    }

    private int runAt(int i) {
        return 2 * layers + 2 * arcs.size() + 2 * i;
    }

    private int meanShearAt(int axis) {
        return runAt(runs.size()) + axis;
    }

    private void addPriors() {
        for (int i = 0; i < 2 * layers; i++) {
            add(-x[i], ANY_WIND_MPS, new int[] {i}, new double[] {1});
        }
        for (int i = 0; i + 2 < 2 * layers; i++) {
            int mean = meanShearAt(i % 2);
            add(
                    x[i] + x[mean] - x[i + 2],
                    settings.shear_mps(),
                    new int[] {i, i + 2, mean},
                    new double[] {-1, 1, -1});
        }
        for (int axis = 0; axis < 2; axis++) {
            int mean = meanShearAt(axis);
            add(-x[mean], settings.shear_mps(), new int[] {mean}, new double[] {1});
        }
        for (int i = 0; i < arcs.size(); i++) {
            int a = arcAt(i);
            double minutes = Math.max(0.2, arcs.get(i).duration_s() / 60);
            add(
                    x[a] - x[a + 1],
                    settings.speedDrift_mps() * Math.sqrt(minutes),
                    new int[] {a, a + 1},
                    new double[] {-1, 1});
        }
        for (int i = 0; i < 2 * runs.size(); i++) {
            int a = runAt(0) + i;
            add(-x[a], settings.headingScale(), new int[] {a}, new double[] {1});
        }
    }

    private void addArcs() {
        double sigma = settings.speedWander_mps() * correlated(ARC_STEP_S);
        for (int i = 0; i < arcs.size(); i++) {
            WindArc arc = arcs.get(i);
            for (WindArc.Sample sample : arc.samples()) {
                addArcRow(arc, sample, arcAt(i), sigma);
            }
        }
    }

    /** One error spans twice its time constant; rows within it are worth one together. */
    private double correlated(double step_s) {
        return Math.sqrt(Math.max(1, 2 * settings.wanderTime_s() / step_s));
    }

    private void addArcRow(WindArc arc, WindArc.Sample sample, int at, double sigma) {
        Place p = place(sample.height_m());
        double e = sample.east_mps() - p.east();
        double n = sample.north_mps() - p.north();
        double speed = Math.max(1e-3, Math.hypot(e, n));
        double since_s = sample.time_s() - arc.samples().get(0).time_s();
        double share = since_s / Math.max(1, arc.duration_s());
        double residual = speed - (1 - share) * x[at] - share * x[at + 1];
        double ue = e / speed;
        double un = n / speed;
        addRobust(
                residual,
                sigma,
                settings.speedWander_mps(),
                new int[] {p.below(), p.below() + 1, p.above(), p.above() + 1, at, at + 1},
                new double[] {
                    (1 - p.share()) * ue,
                    (1 - p.share()) * un,
                    p.share() * ue,
                    p.share() * un,
                    1 - share,
                    share
                });
    }

    private void addRuns() {
        double sigma = settings.slip_mps() * correlated(RUN_STEP_S);
        for (int i = 0; i < runs.size(); i++) {
            int at = runAt(i);
            for (double[] s : runs.get(i).samples()) {
                Place p = place(s[0]);
                double e = s[1] - p.east() - (1 + x[at]) * s[3] - x[at + 1] * s[4];
                double n = s[2] - p.north() - (1 + x[at]) * s[4] + x[at + 1] * s[3];
                addRunRow(e, sigma, p, 0, at, s[3], s[4]);
                addRunRow(n, sigma, p, 1, at, s[4], -s[3]);
            }
        }
    }

    private void addRunRow(
            double residual, double sigma, Place p, int axis, int at, double scale, double turn) {
        addRobust(
                residual,
                sigma,
                settings.slip_mps(),
                new int[] {p.below() + axis, p.above() + axis, at, at + 1},
                new double[] {1 - p.share(), p.share(), scale, turn});
    }

    private void addTyped() {
        for (AirSettings.WindAloft w : typed) {
            Place p = place(w.height_m() + undulation_m);
            double from_rad = Math.toRadians(w.from_deg());
            double[] wind = {
                -w.speed_mps() * Math.sin(from_rad), -w.speed_mps() * Math.cos(from_rad)
            };
            double[] now = {p.east(), p.north()};
            for (int axis = 0; axis < 2; axis++) {
                add(
                        wind[axis] - now[axis],
                        settings.typed_mps(),
                        new int[] {p.below() + axis, p.above() + axis},
                        new double[] {1 - p.share(), p.share()});
            }
        }
    }

    private record Place(int below, int above, double share, double east, double north) {}

    private Place place(double height_m) {
        double at = (height_m - bottom_m) / settings.layer_m() - 0.5;
        int i = (int) Math.max(0, Math.min(layers - 1, Math.floor(at)));
        int j = Math.min(layers - 1, i + 1);
        double s = Math.max(0, Math.min(1, at - i));
        return new Place(
                2 * i,
                2 * j,
                s,
                (1 - s) * x[2 * i] + s * x[2 * j],
                (1 - s) * x[2 * i + 1] + s * x[2 * j + 1]);
    }

    private void addRobust(
            double residual, double sigma, double single, int[] at, double[] derivative) {
        double size = Math.abs(residual) / single;
        double widening = size <= HUBER ? 1 : Math.sqrt(size / HUBER);
        add(residual, sigma * widening, at, derivative);
    }

    /** A row: {@code residual = Σ derivative · change}, known to sigma. */
    private void add(double residual, double sigma, int[] at, double[] derivative) {
        double weight = 1 / (sigma * sigma);
        for (int i = 0; i < at.length; i++) {
            right.addToEntry(at[i], weight * derivative[i] * residual);
            for (int j = 0; j < at.length; j++) {
                normal.addToEntry(at[i], at[j], weight * derivative[i] * derivative[j]);
            }
        }
    }

    /** Layers known well enough, by rising height. */
    List<Wind.Layer> layers() {
        RealMatrix covariance =
                new CholeskyDecomposition(normal, 1e-9, 1e-15).getSolver().getInverse();
        List<Wind.Layer> found = new ArrayList<>();
        for (int i = 0; i < layers; i++) {
            double variance =
                    (covariance.getEntry(2 * i, 2 * i) + covariance.getEntry(2 * i + 1, 2 * i + 1))
                            / 2;
            if (Math.sqrt(variance) <= settings.largestSigma_mps()) {
                found.add(
                        new Wind.Layer(
                                bottom_m + i * settings.layer_m(),
                                bottom_m + (i + 1) * settings.layer_m(),
                                x[2 * i],
                                x[2 * i + 1],
                                Math.sqrt(variance)));
            }
        }
        return found;
    }
}
