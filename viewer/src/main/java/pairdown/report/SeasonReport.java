package pairdown.report;

import java.nio.file.Path;
import pairdown.season.Season;
import pairdown.words.Figures;
import pairdown.words.Units;
import pairdown.words.Words;

/** The season's page: step-down, repeatability and envelope, self-contained. */
public final class SeasonReport {
    private SeasonReport() {}

    /**
     * The page.
     *
     * @param units what figures are shown in
     * @param words its texts; numbers are in their locale
     * @param links finds attempts' reports
     */
    public static String html(Season season, Units units, Words words, ReportLinks links) {
        SeasonBuilder builder =
                new SeasonBuilder(season, words, new Figures(units, words.locale()), links);
        return PageTemplate.fill("season.ftlh", "season", builder.build(), words);
    }

    /** Where the report of an attempt lies, seen from the season's page. */
    @FunctionalInterface
    public interface ReportLinks {
        /** No links: where it is not known what lies beside the page. */
        ReportLinks NONE = folder -> "";

        /**
         * A relative address; empty where there is no report.
         *
         * @param folder the attempt's, relative to the season's
         */
        String of(String folder);

        /** Reports at the default place below a season's folder, for a page in {@code page}. */
        static ReportLinks below(Path season, Path page) {
            return new FolderLinks(season, page);
        }
    }
}
