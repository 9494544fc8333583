package pairdown.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import pairdown.attempt.AttemptFolder;
import pairdown.track.UnusableInputException;

/**
 * Finds the attempts below a season's folder. A folder is an attempt if it has an {@code
 * attempt.json}, if it holds logs and no attempt lies below it, or if it is the last one down,
 * whatever it holds: a folder that turns out to be no attempt is reported, not passed over.
 * Results, truth of simulations and hidden folders are passed over.
 */
final class AttemptFinder {
    private static final Set<String> NOT_ATTEMPTS = Set.of("debrief", "truth", "season");
    private static final Set<String> LOG_ENDINGS =
            Set.of("csv", "gpx", "igc", "nmea", "kml", "geojson");
    private static final int DEEPEST = 12;

    private AttemptFinder() {}

    /**
     * The attempts' folders, by name.
     *
     * @throws UnusableInputException if a folder can't be listed or there is no attempt
     */
    static List<Path> below(Path season) throws UnusableInputException {
        List<Path> attempts = find(season, 0);
        if (attempts.isEmpty()) {
            throw new UnusableInputException(
                    "no attempt below it",
                    season.toString(),
                    "put each attempt's logs in a folder here");
        }
        return attempts;
    }

    private static List<Path> find(Path here, int depth) throws UnusableInputException {
        if (AttemptFolder.hasManifest(here)) {
            return List.of(here);
        }
        List<Path> folders = depth < DEEPEST ? foldersIn(here) : List.of();
        List<Path> below = new ArrayList<>();
        for (Path next : folders) {
            below.addAll(find(next, depth + 1));
        }
        if (holdsLogs(here) && below.stream().noneMatch(AttemptFinder::looksLikeAttempt)) {
            return List.of(here);
        }
        return below.isEmpty() && depth > 0 ? List.of(here) : below;
    }

    private static boolean looksLikeAttempt(Path folder) {
        return AttemptFolder.hasManifest(folder) || holdsLogs(folder);
    }

    private static boolean holdsLogs(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.anyMatch(p -> LOG_ENDINGS.contains(ending(p)) && Files.isRegularFile(p));
        } catch (IOException e) {
            return false;
        }
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    private static List<Path> foldersIn(Path here) throws UnusableInputException {
        try (Stream<Path> entries = Files.list(here)) {
            return entries.filter(p -> Files.isDirectory(p) && !Files.isSymbolicLink(p))
                    .filter(p -> !p.getFileName().toString().startsWith("."))
                    .filter(p -> !NOT_ATTEMPTS.contains(p.getFileName().toString()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UnusableInputException(
                    "can't be listed (" + e + ")", here.toString(), "check its permissions", e);
        }
    }
}
