package pairdown.gl;

import static org.lwjgl.glfw.GLFW.*;

import org.lwjgl.PointerBuffer;
import org.lwjgl.glfw.GLFWErrorCallback;
import org.lwjgl.system.Configuration;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.system.Platform;

/** The library that opens windows, started once. */
final class WindowSystem {
    private static volatile boolean glfwReady;

    private WindowSystem() {}

    /**
     * Starts it, unless that is done.
     *
     * @throws NoGraphicsException where there is no display or no library
     */
    static synchronized void start() throws NoGraphicsException {
        if (glfwReady) {
            return;
        }
        if (Platform.get() == Platform.MACOSX) {
            // This build of GLFW needs no -XstartOnFirstThread and lives beside the JDK's imaging.
            Configuration.GLFW_LIBRARY_NAME.set("glfw_async");
        }
        try {
            GLFWErrorCallback before = glfwSetErrorCallback(null);
            if (before != null) {
                before.free();
            }
            if (Platform.get() == Platform.LINUX && System.getenv("WAYLAND_DISPLAY") == null) {
                // Else a library that is not needed complains on standard error of what it lacks.
                glfwInitHint(GLFW_PLATFORM, GLFW_PLATFORM_X11);
            }
            if (!glfwInit()) {
                throw NoGraphicsException.window(lastError());
            }
        } catch (UnsatisfiedLinkError | ExceptionInInitializerError e) {
            throw NoGraphicsException.window("a library is missing", e);
        }
        glfwReady = true;
    }

    static boolean isReady() {
        return glfwReady;
    }

    static String lastError() {
        try (MemoryStack stack = MemoryStack.stackPush()) {
            PointerBuffer text = stack.mallocPointer(1);
            int code = glfwGetError(text);
            long at = text.get(0);
            return code == GLFW_NO_ERROR || at == MemoryUtil.NULL
                    ? "no display"
                    : MemoryUtil.memUTF8(at);
        }
    }
}
