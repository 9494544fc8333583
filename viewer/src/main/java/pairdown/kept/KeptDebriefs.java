package pairdown.kept;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import pairdown.attempt.Attempt;
import pairdown.attempt.WholeFile;
import pairdown.debrief.Debrief;
import pairdown.season.FileStamp;
import pairdown.season.FolderContent;
import pairdown.season.ProgramPrint;
import pairdown.season.SeasonFolder;

/**
 * Debriefs of the attempts opened last, a file each in the user's own cache folder. A kept one
 * counts only while all it rests on holds what it held and the program is the same build. Whatever
 * goes wrong with a kept file costs time, not results.
 */
public final class KeptDebriefs {
    /** Some days' loads; about 10 MB each. */
    private static final int MOST = 24;

    private static final String ENDING = ".debrief";

    private final Path folder;
    private final Supplier<String> program;
    private final int most;

    /**
     * @param program the print of the program's code
     * @param most how many are kept
     */
    KeptDebriefs(Path folder, Supplier<String> program, int most) {
        this.folder = folder;
        this.program = program;
        this.most = most;
    }

    public static KeptDebriefs ofUser() {
        return in(SeasonFolder.userCache().resolve("debriefs"));
    }

    public static KeptDebriefs in(Path folder) {
        return new KeptDebriefs(folder, ProgramPrint::ofThisProgram, MOST);
    }

    /** The kept debrief of an attempt's folder, if it still counts. */
    public Optional<Debrief> current(Path attempt) {
        Path file = fileOf(attempt);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            DebriefBytes bytes = DebriefBytes.read(file);
            FolderContent then = bytes.content();
            FolderContent now = FolderContent.look(attempt, Optional.of(then), List.of());
            if (!bytes.program().equals(program.get()) || !now.holdsSameAs(then)) {
                return Optional.empty();
            }
            Debrief debrief = bytes.debrief();
            Files.setLastModifiedTime(file, FileTime.from(Clock.systemUTC().instant()));
            return Optional.of(debrief);
        } catch (IOException e) {
            // A damaged or foreign file is as good as none.
            return Optional.empty();
        }
    }

    /** What an attempt rests on: to be looked at before it is debriefed. */
    public Optional<FolderContent> look(Attempt attempt) {
        try {
            return Optional.of(
                    FolderContent.look(
                            attempt.folder(), Optional.empty(), FolderContent.named(attempt)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /**
     * Keeps a debrief, the least recently used make room; whether it could be kept.
     *
     * @param content what it was made from
     */
    public boolean keep(FolderContent content, Debrief debrief) {
        Path file = fileOf(debrief.attempt().folder());
        try {
            WholeFile.write(file, to -> DebriefBytes.write(to, program.get(), content, debrief));
            forgetOldest();
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** A debrief bears its folder as it was named: each naming has its own file. */
    private Path fileOf(Path attempt) {
        String names = attempt.toAbsolutePath().normalize() + " " + attempt;
        return folder.resolve(FileStamp.hash(names).substring(0, 24) + ENDING);
    }

    private void forgetOldest() throws IOException {
        Map<FileTime, Path> byTime = new TreeMap<>(Comparator.reverseOrder());
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ENDING)).toList()) {
                byTime.put(Files.getLastModifiedTime(file), file);
            }
        }
        for (Path file : byTime.values().stream().skip(most).toList()) {
            Files.deleteIfExists(file);
        }
    }
}
