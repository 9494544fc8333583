package pairdown.scene;

import java.util.List;
import org.joml.Matrix4f;
import org.joml.Vector3f;
import pairdown.attempt.Role;
import pairdown.gl.Mesh;
import pairdown.gl.Shader;
import pairdown.gl.Shaders;
import pairdown.gl.Uniform;
import pairdown.replay.Body;
import pairdown.replay.Moment;
import pairdown.replay.ViewState;
import pairdown.track.Channel;

/**
 * The lead's propeller disc, tinted and patterned by the direction of thrust and labelled with what
 * says so: the power lever, else the blade angle.
 */
final class Propeller implements AutoCloseable {
    /** Around idle the sign of the lever says nothing (percent of its range). */
    private static final double IDLE_PCT = 5;

    /** Blades this near to flat are called neither (degrees). */
    private static final double FLAT_DEG = 2;

    private final Shader shader;
    private final Uniform relativeToClip;
    private final Uniform partToRelative;
    private final Uniform colour;
    private final Uniform thrust;
    private final Mesh square = Airframe.square();
    private final Matrix4f body = new Matrix4f();
    private final Vector3f hub = new Vector3f();
    private final float[] xy = new float[2];

    Propeller(Shaders shaders) {
        shader = shaders.load("discs");
        relativeToClip = shader.uniform("relativeToClip");
        partToRelative = shader.uniform("partToRelative");
        colour = shader.uniform("colour");
        thrust = shader.uniform("thrust");
    }

    void draw(Stage stage) {
        List<Body> bodies = stage.moment().bodies();
        for (int i = 0; i < bodies.size(); i++) {
            if (bodies.get(i).role() == Role.LEAD && bodies.get(i).isPresent()) {
                drawOn(stage, bodies.get(i));
            }
        }
    }

    private void drawOn(Stage stage, Body lead) {
        Moment moment = stage.moment();
        double lever = moment.system(lead, Channel.POWER_LEVER);
        double blade = moment.system(lead, Channel.BLADE_ANGLE);
        boolean known = !Double.isNaN(lever) || !Double.isNaN(blade);
        int direction = direction(lever, blade);
        Bodies.toRelative(stage, lead, body);
        body.translate(0, Airframe.PROPELLER_AHEAD_M, Airframe.PROPELLER_ABOVE_M)
                .scale(Airframe.PROPELLER_RADIUS_M);
        shader.use();
        relativeToClip.set(stage.sight().relativeToClip());
        partToRelative.set(body);
        thrust.set(direction);
        colour.setColour(
                !known || direction == 0
                        ? stage.palette().inkSoft()
                        : direction > 0 ? 0x0072B2FF : 0xD55E00FF);
        square.draw();
        if (known && stage.shows(ViewState.Layer.LABELS)) {
            label(stage, lead, lever, blade, direction);
        }
    }

    /**
     * 1 forward, 0 idle or unknown, −1 reverse. Blades set below flat push back; at positive angles
     * they may push or brake, as airspeed and turns a minute will have it, which they do not tell.
     */
    static int direction(double lever_pct, double blade_deg) {
        if (Double.isNaN(lever_pct)) {
            return blade_deg < -FLAT_DEG ? -1 : 0;
        }
        return Math.abs(lever_pct) <= IDLE_PCT ? 0 : lever_pct > 0 ? 1 : -1;
    }

    private void label(Stage stage, Body lead, double lever, double blade, int direction) {
        hub.set(0, Airframe.PROPELLER_AHEAD_M, 0).mul((float) stage.view().enlargement());
        lead.bodyToEnu().transform(hub);
        double pixel = stage.metresPerPixel(lead.east_m(), lead.north_m(), lead.up_m());
        boolean tooSmall = 2 * Airframe.PROPELLER_RADIUS_M / pixel < stage.px(14);
        if (tooSmall
                || !stage.sight()
                        .project(
                                lead.east_m() + hub.x,
                                lead.north_m() + hub.y,
                                lead.up_m() + hub.z,
                                xy)) {
            return;
        }
        Labels.Label label =
                stage.labels().add(Labels.Rank.SLOT, xy[0], xy[1], stage.palette().inkSoft());
        if (!Double.isNaN(lever) || direction != 0) {
            label.row(0).add(stage.word(word(direction))).add(", ");
        }
        if (Double.isNaN(lever)) {
            label.row(0).add(stage.word("scene.blade")).add(' ').addFixed(blade, 0, '.').add("°");
        } else {
            label.row(0).add(stage.word("scene.lever")).add(' ').addFixed(lever, 0, '.').add(" %");
        }
    }

    private static String word(int direction) {
        return direction > 0 ? "scene.forward" : direction < 0 ? "scene.reverse" : "scene.idle";
    }

    @Override
    public void close() {
        square.close();
    }
}
