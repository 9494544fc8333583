package pairdown.track;

/**
 * A record of a log that was not used.
 *
 * @param line where in the file, counted from 1; 0 where the format has no lines
 * @param reason what was wrong with it, in words, with the offending value
 */
public record Skipped(long line, String reason) {}
