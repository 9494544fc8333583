package pairdown.gl;

import static org.lwjgl.glfw.GLFW.*;

import java.nio.IntBuffer;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.lwjgl.glfw.GLFWDropCallback;
import org.lwjgl.opengl.GL11;
import org.lwjgl.opengl.GL30;
import org.lwjgl.opengl.GLCapabilities;
import org.lwjgl.system.Callback;
import org.lwjgl.system.FunctionProvider;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;
import pairdown.gl.WindowEvent.Held;
import pairdown.gl.WindowEvent.MouseButton;

/**
 * The window. Its callbacks only enqueue; {@link #poll} hands the events over in order.
 *
 * <p>The static import of GLFW's constants is whole: two dozen single ones would say nothing more.
 */
public final class Window implements RenderContext {
    /** Where the card is real: enough to smooth an edge, cheap on any. */
    private static final int HARDWARE_SAMPLES = 4;

    private final long handle;
    private final GLCapabilities capabilities;
    private final Queue<WindowEvent> events = new ArrayDeque<>();
    private final List<Callback> callbacks = new ArrayList<>();
    private final String renderer;
    private @Nullable Target scene;
    private int width_px;
    private int height_px;
    private double pixel_mm;
    private float scale;
    private double pointerX;
    private double pointerY;
    private boolean fullScreen;
    private int[] placeBefore = {0, 0, 0, 0};

    private Window(long handle, GLCapabilities capabilities) {
        this.handle = handle;
        this.capabilities = capabilities;
        this.renderer = String.valueOf(GL11.glGetString(GL11.GL_RENDERER));
        measure();
        listen();
    }

    /**
     * Opens a window.
     *
     * @param width_px of its picture
     * @throws NoGraphicsException where there is no display or no OpenGL 3.3
     */
    public static Window open(String title, int width_px, int height_px)
            throws NoGraphicsException {
        GlBinding.prepare();
        WindowSystem.start();
        glfwDefaultWindowHints();
        glfwWindowHint(GLFW_CLIENT_API, GLFW_OPENGL_API);
        glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
        glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
        glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
        glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
        glfwWindowHint(GLFW_STENCIL_BITS, 8);
        glfwWindowHint(GLFW_DEPTH_BITS, 24);
        long handle =
                glfwCreateWindow(width_px, height_px, title, MemoryUtil.NULL, MemoryUtil.NULL);
        if (handle == MemoryUtil.NULL) {
            throw NoGraphicsException.noOpenGl(WindowSystem.lastError());
        }
        glfwMakeContextCurrent(handle);
        glfwSwapInterval(1);
        return new Window(handle, GlBinding.use(GlBinding.Source.WINDOW, new GlfwFunctions()));
    }

    private static final class GlfwFunctions implements FunctionProvider {
        @Override
        public long getFunctionAddress(java.nio.ByteBuffer name) {
            return glfwGetProcAddress(name);
        }
    }

    private void measure() {
        try (MemoryStack stack = MemoryStack.stackPush()) {
            IntBuffer w = stack.mallocInt(1);
            IntBuffer h = stack.mallocInt(1);
            glfwGetFramebufferSize(handle, w, h);
            width_px = w.get(0);
            height_px = h.get(0);
            java.nio.FloatBuffer sx = stack.mallocFloat(1);
            glfwGetWindowContentScale(handle, sx, stack.mallocFloat(1));
            scale = Math.max(1, sx.get(0));
        }
        pixel_mm = Monitor.under(place()).map(Monitor::pixel_mm).orElse(0.0);
    }

    /** On another monitor pixels may be of another size. */
    private void onMonitors() {
        double before_mm = pixel_mm;
        float scaleBefore = scale;
        measure();
        if (pixel_mm != before_mm || scale != scaleBefore) {
            events.add(new WindowEvent.Resized(width_px, height_px, scale));
        }
    }

