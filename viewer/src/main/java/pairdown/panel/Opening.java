package pairdown.panel;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import pairdown.debrief.Debrief;
import pairdown.replay.Desk;
import pairdown.track.UnusableInputException;

/**
 * Opens attempts in the background: the window goes on while logs are read. One at a time; a later
 * wish takes the place of an earlier one, whose result is dropped.
 */
public final class Opening implements AutoCloseable {
    /** Makes a debrief of a folder, telling how far it is. Called on another thread. */
    @FunctionalInterface
    public interface Loader {
        /**
         * @throws UnusableInputException if the folder can't be used; its message is shown
         */
        Debrief load(Path folder, Consumer<Desk.Progress> progress) throws UnusableInputException;
    }

    /** What came of a wish: a debrief, or a problem in words. */
    private record Done(int wish, Path folder, Optional<Debrief> debrief, String problem) {}

    /** An attempt that was opened. */
    public record Opened(Path folder, Debrief debrief) {}

    private final Loader loader;
    private final Runnable wake;
    private final ExecutorService worker =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "opening");
                        thread.setDaemon(true);
                        return thread;
                    });
    private final Queue<Done> done = new ConcurrentLinkedQueue<>();
    private volatile Optional<Desk.Progress> progress = Optional.empty();
    private int wishes;

    /**
     * @param wake called from the other thread when there is something new, so that a window that
     *     waits for events draws again
     */
    public Opening(Loader loader, Runnable wake) {
        this.loader = loader;
        this.wake = wake;
    }

    /** Begins to open a folder, or the folder that a log lies in. */
    public void open(Path path) {
        int wish = ++wishes;
        Path named = path.toAbsolutePath().normalize();
        tell(Optional.of(new Desk.Progress(String.valueOf(named.getFileName()), Double.NaN)));
        worker.execute(() -> load(wish, named));
    }

    /** Opens what was dropped on the window: a folder, or the folder of the first log. */
    public void open(List<Path> dropped) {
        if (!dropped.isEmpty()) {
            open(dropped.get(0));
        }
    }

    private void load(int wish, Path named) {
        Path folder = Files.isRegularFile(named) ? parent(named) : named;
        Done result;
        try {
            Debrief debrief = loader.load(folder, p -> tell(Optional.of(p)));
            result = new Done(wish, folder, Optional.of(debrief), "");
        } catch (UnusableInputException e) {
            result = new Done(wish, folder, Optional.empty(), String.valueOf(e.getMessage()));
        } catch (RuntimeException e) {
            // The window must outlive a fault in reading: it is told, with what the log needs to
            // find it, and the logs on disk are as they were.
            result = new Done(wish, folder, Optional.empty(), folder + ": " + e);
        }
        done.add(result);
        tell(Optional.empty());
    }

    private static Path parent(Path file) {
        Path parent = file.getParent();
        return parent == null ? file : parent;
    }

    private void tell(Optional<Desk.Progress> what) {
        progress = what;
        wake.run();
    }

    /** Whether something is being opened. */
    public boolean isBusy() {
        return progress.isPresent();
    }

    /**
     * Puts progress and problems on the desk; the answer is an attempt that is ready, once. Called
     * each frame on the window's thread.
     */
    public Optional<Opened> poll(Desk desk) {
        desk.progress(progress);
        Done got = done.poll();
        if (got == null || got.wish() != wishes) {
            return Optional.empty();
        }
        if (got.debrief().isEmpty()) {
            desk.tell(Optional.of(new Desk.Notice(got.problem(), true)));
            return Optional.empty();
        }
        return Optional.of(new Opened(got.folder(), got.debrief().get()));
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
