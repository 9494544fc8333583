package pairdown.debrief;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import pairdown.attempt.Attempt;
import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.clock.LoadedLog;
import pairdown.format.LogFiles;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/**
 * The logs of an attempt, read; each one that can't be is kept as a quality entry with its
 * complaint, so that one bad log never stops the rest.
 */
record LogLoader(List<LoadedLog> loaded, List<LogQuality> unusable) {
    private record Outcome(Optional<LoadedLog> log, Optional<LogQuality> complaint) {}

    static LogLoader read(Attempt attempt) {
        List<Outcome> outcomes =
                attempt.participants().stream()
                        .flatMap(p -> p.logs().stream().map(ref -> new Source(p, ref)))
                        .toList()
                        .parallelStream()
                        .map(source -> readOne(attempt.folder(), source))
                        .toList();
        List<LoadedLog> loaded = new ArrayList<>();
        outcomes.forEach(o -> o.log().ifPresent(loaded::add));
        Stream<LogQuality> bad = outcomes.stream().flatMap(o -> o.complaint().stream());
        return new LogLoader(FlightChoice.choose(loaded), bad.toList());
    }

    /** Logs read elsewhere. */
    static LogLoader of(List<LoadedLog> logs) {
        return new LogLoader(FlightChoice.choose(logs), List.of());
    }

    private record Source(Participant participant, LogRef ref) {}

    private static Outcome readOne(Path folder, Source source) {
        try {
            Track track = LogFiles.read(source.ref().path(), source.ref().columns());
            return new Outcome(
                    Optional.of(new LoadedLog(source.participant(), source.ref(), track)),
                    Optional.empty());
        } catch (UnusableInputException e) {
            return new Outcome(
                    Optional.empty(), Optional.of(notRead(source, e.messageFor(folder, ""))));
        }
    }

    private static LogQuality notRead(Source source, String why) {
        return new LogQuality(
                source.participant().id(),
                source.ref().file(),
                Optional.empty(),
                0,
                OptionalDouble.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                0,
                0,
                List.of(why));
    }
}