    private void listen() {
        keep(
                glfwSetKeyCallback(
                        handle,
                        (w, code, scan, action, mods) ->
                                Key.ofCode(code)
                                        .ifPresent(
                                                key ->
                                                        events.add(
                                                                new WindowEvent.KeyTurned(
                                                                        key,
                                                                        action != GLFW_RELEASE,
                                                                        action == GLFW_REPEAT,
                                                                        held(mods))))));
        keep(glfwSetCharCallback(handle, (w, c) -> events.add(new WindowEvent.Typed(c))));
        keep(glfwSetMouseButtonCallback(handle, (w, b, action, mods) -> onButton(b, action, mods)));
        keep(glfwSetCursorPosCallback(handle, (w, x, y) -> onMove(x, y)));
        keep(
                glfwSetScrollCallback(
                        handle,
                        (w, dx, dy) ->
                                events.add(
                                        new WindowEvent.Scrolled(
                                                dx, dy, pointerX, pointerY, heldNow()))));
        keep(glfwSetDropCallback(handle, (w, count, names) -> onDrop(count, names)));
        keep(glfwSetFramebufferSizeCallback(handle, (w, width, height) -> onResize()));
        keep(glfwSetWindowContentScaleCallback(handle, (w, x, y) -> onResize()));
        keep(glfwSetWindowPosCallback(handle, (w, x, y) -> onMonitors()));
        keep(glfwSetMonitorCallback((monitor, event) -> onMonitors()));
        keep(
                glfwSetWindowFocusCallback(
                        handle, (w, focused) -> events.add(new WindowEvent.Focused(focused))));
    }

    /** GLFW hands back the callback it replaced: there is none, this window is new. */
    private void keep(@Nullable Callback replaced) {
        if (replaced != null) {
            callbacks.add(replaced);
        }
    }

    private static Held held(int mods) {
        return new Held(
                (mods & GLFW_MOD_SHIFT) != 0,
                (mods & (GLFW_MOD_CONTROL | GLFW_MOD_SUPER)) != 0,
                (mods & GLFW_MOD_ALT) != 0);
    }

    private Held heldNow() {
        return new Held(
                isDown(GLFW_KEY_LEFT_SHIFT) || isDown(GLFW_KEY_RIGHT_SHIFT),
                isDown(GLFW_KEY_LEFT_CONTROL) || isDown(GLFW_KEY_RIGHT_CONTROL),
                isDown(GLFW_KEY_LEFT_ALT) || isDown(GLFW_KEY_RIGHT_ALT));
    }

    private boolean isDown(int code) {
        return glfwGetKey(handle, code) == GLFW_PRESS;
    }

    private void onButton(int button, int action, int mods) {
        buttonOf(button)
                .ifPresent(
                        which ->
                                events.add(
                                        new WindowEvent.ButtonTurned(
                                                which,
                                                action == GLFW_PRESS,
                                                pointerX,
                                                pointerY,
                                                held(mods))));
    }

    private static Optional<MouseButton> buttonOf(int code) {
        return switch (code) {
            case GLFW_MOUSE_BUTTON_LEFT -> Optional.of(MouseButton.LEFT);
            case GLFW_MOUSE_BUTTON_RIGHT -> Optional.of(MouseButton.RIGHT);
            case GLFW_MOUSE_BUTTON_MIDDLE -> Optional.of(MouseButton.MIDDLE);
            default -> Optional.empty();
        };
    }

    private void onMove(double x, double y) {
        try (MemoryStack stack = MemoryStack.stackPush()) {
            IntBuffer w = stack.mallocInt(1);
            IntBuffer h = stack.mallocInt(1);
            glfwGetWindowSize(handle, w, h);
            // A dense display counts the pointer in points, the picture in pixels.
            pointerX = x * width_px / Math.max(1, w.get(0));
            pointerY = y * height_px / Math.max(1, h.get(0));
        }
        events.add(new WindowEvent.Moved(pointerX, pointerY));
    }

