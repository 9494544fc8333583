package pairdown.clock;

import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.track.Track;

/** A log that was read, and whose it is. */
public record LoadedLog(Participant participant, LogRef ref, Track track) {}
