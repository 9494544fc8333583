package pairdown.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pairdown.attempt.SeasonFile;
import pairdown.debrief.ResultFolder;
import pairdown.report.SeasonReport;
import pairdown.report.SeasonReport.ReportLinks;
import pairdown.season.AttemptSummary;
import pairdown.season.Season;
import pairdown.season.SeasonFiles;
import pairdown.season.SeasonFolder;
import pairdown.track.UnusableInputException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** All attempts below a folder: step-down, repeatability, envelope. */
@Command(
        name = "season",
        mixinStandardHelpOptions = true,
        description =
                "Brings all attempts below a folder together: step-down, repeatability, envelope.")
final class SeasonVerb implements Callable<Integer> {
    private static final String PAGE = "season.html";

    /** Narrower than any terminal's line. */
    private static final int LINE = 72;

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FOLDER", description = "the folder above the attempts' folders")
    private Path folder = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "where results go (default: FOLDER/season)")
    private @Nullable Path out;

    @Mixin private UnitsOption units = new UnitsOption();

    @Mixin private LocaleOption locale = new LocaleOption();

    @Override
    public Integer call() throws Exception {
        Path place = Optional.ofNullable(out).orElse(folder.resolve("season"));
        keepCriteria(place);
        Season season = read();
        for (AttemptSummary a : season.attempts()) {
            a.reason().ifPresent(r -> spec.commandLine().getErr().println(Main.oneLine(r)));
        }
        season.notes().forEach(n -> spec.commandLine().getErr().println(Main.oneLine(n)));
        try {
            write(season, ResultFolder.at(place));
        } catch (IOException e) {
            throw new OutputException(place, e);
        }
        spec.commandLine().getOut().println(place.resolve(PAGE));
        return season.attempts().stream().anyMatch(AttemptSummary::usable)
                ? ExitStatus.DONE
                : ExitStatus.INPUT;
    }

    private void write(Season season, ResultFolder results) throws IOException {
        ReportLinks links = ReportLinks.below(folder, results.path());
        List<String> files = Stream.concat(SeasonFiles.NAMES.stream(), Stream.of(PAGE)).toList();
        MadeFrom made = new MadeFrom(results, origin(season, links), files);
        if (made.stillStands()) {
            return;
        }
        SeasonFiles.write(season, results);
        String page = SeasonReport.html(season, units.units(), locale.words(), links);
        results.text(PAGE, writer -> writer.append(page));
        made.note();
    }

    /** All that the results depend on. */
    private String origin(Season season, ReportLinks links) {
        StringJoiner origin = new StringJoiner("\n");
        origin.add(season.madeFrom());
        origin.add(units.units().toString()).add(locale.locale().toLanguageTag());
        season.attempts().forEach(a -> origin.add(links.of(a.folder())));
        return origin.toString();
    }

    /** Attempts are done several at once and quickly: one line of progress, written over. */
    private Season read() throws UnusableInputException {
        if (!Terminal.isTerminal()) {
            return SeasonFolder.read(folder, step -> {});
        }
        PrintWriter err = spec.commandLine().getErr();
        Season season = SeasonFolder.read(folder, step -> over(err, step));
        over(err, "");
        err.print("\r");
        return season;
    }

    private static void over(PrintWriter err, String text) {
        String line = text.length() > LINE ? text.substring(0, LINE) : text;
        err.print("\r" + line + " ".repeat(LINE - line.length()));
        err.flush();
    }

    /**
     * The team's criteria have the results' name: written into their folder, results erase them.
     */
    private void keepCriteria(Path place) throws OutputException {
        if (SeasonFile.isIn(place)) {
            throw new OutputException(
                    place,
                    "its season.json holds the team's criteria and would be overwritten",
                    "choose another place with --out");
        }
    }
}
