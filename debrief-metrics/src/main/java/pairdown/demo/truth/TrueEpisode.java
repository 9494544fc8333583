package pairdown.demo.truth;

import java.util.Optional;

/**
 * A stretch in which the tail had lost more of its air than the dive's own level.
 *
 * @param start_s when the tail's effectiveness fell below 0.6 of the dive's level
 * @param end_s when it was back above 0.75 of it
 * @param precededBy the move toward reverse behind it, if there was one
 * @param endedAfter the forward move that ended it, if there was one
 */
public record TrueEpisode(
        double start_s,
        double end_s,
        Optional<TruePowerChange> precededBy,
        Optional<TruePowerChange> endedAfter) {}
