package pairdown.attempt;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pairdown.format.LogFiles;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * Guesses who took part from the logs alone: each log is one participant named by its file's stem,
 * except that a log without positions (systems) goes to the participant whose stem its own begins
 * with, and that copies of one file, and two forms of one log, are one. Every guess is said in the
 * attempt's notes.
 */
final class AttemptGuess {
    private record Candidate(Path path, String stem, Track track) {
        boolean hasPositions() {
            return track.hasPositions();
        }
    }

    private final Path folder;
    private final List<String> notes = new ArrayList<>();
    private final List<Candidate> logs = new ArrayList<>();

    private AttemptGuess(Path folder) {
        this.folder = folder;
    }

    static AttemptGuess of(Path folder) throws UnusableInputException {
        return of(folder, AttemptFolder.candidates(folder));
    }

    static AttemptGuess of(Path folder, List<Path> files) throws UnusableInputException {
        AttemptGuess guess = new AttemptGuess(folder);
        guess.readLogs(files);
        return guess;
    }

    private void readLogs(List<Path> files) throws UnusableInputException {
        for (Path file : files) {
            try {
                FileCopies.refuse(file, files);
                logs.add(new Candidate(file, stem(file), LogFiles.read(file, Optional.empty())));
            } catch (UnusableInputException e) {
                notes.add("not used: " + e.messageFor(folder, ""));
            }
        }
        dropOtherForms();
        if (logs.stream().noneMatch(Candidate::hasPositions)) {
            throw new UnusableInputException(
                    files.isEmpty()
                            ? "no files"
                            : "no log with positions among "
                                    + files.size()
                                    + " files"
                                    + firstNote(),
                    folder.toString(),
                    "put the attempt's logs here, or see each with: inspect FILE");
        }
    }

    /** Of two logs that hold one flight, the one with more in it counts. */
    private void dropOtherForms() {
        List<Candidate> richest = new ArrayList<>(logs);
        richest.sort(
                Comparator.comparingInt((Candidate c) -> -c.track().channels().size())
                        .thenComparingInt(c -> -c.track().fixes()));
        List<Candidate> kept = new ArrayList<>();
        for (Candidate log : richest) {
            Optional<Candidate> other =
                    kept.stream().filter(k -> SameFlight.of(k.track(), log.track())).findFirst();
            if (other.isEmpty()) {
                kept.add(log);
                continue;
            }
            logs.remove(log);
            String counts = other.get().path().getFileName().toString();
            notes.add(
                    "not used: "
                            + log.path().getFileName()
                            + ": holds the same flight as "
                            + counts
                            + "; move it away");
        }
    }

    /** Why the first file is no log, in brackets, if one is none. */
    private String firstNote() {
        return notes.isEmpty() ? "" : " (" + notes.get(0) + ")";
    }

    Attempt attempt() throws UnusableInputException {
        List<Candidate> moving = logs.stream().filter(Candidate::hasPositions).toList();
        List<MotionTraits> traits =
                moving.stream().map(c -> MotionTraits.of(c.stem(), c.track())).toList();
        int lead = guessLead(moving, traits);
        List<Participant> participants = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < moving.size(); i++) {
            Role role = i == lead ? Role.LEAD : otherRole(traits.get(i));
            participants.add(
                    participant(moving.get(i), moving, role, uniqueId(moving.get(i), ids)));
        }
        notes.add(
                0,
                "no attempt.json: participants are named by their files, and roles are guessed: "
                        + roles(participants));
        return new Attempt(
                Optional.ofNullable(folder.toAbsolutePath().normalize().getFileName())
                        .map(Path::toString)
                        .orElse("attempt"),
                Optional.empty(),
                folder,
                participants,
                Optional.empty(),
                MatchedSettings.DEFAULT,
                OptionalDouble.empty(),
                Limits.NONE,
                AirSettings.NONE,
                SeasonFile.settingsAbove(folder),
                notes);
    }

    private static String roles(List<Participant> participants) {
        List<String> said = new ArrayList<>();
        for (Participant p : participants) {
            said.add(p.id() + " " + p.role().key());
        }
        return String.join(", ", said);
    }

    /**
     * The lead: the log named so, else one with power or control channels, else the aircraft that
     * descends steeply without opening a canopy, else the first.
     */
    private int guessLead(List<Candidate> moving, List<MotionTraits> traits) {
        Comparator<Integer> order =
                Comparator.comparingInt((Integer i) -> leadScore(moving.get(i), traits.get(i)));
        int best = 0;
        for (int i = 1; i < moving.size(); i++) {
            if (order.compare(i, best) > 0) {
                best = i;
            }
        }
        return best;
    }

    private int leadScore(Candidate c, MotionTraits t) {
        int score = 0;
        if (t.namedLike("lead")) {
            score += 100;
        }
        if (t.namedLike("ship") || t.namedLike("jump")) {
            score -= 50;
        }
        if (t.hasSystems() || logs.stream().anyMatch(l -> !l.hasPositions() && belongsTo(l, c))) {
            score += 40;
        }
        if (t.opensCanopy()) {
            score -= 20;
        } else if (t.descendsSteeply()) {
            score += 20;
        }
        return score;
    }

    private static Role otherRole(MotionTraits t) {
        if (t.namedLike("camera")) {
            return Role.CAMERA;
        }
        boolean named = t.namedLike("ship") || t.namedLike("jump");
        return named || (!t.opensCanopy() && !t.descendsSteeply() && t.fliesLikeAircraft())
                ? Role.JUMPSHIP
                : Role.FLYER;
    }

    private Participant participant(Candidate c, List<Candidate> moving, Role role, String id) {
        List<LogRef> refs = new ArrayList<>();
        refs.add(ref(c));
        for (Candidate systems : logs) {
            boolean mine =
                    !systems.hasPositions()
                            && (belongsTo(systems, c)
                                    || (role == Role.LEAD
                                            && moving.stream()
                                                    .noneMatch(m -> belongsTo(systems, m))));
            if (mine) {
                refs.add(ref(systems));
                notes.add(
                        systems.path().getFileName()
                                + " has no positions; taken as a systems log of "
                                + id);
            }
        }
        return new Participant(
                id,
                role,
                refs,
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    private static boolean belongsTo(Candidate systems, Candidate owner) {
        return systems.stem()
                .toLowerCase(Locale.ROOT)
                .startsWith(owner.stem().toLowerCase(Locale.ROOT));
    }

    private static LogRef ref(Candidate c) {
        return new LogRef(
                c.path().getFileName().toString(), c.path(), Optional.empty(), ClockMark.NONE);
    }

    private static String uniqueId(Candidate c, Set<String> ids) {
        String id = c.stem().replaceAll("[^\\p{L}\\p{N}._ -]", "-");
        String unique = id;
        for (int n = 2; !ids.add(unique); n++) {
            unique = id + "-" + n;
        }
        return unique;
    }

    private static String stem(Path file) {
        String name = file.getFileName().toString();
        String bare = name.replaceFirst("(?i)\\.(gz|zip)$", "");
        int dot = bare.lastIndexOf('.');
        return dot > 0 ? bare.substring(0, dot) : bare;
    }
}
