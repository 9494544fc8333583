package pairdown.attempt;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.track.UnusableInputException;

/**
 * The {@code season.json} that a team writes into the folder its attempts lie below. Results have
 * the same name, and say their format.
 */
public final class SeasonFile {
    public static final String NAME = "season.json";

    /** The group of settings that concerns all attempts together, and none alone. */
    public static final String GROUP = "season";

    private SeasonFile() {}

    /**
     * The fields of the team's file in a folder; empty where there is none.
     *
     * @param notes where fields read over are said
     * @throws UnusableInputException if the file makes no sense
     */
    public static Optional<JsonFields> read(Path folder, List<String> notes)
            throws UnusableInputException {
        Path file = folder.resolve(NAME);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        JsonFields root = JsonFields.root(JsonFile.read(file), notes);
        return root.names().contains("format") ? Optional.empty() : Optional.of(root);
    }

    /** Whether a folder has a team's file, or one that can't be told from it. */
    public static boolean isIn(Path folder) {
        try {
            return read(folder, new ArrayList<>()).isPresent();
        } catch (UnusableInputException e) {
            // Whatever it is, it is not ours to overwrite.
            return true;
        }
    }

    /**
     * The numbers that a team's file wants otherwise than usual.
     *
     * @throws UnusableInputException if one is no number
     */
    public static ChosenSettings settings(JsonFields team) throws UnusableInputException {
        Optional<JsonFields> settings = team.object("settings");
        return settings.isPresent() ? ChosenSettings.read(settings.get()) : ChosenSettings.NONE;
    }

    /**
     * The nearest team's file above an attempt, where it has settings: what the attempt is made
     * from rests on it.
     *
     * @throws UnusableInputException if the file makes no sense
     */
    public static Optional<Path> above(Path attempt) throws UnusableInputException {
        Path folder = attempt.toAbsolutePath().normalize().getParent();
        while (folder != null) {
            Optional<JsonFields> team = read(folder, new ArrayList<>());
            if (team.isPresent()) {
                return team.get().names().contains("settings")
                        ? Optional.of(folder.resolve(NAME))
                        : Optional.empty();
            }
            folder = folder.getParent();
        }
        return Optional.empty();
    }

    /** What that file says for each attempt. */
    static ChosenSettings settingsAbove(Path attempt) throws UnusableInputException {
        Optional<Path> file = above(attempt);
        if (file.isEmpty()) {
            return ChosenSettings.NONE;
        }
        JsonFields team = JsonFields.root(JsonFile.read(file.get()), new ArrayList<>());
        return settings(team).only(name -> !name.startsWith(GROUP + "."));
    }
}
