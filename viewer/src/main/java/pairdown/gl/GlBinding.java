package pairdown.gl;

import org.jspecify.annotations.Nullable;
import org.lwjgl.opengl.GL;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.FunctionProvider;

/**
 * Which library OpenGL's functions come from. A window gets them through GLFW and a picture without
 * a display through EGL; both can happen in one process, one after the other.
 */
final class GlBinding {
    private static @Nullable FunctionProvider current;

    private GlBinding() {}

    /** To be called before the class GL is first touched. */
    static void prepare() {
        Configuration.OPENGL_EXPLICIT_INIT.set(true);
        Configuration.EGL_EXPLICIT_INIT.set(true);
        Configuration.OPENGL_CONTEXT_API.set("EGL");
        ProcessMemory.keepFreed();
    }

    /** Takes the functions from here; contexts made through another provider end first. */
    static void use(FunctionProvider provider) {
        if (current != null) {
            GL.destroy();
        }
        GL.create(provider);
        current = provider;
        GL.createCapabilities(true);
    }
}
