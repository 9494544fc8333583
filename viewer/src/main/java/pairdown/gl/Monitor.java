package pairdown.gl;

import static org.lwjgl.glfw.GLFW.glfwGetMonitorPhysicalSize;
import static org.lwjgl.glfw.GLFW.glfwGetMonitorPos;
import static org.lwjgl.glfw.GLFW.glfwGetMonitors;
import static org.lwjgl.glfw.GLFW.glfwGetVideoMode;

import java.util.Optional;
import org.lwjgl.PointerBuffer;
import org.lwjgl.glfw.GLFWVidMode;

/**
 * A display as the system knows it.
 *
 * @param pixel_mm height of a pixel; 0 where the display does not say
 */
record Monitor(int left, int top, int width, int height, double pixel_mm) {
    /**
     * The monitor that holds the middle of a window, else the main one; empty where there is none.
     *
     * @param place the window's left, top, width and height
     */
    static Optional<Monitor> under(int[] place) {
        PointerBuffer all = glfwGetMonitors();
        Optional<Monitor> found = Optional.empty();
        for (int i = 0; all != null && i < all.limit(); i++) {
            Optional<Monitor> monitor = of(all.get(i));
            boolean holds =
                    monitor.filter(m -> m.holds(place[0] + place[2] / 2, place[1] + place[3] / 2))
                            .isPresent();
            if (found.isEmpty() || holds) {
                found = monitor;
            }
        }
        return found;
    }

    private static Optional<Monitor> of(long handle) {
        GLFWVidMode mode = glfwGetVideoMode(handle);
        if (mode == null) {
            return Optional.empty();
        }
        int[] x = new int[1];
        int[] y = new int[1];
        glfwGetMonitorPos(handle, x, y);
        int[] wide_mm = new int[1];
        int[] high_mm = new int[1];
        glfwGetMonitorPhysicalSize(handle, wide_mm, high_mm);
        double pixel_mm = (double) high_mm[0] / mode.height();
        return Optional.of(new Monitor(x[0], y[0], mode.width(), mode.height(), pixel_mm));
    }

    private boolean holds(int x, int y) {
        return x >= left && x < left + width && y >= top && y < top + height;
    }
}
