package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A debrief as started from a command line: one process that waits for another. */
class ShortRunTest {
    private static final int LONGEST_S = 120;

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit fills it
    Path folder;

    private Process start(List<String> machine, Path attempt) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(machine);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "pairdown.app.Main"));
        command.addAll(List.of("debrief", attempt.toString(), "--no-pictures", "--no-pdf"));
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectError(folder.resolve("complaints").toFile());
        builder.environment().keySet().removeIf(name -> name.endsWith("JAVA_OPTIONS"));
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        return builder.start();
    }

    /** The process that does the work, once there is one. */
    private static Optional<ProcessHandle> worker(Process process) {
        Optional<ProcessHandle> child = process.children().findFirst();
        while (child.isEmpty() && process.isAlive()) {
            Thread.onSpinWait();
            child = process.children().findFirst();
        }
        return child;
    }

    private static String end(Process process) throws Exception {
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(LONGEST_S, TimeUnit.SECONDS));
        return said.strip();
    }

    @Test
    void theOthersWordsAndStatusArePassedOn() throws Exception {
        Path attempt = SmallAttempt.write(folder.resolve("attempt"), "one", 0);
        Process process = start(List.of("-Xmx500m"), attempt);
        assertTrue(worker(process).isPresent());
        assertEquals(attempt.resolve("debrief/report.html").toString(), end(process));
        assertEquals(ExitStatus.DONE, process.exitValue());
    }

    @Test
    void complaintsAndTheirStatusArePassedOn() throws Exception {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        Process process = start(List.of(), empty);
        assertEquals("", end(process));
        assertEquals(ExitStatus.INPUT, process.exitValue());
        assertEquals(1, Files.readAllLines(folder.resolve("complaints")).size());
    }

    @Test
    void whoeverAsksForACertainVirtualMachineGetsIt() throws Exception {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        Process process = start(List.of("-XX:+UseParallelGC"), empty);
        assertTrue(worker(process).isEmpty());
        end(process);
        assertEquals(ExitStatus.INPUT, process.exitValue());
    }

    @Test
    void theOtherEndsWithTheOneThatWaits() throws Exception {
        Path attempt = SmallAttempt.write(folder.resolve("attempt"), "one", 0);
        Process process = start(List.of(), attempt);
        ProcessHandle worker = worker(process).orElseThrow();
        process.toHandle().destroy();
        end(process);
        assertFalse(worker.isAlive());
        assertFalse(Files.exists(attempt.resolve("debrief/debrief.json")));
    }
}
