package pairdown.scene;

import java.util.List;
import java.util.Optional;
import org.joml.Matrix4f;
import org.joml.Vector3d;
import pairdown.attempt.Role;
import pairdown.gl.Mesh;
import pairdown.gl.Shader;
import pairdown.gl.Shaders;
import pairdown.gl.Uniform;
import pairdown.replay.Body;
import pairdown.replay.Moment;
import pairdown.theme.Marker;
import pairdown.track.Channel;

/** The participants: true to scale and attitude, with a marker where they would be too small. */
final class Bodies implements AutoCloseable {
    /** Under this size on screen a marker stands in (px at 100 %). */
    private static final double LEAST_PX = 16;

    /** Smaller than this its marker is all that is seen of a body (px). */
    private static final double LEAST_SEEN_PX = 2.5;

    /** Travel of the control surfaces at the stop (deg): ordinary, for show. */
    private static final double ELEVATOR_TRAVEL_DEG = 25;

    private static final double RUDDER_TRAVEL_DEG = 25;
    private static final double AILERON_TRAVEL_DEG = 20;

    /** How opaque each of the wing's two sides is from inside. */
    private static final float FROM_INSIDE = 0.16f;

    private final Shader shader;
    private final Uniform relativeToClip;
    private final Uniform partToRelative;
    private final Uniform skin;
    private final Uniform dark;
    private final Uniform accent;
    private final Uniform screened;
    private final Uniform opacity;
    private final Outline.Reach leadReach;
    private final Outline.Reach shipReach;
    private final Outline.Reach flyerReach;
    private final Outline outline = new Outline();
    private final Mesh leadHull;
    private final Mesh leadWings;
    private final Mesh elevator;
    private final Mesh rudder;
    private final Mesh aileron;
    private final Mesh flap;
    private final Mesh ship;
    private final Mesh flyer;
    private final Matrix4f body = new Matrix4f();
    private final Matrix4f part = new Matrix4f();
    private final float[] xy = new float[2];

    Bodies(Shaders shaders, Airframe.Shapes shapes) {
        leadReach = new Outline.Reach(shapes.leadHull(), shapes.leadWings());
        shipReach = new Outline.Reach(shapes.ship());
        flyerReach = new Outline.Reach(shapes.flyer());
        leadHull = shapes.leadHull().upload();
        leadWings = shapes.leadWings().upload();
        elevator = shapes.elevator().upload();
        rudder = shapes.rudder().upload();
        aileron = shapes.aileron().upload();
        flap = shapes.flap().upload();
        ship = shapes.ship().upload();
        flyer = shapes.flyer().upload();
        shader = shaders.load("bodies");
        relativeToClip = shader.uniform("relativeToClip");
        partToRelative = shader.uniform("partToRelative");
        skin = shader.uniform("skin");
        dark = shader.uniform("dark");
        accent = shader.uniform("accent");
        screened = shader.uniform("screened");
        opacity = shader.uniform("opacity");
    }

    void draw(Stage stage) {
        begin(stage);
        opacity.set(1);
        List<Body> bodies = stage.moment().bodies();
        for (int i = 0; i < bodies.size(); i++) {
            Body shown = bodies.get(i);
            if (shown.isPresent() && !stage.isSeenFrom(shown)) {
                boolean ahead = outline.find(stage, shown, reach(shown));
                if (!ahead || outline.size() > LEAST_SEEN_PX) {
                    toRelative(stage, shown, body);
                    accent.setColour(stage.colour(i));
                    screened.set(shown.isPredicted() ? 1 : 0);
                    drawShape(stage, stage.moment(), shown);
                }
                if (ahead) {
                    label(stage, shown, i);
                }
            }
        }
    }

    private Outline.Reach reach(Body shown) {
        return switch (shown.role()) {
            case LEAD -> leadReach;
            case JUMPSHIP -> shipReach;
            default -> flyerReach;
        };
    }

    private void begin(Stage stage) {
        shader.use();
        relativeToClip.set(stage.sight().relativeToClip());
        skin.setColour(stage.palette().isDark() ? 0xC9CFD4FF : 0xF6F6F4FF);
        dark.setColour(stage.palette().isDark() ? 0x59636CFF : 0x4A525AFF);
    }

    /** The second attempt's participants, at the places worked out for them. */
    void drawGhost(Stage stage, Ghosts ghosts) {
        begin(stage);
        opacity.set(0.42f);
        for (int i = 0; i < ghosts.size(); i++) {
            if (!ghosts.isShown(i)) {
                continue;
            }
            ghosts.toRelative(stage, i, body);
            accent.setColour(stage.palette().inkSoft());
            screened.set(ghosts.body(i).isPredicted() ? 1 : 0);
            drawShape(stage, ghosts.moment(), ghosts.body(i));
        }
    }

