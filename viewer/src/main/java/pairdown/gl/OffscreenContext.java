package pairdown.gl;

import static org.lwjgl.egl.EGL10.EGL_ALPHA_SIZE;
import static org.lwjgl.egl.EGL10.EGL_BLUE_SIZE;
import static org.lwjgl.egl.EGL10.EGL_EXTENSIONS;
import static org.lwjgl.egl.EGL10.EGL_GREEN_SIZE;
import static org.lwjgl.egl.EGL10.EGL_NONE;
import static org.lwjgl.egl.EGL10.EGL_NO_CONTEXT;
import static org.lwjgl.egl.EGL10.EGL_NO_SURFACE;
import static org.lwjgl.egl.EGL10.EGL_RED_SIZE;
import static org.lwjgl.egl.EGL10.eglChooseConfig;
import static org.lwjgl.egl.EGL10.eglCreateContext;
import static org.lwjgl.egl.EGL10.eglDestroyContext;
import static org.lwjgl.egl.EGL10.eglGetError;
import static org.lwjgl.egl.EGL10.eglInitialize;
import static org.lwjgl.egl.EGL10.eglMakeCurrent;
import static org.lwjgl.egl.EGL10.eglTerminate;
import static org.lwjgl.egl.EGL12.EGL_RENDERABLE_TYPE;
import static org.lwjgl.egl.EGL12.eglBindAPI;
import static org.lwjgl.egl.EGL12.eglReleaseThread;
import static org.lwjgl.egl.EGL14.EGL_OPENGL_API;
import static org.lwjgl.egl.EGL14.EGL_OPENGL_BIT;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_MAJOR_VERSION;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_MINOR_VERSION;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT;
import static org.lwjgl.egl.EGL15.EGL_CONTEXT_OPENGL_PROFILE_MASK;
import static org.lwjgl.egl.EXTPlatformDevice.EGL_PLATFORM_DEVICE_EXT;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lwjgl.PointerBuffer;
import org.lwjgl.egl.EGL;
import org.lwjgl.egl.EXTDeviceEnumeration;
import org.lwjgl.egl.EXTDeviceQuery;
import org.lwjgl.opengl.GL11;
import org.lwjgl.opengl.GLCapabilities;
import org.lwjgl.system.FunctionProvider;
import org.lwjgl.system.JNI;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/**
 * A picture in memory, made with no display at all through EGL: the first hardware device that
 * gives an OpenGL 3.3 core context, else the software device, else a surfaceless platform.
 */
public final class OffscreenContext implements RenderContext {
    /** {@code EGL_PLATFORM_SURFACELESS_MESA} of the extension of that name. */
    private static final int PLATFORM_SURFACELESS = 0x31DD;

    private static boolean eglLoaded;

    /** Contexts open on each display. */
    private static final Map<Long, Integer> OPEN = new HashMap<>();

    private final long display;
    private final long context;
    private final GLCapabilities capabilities;
    private final String renderer;
    private final Target scene;
    private final Target picture;
    private final float scale;

    private OffscreenContext(
            long display,
            long context,
            GLCapabilities capabilities,
            int width_px,
            int height_px,
            int samples,
            float scale) {
        this.capabilities = capabilities;
        this.display = display;
        this.context = context;
        this.renderer = String.valueOf(GL11.glGetString(GL11.GL_RENDERER));
        this.picture = Target.of(width_px, height_px);
        this.scene = samples > 0 ? Target.multisampled(width_px, height_px, samples) : picture;
        this.scale = scale;
    }

    /**
     * A picture of a size without smoothing of the scene's edges.
     *
     * @throws NoGraphicsException where EGL or a driver for it is missing
     */
    public static OffscreenContext open(int width_px, int height_px) throws NoGraphicsException {
        return open(width_px, height_px, 0, 1);
    }

    /**
     * @param samples per pixel of the 3D scene; 0 for no smoothing of edges
     * @param scale pixels a unit of layout
     * @throws NoGraphicsException where EGL or a driver for it is missing
     */
    public static OffscreenContext open(int width_px, int height_px, int samples, float scale)
            throws NoGraphicsException {
        GlBinding.prepare();
        loadEgl();
        List<String> refusals = new ArrayList<>();
        for (long display : displays()) {
            long context = contextOn(display, refusals);
            if (context != EGL_NO_CONTEXT) {
                FunctionProvider functions = EGL.getFunctionProvider();
                if (functions == null) {
                    throw NoGraphicsException.offscreen("libEGL gives no functions");
                }
                GLCapabilities capabilities = GlBinding.use(GlBinding.Source.EGL, functions);
                enter(display);
                return new OffscreenContext(
                        display, context, capabilities, width_px, height_px, samples, scale);
            }
        }
        throw NoGraphicsException.offscreen(
                refusals.isEmpty()
                        ? "libEGL is here but no driver"
                        : "no OpenGL 3.3 driver (" + refusals.get(refusals.size() - 1) + ")");
    }

    private static synchronized void loadEgl() throws NoGraphicsException {
        if (eglLoaded) {
            return;
        }
        try {
            EGL.create();
            eglLoaded = true;
        } catch (UnsatisfiedLinkError | IllegalStateException e) {
            throw NoGraphicsException.offscreen("libEGL is missing", e);
        }
    }

