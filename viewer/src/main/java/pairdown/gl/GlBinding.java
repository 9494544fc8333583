package pairdown.gl;

import org.jspecify.annotations.Nullable;
import org.lwjgl.opengl.GL;
import org.lwjgl.opengl.GLCapabilities;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.FunctionProvider;

/**
 * Which library OpenGL's functions come from. A window gets them through GLFW and a picture without
 * a display through EGL; both can happen in one process, one after the other.
 */
final class GlBinding {
    private static final ThreadLocal<@Nullable GLCapabilities> CURRENT = new ThreadLocal<>();
    private static @Nullable Source current;

    private GlBinding() {}

    /** Where functions can come from. */
    enum Source {
        EGL,
        WINDOW
    }

    /** To be called before the class GL is first touched. */
    static void prepare() {
        Configuration.OPENGL_EXPLICIT_INIT.set(true);
        Configuration.EGL_EXPLICIT_INIT.set(true);
        Configuration.OPENGL_CONTEXT_API.set("EGL");
        ProcessMemory.keepFreed();
    }

    /** The functions of the context that is current, taken from here. */
    static synchronized GLCapabilities use(Source source, FunctionProvider provider) {
        if (source != current) {
            if (current != null) {
                GL.destroy();
            }
            // Handed over by its method alone: ending a binding frees what it is given, and libEGL
            // must outlive its contexts.
            GL.create((java.nio.ByteBuffer name) -> provider.getFunctionAddress(name));
            current = source;
        }
        GLCapabilities made = GL.createCapabilities(true);
        CURRENT.set(made);
        return made;
    }

    /** Whether drawing on this thread goes to the context of these functions. */
    static boolean isCurrent(GLCapabilities capabilities) {
        return CURRENT.get() == capabilities;
    }

    /** Draws through these on this thread from now on; through none where there is no context. */
    static void makeCurrent(@Nullable GLCapabilities capabilities) {
        GL.setCapabilities(capabilities);
        CURRENT.set(capabilities);
    }
}
