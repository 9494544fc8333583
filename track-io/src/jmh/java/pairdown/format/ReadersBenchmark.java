package pairdown.format;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.xml.stream.XMLStreamException;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import pairdown.track.UnusableInputException;

/** Milliseconds to read a log of 52 MB, and beside it to go through it as {@link Floors} says. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx2g")
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 5, time = 4)
public class ReadersBenchmark {
    @Param({"csv", "igc", "nmea", "gpx", "kml"})
    String format = "";

    private Path folder = Path.of("");
    private Path file = Path.of("");

    @Setup
    public void write() throws IOException, UnusableInputException {
        folder = Files.createTempDirectory("pairdown-bench");
        file = LongLogs.write(format, folder);
    }

    @TearDown
    public void delete() throws IOException {
        Files.deleteIfExists(file);
        Files.delete(folder);
    }

    /** The importer, from the file to the track. */
    @Benchmark
    public int read() throws UnusableInputException {
        return LogFiles.read(file, Optional.empty()).size();
    }

    /** What is compared with. */
    @Benchmark
    public double floor() throws IOException, XMLStreamException {
        return Floors.walk(format, file);
    }
}
