package pairdown.demo.truth;

/**
 * One move of the power lever.
 *
 * @param time_s when the lever began to move
 * @param from_pct lever before: 0 idle, −100 full reverse, +100 full forward
 * @param to_pct lever after
 */
public record TruePowerChange(double time_s, double from_pct, double to_pct) {}
