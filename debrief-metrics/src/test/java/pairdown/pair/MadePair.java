package pairdown.pair;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleFunction;
import pairdown.air.Wind;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Limits;
import pairdown.attempt.MatchedSettings;
import pairdown.attempt.Role;
import pairdown.motion.JerkProfile;
import pairdown.motion.LogFixture;
import pairdown.motion.SmoothedTrajectory;
import pairdown.motion.Smoother;
import pairdown.motion.SmootherSettings;
import pairdown.motion.Trajectory;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;
import pairdown.track.UnusableInputException;
import pairdown.vector.Vec3;

/**
 * A made-up join-up whose truth is a formula: a lead diving north with a slow weave, a flyer that
 * comes in to its slot, holds on to it or hovers beside it, and breaks off; logged by two receivers
 * with white noise and a slowly wandering bias each. Noise figures and the wander of a good
 * station-keeper (0.35 m/s on each axis) are common practice, without a published source.
 */
public final class MadePair {
    public static final double END_S = 100;
    public static final Span CONTACT = new Span(70, 78);
    private static final LeverArm SLOT = new LeverArm(-0.4, -8.2, 0.3);
    private static final double BREAK_OFF_S = 82;

    private final Random random;
    private final double rate_Hz;
    private final boolean touches;
    private final double hover_m;
    private final double[] phases = new double[24];
    private final Series rollRate_dps;

    /** When the flyer's receiver tells places far off, its velocities sound. */
    private Span astray = new Span(-1, -1);

    private MadePair(long seed, double rate_Hz, boolean touches, double hover_m) {
        this.random = new Random(seed * 7919 + 17);
        this.rate_Hz = rate_Hz;
        this.touches = touches;
        this.hover_m = hover_m;
        for (int i = 0; i < phases.length; i++) {
            phases[i] = random.nextDouble() * 2 * Math.PI;
        }
        this.rollRate_dps = rollRate();
    }

    /** One that holds on to the slot for eight seconds, with a jolt in the roll rate. */
    public static MadePair touching(long seed, double rate_Hz) {
        return new MadePair(seed, rate_Hz, true, 0);
    }

    /** One that hovers beside the slot; the lead rolls a little in the rough air all the same. */
    public static MadePair hovering(long seed, double rate_Hz, double away_m) {
        return new MadePair(seed, rate_Hz, false, away_m);
    }

    /** The same, the flyer's receiver some 60 m off for a while. */
    public MadePair astray(Span when) {
        astray = when;
        return this;
    }

    Vec3 lead_m(double t_s) {
        return new Vec3(
                        20 * Math.sin(0.15 * t_s + phases[20]),
                        33 * t_s,
                        1000 - 17.8 * t_s + 1.5 * Math.sin(0.4 * t_s + phases[21]))
                .plus(new Vec3(0, -1500, 0));
    }

    /** Clockwise from north, along the motion. */
    private double heading_rad(double t_s) {
        return Math.atan2(3 * Math.cos(0.15 * t_s + phases[20]), 33);
    }

    private Vec3 levelToEnu(Vec3 v, double t_s) {
        double h_rad = heading_rad(t_s);
        return new Vec3(
                v.x() * Math.sin(h_rad) + v.y() * Math.cos(h_rad),
                v.x() * Math.cos(h_rad) - v.y() * Math.sin(h_rad),
                v.z());
    }

    Vec3 flyer_m(double t_s) {
        double come = Math.exp(-t_s / 14) - Math.exp(-70.0 / 14);
        Vec3 approach = new Vec3(-180, -60, 40).times(Math.max(0, come));
        double away_s = Math.max(0, t_s - BREAK_OFF_S);
        Vec3 leaving = new Vec3(-1, -1.2, 0.5).times(away_s * away_s);
        Vec3 held = SLOT.vector_m().plus(new Vec3(-hover_m, 0, 0));
        double free =
                touches ? 1 - smooth(t_s, CONTACT.start_s()) + smooth(t_s, CONTACT.end_s()) : 1;
        return lead_m(t_s)
                .plus(
                        levelToEnu(
                                held.plus(approach).plus(leaving).plus(wander_m(t_s).times(free)),
                                t_s));
    }

    private static double smooth(double t_s, double at_s) {
        return 1 / (1 + Math.exp(-(t_s - at_s) / 0.15));
    }

