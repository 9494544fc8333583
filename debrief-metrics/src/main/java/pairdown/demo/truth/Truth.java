package pairdown.demo.truth;

import java.time.Instant;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import pairdown.geodesy.LocalFrame;

/**
 * All that was true in a simulated attempt. Times are seconds from {@code start}, positions east,
 * north, up (m) in {@code frame}.
 *
 * @param tail of the lead, where it was simulated
 */
public record Truth(
        Instant start,
        LocalFrame frame,
        TrueAir air,
        List<TrueBody> bodies,
        List<TrueContact> contacts,
        List<TruePowerChange> powerChanges,
        List<TrueEpisode> episodes,
        Optional<TrueTail> tail) {
    public Truth {
        bodies = List.copyOf(bodies);
        contacts = List.copyOf(contacts);
        powerChanges = List.copyOf(powerChanges);
        episodes = List.copyOf(episodes);
    }

    /** Where the lead's tail is not known. */
    public Truth(
            Instant start,
            LocalFrame frame,
            TrueAir air,
            List<TrueBody> bodies,
            List<TrueContact> contacts,
            List<TruePowerChange> powerChanges,
            List<TrueEpisode> episodes) {
        this(start, frame, air, bodies, contacts, powerChanges, episodes, Optional.empty());
    }

    /**
     * @throws NoSuchElementException if no body has this id
     */
    public TrueBody body(String id) {
        return bodies.stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
    }
}
