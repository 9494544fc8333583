package pairdown.gl;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.lwjgl.PointerBuffer;
import org.lwjgl.glfw.GLFW;
import org.lwjgl.glfw.GLFWDropCallback;
import org.lwjgl.glfw.GLFWMonitorCallback;
import org.lwjgl.glfw.GLFWWindowContentScaleCallback;
import org.lwjgl.opengl.GL11;
import org.lwjgl.system.JNI;
import org.lwjgl.system.Library;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;
import org.lwjgl.system.Platform;
import org.lwjgl.system.SharedLibrary;

/**
 * A display of our own, so that tests neither need nor disturb a person's, and a hand at its keys
 * and mouse. Keys and mouse go through the server (XTest, by xdotool), as a person's do.
 */
public final class VirtualDisplay {
    private static final int WIDTH_PX = 1600;
    private static final int HEIGHT_PX = 1000;

    private static String display = "";
    private static final Optional<String> MISSING = start();

    private VirtualDisplay() {}

    /** What is missing here to have one, and the mend; empty where it runs. */
    static Optional<String> missing() {
        return MISSING;
    }

    private static Optional<String> start() {
        if (Platform.get() != Platform.LINUX) {
            return Optional.of("windows are tested on Linux, with Xvfb");
        }
        for (String program : List.of("Xvfb", "xdotool")) {
            if (!isOnPath(program)) {
                return Optional.of(
                        "no " + program + "; on Debian or Ubuntu install xvfb and xdotool");
            }
        }
        try {
            Process server =
                    new ProcessBuilder(
                                    "Xvfb",
                                    "-displayfd",
                                    "1",
                                    "-nolisten",
                                    "tcp",
                                    "-screen",
                                    "0",
                                    WIDTH_PX + "x" + HEIGHT_PX + "x24")
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start();
            Runtime.getRuntime().addShutdownHook(new Thread(server::destroy));
            BufferedReader said = server.inputReader(StandardCharsets.US_ASCII);
            String number = said.readLine();
            if (number == null) {
                return Optional.of("Xvfb ended with " + server.exitValue());
            }
            setEnvironment("DISPLAY", ":" + number.strip());
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of("Xvfb can't be started: " + e.getMessage());
        }
    }

    private static boolean isOnPath(String program) {
        return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(":", -1))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }

    /**
     * In this process: the window's library asks the C library, which Java's copy does not reach.
     */
    private static void setEnvironment(String name, String value) {
        try (SharedLibrary c = Library.loadNative(VirtualDisplay.class, "pairdown", "libc.so.6");
                MemoryStack stack = MemoryStack.stackPush()) {
            JNI.callPPI(
                    MemoryUtil.memAddress(stack.UTF8(name)),
                    MemoryUtil.memAddress(stack.UTF8(value)),
                    1,
                    c.getFunctionAddress("setenv"));
        }
        display = value;
    }

    /** Does something with keys or mouse, in the words of xdotool, and waits until it is done. */
    public static void hand(String... doing) {
        List<String> line = new ArrayList<>();
        line.add("xdotool");
        line.addAll(List.of(doing));
        ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
        builder.environment().put("DISPLAY", display);
        try {
            Process process = builder.start();
            String said =
                    new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (!process.waitFor(20, TimeUnit.SECONDS) || process.exitValue() != 0) {
                throw new AssertionError(String.join(" ", line) + ": " + said);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** Gives a window the keys; without a window manager nobody else does. */
    public static void focus(String title) {
        hand("search", "--sync", "--name", title, "windowfocus", "--sync");
    }

    /** Lets files go over the current window, as its library tells of it. */
    public static void drop(List<Path> paths) {
        long window = GLFW.glfwGetCurrentContext();
        GLFWDropCallback callback = GLFW.glfwSetDropCallback(window, null);
        if (callback == null) {
            throw new AssertionError("the window does not listen for drops");
        }
        try (MemoryStack stack = MemoryStack.stackPush()) {
            PointerBuffer names = stack.mallocPointer(paths.size());
            for (Path path : paths) {
                names.put(stack.UTF8(path.toString()));
            }
            callback.invoke(window, paths.size(), names.address0());
        } finally {
            GLFW.glfwSetDropCallback(window, callback);
        }
    }

    /** What the card has complained of since last asked; 0 for nothing. */
    public static int complaint() {
        return GL11.glGetError();
    }

    /** Its name, as other processes need it. */
    public static String name() {
        return display;
    }

    /** Takes a window off the screen, as minimising does. */
    public static void unmap(String title) {
        hand("search", "--name", title, "windowunmap", "--sync");
    }

    /** Puts it back. */
    public static void map(String title) {
        hand("search", "--name", title, "windowmap", "--sync");
    }

    public static void move(String title, int x, int y) {
        hand(
                "search",
                "--name",
                title,
                "windowmove",
                "--sync",
                String.valueOf(x),
                String.valueOf(y));
    }

    /** Tells the window that a monitor was taken off: this server can't do it. */
    public static void monitorsChange() {
        GLFWMonitorCallback callback = GLFW.glfwSetMonitorCallback(null);
        if (callback == null) {
            throw new AssertionError("the window does not listen for monitors");
        }
        callback.invoke(GLFW.glfwGetPrimaryMonitor(), GLFW.GLFW_DISCONNECTED);
        GLFW.glfwSetMonitorCallback(callback);
    }

    /** Tells the current window that the system's scale has changed. */
    public static void rescale() {
        long window = GLFW.glfwGetCurrentContext();
        GLFWWindowContentScaleCallback callback =
                GLFW.glfwSetWindowContentScaleCallback(window, null);
        if (callback == null) {
            throw new AssertionError("the window does not listen for its scale");
        }
        callback.invoke(window, 2, 2);
        GLFW.glfwSetWindowContentScaleCallback(window, callback);
    }
}
