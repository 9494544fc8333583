package pairdown.pair;

import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * The difference of two trajectories that know nothing of each other. Their errors are taken as
 * independent: those of two receivers cancel only if they are alike, which nobody may assume.
 */
final class TrajectoryDifference implements RelativeTrack {
    private final Trajectory lead;
    private final Trajectory flyer;
    private final LocalFrame frame;

    TrajectoryDifference(Trajectory lead, Trajectory flyer, LocalFrame frame) {
        this.lead = lead;
        this.flyer = flyer;
        this.frame = frame;
    }

    @Override
    public double start_s() {
        return Math.max(lead.start_s(), flyer.start_s());
    }

    @Override
    public double end_s() {
        return Math.min(lead.end_s(), flyer.end_s());
    }

    @Override
    public Relative at(double t_s) {
        State l = lead.at(t_s);
        State f = flyer.at(t_s);
        Geodetic place = frame.toGeodetic(l.position_m());
        // At 10 km from the attempt's origin "up" leans by 0.09 degrees: 5 m over a 3 km offset.
        Mat3 toLead = frame.rotationTo(LocalFrame.at(place));
        Vec3 leadVelocity_mps = toLead.times(l.velocity_mps());
        Vec3 flyerVelocity_mps = toLead.times(f.velocity_mps());
        return new Relative(
                t_s,
                toLead.times(f.position_m().minus(l.position_m())),
                flyerVelocity_mps.minus(leadVelocity_mps),
                rootSumSquare(l.shapeSigma_m(), f.shapeSigma_m()),
                rootSumSquare(l.biasSigma_m(), f.biasSigma_m()),
                rootSumSquare(l.velocitySigma_mps(), f.velocitySigma_mps()),
                leadVelocity_mps,
                flyerVelocity_mps,
                toLead.times(l.acceleration_mps2()),
                toLead.times(f.acceleration_mps2()),
                l.velocitySigma_mps(),
                place.height_m(),
                toLead,
                l.predicted() || f.predicted());
    }

    private static Vec3 rootSumSquare(Vec3 a, Vec3 b) {
        return new Vec3(
                Math.hypot(a.x(), b.x()), Math.hypot(a.y(), b.y()), Math.hypot(a.z(), b.z()));
    }
}
