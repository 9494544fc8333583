package pairdown.pair;

import java.util.List;
import pairdown.motion.JointSmoother;
import pairdown.motion.ReferencePoint;
import pairdown.motion.RelativeAnchor;
import pairdown.motion.RelativeSample;
import pairdown.motion.RelativeTrajectory;
import pairdown.motion.State;
import pairdown.vector.Vec3;

/** The joint smoother's relative motion, with what pair figures need of the lead beside it. */
final class JointTrack implements RelativeTrack {
    private final ReferencePoint lead;
    private final RelativeTrajectory relative;

    private JointTrack(ReferencePoint lead, RelativeTrajectory relative) {
        this.lead = lead;
        this.relative = relative;
    }

    static JointTrack of(ReferencePoint lead, ReferencePoint flyer, List<RelativeAnchor> anchors) {
        return new JointTrack(lead, JointSmoother.relative(lead, flyer, anchors));
    }

    /** Mean squared misfit of the anchors against the logs; 0 without any. */
    double anchorMisfit() {
        return relative.anchorMisfit().orElse(0.0);
    }

    @Override
    public double start_s() {
        return relative.start_s();
    }

    @Override
    public double end_s() {
        return relative.end_s();
    }

    @Override
    public Relative at(double t_s) {
        RelativeSample r = relative.at(t_s);
        State l = lead.at(t_s);
        Relative.Place place = Relative.Place.of(l.position_m(), lead.antenna().frame());
        Vec3 leadVelocity_mps = place.toLead().times(l.velocity_mps());
        return new Relative(
                t_s,
                r.position_m(),
                r.velocity_mps(),
                r.positionCovariance_m2(),
                r.velocityCovariance_m2ps2(),
                leadVelocity_mps,
                leadVelocity_mps.plus(r.velocity_mps()),
                Relative.levelSigma_mps(l),
                place.height_m(),
                place.toLead(),
                r.anchored(),
                l.predicted());
    }
}
