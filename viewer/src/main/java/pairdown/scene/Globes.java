package pairdown.scene;

import org.joml.Matrix3f;
import org.joml.Matrix4f;
import org.joml.Vector3d;
import org.joml.Vector3f;
import pairdown.attempt.LeverArm;
import pairdown.gl.Mesh;
import pairdown.gl.Shader;
import pairdown.gl.Shaders;
import pairdown.gl.Uniform;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Body;
import pairdown.replay.Link;
import pairdown.replay.Moment;
import pairdown.replay.ViewState;
import pairdown.theme.Palette;

/**
 * What is seen as a ball: the gate round each slot, and under 10 m how well the flyer's place
 * against the lead is known, as a body of two sigma.
 */
final class Globes implements AutoCloseable {
    /** Nearer than this the uncertainty matters to the eye (design §12). */
    private static final double ELLIPSOID_UNDER_M = 10;

    private static final float SIGMAS = 2;

    private final Shader shader;
    private final Uniform relativeToClip;
    private final Uniform globeToRelative;
    private final Uniform normalToRelative;
    private final Uniform colour;
    private final Mesh ball = Airframe.ball();
    private final Matrix4f globe = new Matrix4f();
    private final Matrix3f normal = new Matrix3f();
    private final Vector3f arm = new Vector3f();

    Globes(Shaders shaders) {
        shader = shaders.load("globes");
        relativeToClip = shader.uniform("relativeToClip");
        globeToRelative = shader.uniform("globeToRelative");
        normalToRelative = shader.uniform("normalToRelative");
        colour = shader.uniform("colour");
    }

    void draw(Stage stage) {
        shader.use();
        relativeToClip.set(stage.sight().relativeToClip());
        Moment moment = stage.moment();
        for (int i = 0; i < moment.links().size(); i++) {
            Link link = moment.links().get(i);
            Body lead = moment.body(link.lead());
            Body flyer = moment.body(link.flyer());
            if (lead.isPresent() && stage.shows(ViewState.Layer.GATES)) {
                gate(stage, link, lead);
            }
            if (lead.isPresent()
                    && flyer.isPresent()
                    && link.isPresent()
                    && stage.shows(ViewState.Layer.ELLIPSOIDS)) {
                ellipsoid(stage, link, lead, flyer);
            }
        }
    }

    private void gate(Stage stage, Link link, Body lead) {
        if (stage.moment().debrief().attempt().gate_m().isEmpty()) {
            return;
        }
        float gate = (float) stage.moment().debrief().attempt().gate_m().getAsDouble();
        LeverArm slot = link.pair().slotArm().orElse(LeverArm.NONE);
        lead.bodyToEnu()
                .transform(
                        arm.set(
                                (float) slot.right_m(),
                                (float) slot.ahead_m(),
                                (float) slot.above_m()));
        ball(
                stage,
                lead.east_m() + arm.x,
                lead.north_m() + arm.y,
                lead.up_m() + arm.z,
                gate,
                gate,
                gate,
                Palette.withOpacity(stage.colour(link.flyer()), 70));
    }

    /**
     * The shape from both receivers' sigmas per axis, the size so that along the line between the
     * two it is the sigma printed with the separation.
     */
    private void ellipsoid(Stage stage, Link link, Body lead, Body flyer) {
        double east = flyer.east_m() - lead.east_m();
        double north = flyer.north_m() - lead.north_m();
        double up = flyer.up_m() - lead.up_m();
        double away = Math.sqrt(east * east + north * north + up * up);
        if (!(away < ELLIPSOID_UNDER_M) || away == 0) {
            return;
        }
        double sx = Math.hypot(lead.sigmaEast_m(), flyer.sigmaEast_m());
        double sy = Math.hypot(lead.sigmaNorth_m(), flyer.sigmaNorth_m());
        double sz = Math.hypot(lead.sigmaUp_m(), flyer.sigmaUp_m());
        double along =
                Math.sqrt(sx * sx * east * east + sy * sy * north * north + sz * sz * up * up)
                        / away;
        double printed = link.figure(Figure.SEPARATION_SIGMA);
        double size = SIGMAS * (Double.isNaN(printed) || along == 0 ? 1 : printed / along);
        ball(
                stage,
                flyer.east_m(),
                flyer.north_m(),
                flyer.up_m(),
                (float) (sx * size),
                (float) (sy * size),
                (float) (sz * size),
                Palette.withOpacity(stage.palette().inkSoft(), 140));
    }

    private void ball(
            Stage stage,
            double east,
            double north,
            double up,
            float rx,
            float ry,
            float rz,
            int rgba) {
        Vector3d eye = stage.sight().pose().eye();
        globe.translation((float) (east - eye.x), (float) (north - eye.y), (float) (up - eye.z))
                .scale(rx, ry, rz);
        globeToRelative.set(globe);
        normal.identity().scale(1 / rx, 1 / ry, 1 / rz);
        normalToRelative.set(normal);
        colour.setColour(rgba);
        ball.draw();
    }

    @Override
    public void close() {
        ball.close();
    }
}
