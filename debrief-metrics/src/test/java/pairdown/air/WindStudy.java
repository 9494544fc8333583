package pairdown.air;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import pairdown.atmosphere.Atmosphere;
import pairdown.attempt.AirSettings;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.motion.JerkProfile;
import pairdown.motion.LogFixture;
import pairdown.motion.Smoother;
import pairdown.motion.SmootherSettings;
import pairdown.motion.Trajectory;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.time.Span;
import pairdown.track.Series;
import pairdown.vector.Vec3;

/**
 * A jump ship climbing in circles through a sheared, gusty wind: found wind and calibrated airspeed
 * against the truth. Run as a program for many seeds; a few run in the build.
 */
final class WindStudy {
    static final DayAir AIR = new DayAir(new Atmosphere(1018, 6), 30, List.of());
    private static final double CLIMB_S = 700;
    private static final double DT = 0.2;
    private static final double CLIMB_MPS = 4.5;

    private double wind2;
    private double windNees;
    private int layers;
    private double cas2;
    private int speeds;

    /** Straight, or with so many degrees of turn a second. */
    private final double turn_dps;

    /** Straight on for so long first. */
    private final double straight_s;

    /** Standing for so long, then rolling for half a minute, before it climbs. */
    private double standing_s;

    WindStudy(double turn_dps) {
        this(turn_dps, 0);
    }

    WindStudy(double turn_dps, double straight_s) {
        this.turn_dps = turn_dps;
        this.straight_s = straight_s;
    }

    WindStudy fromTheGround(double seconds) {
        standing_s = seconds;
        return this;
    }

    static Vec3 wind(double height_m) {
        double from_rad = Math.toRadians(250 + 25 * height_m / 3700);
        double speed = 4 + 8 * height_m / 3700;
        return new Vec3(-speed * Math.sin(from_rad), -speed * Math.cos(from_rad), 0);
    }

    /** One seed: the wind found. */
    Wind add(long seed) throws Exception {
        Random random = new Random(seed);
        LogFixture log = new LogFixture().role(Role.JUMPSHIP);
        Vec3 p = new Vec3(0, 0, -1700);
        double heading = 2 * Math.PI * random.nextDouble();
        double wander = 0;
        Vec3 gust = Vec3.ZERO;
        double ground_s = standing_s > 0 ? takeOff(log, p, heading, random) : 0;
        int n = (int) (CLIMB_S / DT);
        double[] trueCas = new double[n];
        for (int i = 0; i < n; i++) {
            double t = i * DT;
            double height_m = LogFixture.FRAME.origin().height_m() + p.z();
            wander = step(wander, 10, 1.0, random);
            gust = new Vec3(step(gust.x(), 6, 0.5, random), step(gust.y(), 6, 0.5, random), 0);
            double cas = 48 + wander;
            double tas = AIR.true_mps(cas, height_m);
            Vec3 air = new Vec3(Math.sin(heading), Math.cos(heading), 0).times(tas);
            Vec3 v = air.plus(wind(height_m)).plus(gust).plus(new Vec3(0, 0, CLIMB_MPS));
            trueCas[i] = AIR.calibrated_mps(air.plus(new Vec3(0, 0, CLIMB_MPS)).norm(), height_m);
            log.fix(ground_s + t, p.plus(noise(random, 0.3))).velocity(v.plus(noise(random, 0.1)));
            p = p.plus(v.times(DT));
            heading += t < straight_s ? 0 : Math.toRadians(turn_dps) * DT;
        }
        Trajectory trajectory = smooth(log);
        Wind wind = find(trajectory, ground_s + (n - 1) * DT);
        score(wind, trajectory, trueCas, ground_s);
        return wind;
    }

    /** On the ground, ending where and as fast as the climb begins; how long it took. */
    private double takeOff(LogFixture log, Vec3 liftOff, double heading, Random random) {
        double roll_s = 30;
        Vec3 end = new Vec3(Math.sin(heading), Math.cos(heading), 0).times(52);
        for (double t = 0; t < standing_s + roll_s - DT / 2; t += DT) {
            double rolled_s = Math.max(0, t - standing_s);
            Vec3 v = end.times(rolled_s / roll_s);
            double toGo_m = 26 * (roll_s - rolled_s * rolled_s / roll_s);
            Vec3 p = liftOff.minus(end.times(toGo_m / 52));
            log.fix(t, p.plus(noise(random, 0.3))).velocity(v.plus(noise(random, 0.1)));
        }
        return standing_s + roll_s;
    }

    private static double step(double x, double tau, double sigma, Random random) {
        double keep = Math.exp(-DT / tau);
        return keep * x + sigma * Math.sqrt(1 - keep * keep) * random.nextGaussian();
    }

    private static Vec3 noise(Random random, double sigma) {
        return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
                .times(sigma);
    }

    private static Trajectory smooth(LogFixture log) throws Exception {
        return Smoother.smooth(
                log.build(), LogFixture.FRAME, SmootherSettings.DEFAULT, JerkProfile.constant(1));
    }

    private static Wind find(Trajectory trajectory, double end_s) {
        Participant ship =
                new Participant(
                        "ship",
                        Role.JUMPSHIP,
                        List.of(),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty());
        PhaseSpan climb = new PhaseSpan("ship", Phase.CLIMB, new Span(0, end_s));
        return WindFinder.find(
                List.of(new WindSource(ship, trajectory, List.of(climb), Map.of())),
                AirSettings.NONE,
                AIR,
                LogFixture.FRAME);
    }

    private void score(Wind wind, Trajectory trajectory, double[] trueCas, double from_s) {
        for (Wind.Layer layer : wind.layers()) {
            Vec3 truth = wind(layer.middle_m());
            double e = layer.towardEast_mps() - truth.x();
            double f = layer.towardNorth_mps() - truth.y();
            wind2 += e * e + f * f;
            windNees += (e * e + f * f) / (2 * layer.sigma_mps() * layer.sigma_mps());
            layers++;
        }
        if (!wind.isKnown()) {
            return;
        }
        Series cas =
                AirData.of(trajectory, Map.of(), wind, AIR, LogFixture.FRAME)
                        .calibratedAirspeed_mps()
                        .orElseThrow();
        for (int i = 10; i < trueCas.length - 10; i += 7) {
            double error = cas.at(from_s + i * DT) - trueCas[i];
            cas2 += error * error;
            speeds++;
        }
    }

    /** Of the vector, over layers. */
    double windRms() {
        return Math.sqrt(wind2 / layers);
    }

    double nees() {
        return windNees / layers;
    }

    double casRms() {
        return Math.sqrt(cas2 / speeds);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "wind vector RMS %.2f m/s over %d layers, NEES %.2f, CAS RMS %.2f m/s",
                windRms(),
                layers,
                nees(),
                casRms());
    }

    /** {@code [seeds]}: 24 unless said. */
    public static void main(String[] args) throws Exception {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 24;
        for (double turn_dps : new double[] {6, 3, 1.5}) {
            WindStudy study = new WindStudy(turn_dps);
            for (int seed = 1; seed <= seeds; seed++) {
                study.add(seed);
            }
            System.out.println(turn_dps + " deg/s: " + study);
        }
    }
}
