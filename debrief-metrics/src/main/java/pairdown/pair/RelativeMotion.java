package pairdown.pair;

import java.util.Optional;
import pairdown.attempt.LeverArm;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * A flyer relative to its lead at any instant, with the sigma of every figure; immutable and safe
 * to read from any thread.
 *
 * <p>The offset's covariance holds both trajectories' errors, each clock's along that body's
 * velocity, and the antenna's lever arm; the gap's in addition what the attitude's sigma does to
 * the slot.
 */
public final class RelativeMotion {
    private final RelativeTrack track;
    private final LeadAxes axes;
    private final Optional<Vec3> slot_m;
    private final Holes leadHoles;
    private final Holes flyerHoles;
    private final PairSettings settings;

    RelativeMotion(RelativeTrack track, LeadAxes axes, PairInput input, PairSettings settings) {
        this.track = track;
        this.axes = axes;
        this.slot_m = input.slotArm().map(LeverArm::vector_m);
        this.leadHoles = Holes.of(input.lead().trajectory(), settings.hole_s());
        this.flyerHoles = Holes.of(input.flyer().trajectory(), settings.hole_s());
        this.settings = settings;
    }

    /** The raw relative motion of a pair. */
    public static RelativeMotion of(PairInput input, PairSettings settings) {
        return PairAxes.motion(input, settings);
    }

    public double start_s() {
        return track.start_s();
    }

    public double end_s() {
        return track.end_s();
    }

    /** Whether both have a trajectory at an instant. */
    public boolean covers(double t_s) {
        return track.covers(t_s);
    }

    public Axes axes() {
        return axes.kind();
    }

    /** Whether both logs have fixes around an instant, none more than a second apart. */
    public boolean measured(double t_s) {
        return covers(t_s) && !leadHoles.around(t_s) && !flyerHoles.around(t_s);
    }

    /**
     * The relative state at an instant, predicted inside gaps.
     *
     * @throws IllegalArgumentException outside {@link #start_s} to {@link #end_s}
     */
    public RelativeState at(double t_s) {
        return sample(t_s).state(measured(t_s));
    }

    /**
     * Where the flyer is seen from the lead; the bearing line leaves it on the slot's side, without
     * a slot on the flyer's. Empty under three sigma of range, and without axes.
     */
    Optional<Bearing> bearing(double t_s) {
        Sample s = sample(t_s);
        if (!s.hasDirection() || s.turning.isEmpty()) {
            return Optional.empty();
        }
        boolean rightSide = slot_m.orElse(s.position_m).y() >= 0;
        return Optional.of(Bearing.of(s.position_m, settings.bearingLine_deg(), rightSide));
    }

    /**
     * Rotation from the attempt's east-north-up frame to the pair's axes, with the lead's place;
     * empty where there are no axes.
     */
    public Optional<Mat3> fromEnu(double t_s) {
        Relative r = track.at(t_s);
        return axes.at(r).map(a -> a.fromEnu().times(r.toLead()));
    }

    Sample sample(double t_s) {
        return new Sample(track.at(t_s));
    }

    /** All that is known at an instant; position, rate and match rate NaN without axes. */
    final class Sample {
        private static final Vec3 UNKNOWN = new Vec3(Double.NaN, Double.NaN, Double.NaN);

        final Relative relative;
        final double separation_m;
        final double separationSigma_m;
        final Closure closure;
        final Vec3 position_m;
        final Vec3 rate_mps;
        final Vec3 matchRate_mps;
        final Optional<LeadAxes.Turning> turning;
        final double turnSigma_radps;

        Sample(Relative relative) {
            this.relative = relative;
            this.turning = axes.at(relative);
            this.separation_m = relative.offset_m().norm();
            this.separationSigma_m =
                    OffsetCovariance.sigmaAlong(
                            relative.offsetCovariance_m2(), relative.offset_m());
            this.closure =
                    Closure.of(
                            relative.offset_m(),
                            relative.velocity_mps(),
                            relative.offsetCovariance_m2(),
                            relative.velocityCovariance_m2ps2());
            this.position_m = turning.map(a -> a.position_m(relative)).orElse(UNKNOWN);
            this.rate_mps = turning.map(a -> a.rate_mps(relative)).orElse(UNKNOWN);
            Optional<LeadAxes.Turning> level =
                    axes.kind() == Axes.BODY ? axes.level(relative) : turning;
            this.matchRate_mps = level.map(a -> a.rate_mps(relative)).orElse(UNKNOWN);
            this.turnSigma_radps = level.map(LeadAxes.Turning::turnSigma_radps).orElse(0.0);
        }

        /** Where the two come closest if neither changes its velocity; empty while they hold. */
        Optional<PredictedMiss> predictedMiss() {
            return PredictedMiss.of(
                    relative.offset_m(),
                    relative.velocity_mps(),
                    separationSigma_m,
                    OffsetCovariance.sigmaAlong(
                            relative.velocityCovariance_m2ps2(), relative.velocity_mps()),
                    settings);
        }

        /** Whether the range is long enough for its sigma to have a direction. */
        boolean hasDirection() {
            return separation_m >= settings.blankBelowSigmas() * separationSigma_m;
        }

        Optional<Vec3> gapVector_m() {
            return turning.isPresent() ? slot_m.map(position_m::minus) : Optional.empty();
        }

        /** Covariance of the gap vector in the pair's axes. */
        Mat3 gapCovariance_m2(Vec3 slot) {
            LeadAxes.Turning a = turning.orElseThrow();
            Mat3 enu_m2 =
                    OffsetCovariance.sum(
                            relative.offsetCovariance_m2(),
                            OffsetCovariance.turned(
                                    a.fromEnu().transposeTimes(slot), a.sigma_rad()));
            return a.fromEnu().times(enu_m2).times(a.fromEnu().transpose());
        }

        double gapSigma_m(Vec3 gap_m) {
            return OffsetCovariance.sigmaAlong(gapCovariance_m2(slot_m.orElseThrow()), gap_m);
        }

        RelativeState state(boolean measured) {
            Optional<Vec3> gap_m = gapVector_m();
            return new RelativeState(
                    relative.time_s(),
                    position_m,
                    rate_mps,
                    matchRate_mps,
                    separation_m,
                    separationSigma_m,
                    gap_m.map(Vec3::norm).orElse(Double.NaN),
                    gap_m.map(this::gapSigma_m).orElse(Double.NaN),
                    hasDirection() ? closure.rate_mps() : Double.NaN,
                    closure.sigma_mps(),
                    relative.anchored(),
                    measured);
        }
    }

    /**
     * A place on the lead in the attempt's east-north-up axes; the lead itself where there are no
     * axes.
     */
    Vec3 slotInEnu_m(Vec3 place_m, double t_s) {
        return fromEnu(t_s).map(m -> m.transposeTimes(place_m)).orElse(Vec3.ZERO);
    }

    Optional<Vec3> slot_m() {
        return slot_m;
    }
}