    /** Four sines an axis, 0.35 m/s of velocity each axis. */
    private Vec3 wander_m(double t_s) {
        double[] axis = new double[3];
        double[] rate = {0.6, 0.9, 1.3, 1.9};
        for (int i = 0; i < 12; i++) {
            axis[i % 3] += 0.25 / rate[i / 3] * Math.sin(rate[i / 3] * t_s + phases[i]);
        }
        return new Vec3(axis[0], axis[1], axis[2]);
    }

    private Series rollRate() {
        int n = (int) (END_S * 10);
        double[] t_s = new double[n];
        float[] v = new float[n];
        double slow = 0;
        for (int i = 0; i < n; i++) {
            t_s[i] = i / 10.0;
            slow = 0.9 * slow + 0.15 * random.nextGaussian();
            double since_s = t_s[i] - CONTACT.start_s();
            double jolt = touches && since_s >= 0 && since_s < 1.2 ? -2.5 : 0;
            v[i] = (float) (slow + 0.1 * random.nextGaussian() + jolt);
        }
        return Series.of(t_s, v, false);
    }

    private SmoothedTrajectory log(DoubleFunction<Vec3> place_m, Role role)
            throws UnusableInputException {
        LogFixture log = new LogFixture().role(role);
        Vec3 bias = gaussian(0.8, 1.35);
        double keep = Math.exp(-1 / rate_Hz / 45);
        double fresh = Math.sqrt(1 - keep * keep);
        for (int i = 0; i <= END_S * rate_Hz; i++) {
            double t_s = i / rate_Hz;
            Vec3 v = place_m.apply(t_s + 1e-3).minus(place_m.apply(t_s - 1e-3)).times(500);
            boolean off = role == Role.FLYER && astray.contains(t_s);
            Vec3 stray = off ? new Vec3(40, -40, 25) : Vec3.ZERO;
            log.fix(t_s, place_m.apply(t_s).plus(bias).plus(stray).plus(gaussian(0.2, 0.35)));
            log.velocity(v.plus(gaussian(0.1, 0.18)));
            bias = bias.times(keep).plus(gaussian(0.8, 1.35).times(fresh));
        }
        SmootherSettings settings = SmootherSettings.DEFAULT;
        JerkProfile jerk =
                role == Role.LEAD
                        ? JerkProfile.constant(settings.aircraftJerk_m2ps5())
                        : JerkProfile.ofJumper(
                                OptionalDouble.of(-100), OptionalDouble.of(1000), settings);
        return Smoother.smooth(log.build(), LogFixture.FRAME, settings, jerk);
    }

    private Vec3 gaussian(double level, double up) {
        return new Vec3(
                level * random.nextGaussian(),
                level * random.nextGaussian(),
                up * random.nextGaussian());
    }

    /** The pair as its logs tell of it. */
    public PairInput logged() throws UnusableInputException {
        return input(log(this::lead_m, Role.LEAD), log(this::flyer_m, Role.FLYER), rate_Hz);
    }

    /** The pair as it truly flew. */
    public PairInput truly() {
        return input(
                KnownMotion.of(END_S, 10, this::lead_m).sigmas(0, 0),
                KnownMotion.of(END_S, 10, this::flyer_m).sigmas(0, 0),
                10);
    }

    private PairInput input(Trajectory lead, Trajectory flyer, double hz) {
        DataGrade grade = new DataGrade(hz, true, true);
        Wind calm = new Wind("typed", List.of(new Wind.Layer(0, 9000, 0, 0, 0.2)), List.of());
        return new PairInput(
                PairMember.of("lead", lead, grade)
                        .withSystems(
                                Map.of(Channel.ROLL_RATE, rollRate_dps), t_s -> Optional.empty()),
                PairMember.of("blue", flyer, grade)
                        .withFlight(OptionalDouble.of(0), OptionalDouble.of(END_S)),
                Optional.of("left"),
                Optional.of(SLOT),
                LogFixture.FRAME,
                0,
                calm,
                Optional.empty(),
                MatchedSettings.DEFAULT,
                OptionalDouble.of(30),
                Limits.NONE,
                List.of());
    }

    double separation_m(double t_s) {
        return flyer_m(t_s).minus(lead_m(t_s)).norm();
    }

    double closure_mps(double t_s) {
        return (separation_m(t_s - 1e-3) - separation_m(t_s + 1e-3)) / 2e-3;
    }
}
