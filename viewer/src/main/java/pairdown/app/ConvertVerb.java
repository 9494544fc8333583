package pairdown.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pairdown.attempt.WholeFile;
import pairdown.format.LogFiles;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a log's cleaned track in an open format. */
@Command(
        name = "convert",
        mixinStandardHelpOptions = true,
        description = "Writes a log's cleaned track in an open format.")
final class ConvertVerb implements Callable<Integer> {
    private static final List<String> FORMATS = List.of("gpx", "kml", "igc", "csv", "geojson");

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "a log of any known format")
    private Path file = Path.of("");

    @Option(
            names = "--to",
            required = true,
            paramLabel = "FORMAT",
            description = "gpx, kml, igc, csv or geojson")
    private String format = "";

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "what to write")
    private Path out = Path.of("");

    @Option(
            names = "--columns",
            paramLabel = "MAP",
            description = "a column map, for a CSV log whose header is not self-explanatory")
    private @Nullable Path columns;

    @Override
    public Integer call() throws Exception {
        if (!FORMATS.contains(format)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--to: no format '" + format + "', only " + String.join(", ", FORMATS));
        }
        Track track = LogFiles.read(file, Optional.ofNullable(columns));
        LogFiles.requireWritable(track, format);
        refuseInPlace();
        try {
            WholeFile.write(out, beside -> write(track, beside));
        } catch (IOException e) {
            throw new OutputException(out, e);
        }
        spec.commandLine().getOut().println(out);
        return ExitStatus.DONE;
    }

    /** A log is evidence: it is never written over. */
    private void refuseInPlace() throws OutputException {
        try {
            if (Files.exists(out) && Files.isSameFile(file, out)) {
                throw new OutputException(out, "is the log itself", "choose another --out");
            }
        } catch (IOException e) {
            throw new OutputException(out, e);
        }
    }

    private void write(Track track, Path beside) throws IOException {
        try (OutputStream stream = Files.newOutputStream(beside)) {
            LogFiles.write(track, format, stream);
        } catch (UnusableInputException e) {
            throw new IllegalStateException("checked before", e);
        }
    }
}
