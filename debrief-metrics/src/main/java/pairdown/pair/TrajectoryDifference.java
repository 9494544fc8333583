package pairdown.pair;

import pairdown.geodesy.LocalFrame;
import pairdown.motion.State;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * The difference of two trajectories of any kind. Their errors are taken as independent: those of
 * two receivers cancel only if they are alike, which nobody may assume. Each clock's sigma moves
 * its body along its velocity (0.1 s at 38 m/s is 3.8 m).
 */
final class TrajectoryDifference implements RelativeTrack {
    private final PairMember lead;
    private final PairMember flyer;
    private final LocalFrame frame;

    TrajectoryDifference(PairMember lead, PairMember flyer, LocalFrame frame) {
        this.lead = lead;
        this.flyer = flyer;
        this.frame = frame;
    }

    @Override
    public double start_s() {
        return Math.max(lead.trajectory().start_s(), flyer.trajectory().start_s());
    }

    @Override
    public double end_s() {
        return Math.min(lead.trajectory().end_s(), flyer.trajectory().end_s());
    }

    @Override
    public Relative at(double t_s) {
        State l = lead.trajectory().at(t_s);
        State f = flyer.trajectory().at(t_s);
        Relative.Place place = Relative.Place.of(l.position_m(), frame);
        Mat3 toLead = place.toLead();
        Vec3 leadVelocity_mps = toLead.times(l.velocity_mps());
        Vec3 flyerVelocity_mps = toLead.times(f.velocity_mps());
        return new Relative(
                t_s,
                toLead.times(f.position_m().minus(l.position_m())),
                flyerVelocity_mps.minus(leadVelocity_mps),
                covariance(
                        l.positionSigma_m(),
                        f.positionSigma_m(),
                        leadVelocity_mps,
                        flyerVelocity_mps),
                covariance(
                        l.velocitySigma_mps(),
                        f.velocitySigma_mps(),
                        toLead.times(l.acceleration_mps2()),
                        toLead.times(f.acceleration_mps2())),
                leadVelocity_mps,
                flyerVelocity_mps,
                Relative.levelSigma_mps(l),
                place.height_m(),
                toLead,
                false,
                l.predicted() || f.predicted());
    }

    private Mat3 covariance(Vec3 leadSigma, Vec3 flyerSigma, Vec3 leadRate, Vec3 flyerRate) {
        Vec3 variance = leadSigma.scaledBy(leadSigma).plus(flyerSigma.scaledBy(flyerSigma));
        Mat3 clocks =
                OffsetCovariance.sum(
                        OffsetCovariance.outer(leadRate.times(lead.clockSigma_s())),
                        OffsetCovariance.outer(flyerRate.times(flyer.clockSigma_s())));
        return OffsetCovariance.sum(Mat3.diagonal(variance), clocks);
    }
}
