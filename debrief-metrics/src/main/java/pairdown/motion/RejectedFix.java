package pairdown.motion;

/**
 * A fix the smoother refused.
 *
 * @param row of the log
 * @param time_s on the attempt's axis
 * @param reason in words
 */
public record RejectedFix(int row, double time_s, String reason) {}
