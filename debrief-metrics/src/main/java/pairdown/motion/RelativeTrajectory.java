package pairdown.motion;

import java.util.Optional;
import pairdown.geodesy.LocalFrame;
import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * A flyer's motion relative to a lead, at any instant both logs cover. Immutable.
 *
 * <p>Without anchors it is the difference of two independent smoothers, so covariances add. What
 * all receivers under one sky share cancels and is left out.
 */
public final class RelativeTrajectory {
    /** An anchor is said to matter where it lowers the variance to this share: a tenth of sigma. */
    private static final double ANCHORED_SHARE = 0.81;

    private final ReferencePoint lead;
    private final ReferencePoint flyer;
    private final Optional<AnchorCorrection> correction;

    RelativeTrajectory(
            ReferencePoint lead, ReferencePoint flyer, Optional<AnchorCorrection> correction) {
        this.lead = lead;
        this.flyer = flyer;
        this.correction = correction;
    }

    /** First instant both logs cover. */
    public double start_s() {
        return Math.max(lead.start_s(), flyer.start_s());
    }

    /** Last instant both logs cover; before {@link #start_s} where they never overlap. */
    public double end_s() {
        return Math.min(lead.end_s(), flyer.end_s());
    }

    public boolean covers(double t_s) {
        return t_s >= start_s() && t_s <= end_s();
    }

    /**
     * Mean squared misfit of the anchors per dimension against what smoother and anchors allow:
     * near 1 where they agree; far above where the anchors contradict the logs. Empty without
     * anchors.
     */
    public Optional<Double> anchorMisfit() {
        return correction.map(AnchorCorrection::misfit);
    }

    /**
     * The relative motion at an instant.
     *
     * @throws IllegalArgumentException where one of the logs does not reach
     */
    public RelativeSample at(double t_s) {
        double[] l = read(lead, t_s);
        double[] f = read(flyer, t_s);
        Vec3 position_m = new Vec3(f[0] - l[0], f[1] - l[1], f[2] - l[2]);
        Vec3 velocity_mps = new Vec3(f[3] - l[3], f[4] - l[4], f[5] - l[5]);
        RelativeCovariance raw = RelativeCovariance.at(lead, flyer, t_s, f);
        Mat3 position_m2 = raw.position_m2();
        Mat3 velocity_m2ps2 = raw.velocity_m2ps2();
        boolean anchored = false;
        if (correction.isPresent()) {
            AnchorCorrection.At c = correction.get().at(t_s);
            position_m = position_m.plus(c.position_m());
            velocity_mps = velocity_mps.plus(c.velocity_mps());
            Mat3 less = minus(position_m2, c.positionLess_m2());
            anchored = largest(less) < ANCHORED_SHARE * largest(position_m2);
            position_m2 = less;
            velocity_m2ps2 = minus(velocity_m2ps2, c.velocityLess_m2ps2());
        }
        Mat3 toLead = rotationToLead(l);
        return new RelativeSample(
                t_s,
                toLead.times(position_m),
                toLead.times(velocity_mps),
                position_m2,
                velocity_m2ps2,
                anchored,
                lead.antenna().hole_s(t_s),
                flyer.antenna().hole_s(t_s));
    }

    private static double[] read(ReferencePoint point, double t_s) {
        double[] values = new double[Trajectory.VALUES];
        point.read(t_s, values);
        return values;
    }

    /** The attempt's axes are not level at the lead: a tenth of a degree at 10 km. */
    private Mat3 rotationToLead(double[] l) {
        LocalFrame frame = lead.antenna().frame();
        return frame.rotationTo(LocalFrame.at(frame.toGeodetic(new Vec3(l[0], l[1], l[2]))));
    }

    private static double largest(Mat3 m) {
        return Math.max(m.row0().x(), Math.max(m.row1().y(), m.row2().z()));
    }

    private static Mat3 minus(Mat3 a, Mat3 b) {
        return Mat3.ofRows(
                a.row0().minus(b.row0()), a.row1().minus(b.row1()), a.row2().minus(b.row2()));
    }
}
