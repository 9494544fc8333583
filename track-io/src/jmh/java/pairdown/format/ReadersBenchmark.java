package pairdown.format;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
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

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Milliseconds to read a log of 52 MB, and beside it what no reader built on the same parts could
 * do without: tokens and numbers for CSV, lines for IGC and NMEA, a walk of the parser for XML.
 */
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
        return switch (format) {
            case "csv" -> tokensAndNumbers();
            case "igc", "nmea" -> lines();
            default -> walk();
        };
    }

    private double tokensAndNumbers() throws IOException {
        double sum = 0;
        try (Reader in = Files.newBufferedReader(file)) {
            for (CSVRecord row : CSVFormat.DEFAULT.parse(in)) {
                for (int i = 1; row.getRecordNumber() > 1 && i < row.size(); i++) {
                    sum += Double.parseDouble(row.get(i));
                }
            }
        }
        return sum;
    }

    private double lines() throws IOException {
        long letters = 0;
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                letters += line.length();
            }
        }
        return letters;
    }

    private double walk() throws IOException, XMLStreamException {
        long events = 0;
        try (InputStream in = Files.newInputStream(file)) {
            XMLStreamReader xml = XMLInputFactory.newFactory().createXMLStreamReader(in);
            while (xml.hasNext()) {
                xml.next();
                events++;
            }
        }
        return events;
    }
}
