package pairdown.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Timer;
import java.util.TimerTask;
import pairdown.gl.Shaders;
import pairdown.gl.Window;
import pairdown.kept.KeptDebriefs;
import pairdown.replay.Alignment;
import pairdown.settings.SettingsFile;

/**
 * How long a window is waited for: from the start of the process to its first picture and to the
 * first one with the attempt, and the longest time between two pictures on the way. Needs a
 * display.
 *
 * <pre>OpeningStudy ATTEMPT [WIDTHxHEIGHT]</pre>
 */
final class OpeningStudy {
    /** Pictures after the first with the attempt: what is made late shows in them. */
    private static final int AFTER = 20;

    private static final int SLOWEST = 5;

    /** A window at rest draws seldom: it is kept awake, so that a hold-up shows. */
    private static final long WAKES_EVERY_MS = 30;

    private OpeningStudy() {}

    public static void main(String[] args) throws Exception {
        Instant start = ProcessHandle.current().info().startInstant().orElseThrow();
        String[] size = (args.length > 1 ? args[1] : "1280x720").split("x", -1);
        Path settings = Files.createTempDirectory("opening");
        SettingsFile file = SettingsFile.in(settings);
        try (ReplayDesk desk =
                new ReplayDesk(
                        file,
                        file.read().settings(),
                        KeptDebriefs.ofUser(),
                        GhostChoice.of(Alignment.On.CLOSEST),
                        Window::wake)) {
            desk.begin(List.of(Path.of(args[0])), Optional.empty());
            try (Window window =
                            Window.open(
                                    "Pairdown",
                                    Integer.parseInt(size[0]),
                                    Integer.parseInt(size[1]));
                    ReplayLoop loop = new ReplayLoop(window, new Shaders(Optional.empty()), desk)) {
                show(window, loop, start);
            }
        }
        Files.deleteIfExists(file.path());
        Files.deleteIfExists(settings);
    }

    private static void show(Window window, ReplayLoop loop, Instant start) {
        List<Double> between_ms = new ArrayList<>();
        Timer waking = new Timer("waking", true);
        waking.schedule(wake(), WAKES_EVERY_MS, WAKES_EVERY_MS);
        loop.round(window);
        double first_s = since_s(start);
        int waiting = 0;
        while (loop.shown().isEmpty()) {
            between_ms.add(round_ms(loop, window));
            waiting++;
        }
        double shown_s = since_s(start);
        for (int i = 0; i < AFTER; i++) {
            between_ms.add(round_ms(loop, window));
        }
        waking.cancel();
        Collections.sort(between_ms, Collections.reverseOrder());
        System.out.printf(
                Locale.ROOT,
                "%s: first picture %.2f s, with the attempt %.2f s after the start;"
                        + " %d pictures between; slowest rounds %s ms%n",
                window.renderer(),
                first_s,
                shown_s,
                waiting,
                between_ms.subList(0, Math.min(SLOWEST, between_ms.size())).stream()
                        .map(ms -> String.format(Locale.ROOT, "%.0f", ms))
                        .toList());
    }

    private static TimerTask wake() {
        return new TimerTask() {
            @Override
            public void run() {
                Window.wake();
            }
        };
    }

    private static double round_ms(ReplayLoop loop, Window window) {
        long before_ns = System.nanoTime();
        loop.round(window);
        return (System.nanoTime() - before_ns) / 1e6;
    }

    private static double since_s(Instant start) {
        return Duration.between(start, Instant.now()).toMillis() / 1e3;
    }
}
