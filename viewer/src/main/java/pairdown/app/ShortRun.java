package pairdown.app;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Debriefs logs of usual size in a virtual machine made for a short run. It ends before code from
 * the optimising compiler has earned the processor time that making it takes, and a collector with
 * threads of its own only adds to that; on two cores both together are a third of the whole. A
 * virtual machine can't be told so once it runs: a second one is started with the quick compiler
 * alone, and this one waits for it.
 */
final class ShortRun {
    /** Above this the optimising compiler earns its time (bytes of files). */
    private static final long MOST_BYTES = 64L << 20;

    private static final List<String> QUICK =
            List.of(
                    "-XX:+IgnoreUnrecognizedVMOptions",
                    "-XX:TieredStopAtLevel=1",
                    "-XX:+UseSerialGC");

    private ShortRun() {}

    /**
     * Runs the program in a second virtual machine if it will be a short run.
     *
     * @return its exit status; empty where this virtual machine has to do the work itself
     */
    static OptionalInt of(String... args) {
        if (args.length < 2 || !args[0].equals("debrief") || !isSmall(args[1])) {
            return OptionalInt.empty();
        }
        List<String> options = ManagementFactory.getRuntimeMXBean().getInputArguments();
        if (!options.stream().allMatch(ShortRun::isPlain)) {
            return OptionalInt.empty();
        }
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(QUICK);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(args));
        return run(command);
    }

    /** Memory and properties: with other options somebody wants this very virtual machine. */
    private static boolean isPlain(String option) {
        return option.startsWith("-Xmx") || option.startsWith("-Xms") || option.startsWith("-D");
    }

    private static boolean isSmall(String folder) {
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            return files.mapToLong(f -> f.toFile().length()).sum() <= MOST_BYTES;
        } catch (IOException | InvalidPathException e) {
            return false;
        }
    }

    private static OptionalInt run(List<String> command) {
        Second second = new Second();
        Runtime.getRuntime().addShutdownHook(new Thread(second::end, "end short run"));
        try {
            return OptionalInt.of(second.start(command).waitFor());
        } catch (IOException e) {
            return OptionalInt.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return OptionalInt.of(ExitStatus.DEFECT);
        }
    }

    /** The other process: where this one is told to end, it is too, and may tidy up before. */
    private static final class Second {
        private @Nullable Process process;

        synchronized Process start(List<String> command) throws IOException {
            Process started = new ProcessBuilder(command).inheritIO().start();
            process = started;
            return started;
        }

        synchronized void end() {
            if (process != null) {
                process.destroy();
                process.onExit().join();
            }
        }
    }
}
