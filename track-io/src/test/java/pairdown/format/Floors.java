package pairdown.format;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * What a reader built on the usual parts could not do without, to compare the importers with:
 * tokens and numbers for CSV, lines for IGC and NMEA, a walk of the parser for XML.
 */
final class Floors {
    /** In words, by format. */
    static final Map<String, String> NAMES =
            Map.of(
                    "csv", "Commons CSV tokens and Double.parseDouble",
                    "igc", "lines of the file",
                    "nmea", "lines of the file",
                    "gpx", "the parser's walk",
                    "kml", "the parser's walk");

    private Floors() {}

    /** Goes through a file as its format's floor does; a number that depends on all of it. */
    static double walk(String format, Path file) throws IOException, XMLStreamException {
        return switch (format) {
            case "csv" -> tokensAndNumbers(file);
            case "igc", "nmea" -> lines(file);
            default -> events(file);
        };
    }

    private static double tokensAndNumbers(Path file) throws IOException {
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

    private static double lines(Path file) throws IOException {
        long letters = 0;
        try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                letters += line.length();
            }
        }
        return letters;
    }

    private static double events(Path file) throws IOException, XMLStreamException {
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
