package pairdown.scene;

import java.util.List;
import java.util.OptionalDouble;
import org.joml.Matrix3f;
import org.joml.Matrix4f;
import org.joml.Vector3d;
import pairdown.camera.Easing;
import pairdown.gl.Mesh;
import pairdown.gl.Pass;
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

    /** Of a gate's shell at its edge, of 255. */
    private static final int OPACITY = 80;

    /** Share of its radius from a shell at which it is all there. */
    private static final double FADES_WITHIN = 0.25;

    private final Shader shader;
    private final Uniform relativeToClip;
    private final Uniform globeToRelative;
    private final Uniform normalToRelative;
    private final Uniform colour;
    private final Mesh ball = Airframe.ball();
    private final Matrix4f globe = new Matrix4f();
    private final Matrix3f normal = new Matrix3f();
    private final List<SlotPlace> places;

    Globes(Shaders shaders, List<SlotPlace> places) {
        this.places = places;
        shader = shaders.load("globes");
        relativeToClip = shader.uniform("relativeToClip");
        globeToRelative = shader.uniform("globeToRelative");
        normalToRelative = shader.uniform("normalToRelative");
        colour = shader.uniform("colour");
    }

    void draw(Stage stage) {
        shader.use();
        relativeToClip.set(stage.sight().relativeToClip());
        Pass.outside();
        if (stage.shows(ViewState.Layer.GATES)) {
            for (int i = 0; i < places.size(); i++) {
                gate(stage, places.get(i));
            }
        }
        if (stage.shows(ViewState.Layer.ELLIPSOIDS)) {
            Moment moment = stage.moment();
            for (int i = 0; i < moment.links().size(); i++) {
                Link link = moment.links().get(i);
                Body lead = moment.body(link.lead());
                Body flyer = moment.body(link.flyer());
                if (lead.isPresent() && flyer.isPresent() && link.isPresent()) {
                    ellipsoid(stage, link, lead, flyer);
                }
            }
        }
    }

    /** A shell, which goes as the camera comes near: from inside, its ring alone says where. */
    private void gate(Stage stage, SlotPlace place) {
        OptionalDouble planned = stage.moment().debrief().attempt().gate_m();
        if (planned.isEmpty() || !place.find(stage.moment()) || !place.isInUse()) {
            return;
        }
        float gate = (float) planned.getAsDouble();
        Vector3d eye = stage.sight().pose().eye();
        double away = eye.distance(place.east_m(), place.north_m(), place.up_m());
        int opacity = (int) (OPACITY * Easing.smooth((away / gate - 1) / FADES_WITHIN));
        if (opacity > 0) {
            ball(
                    stage,
                    place.east_m(),
                    place.north_m(),
                    place.up_m(),
                    gate,
                    gate,
                    gate,
                    Palette.withOpacity(place.colour(stage), opacity));
        }
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