    private void onDrop(int count, long names) {
        List<Path> paths = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            toPath(GLFWDropCallback.getName(names, i)).ifPresent(paths::add);
        }
        events.add(new WindowEvent.Dropped(paths));
    }

    private static Optional<Path> toPath(String name) {
        try {
            return Optional.of(Path.of(name));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private void onResize() {
        measure();
        events.add(new WindowEvent.Resized(width_px, height_px, scale));
    }

    /** Gathers what happened since last time and hands it over in order. */
    public void poll(Consumer<WindowEvent> to) {
        glfwPollEvents();
        drain(to);
    }

    /** The same, but sleeps until something happens or the time is over: for a still picture. */
    public void await(double timeout_s, Consumer<WindowEvent> to) {
        glfwWaitEventsTimeout(timeout_s);
        drain(to);
    }

    private void drain(Consumer<WindowEvent> to) {
        for (WindowEvent event = events.poll(); event != null; event = events.poll()) {
            to.accept(event);
        }
    }

    /** Wakes {@link #await} from any thread; does nothing before the first window is opened. */
    public static void wake() {
        if (WindowSystem.isReady()) {
            glfwPostEmptyEvent();
        }
    }

    public boolean shouldClose() {
        return glfwWindowShouldClose(handle);
    }

    public void requestClose() {
        glfwSetWindowShouldClose(handle, true);
    }

    /** Whether nothing of it can be seen: minimised, or of no size. */
    public boolean isHidden() {
        return width_px == 0
                || height_px == 0
                || glfwGetWindowAttrib(handle, GLFW_VISIBLE) == GLFW_FALSE
                || glfwGetWindowAttrib(handle, GLFW_ICONIFIED) == GLFW_TRUE;
    }

    public void setTitle(String title) {
        glfwSetWindowTitle(handle, title);
    }

    /** Resizes the window so that its picture has a size in points. */
    public void resize(int width, int height) {
        glfwSetWindowSize(handle, width, height);
    }

    /** Its width and height as {@link #resize} takes them; out of full screen, as it was before. */
    public int[] size() {
        int[] at = fullScreen ? placeBefore : place();
        return new int[] {at[2], at[3]};
    }

    public void toggleFullScreen() {
        long monitor = glfwGetPrimaryMonitor();
        var mode = monitor == MemoryUtil.NULL ? null : glfwGetVideoMode(monitor);
        if (mode == null) {
            return;
        }
        if (fullScreen) {
            glfwSetWindowMonitor(
                    handle,
                    MemoryUtil.NULL,
                    placeBefore[0],
                    placeBefore[1],
                    placeBefore[2],
                    placeBefore[3],
                    GLFW_DONT_CARE);
        } else {
            placeBefore = place();
            glfwSetWindowMonitor(
                    handle, monitor, 0, 0, mode.width(), mode.height(), mode.refreshRate());
        }
        fullScreen = !fullScreen;
    }

    /** Left, top, width and height (points). */
    private int[] place() {
        int[] x = new int[1];
        int[] y = new int[1];
        int[] w = new int[1];
        int[] h = new int[1];
        glfwGetWindowPos(handle, x, y);
        glfwGetWindowSize(handle, w, h);
        return new int[] {x[0], y[0], w[0], h[0]};
    }

    /** How many millimetres a pixel is high, where the display says; 0 where it does not. */
    public double pixel_mm() {
        return pixel_mm;
    }

    @Override
    public int width_px() {
        return width_px;
    }

    @Override
    public int height_px() {
        return height_px;
    }

    @Override
    public float scale() {
        return scale;
    }

    @Override
    public String renderer() {
        return renderer;
    }

    @Override
    public void beginScene() {
        makeCurrent();
        if (isSoftware()) {
            bindWindow();
            return;
        }
        Target target = scene;
        if (target == null || target.width_px() != width_px || target.height_px() != height_px) {
            if (target != null) {
                target.close();
            }
            target = Target.multisampled(width_px, height_px, HARDWARE_SAMPLES);
            scene = target;
        }
        target.bind();
    }

    private void bindWindow() {
        GL30.glBindFramebuffer(GL30.GL_FRAMEBUFFER, 0);
        GL11.glViewport(0, 0, width_px, height_px);
    }

    @Override
    public void endScene() {
        if (scene != null) {
            scene.resolveToWindow();
        }
        bindWindow();
    }

    @Override
    public void present() {
        glfwSwapBuffers(handle);
    }

    @Override
    public Pixels read() {
        GL30.glBindFramebuffer(GL30.GL_READ_FRAMEBUFFER, 0);
        return Target.readBound(width_px, height_px);
    }

    /** A picture without a display may have been made since. */
    @Override
    public void makeCurrent() {
        if (!GlBinding.isCurrent(capabilities)) {
            glfwMakeContextCurrent(handle);
            GlBinding.makeCurrent(capabilities);
        }
    }

    @Override
    public void close() {
        makeCurrent();
        if (scene != null) {
            scene.close();
        }
        keep(glfwSetMonitorCallback(null));
        callbacks.forEach(Callback::free);
        org.lwjgl.glfw.Callbacks.glfwFreeCallbacks(handle);
        GlBinding.makeCurrent(null);
        glfwDestroyWindow(handle);
    }
}
