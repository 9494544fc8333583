package pairdown.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import pairdown.vector.Vec3;

/**
 * Scripted jumps, whose motion and noise are not the model's: against the best of a grid of fixed
 * tunings, and for honest sigmas. Run as a program for many seeds; a few run in the build.
 */
public final class FlightStudy {
    private static final SmootherSettings SETTINGS = SmootherSettings.DEFAULT;
    private static final double[] DENSITIES = {0.3, 1, 3, 10, 30, 100};

    /** Mean squares and coverage of one way to smooth. */
    static final class Score {
        double position2;
        double velocity2;
        double positionNees;
        double velocityNees;
        double positionIn68;
        double positionIn95;
        double velocityIn68;
        double velocityIn95;
        long count;
        long rejected;

        void add(SmoothedTrajectory track, ScriptedFlight truth, boolean skipHoles) {
            rejected += track.rejected().size();
            for (double t = 2; t < ScriptedFlight.END_S - 2; t += 0.31) {
                double at = Math.round(t * 100) / 100.0;
                boolean near =
                        ScriptedFlight.inHole(at)
                                || ScriptedFlight.inHole(at - 0.3)
                                || ScriptedFlight.inHole(at + 0.3);
                if (!(skipHoles && near)) {
                    add(track.at(at), truth.position(at), truth.velocity(at));
                }
            }
        }

        private void add(State s, Vec3 p, Vec3 v) {
            add(s.position_m().x() - p.x(), s.positionSigma_m().x(), true);
            add(s.position_m().y() - p.y(), s.positionSigma_m().y(), true);
            add(s.position_m().z() - p.z(), s.positionSigma_m().z(), true);
            add(s.velocity_mps().x() - v.x(), s.velocitySigma_mps().x(), false);
            add(s.velocity_mps().y() - v.y(), s.velocitySigma_mps().y(), false);
            add(s.velocity_mps().z() - v.z(), s.velocitySigma_mps().z(), false);
            count += 3;
        }

        private void add(double error, double sigma, boolean position) {
            double z = Math.abs(error / sigma);
            double in68 = z < 0.9945 ? 1 : 0;
            double in95 = z < 1.96 ? 1 : 0;
            if (position) {
                position2 += error * error;
                positionNees += z * z;
                positionIn68 += in68;
                positionIn95 += in95;
            } else {
                velocity2 += error * error;
                velocityNees += z * z;
                velocityIn68 += in68;
                velocityIn95 += in95;
            }
        }

        double positionRms() {
            return Math.sqrt(position2 / count);
        }

        double velocityRms() {
            return Math.sqrt(velocity2 / count);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "position %.3f m (NEES %.2f, in 68 %% %.0f, in 95 %% %.0f), velocity %.3f m/s"
                            + " (NEES %.2f, in 68 %% %.0f, in 95 %% %.0f), %d rejected",
                    positionRms(),
                    positionNees / count,
                    100 * positionIn68 / count,
                    100 * positionIn95 / count,
                    velocityRms(),
                    velocityNees / count,
                    100 * velocityIn68 / count,
                    100 * velocityIn95 / count,
                    rejected);
        }
    }

    final Score ours = new Score();
    final Score dirty = new Score();
    final Score clean = new Score();
    private final List<Score> grid = new ArrayList<>();

    private FlightStudy() {
        for (int i = 0; i < DENSITIES.length; i++) {
            grid.add(new Score());
        }
    }

    static FlightStudy of(int from, int to, double rate_Hz, boolean withVelocity) throws Exception {
        FlightStudy study = new FlightStudy();
        for (int seed = from; seed < to; seed++) {
            study.add(seed, rate_Hz, withVelocity);
        }
        return study;
    }

    private void add(int seed, double rate_Hz, boolean withVelocity) throws Exception {
        ScriptedFlight flight = new ScriptedFlight(seed);
        LogFixture log = flight.log(rate_Hz, 0, false, withVelocity);
        JerkProfile phases =
                JerkProfile.ofJumper(
                        OptionalDouble.of(ScriptedFlight.EXIT_S),
                        OptionalDouble.of(ScriptedFlight.OPENING_S),
                        SETTINGS);
        SmoothedTrajectory track = smooth(log, SETTINGS, phases);
        ours.add(track, flight, false);
        clean.add(track, flight, true);
        for (int i = 0; i < DENSITIES.length; i++) {
            grid.get(i)
                    .add(
                            smooth(
                                    log,
                                    SETTINGS.withoutTuning(),
                                    JerkProfile.constant(DENSITIES[i])),
                            flight,
                            false);
        }
        dirty.add(
                smooth(flight.log(rate_Hz, 0.05, true, withVelocity), SETTINGS, phases),
                flight,
                true);
    }

    private static SmoothedTrajectory smooth(
            LogFixture log, SmootherSettings settings, JerkProfile jerk) throws Exception {
        return Smoother.smooth(log.build(), LogFixture.FRAME, settings, jerk);
    }

    double bestPositionRms() {
        return grid.stream().mapToDouble(Score::positionRms).min().orElseThrow();
    }

    double bestVelocityRms() {
        return grid.stream().mapToDouble(Score::velocityRms).min().orElseThrow();
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "ours:  %s%nbest fixed tuning: position %.3f m, velocity %.3f m/s%n"
                        + "5 %% outliers, 5 s holes: %s%nsame places, clean:      %s",
                ours,
                bestPositionRms(),
                bestVelocityRms(),
                dirty,
                clean);
    }

    /** {@code [seeds]}: 20 unless said. */
    public static void main(String[] args) throws Exception {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        for (double rate_Hz : new double[] {1, 5, 10}) {
            System.out.println(rate_Hz + " Hz with velocities");
            System.out.println(of(1, 1 + seeds, rate_Hz, true));
        }
        System.out.println("5 Hz, positions alone");
        System.out.println(of(1, 1 + seeds, 5, false));
    }
}
