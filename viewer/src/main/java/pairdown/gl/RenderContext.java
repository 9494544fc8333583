package pairdown.gl;

/**
 * Somewhere to draw: a window or a picture in memory. One frame is {@link #beginScene}, the 3D
 * scene, {@link #endScene}, the flat drawing on top, {@link #present}. Everything is called from
 * the thread that made it.
 */
public interface RenderContext extends AutoCloseable {
    /** Width of the picture (px). */
    int width_px();

    /** Height of the picture (px). */
    int height_px();

    /** How many pixels of the picture make one unit of layout: 1 at 100 %, 2 on a dense display. */
    float scale();

    /** The name the driver gives its renderer. */
    String renderer();

    /** Whether the renderer draws on the processor, where smoothing of edges costs too much. */
    default boolean isSoftware() {
        String name = renderer().toLowerCase(java.util.Locale.ROOT);
        return name.contains("llvmpipe") || name.contains("softpipe") || name.contains("swrast");
    }

    /** Makes this the context that drawing and deleting go to. */
    void makeCurrent();

    /** Makes the scene's target the one drawn on, all of it. */
    void beginScene();

    /** Puts the finished scene on the final picture and makes that the one drawn on. */
    void endScene();

    /** Shows the picture, or finishes it where nobody looks. */
    void present();

    /** The finished picture; between {@link #endScene} and {@link #present}. */
    Pixels read();

    @Override
    void close();
}