    /** The matrix from a body's axes to places relative to the camera, enlargement included. */
    static void toRelative(Stage stage, Body shown, Matrix4f into) {
        Vector3d eye = stage.sight().pose().eye();
        into.translationRotateScale(
                (float) (shown.east_m() - eye.x),
                (float) (shown.north_m() - eye.y),
                (float) (shown.up_m() - eye.z),
                shown.bodyToEnu().x,
                shown.bodyToEnu().y,
                shown.bodyToEnu().z,
                shown.bodyToEnu().w,
                (float) stage.view().enlargement(),
                (float) stage.view().enlargement(),
                (float) stage.view().enlargement());
    }

    private void drawShape(Stage stage, Moment moment, Body shown) {
        if (shown.role() == Role.LEAD) {
            drawLead(stage, moment, shown);
        } else {
            partToRelative.set(body);
            (shown.role() == Role.JUMPSHIP ? ship : flyer).draw();
        }
    }

    private void drawLead(Stage stage, Moment moment, Body lead) {
        partToRelative.set(body);
        if (!stage.isInsideLead()) {
            leadHull.draw();
            drawWings(moment, lead);
        }
        // Nose up and right roll positive; a trailing edge that goes up turns about the right axis
        // the negative way.
        hinged(
                elevator,
                0,
                Airframe.ELEVATOR_HINGE[0],
                Airframe.ELEVATOR_HINGE[1],
                -share(moment, lead, Channel.ELEVATOR) * ELEVATOR_TRAVEL_DEG);
        part.set(body)
                .translate(0, Airframe.RUDDER_HINGE[0], Airframe.RUDDER_HINGE[1])
                .rotateZ(
                        (float)
                                Math.toRadians(
                                        share(moment, lead, Channel.RUDDER) * RUDDER_TRAVEL_DEG));
        partToRelative.set(part);
        rudder.draw();
    }

    /** Wings with what is hinged on them. */
    private void drawWings(Moment moment, Body lead) {
        partToRelative.set(body);
        leadWings.draw();
        double aileronDown = share(moment, lead, Channel.AILERON) * AILERON_TRAVEL_DEG;
        double flap_deg = known(moment.system(lead, Channel.FLAP));
        for (int side = -1; side <= 1; side += 2) {
            hingedOnWing(aileron, side, -side * aileronDown);
            hingedOnWing(flap, side, flap_deg);
        }
    }

    /** From inside the lead the wing is seen through: it would hide what the window is for. */
    void drawWingsFromInside(Stage stage) {
        Optional<Body> lead = stage.moment().subject();
        if (!stage.isInsideLead() || lead.isEmpty() || lead.get().role() != Role.LEAD) {
            return;
        }
        begin(stage);
        opacity.set(FROM_INSIDE);
        toRelative(stage, lead.get(), body);
        accent.setColour(stage.colour(stage.moment().recording().subject()));
        screened.set(lead.get().isPredicted() ? 1 : 0);
        drawWings(stage.moment(), lead.get());
    }

    /** Turned down by an angle about a hinge that runs to the right. */
    private void hinged(Mesh mesh, float right, float ahead, float above, double down_deg) {
        part.set(body).translate(right, ahead, above).rotateX((float) Math.toRadians(down_deg));
        partToRelative.set(part);
        mesh.draw();
    }

    private void hingedOnWing(Mesh mesh, int side, double down_deg) {
        part.set(body)
                .translate(0, Airframe.WING_HINGE[0], Airframe.WING_HINGE[1])
                .rotateX((float) Math.toRadians(down_deg))
                .scale(side, 1, 1);
        partToRelative.set(part);
        mesh.draw();
    }

    private static double share(Moment moment, Body lead, Channel channel) {
        return Math.max(-1, Math.min(1, known(moment.system(lead, channel)) / 100));
    }

    /** A surface whose position was not logged is drawn in line. */
    private static double known(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    private void label(Stage stage, Body shown, int number) {
        stage.sight().project(shown.east_m(), shown.north_m(), shown.up_m(), xy);
        boolean small = outline.size() < stage.px(LEAST_PX);
        boolean named = stage.shows(pairdown.replay.ViewState.Layer.LABELS);
        if (!small && !named) {
            return;
        }
        Labels.Label label =
                stage.labels()
                        .add(Labels.Rank.PARTICIPANT, xy[0], xy[1], stage.colour(number))
                        .of(number);
        if (small) {
            label.marked(Marker.of(number), shown.isPredicted());
        }
        label.round(outline.left(), outline.top(), outline.right(), outline.bottom());
        if (named) {
            label.row(0).add(shown.id());
            if (shown.isPredicted()) {
                label.row(1).add(stage.word("scene.no-data-for")).add(' ');
                label.row(1).addFixed(shown.sinceData_s(), 1, '.').add(" s");
            }
        }
    }

    @Override
    public void close() {
        for (Mesh mesh :
                List.of(leadHull, leadWings, elevator, rudder, aileron, flap, ship, flyer)) {
            mesh.close();
        }
    }
}
