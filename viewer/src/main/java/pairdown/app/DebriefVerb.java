package pairdown.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.DebriefFiles;
import pairdown.debrief.Debriefer;
import pairdown.debrief.LogQuality;
import pairdown.debrief.ResultFolder;
import pairdown.report.Pictures;
import pairdown.report.Report;
import pairdown.scene.Terrain;
import pairdown.words.Figures;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Debriefs an attempt: {@code debrief.json}, the series and the report. */
@Command(
        name = "debrief",
        mixinStandardHelpOptions = true,
        description = "Debriefs the attempt in a folder of logs: report, debrief.json and series.")
final class DebriefVerb implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "ATTEMPT", description = "the attempt's folder")
    private Path attempt = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "where results go (default: ATTEMPT/debrief)")
    private @Nullable Path out;

    @Option(names = "--no-pictures", description = "leave pictures of the replay out of the report")
    private boolean pictureless;

    @Mixin private UnitsOption units = new UnitsOption();

    @Override
    public Integer call() throws Exception {
        Attempt opened = AttemptFolder.open(attempt);
        Debrief debrief = Debriefer.debrief(opened, Terminal.progress(spec));
        sayUnusable(debrief);
        Path place = Optional.ofNullable(out).orElse(opened.folder().resolve("debrief"));
        try {
            ResultFolder folder = ResultFolder.at(place);
            DebriefFiles.write(debrief, folder);
            String page = page(debrief);
            folder.text("report.html", out -> out.append(page));
        } catch (IOException e) {
            throw new OutputException(place, e);
        }
        spec.commandLine().getOut().println(place.resolve("report.html"));
        return ExitStatus.DONE;
    }

    private String page(Debrief debrief) throws IOException {
        Locale locale = Locale.getDefault();
        if (pictureless) {
            return Report.html(debrief, units.units(), locale, Pictures.NONE);
        }
        Terrain terrain = Terrain.of(debrief.attempt().folder(), debrief);
        terrain.complaints().forEach(c -> spec.commandLine().getErr().println(Main.oneLine(c)));
        Figures figures = new Figures(units.units(), locale);
        try (ReportPictures drawn = new ReportPictures(debrief, terrain.relief(), figures)) {
            return Report.html(debrief, units.units(), locale, drawn);
        }
    }

    private void sayUnusable(Debrief debrief) {
        for (LogQuality log : debrief.quality()) {
            if (log.format().isEmpty()) {
                log.warnings().forEach(w -> spec.commandLine().getErr().println(Main.oneLine(w)));
            }
        }
    }
}
