package pairdown.attempt;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pairdown.track.UnusableInputException;

/** Files of a folder that hold the same bytes: a copy made by hand would fly as a second person. */
final class FileCopies {
    /** The name least like a copy's, which has something added to the first one's. */
    private static final Comparator<Path> FIRST =
            Comparator.comparingInt((Path p) -> p.getFileName().toString().length())
                    .thenComparing(p -> p.getFileName().toString());

    private FileCopies() {}

    /** Complains of a file that is a copy of another one of {@code files}. */
    static void refuse(Path file, List<Path> files) throws UnusableInputException {
        Optional<Path> original = original(file, files);
        if (original.isPresent()) {
            throw new UnusableInputException(
                    "is a copy of " + original.get().getFileName(),
                    file.getFileName().toString(),
                    "move it away");
        }
    }

    private static Optional<Path> original(Path file, List<Path> files)
            throws UnusableInputException {
        try {
            for (Path other : files.stream().sorted(FIRST).toList()) {
                if (FIRST.compare(other, file) >= 0) {
                    return Optional.empty();
                }
                if (Files.size(other) > 0
                        && Files.size(other) == Files.size(file)
                        && Files.mismatch(other, file) < 0) {
                    return Optional.of(other);
                }
            }
            return Optional.empty();
        } catch (IOException e) {
            throw new UnusableInputException(
                    "can't be read (" + e + ")", file.toString(), "check its permissions", e);
        }
    }
}
