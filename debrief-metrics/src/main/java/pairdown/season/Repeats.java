package pairdown.season;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairdown.season.AttemptSummary.FlyerSummary;

/**
 * Finds the attempts that are another's copy: a folder copied to be tried out, or brought by two
 * people under two names, would count twice in every rate. Two attempts are one where they begin at
 * the same millisecond with the same steady flight of every machine and the same flyers as near;
 * gate and target may have been written anew.
 */
final class Repeats {
    private Repeats() {}

    /** What no second flight has. */
    private record Flight(
            String start, List<SteadySegment> segments, List<String> flyers, List<Double> gaps_m) {
        static Optional<Flight> of(AttemptSummary a) {
            boolean says = !a.segments().isEmpty() || !a.flyers().isEmpty();
            return a.usable() && says
                    ? Optional.of(
                            new Flight(
                                    a.start(),
                                    a.segments(),
                                    a.flyers().stream().map(FlyerSummary::flyer).toList(),
                                    a.flyers().stream()
                                            .map(f -> f.leastGap_m().orElse(Double.NaN))
                                            .toList()))
                    : Optional.empty();
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
