package pairdown.scene;

import java.util.Optional;
import pairdown.camera.Ground;
import pairdown.camera.Orbit;
import pairdown.camera.Pose;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.gl.Canvas;
import pairdown.gl.Shaders;
import pairdown.replay.Camera;
import pairdown.replay.Moment;
import pairdown.replay.Recording;
import pairdown.replay.ViewState;
import pairdown.theme.Theme;
import pairdown.words.Figures;

/**
 * A debrief set up to be seen: its moment, its view, its cameras and its scene. Window, still and
 * film all draw through this, so what one shows the others show.
 */
public final class Diorama implements AutoCloseable {
    /** Where more of a view than this is covered, what is left would be too narrow for it. */
    private static final float MOST_TAKEN = 0.4f;

    private final Moment moment;
    private final ViewState view;
    private final Ground ground;
    private final Scene scene;
    private final Camera first;
    private final Camera second;
    private final Pose pose = new Pose();
    private final Pose secondPose = new Pose();
    private int splitAt_px;
    private float takenWidth;

    /**
     * All at once, for a picture or a film.
     *
     * @param relief terrain, where the attempt brings a tile
     * @param overlay a second attempt laid over
     */
    public Diorama(
            Shaders shaders, Debrief debrief, Optional<Relief> relief, Optional<Overlay> overlay) {
        this(shaders, Blueprint.of(Recording.of(debrief), relief), new ViewState(debrief), overlay);
        uploadAll();
    }

    /**
     * Paths are brought into the card's memory by {@link #upload}.
     *
     * @param view may go on from an earlier diorama of the same recording
     */
    public Diorama(
            Shaders shaders, Blueprint blueprint, ViewState view, Optional<Overlay> overlay) {
        this.ground = blueprint.ground();
        this.moment = new Moment(blueprint.recording(), overlay.map(Overlay::ghost));
        this.view = view;
        this.first = new Camera(blueprint.recording(), ground);
        this.second = new Camera(blueprint.recording(), ground);
        this.scene = new Scene(shaders, moment, blueprint, overlay);
    }

    /**
     * Brings a further slice of what there is to draw into the card's memory; false once all is
     * there. A window goes on showing what it showed until then.
     */
    public boolean upload() {
        return scene.upload();
    }

    /** Brings all there is to draw into the card's memory. */
    public void uploadAll() {
        boolean more = true;
        while (more) {
            more = upload();
        }
    }

    public Moment moment() {
        return moment;
    }

    /** What is shown and whence; actions change it. */
    public ViewState view() {
        return view;
    }

    /** Where the first view was last seen from; do not change. */
    public Pose pose() {
        return pose;
    }

    /** How high over the ground that was (m). */
    public double heightOverGround_m() {
        return pose.eye().z - ground.up_m(pose.eye().x, pose.eye().y);
    }

    /** Segments of paths drawn last. */
    public int segments() {
        return scene.segments();
    }

    /** Whether a camera is on its way: the next frame differs even if time stands still. */
    public boolean isMoving() {
        return first.isMoving() || second.isMoving();
    }

    /** Puts the cameras at the end of their way. */
    public void settle() {
        first.settle();
        second.settle();
    }

    /**
     * Draws the moment of the view's playback into a part of the target that is bound.
     *
     * @param x_px left edge
     * @param y_px bottom edge, from the target's bottom
     * @param elapsed_s real time since the last picture
     */
    public void draw(
            Theme theme,
            Figures figures,
            int x_px,
            int y_px,
            int width_px,
            int height_px,
            double elapsed_s) {
        moment.fill(view.playback().t_s());
        splitAt_px = view.second().isPresent() ? width_px / 2 : width_px;
        double aspect = (double) splitAt_px / height_px;
        boolean isWide = takenWidth < MOST_TAKEN * splitAt_px;
        first.leaveLeft(isWide ? takenWidth / splitAt_px : 0);
        first.pose(moment, view, view.vantage(), aspect, elapsed_s, pose);
        scene.draw(
                0, view, view.vantage(), pose, theme, figures, x_px, y_px, splitAt_px, height_px);
        if (view.second().isPresent()) {
            Vantage other = view.second().get();
            int rest_px = width_px - splitAt_px;
            second.pose(moment, view, other, (double) rest_px / height_px, elapsed_s, secondPose);
            scene.draw(
                    1,
                    view,
                    other,
                    secondPose,
                    theme,
                    figures,
                    x_px + splitAt_px,
                    y_px,
                    rest_px,
                    height_px);
        }
    }

    /**
     * The upper left corner is somebody else's: no words go there, and what a view is about stands
     * beside it (px).
     */
    public void leaveCorner(float width, float height) {
        takenWidth = width;
        scene.leaveCorner(width, height);
    }

    /**
     * Draws the words of what {@link #draw} last drew.
     *
     * @param x left edge of the same part in the picture
     * @param y its top edge
     */
    public void drawWords(Canvas canvas, Theme theme, float x, float y, float height) {
        scene.drawWords(canvas, 0, x, y);
        if (view.second().isPresent()) {
            scene.drawWords(canvas, 1, x + splitAt_px, y);
            canvas.fill(
                    x + splitAt_px - theme.sizes().hair(),
                    y,
                    2 * theme.sizes().hair(),
                    height,
                    theme.palette().edge());
        }
    }

    /** Goes over to the free orbit from where the camera is, so that a drag goes on from there. */
    public void orbitFromHere() {
        if (view.vantage().kind() == Vantage.Kind.ORBIT || moment.subject().isEmpty()) {
            return;
        }
        double e = pose.eye().x - moment.subject().get().east_m();
        double n = pose.eye().y - moment.subject().get().north_m();
        double u = pose.eye().z - moment.subject().get().up_m();
        double away = Math.sqrt(e * e + n * n + u * u);
        double heading = view.frame() == ViewState.Frame.LEAD ? moment.leadHeading_rad() : 0;
        Orbit orbit = view.orbit();
        orbit.place(
                Math.toDegrees(Math.atan2(e, n) - heading),
                Math.toDegrees(Math.asin(u / Math.max(away, 1e-6))),
                away);
        view.look(Vantage.of(Vantage.Kind.ORBIT));
    }

    @Override
    public void close() {
        scene.close();
    }
}
