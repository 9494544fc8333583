package pairdown.attempt;

import java.nio.file.Path;
import java.util.Optional;

/**
 * One log of a participant.
 *
 * @param file as the attempt names it, relative to the attempt's folder
 * @param path where it lies
 * @param columns the column map's file, for a CSV log that needs one
 * @param clock the clock pinned by hand, or {@link ClockMark#NONE}
 */
public record LogRef(String file, Path path, Optional<Path> columns, ClockMark clock) {}
