package pairdown.phase;

import pairdown.time.Span;

/** A phase of one participant, on the attempt's axis. */
public record PhaseSpan(String participant, Phase phase, Span span) {}
