package pairdown.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.season.AttemptSummary.FlyerSummary;

/**
 * Finds the attempts that are another's copy: a folder copied to be tried out, or brought by two
 * people under two names, would count twice in every rate. Two attempts are one where they begin at
 * the same millisecond with the same steady flight of every machine and the same flyers as near and
 * matched for as long; gate and target may have been written anew.
 */
final class Repeats {
    private Repeats() {}

    /** What no second flight has. */
    private record Flight(String start, List<SteadySegment> segments, List<Joined> flyers) {
        static Optional<Flight> of(AttemptSummary a) {
            // Where no gap and no steady flight is known, two flights may differ and not show it.
            boolean says =
                    !a.segments().isEmpty()
                            || a.flyers().stream().anyMatch(f -> f.leastGap_m().isPresent());
            return a.usable() && says
                    ? Optional.of(
                            new Flight(
                                    a.start(),
                                    a.segments(),
                                    a.flyers().stream().map(Joined::of).toList()))
                    : Optional.empty();
        }
    }

    /** How a flyer joined, whatever gate was written down. */
    private record Joined(
            String flyer,
            OptionalDouble leastGap_m,
            OptionalDouble medianGap_m,
            OptionalDouble matchedLongest_s) {
        static Joined of(FlyerSummary f) {
            return new Joined(f.flyer(), f.leastGap_m(), f.medianGap_m(), f.matchedLongest_s());
        }
    }

    /** The same attempts, every copy set aside: the first in order counts. */
    static List<AttemptSummary> setAside(List<AttemptSummary> ordered) {
        Map<Flight, AttemptSummary> first = new LinkedHashMap<>();
        List<AttemptSummary> counted = new ArrayList<>();
        for (AttemptSummary a : ordered) {
            Optional<AttemptSummary> original =
                    Flight.of(a).flatMap(f -> Optional.ofNullable(first.putIfAbsent(f, a)));
            counted.add(original.map(o -> copy(a, o)).orElse(a));
        }
        return counted;
    }

    private static AttemptSummary copy(AttemptSummary a, AttemptSummary original) {
        return AttemptSummary.unusable(
                a.attempt(),
                a.folder(),
                a.folder()
                        + ": holds the same flights as "
                        + original.folder()
                        + ", which counts; take one of the two away");
    }
}
