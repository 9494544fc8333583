package pairdown.panel;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import pairdown.replay.Desk;
import pairdown.track.UnusableInputException;

/**
 * Opens what a person wishes to see in the background: the window goes on while logs are read. One
 * at a time; a later wish for the same purpose takes the place of an earlier one, whose result is
 * dropped.
 *
 * @param <T> what comes of reading
 */
public final class Opening<T> implements AutoCloseable {
    /** What the result is for. */
    public enum Purpose {
        /** To be shown. */
        SHOW,
        /** To be laid over what is shown. */
        OVERLAY,
        /** To be listed: the attempts below a folder. */
        SEASON
    }

    /**
     * Something to be opened.
     *
     * @param paths a folder, or files
     */
    public record Wish(Purpose purpose, List<Path> paths, int number) {
        public Wish {
            paths = List.copyOf(paths);
        }
    }

    /** Reads what is wished for, telling how far it is. Called on another thread. */
    @FunctionalInterface
    public interface Loader<T> {
        /**
         * @throws UnusableInputException if the paths can't be used; its message is shown
         */
        T load(Wish wish, Consumer<Desk.Progress> progress) throws UnusableInputException;

        /** A problem in the reader's language. */
        default String told(String english) {
            return english;
        }
    }

    /** What came of a wish: a result, or a problem in words. */
    private record Done<T>(Wish wish, Optional<T> result, String problem) {}

    /** A wish that was met. */
    public record Opened<T>(Wish wish, T result) {}

    private final Loader<T> loader;
    private final Runnable wake;
    private final ExecutorService worker =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "opening");
                        thread.setDaemon(true);
                        return thread;
                    });
    private final Queue<Done<T>> done = new ConcurrentLinkedQueue<>();
    private final Map<Purpose, Integer> latest = new EnumMap<>(Purpose.class);
    private volatile Optional<Desk.Progress> progress = Optional.empty();
    private int wishes;

    /**
     * @param wake called from the other thread when there is something new, so that a window that
     *     waits for events draws again
     */
    public Opening(Loader<T> loader, Runnable wake) {
        this.loader = loader;
        this.wake = wake;
    }

    /** Begins to open a folder to show it, or the attempt that a file belongs to. */
    public void open(Path path) {
        begin(Purpose.SHOW, List.of(path));
    }

    /** Begins to open what was dropped on the window. */
    public void open(List<Path> dropped) {
        if (!dropped.isEmpty()) {
            begin(Purpose.SHOW, dropped);
        }
    }

    /** Begins to open a second attempt, to be laid over the one shown. */
    public void overlay(Path path) {
        begin(Purpose.OVERLAY, List.of(path));
    }

    /** Begins to list the attempts below a folder. */
    public void season(Path folder) {
        begin(Purpose.SEASON, List.of(folder));
    }

    private void begin(Purpose purpose, List<Path> paths) {
        List<Path> named = paths.stream().map(p -> p.toAbsolutePath().normalize()).toList();
        Wish wish = new Wish(purpose, named, ++wishes);
        latest.put(purpose, wish.number());
        tell(Optional.of(new Desk.Progress(nameOf(wish), Double.NaN)));
        worker.execute(() -> load(wish));
    }

    private static String nameOf(Wish wish) {
        return String.valueOf(wish.paths().get(0).getFileName());
    }

    private void load(Wish wish) {
        Done<T> result;
        try {
            T loaded = loader.load(wish, p -> tell(Optional.of(p)));
            result = new Done<>(wish, Optional.of(loaded), "");
        } catch (UnusableInputException e) {
            String problem = loader.told(String.valueOf(e.getMessage()));
            result = new Done<>(wish, Optional.empty(), problem);
        } catch (RuntimeException e) {
            // The window must outlive a fault in reading: it is told, with what is needed to find
            // it, and the logs on disk are as they were.
            String what = wish.paths().get(0) + ": defect in Pairdown: " + e;
            result = new Done<>(wish, Optional.empty(), loader.told(what));
        } catch (OutOfMemoryError e) {
            // What filled the memory is let go of by now: the window can say so.
            String what = wish.paths().get(0) + ": too large for the memory that Java was given";
            String problem = loader.told(what + "; start it with -Xmx4g or more");
            result = new Done<>(wish, Optional.empty(), problem);
        }
        done.add(result);
        tell(Optional.empty());
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
     * Puts progress and problems on the desk; the answer is something that is ready, once. Called
     * each frame on the window's thread.
     */
    public Optional<Opened<T>> poll(Desk desk) {
        desk.progress(progress);
        Done<T> got = done.poll();
        if (got == null || latest.getOrDefault(got.wish().purpose(), 0) != got.wish().number()) {
            return Optional.empty();
        }
        if (got.result().isEmpty()) {
            desk.tell(Optional.of(new Desk.Notice(got.problem(), true)));
            return Optional.empty();
        }
        return Optional.of(new Opened<>(got.wish(), got.result().get()));
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