    /** Displays to try, hardware first. */
    private static List<Long> displays() {
        List<Long> found = new ArrayList<>();
        if (EGL.getCapabilities().EGL_EXT_device_enumeration
                || EGL.getCapabilities().EGL_EXT_device_base) {
            for (long device : devicesHardwareFirst()) {
                found.add(platformDisplay(EGL_PLATFORM_DEVICE_EXT, device));
            }
        }
        found.add(platformDisplay(PLATFORM_SURFACELESS, MemoryUtil.NULL));
        found.removeIf(display -> display == MemoryUtil.NULL);
        return found;
    }

    private static List<Long> devicesHardwareFirst() {
        List<Long> hardware = new ArrayList<>();
        List<Long> software = new ArrayList<>();
        try (MemoryStack stack = MemoryStack.stackPush()) {
            PointerBuffer devices = stack.mallocPointer(32);
            IntBuffer count = stack.mallocInt(1);
            if (!EXTDeviceEnumeration.eglQueryDevicesEXT(devices, count)) {
                return List.of();
            }
            for (int i = 0; i < count.get(0); i++) {
                long device = devices.get(i);
                String extensions =
                        String.valueOf(
                                EXTDeviceQuery.eglQueryDeviceStringEXT(device, EGL_EXTENSIONS));
                (extensions.contains("EGL_MESA_device_software") ? software : hardware).add(device);
            }
        }
        hardware.addAll(software);
        return hardware;
    }

    /** The wrapper refuses a null native display, which the surfaceless platform asks for. */
    private static long platformDisplay(int platform, long nativeDisplay) {
        long get = EGL.getCapabilities().eglGetPlatformDisplayEXT;
        return get == MemoryUtil.NULL
                ? MemoryUtil.NULL
                : JNI.callPPP(platform, nativeDisplay, MemoryUtil.NULL, get);
    }

    private static long contextOn(long display, List<String> refusals) {
        try (MemoryStack stack = MemoryStack.stackPush()) {
            if (!eglInitialize(display, stack.mallocInt(1), stack.mallocInt(1))) {
                refusals.add("eglInitialize 0x" + Integer.toHexString(eglGetError()));
                return EGL_NO_CONTEXT;
            }
            EGL.createDisplayCapabilities(display);
            eglBindAPI(EGL_OPENGL_API);
            PointerBuffer config = stack.mallocPointer(1);
            IntBuffer count = stack.mallocInt(1);
            IntBuffer wanted =
                    stack.ints(
                            EGL_RENDERABLE_TYPE,
                            EGL_OPENGL_BIT,
                            EGL_RED_SIZE,
                            8,
                            EGL_GREEN_SIZE,
                            8,
                            EGL_BLUE_SIZE,
                            8,
                            EGL_ALPHA_SIZE,
                            8,
                            // No kind of surface is asked for: a device platform has none.
                            org.lwjgl.egl.EGL10.EGL_SURFACE_TYPE,
                            0,
                            EGL_NONE);
            if (!eglChooseConfig(display, wanted, config, count) || count.get(0) == 0) {
                return refuse(display, "no configuration", refusals);
            }
            IntBuffer core =
                    stack.ints(
                            EGL_CONTEXT_MAJOR_VERSION,
                            3,
                            EGL_CONTEXT_MINOR_VERSION,
                            3,
                            EGL_CONTEXT_OPENGL_PROFILE_MASK,
                            EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT,
                            EGL_NONE);
            long context = eglCreateContext(display, config.get(0), EGL_NO_CONTEXT, core);
            if (context == EGL_NO_CONTEXT) {
                return refuse(display, "no OpenGL 3.3 core context", refusals);
            }
            if (!eglMakeCurrent(display, EGL_NO_SURFACE, EGL_NO_SURFACE, context)) {
                eglDestroyContext(display, context);
                return refuse(display, "no context without a surface", refusals);
            }
            return context;
        }
    }

    private static long refuse(long display, String why, List<String> refusals) {
        refusals.add(String.format(Locale.ROOT, "%s, EGL error 0x%x", why, eglGetError()));
        eglTerminate(display);
        return EGL_NO_CONTEXT;
    }

    @Override
    public int width_px() {
        return picture.width_px();
    }

    @Override
    public int height_px() {
        return picture.height_px();
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
        scene.bind();
    }

    @Override
    public void endScene() {
        if (scene != picture) {
            scene.resolveTo(picture);
        }
        picture.bind();
    }

    @Override
    public void present() {
        GL11.glFinish();
    }

    @Override
    public Pixels read() {
        return picture.read();
    }

    /** Another context may have been drawn on since: of a window, or of another picture. */
    @Override
    public void makeCurrent() {
        if (!GlBinding.isCurrent(capabilities)) {
            eglBindAPI(EGL_OPENGL_API);
            eglMakeCurrent(display, EGL_NO_SURFACE, EGL_NO_SURFACE, context);
            GlBinding.makeCurrent(capabilities);
        }
    }

    @Override
    public void close() {
        makeCurrent();
        if (scene != picture) {
            scene.close();
        }
        picture.close();
        GlBinding.makeCurrent(null);
        eglMakeCurrent(display, EGL_NO_SURFACE, EGL_NO_SURFACE, EGL_NO_CONTEXT);
        eglDestroyContext(display, context);
        leave(display);
    }

    private static synchronized void enter(long display) {
        OPEN.merge(display, 1, Integer::sum);
    }

    /**
     * Ends a display with its last context: a vendor's driver keeps threads of its own for one, and
     * crashes the process at its end if they are left running.
     */
    private static synchronized void leave(long display) {
        if (OPEN.merge(display, -1, Integer::sum) == 0) {
            eglTerminate(display);
            eglReleaseThread();
        }
    }
}
