package pairdown.app;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptFolder;
import pairdown.attempt.Mark;
import pairdown.attempt.MarksFile;
import pairdown.debrief.Debrief;
import pairdown.debrief.DebriefFiles;
import pairdown.debrief.Debriefer;
import pairdown.debrief.LogQuality;
import pairdown.debrief.ResultFolder;
import pairdown.export.StrippedAttempt;
import pairdown.export.Tracks;
import pairdown.export.WholeAttempt;
import pairdown.report.Pictures;
import pairdown.report.Report;
import pairdown.report.ReportPdf;
import pairdown.scene.Terrain;
import pairdown.words.Figures;
import pairdown.words.Words;
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

    @Option(names = "--no-pdf", description = "no report.pdf: done a quarter sooner")
    private boolean pdfless;

    @Option(
            names = "--tracks",
            description = "also tracks.kml, .gpx and .geojson, and one of each per participant")
    private boolean tracks;

    @Option(
            names = "--share",
            paramLabel = "FILE.zip",
            description = "also an archive of the whole attempt: logs and results")
    private @Nullable Path share;

    @Option(
            names = "--share-stripped",
            paramLabel = "FILE.zip",
            description =
                    "also an archive without place, date, names, notes and logs: positions as seen"
                            + " from the lead")
    private @Nullable Path shareStripped;

    @Mixin private UnitsOption units = new UnitsOption();

    @Mixin private LocaleOption locale = new LocaleOption();

    @Override
    public Integer call() throws Exception {
        Words words = locale.words();
        Attempt opened = AttemptFolder.open(attempt);
        Debrief debrief = Debriefer.debrief(opened, Terminal.progress(spec));
        sayUnusable(debrief);
        List<Mark> marks = MarksFile.read(opened.folder());
        Path place = Optional.ofNullable(out).orElse(opened.folder().resolve("debrief"));
        try {
            ResultFolder folder = ResultFolder.at(place);
            CompletableFuture<Void> series = beside(() -> DebriefFiles.write(debrief, folder));
            String page = page(debrief, marks, words);
            finish(series);
            folder.text("report.html", out -> out.append(page));
            if (!pdfless) {
                folder.file("report.pdf", beside -> pdf(page, beside));
            }
            if (tracks) {
                Tracks.write(debrief, folder);
            }
        } catch (IOException e) {
            throw new OutputException(place, e);
        }
        share(debrief, place);
        spec.commandLine().getOut().println(place.resolve("report.html"));
        return ExitStatus.DONE;
    }

    /** What may fail to write. */
    @FunctionalInterface
    private interface Writing {
        void run() throws IOException;
    }

    /** Writes while the report is being made. */
    private static CompletableFuture<Void> beside(Writing writing) {
        return CompletableFuture.runAsync(
                () -> {
                    try {
                        writing.run();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
    }

    private static void finish(CompletableFuture<Void> writing) throws IOException {
        try {
            writing.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof UncheckedIOException failed) {
                throw failed.getCause();
            }
            throw e;
        }
    }

    private void share(Debrief debrief, Path results) throws Exception {
        Path whole = share;
        Path stripped = shareStripped;
        if (whole != null) {
            try {
                WholeAttempt.write(debrief.attempt(), results, whole);
            } catch (IOException e) {
                throw new OutputException(whole, e);
            }
        }
        if (stripped != null) {
            try {
                StrippedAttempt.write(debrief, stripped);
            } catch (IOException e) {
                throw new OutputException(stripped, e);
            }
        }
    }

    private static void pdf(String page, Path to) throws IOException {
        try (OutputStream out = Files.newOutputStream(to)) {
            ReportPdf.write(page, out);
        }
    }

    private String page(Debrief debrief, List<Mark> marks, Words words) throws IOException {
        if (pictureless) {
            return Report.html(debrief, marks, units.units(), words, Pictures.NONE);
        }
        Terrain terrain = Terrain.of(debrief.attempt().folder(), debrief);
        terrain.complaints().forEach(c -> spec.commandLine().getErr().println(Main.oneLine(c)));
        Figures figures = new Figures(units.units(), words.locale());
        try (ReportPictures drawn = new ReportPictures(debrief, terrain.relief(), figures)) {
            return Report.html(debrief, marks, units.units(), words, drawn);
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
