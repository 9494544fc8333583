package pairdown.season;

import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import pairdown.attempt.WholeFile;

/**
 * Summaries kept by the content of the files they were made from: those in the attempt's folder and
 * those its {@code attempt.json} names elsewhere. Each attempt has its own file, written beside and
 * moved, so that two people can work on one shared folder and neither reads half a file. The cache
 * lies in the season's folder, {@code .pairdown}, for all who share it; where nothing can be
 * written there, with the user. Results of another build of the program or of other settings do not
 * count.
 */
final class SeasonCache {
    private static final String HERE = ".pairdown";
    private static final JsonMapper MAPPER =
            JsonMapper.builder().addModule(new Jdk8Module()).build();
    private static final ObjectReader READER = MAPPER.readerFor(Kept.class);
    private static final ObjectWriter WRITER = MAPPER.writerFor(Kept.class);

    private final Path season;
    private final List<Path> places;
    private final String made;

    private SeasonCache(Path season, List<Path> places, String made) {
        this.season = season;
        this.places = places;
        this.made = made;
    }

    /**
     * What is kept.
     *
     * @param made by which build and settings
     * @param content what it was made from
     */
    record Kept(String made, FolderContent content, AttemptSummary summary) {}

    /** How to make a summary: first which files it rests on, then the summary. */
    interface Source {
        /** Files it rests on beyond those in the attempt's folder. */
        List<Path> files();

        AttemptSummary summary();
    }

    /**
     * @param user the user's own cache folder
     */
    static SeasonCache of(Path season, SeasonSettings settings, Path user) {
        String name = FileStamp.hash(season.toAbsolutePath().normalize().toString());
        return new SeasonCache(
                season,
                List.of(season.resolve(HERE), user.resolve(name.substring(0, 16))),
                ProgramPrint.ofThisProgram() + " " + settings);
    }

    /**
     * A summary that is up to date.
     *
     * @param madeFrom differs whenever the files it rests on do, or the build, or the settings
     */
    record Current(AttemptSummary summary, String madeFrom) {}

    /** The kept summary if the attempt's files are what they were. */
    Optional<Current> current(Path attempt) {
        Optional<Kept> kept = read(attempt);
        if (kept.isEmpty()) {
            return Optional.empty();
        }
        try {
            FolderContent before = kept.get().content();
            FolderContent now = FolderContent.look(attempt, Optional.of(before), List.of());
            if (!now.holdsSameAs(before)) {
                return Optional.empty();
            }
            if (!before.files().equals(now.files())) {
                write(attempt, new Kept(made, now, kept.get().summary()));
            }
            return Optional.of(new Current(kept.get().summary(), madeFrom(now)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The kept summary if it is current, else the one made now. */
    Current get(Path attempt, Source source) {
        Optional<Current> current = current(attempt);
        if (current.isPresent()) {
            return current.get();
        }
        FolderContent content;
        try {
            content = FolderContent.look(attempt, Optional.empty(), source.files());
        } catch (IOException e) {
            // What can't be looked at can't be kept, nor told from what it was.
            return new Current(source.summary(), UUID.randomUUID().toString());
        }
        AttemptSummary summary = source.summary();
        write(attempt, new Kept(made, content, summary));
        return new Current(summary, madeFrom(content));
    }

    private String madeFrom(FolderContent content) {
        return made + " " + content.contents();
    }

    /** Named by the place within the season, which is the same wherever a share is mounted. */
    private String fileOf(Path attempt) {
        String within = FolderContent.name(season, attempt);
        String last = attempt.getFileName().toString().replaceAll("[^\\p{L}\\p{N}._-]", "-");
        return last + "-" + FileStamp.hash(within).substring(0, 8) + ".json";
    }

    private Optional<Kept> read(Path attempt) {
        for (Path place : places) {
            Optional<Kept> kept = readFile(place.resolve(fileOf(attempt)));
            if (kept.isPresent()) {
                return kept;
            }
        }
        return Optional.empty();
    }

    private Optional<Kept> readFile(Path file) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            Kept kept = READER.readValue(file.toFile());
            return Optional.of(kept).filter(k -> k.made().equals(made));
        } catch (IOException e) {
            // A damaged or foreign file in the cache is as good as none.
            return Optional.empty();
        }
    }

    /** In the first place that takes it. A cache that can't be written costs time, not results. */
    private void write(Path attempt, Kept kept) {
        for (Path place : places) {
            if (writeFile(place.resolve(fileOf(attempt)), kept)) {
                return;
            }
        }
    }

    private static boolean writeFile(Path file, Kept kept) {
        try {
            WholeFile.write(file, beside -> WRITER.writeValue(beside.toFile(), kept));
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
