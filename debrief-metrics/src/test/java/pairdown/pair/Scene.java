package pairdown.pair;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import pairdown.air.Wind;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Limits;
import pairdown.attempt.MatchedSettings;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.vector.Vec3;

/** Builds pair inputs from known motions. */
public final class Scene {
    public static final LocalFrame FRAME = LocalFrame.at(Geodetic.ofDegrees(45, 10, 0));
    public static final DataGrade GOOD = new DataGrade(10, true, true);
    public static final LeverArm LEFT = new LeverArm(0.4, -6.2, 0.9);
    public static final Wind CALM =
            new Wind("typed", List.of(new Wind.Layer(0, 5000, 0, 0, 0.2)), List.of());

    /** How long the dive of {@link #input(DoubleFunction)} lasts. */
    static final double DIVE_S = 40;

    /** North at 33 m/s, sinking at 17.8 m/s, from 3 km. */
    public static final Vec3 DIVE_MPS = new Vec3(0, 33, -17.8);

    public static final Vec3 TOP_M = new Vec3(0, 0, 3000);

    private Scene() {}

    public static KnownMotion diving(double end_s) {
        return KnownMotion.straight(end_s, TOP_M, DIVE_MPS);
    }

    public static PairMember member(String id, Trajectory trajectory) {
        return PairMember.of(id, trajectory, GOOD);
    }

    public static PairInput input(Trajectory lead, Trajectory flyer) {
        return new PairInput(
                member("lead", lead),
                member("blue", flyer)
                        .withFlight(
                                OptionalDouble.of(flyer.start_s()),
                                OptionalDouble.of(flyer.end_s())),
                Optional.of("left"),
                Optional.of(LEFT),
                FRAME,
                0,
                CALM,
                Optional.empty(),
                MatchedSettings.DEFAULT,
                OptionalDouble.empty(),
                Limits.NONE,
                List.of());
    }

    public static PairInput withFlyer(PairInput in, PairMember flyer) {
        return new PairInput(
                in.lead(),
                flyer,
                in.slot(),
                in.slotArm(),
                in.frame(),
                in.undulation_m(),
                in.wind(),
                in.target(),
                in.matched(),
                in.gate_m(),
                in.limits(),
                in.touchMarks());
    }

    public static PairInput withGate(PairInput in, double gate_m) {
        return new PairInput(
                in.lead(),
                in.flyer(),
                in.slot(),
                in.slotArm(),
                in.frame(),
                in.undulation_m(),
                in.wind(),
                in.target(),
                in.matched(),
                OptionalDouble.of(gate_m),
                in.limits(),
                in.touchMarks());
    }

    public static PairInput withLimits(PairInput in, Limits limits) {
        return new PairInput(
                in.lead(),
                in.flyer(),
                in.slot(),
                in.slotArm(),
                in.frame(),
                in.undulation_m(),
                in.wind(),
                in.target(),
                in.matched(),
                in.gate_m(),
                limits,
                in.touchMarks());
    }

    public static PairInput with(
            PairInput in, Wind wind, Optional<LeverArm> slot, MatchedSettings matched) {
        return new PairInput(
                in.lead(),
                in.flyer(),
                slot.map(s -> "left"),
                slot,
                in.frame(),
                in.undulation_m(),
                wind,
                in.target(),
                matched,
                in.gate_m(),
                in.limits(),
                in.touchMarks());
    }

    /** A body beside the diving lead, ten fixes a second. */
    static KnownMotion flyer(DoubleFunction<Vec3> offset_m) {
        return flyer(10, offset_m);
    }

    static KnownMotion flyer(double rate_Hz, DoubleFunction<Vec3> offset_m) {
        return KnownMotion.of(
                DIVE_S, rate_Hz, t_s -> TOP_M.plus(DIVE_MPS.times(t_s)).plus(offset_m.apply(t_s)));
    }

    /** A diving lead and a flyer beside it. */
    static PairInput input(DoubleFunction<Vec3> offset_m) {
        return input(diving(DIVE_S), flyer(offset_m));
    }
}
