package pairdown.demo.receiver;

import pairdown.track.Track;

/** A log as it was made, and what was done to it. */
public record Recorded(Track track, InjectedFaults faults) {}
