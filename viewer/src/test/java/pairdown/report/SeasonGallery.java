package pairdown.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import pairdown.words.Units;
import pairdown.words.Words;

/** Writes the page of a made-up season, to be looked at: {@code SeasonGallery FILE}. */
final class SeasonGallery {
    private SeasonGallery() {}

    public static void main(String[] args) throws IOException {
        Files.writeString(
                Path.of(args[0]),
                SeasonReport.html(
                        SyntheticSeason.season(),
                        Units.MILES,
                        Words.of(Locale.ENGLISH),
                        folder ->
                                folder.startsWith("flights")
                                        ? folder + "/debrief/report.html"
                                        : ""));
    }
}
