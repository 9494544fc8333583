package pairdown.film;

import java.util.Optional;
import pairdown.camera.Ground;
import pairdown.camera.Pose;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.Geoid;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.Pixels;
import pairdown.gl.Shaders;
import pairdown.gl.VectorCanvas;
import pairdown.replay.Camera;
import pairdown.replay.GroundLevel;
import pairdown.replay.Moment;
import pairdown.replay.Recording;
import pairdown.replay.ViewState;
import pairdown.scene.Heights;
import pairdown.scene.Relief;
import pairdown.scene.Scene;
import pairdown.theme.Theme;
import pairdown.words.Figures;

/**
 * Makes pictures of a debrief in memory. One studio serves any number of pictures of one size; it
 * belongs to the thread that opened it.
 */
public final class Studio implements AutoCloseable {
    /** Edges are smoothed: a still is looked at for longer than a frame. */
    private static final int SAMPLES = 4;

    private final OffscreenContext context;
    private final Shaders shaders;
    private final VectorCanvas canvas;
    private final Moment moment;
    private final ViewState view;
    private final Camera camera;
    private final Scene scene;
    private final Pose pose = new Pose();
    private final Ground ground;

    private Studio(
            OffscreenContext context,
            Debrief debrief,
            Optional<Relief> relief,
            Optional<Moment.Ghost> ghost) {
        this.context = context;
        this.shaders = Shaders.ofJar();
        this.canvas = VectorCanvas.create();
        Recording recording = Recording.of(debrief);
        this.ground = relief.<Ground>map(r -> r).orElseGet(() -> GroundLevel.of(recording));
        this.moment = new Moment(recording, ghost);
        this.view = new ViewState(debrief);
        this.camera = new Camera(recording, ground);
        Geodetic origin = debrief.frame().origin();
        this.scene =
                new Scene(
                        shaders,
                        moment,
                        ground,
                        relief,
                        Heights.of(
                                debrief,
                                Geoid.egm96()
                                        .undulation_m(
                                                origin.latitude_deg(), origin.longitude_deg())));
    }

    /**
     * Opens a studio.
     *
     * @throws NoGraphicsException where the machine can't make pictures
     */
    public static Studio open(
            Debrief debrief,
            int width_px,
            int height_px,
            Optional<Relief> relief,
            Optional<Moment.Ghost> ghost)
            throws NoGraphicsException {
        return new Studio(
                OffscreenContext.open(width_px, height_px, SAMPLES, 1), debrief, relief, ghost);
    }

    /** What the pictures show besides the time; change it at will between pictures. */
    public ViewState view() {
        return view;
    }

    /** The moment of the last picture. */
    public Moment moment() {
        return moment;
    }

    /** Where the last picture was taken from; do not change. */
    public Pose pose() {
        return pose;
    }

    /** How high over the ground that was. */
    public double heightOverGround_m() {
        return pose.eye().z - ground.up_m(pose.eye().x, pose.eye().y);
    }

    /** A participant's colour in these pictures. */
    public int colourOf(String participant, Theme theme) {
        return theme.palette().participant(moment.recording().indexOf(participant).orElseThrow());
    }

    /** The name of the renderer. */
    public String renderer() {
        return context.renderer();
    }

    /**
     * A picture that stands alone.
     *
     * @param words whether names and figures are burned in
     */
    public Pixels still(double t_s, Vantage vantage, Theme theme, Figures figures, boolean words) {
        moment.fill(t_s);
        view.playback().seek(t_s);
        camera.settle();
        camera.pose(moment, view, vantage, aspect(), 0, pose);
        camera.settle();
        camera.pose(moment, view, vantage, aspect(), 0, pose);
        return picture(vantage, theme, figures, words);
    }

    /** The next picture of a film: the camera goes its eased way as time passes. */
    public Pixels frame(
            double t_s,
            Vantage vantage,
            double elapsed_s,
            Theme theme,
            Figures figures,
            boolean words) {
        moment.fill(t_s);
        view.playback().seek(t_s);
        camera.pose(moment, view, vantage, aspect(), elapsed_s, pose);
        return picture(vantage, theme, figures, words);
    }

    private double aspect() {
        return (double) context.width_px() / context.height_px();
    }

    private Pixels picture(Vantage vantage, Theme theme, Figures figures, boolean words) {
        context.beginScene();
        scene.draw(
                view, vantage, pose, theme, figures, 0, 0, context.width_px(), context.height_px());
        context.endScene();
        if (words) {
            canvas.begin(context.width_px(), context.height_px());
            scene.drawWords(canvas, 0, 0);
            canvas.end();
        }
        context.present();
        return context.read();
    }

    @Override
    public void close() {
        context.makeCurrent();
        scene.close();
        canvas.close();
        shaders.close();
        context.close();
    }
}
