package pairdown.season;

/**
 * One of the team's own criteria for the next step, held against the season. Met or not met is
 * evidence, never leave to go on.
 *
 * @param name as the team wrote it in {@code season.json}
 * @param met whether the record meets it
 * @param evidence what in the record says so
 */
public record Criterion(String name, boolean met, String evidence) {}
