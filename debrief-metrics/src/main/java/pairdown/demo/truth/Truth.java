package pairdown.demo.truth;

import java.time.Instant;
import java.util.List;
import java.util.NoSuchElementException;
import pairdown.geodesy.LocalFrame;

/**
 * All that was true in a simulated attempt. Times are seconds from {@code start}, positions east,
 * north, up (m) in {@code frame}.
 */
public record Truth(
        Instant start,
        LocalFrame frame,
        TrueAir air,
        List<TrueBody> bodies,
        List<TrueContact> contacts,
        List<TruePowerChange> powerChanges,
        List<TrueEpisode> episodes) {
    public Truth {
        bodies = List.copyOf(bodies);
        contacts = List.copyOf(contacts);
        powerChanges = List.copyOf(powerChanges);
        episodes = List.copyOf(episodes);
    }

    /**
     * @throws NoSuchElementException if no body has this id
     */
    public TrueBody body(String id) {
        return bodies.stream().filter(b -> b.id().equals(id)).findFirst().orElseThrow();
    }
}
