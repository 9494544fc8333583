package pairdown.film;

import java.util.Optional;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.Pixels;
import pairdown.gl.Shaders;
import pairdown.gl.VectorCanvas;
import pairdown.scene.Diorama;
import pairdown.scene.Overlay;
import pairdown.scene.Relief;
import pairdown.theme.Theme;
import pairdown.words.Figures;

/**
 * Makes pictures of a debrief in memory. One studio serves any number of pictures of one size; it
 * belongs to the thread that opened it.
 */
public final class Studio implements AutoCloseable {
    /** Edges are smoothed: a still is looked at for longer than a frame. */
    private static final int SAMPLES = 4;

    /** Longer than any camera is on its way. */
    private static final double MOVE_OVER_S = 60;

    private final OffscreenContext context;
    private final Shaders shaders;
    private final VectorCanvas canvas;
    private final Diorama diorama;

    private Studio(
            OffscreenContext context,
            Debrief debrief,
            Optional<Relief> relief,
            Optional<Overlay> overlay) {
        this.context = context;
        this.shaders = Shaders.ofJar();
        this.canvas = VectorCanvas.create();
        this.diorama = new Diorama(shaders, debrief, relief, overlay);
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
            Optional<Overlay> overlay)
            throws NoGraphicsException {
        return new Studio(
                OffscreenContext.open(width_px, height_px, SAMPLES, 1), debrief, relief, overlay);
    }

    /** What the pictures are of; its view may be changed at will between pictures. */
    public Diorama diorama() {
        return diorama;
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
        diorama.settle();
        return picture(t_s, vantage, MOVE_OVER_S, theme, figures, words);
    }

    /** The next picture of a film: the camera goes its eased way as time passes. */
    public Pixels frame(
            double t_s,
            Vantage vantage,
            double elapsed_s,
            Theme theme,
            Figures figures,
            boolean words) {
        return picture(t_s, vantage, elapsed_s, theme, figures, words);
    }

    private Pixels picture(
            double t_s,
            Vantage vantage,
            double elapsed_s,
            Theme theme,
            Figures figures,
            boolean words) {
        if (!diorama.view().vantage().equals(vantage)) {
            diorama.view().lookOn(vantage);
        }
        diorama.view().playback().seek(t_s);
        context.beginScene();
        diorama.draw(theme, figures, 0, 0, context.width_px(), context.height_px(), elapsed_s);
        context.endScene();
        if (words) {
            canvas.begin(context.width_px(), context.height_px());
            diorama.drawWords(canvas, theme, 0, 0, context.height_px());
            canvas.end();
        }
        context.present();
        return context.read();
    }

    @Override
    public void close() {
        context.makeCurrent();
        diorama.close();
        canvas.close();
        shaders.close();
        context.close();
    }
}
