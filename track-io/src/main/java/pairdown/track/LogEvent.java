package pairdown.track;

/**
 * Something a log marks at an instant: a pilot's event key, a declared task, a note.
 *
 * @param time_s on the track's own time column
 * @param text as the log has it
 */
public record LogEvent(double time_s, String text) {}
