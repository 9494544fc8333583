package pairdown.attempt;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pairdown.track.UnusableInputException;

/** Opens an attempt: by its {@code attempt.json}, or, without one, by guessing from the logs. */
public final class AttemptFolder {
    private AttemptFolder() {}

    /**
     * The attempt in a folder (or whose {@code attempt.json} is given).
     *
     * @throws UnusableInputException if there is no such folder, its {@code attempt.json} makes no
     *     sense, or it holds no usable log
     */
    public static Attempt open(Path given) throws UnusableInputException {
        Path folder = folderOf(given);
        return hasManifest(folder) ? AttemptFile.read(folder) : AttemptGuess.of(folder).attempt();
    }

    /** The attempt as the logs alone suggest it, an {@code attempt.json} left aside. */
    public static Attempt guess(Path given) throws UnusableInputException {
        return AttemptGuess.of(folderOf(given)).attempt();
    }

    /**
     * The attempt that loose files suggest, whatever else lies beside them.
     *
     * @param files at least one; the attempt's folder is the first one's
     * @throws UnusableInputException if none of them is a usable log
     */
    public static Attempt ofFiles(List<Path> files) throws UnusableInputException {
        return AttemptGuess.of(files.get(0).toAbsolutePath().resolveSibling(""), files).attempt();
    }

    public static boolean hasManifest(Path folder) {
        return Files.isRegularFile(folder.resolve(AttemptFile.NAME));
    }

    /** Whether a file is the one that says who took part. */
    public static boolean isManifest(Path file) {
        return Files.isRegularFile(file) && file.endsWith(AttemptFile.NAME);
    }

    private static Path folderOf(Path given) throws UnusableInputException {
        if (Files.isDirectory(given)) {
            return given;
        }
        Path parent = given.toAbsolutePath().getParent();
        if (isManifest(given) && parent != null) {
            return parent;
        }
        throw new UnusableInputException(
                Files.exists(given) ? "not a folder" : "no such folder",
                given.toString(),
                "name the folder that holds the attempt's logs");
    }

    /** The files directly in a folder that might be logs, by name. */
    static List<Path> candidates(Path folder) throws UnusableInputException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> entries = Files.list(folder)) {
            entries.filter(Files::isRegularFile)
                    .filter(AttemptFolder::mayBeLog)
                    .sorted()
                    .forEach(files::add);
        } catch (IOException e) {
            throw new UnusableInputException(
                    "can't be listed (" + e + ")", folder.toString(), "check its permissions", e);
        }
        return files;
    }

    private static boolean mayBeLog(Path file) {
        String name = file.getFileName().toString();
        boolean ours =
                name.equals(AttemptFile.NAME)
                        || name.equals(SeasonFile.NAME)
                        || name.equals("marks.json")
                        || name.endsWith(".columns.json");
        return !ours && !name.startsWith(".");
    }
}
