package pairdown.clock;

/**
 * What is not known of a log's instants, in parts by whom they are shared: an error that two logs
 * share makes them tell what lies between them early or late, but not wrong.
 *
 * @param own_s one standard deviation of the log's own part: against the logs that tell its group
 *     what UTC is
 * @param group the group's number: logs tied by rides are of one group
 * @param group_s one standard deviation of the group's part: how late its reference's receivers are
 *     against other receivers
 * @param common_s one standard deviation of how late all receivers are
 */
public record ClockDoubt(double own_s, int group, double group_s, double common_s) {
    public ClockDoubt {
        if (!(own_s >= 0 && group_s >= 0 && common_s >= 0)) {
            throw new IllegalArgumentException(
                    "sigmas are " + own_s + ", " + group_s + " and " + common_s + ", not >= 0");
        }
    }

    /** Of a log that nothing but its own part makes uncertain. */
    public static ClockDoubt own(double sigma_s) {
        return new ClockDoubt(sigma_s, 0, 0, 0);
    }

    /** The same with an independent part more of its own. */
    public ClockDoubt plusOwn(double sigma_s) {
        return new ClockDoubt(Math.hypot(own_s, sigma_s), group, group_s, common_s);
    }

    /** One standard deviation of an instant against the same instant of another's clock (s). */
    public double against_s(ClockDoubt other) {
        double groups_s = group == other.group ? 0 : Math.hypot(group_s, other.group_s);
        return Math.hypot(groups_s, Math.hypot(own_s, other.own_s));
    }

    /** One standard deviation of an instant against true time (s). */
    public double absolute_s() {
        return Math.hypot(own_s, Math.hypot(group_s, common_s));
    }
}
