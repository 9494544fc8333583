package pairdown.app;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javax.management.JMException;
import javax.management.ObjectName;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import pairdown.season.SeasonFolder;

/**
 * Tells the virtual machine that this run is short. A debrief of logs of usual size is done before
 * code from the optimising compiler has earned the processor time that making it takes, which on a
 * machine of two cores is half of the whole; the quick compiler's code does. Where the virtual
 * machine takes no such hint, nothing changes but the time.
 */
final class ShortRun {
    /** Above this the optimising compiler earns its time (bytes of files). */
    private static final long MOST_BYTES = 64L << 20;

    private static final Logger LOG = LoggerFactory.getLogger(ShortRun.class);

    /** The virtual machine's own form: no method goes to the optimising compiler. */
    private static final String DIRECTIVE = "[{match: \"*.*\", c2: {Exclude: true}}]";

    private ShortRun() {}

    /** Gives the hint, beside other work, if the files in the folder are not large together. */
    static void expectFor(String folder) {
        beside(() -> isSmall(Path.of(folder)));
    }

    /** Gives the hint, beside other work, if attempts below the folder are kept from before. */
    static void expectForSeason(String folder) {
        beside(() -> SeasonFolder.isKept(Path.of(folder)));
    }

    private static void beside(BooleanSupplier isShort) {
        if (ModuleLayer.boot().findModule("jdk.management").isPresent()) {
            Thread beside = new Thread(() -> tellIf(isShort), "short run");
            beside.setDaemon(true);
            beside.start();
        }
    }

    private static void tellIf(BooleanSupplier isShort) {
        try {
            if (isShort.getAsBoolean()) {
                tell();
            }
        } catch (IOException | JMException e) {
            LOG.debug("the virtual machine was told nothing", e);
        }
    }

    private static boolean isSmall(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.mapToLong(f -> f.toFile().length()).sum() <= MOST_BYTES;
        } catch (IOException e) {
            return false;
        }
    }

    private static void tell() throws IOException, JMException {
        Path file = Files.createTempFile("pairdown", ".directive");
        try {
            Files.writeString(file, DIRECTIVE);
            ManagementFactory.getPlatformMBeanServer()
                    .invoke(
                            new ObjectName("com.sun.management:type=DiagnosticCommand"),
                            "compilerDirectivesAdd",
                            new Object[] {new String[] {file.toString()}},
                            new String[] {String[].class.getName()});
        } finally {
            Files.delete(file);
        }
    }
}
