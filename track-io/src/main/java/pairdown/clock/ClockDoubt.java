package pairdown.clock;

/**
 * What is not known of a log's instants, by whom it is held against: an error that two logs share
 * makes them tell what lies between them early or late, but not wrong.
 *
 * @param own_s one standard deviation against the logs that tell its group what UTC is
 * @param group the group's number: logs tied by rides are of one group
 * @param outside_s one standard deviation against what all receivers tell in the mean: what a log
 *     of another group does not share
 * @param common_s one standard deviation of how late all receivers are
 */
public record ClockDoubt(double own_s, int group, double outside_s, double common_s) {
    public ClockDoubt {
        if (!(own_s >= 0 && outside_s >= 0 && common_s >= 0)) {
            throw new IllegalArgumentException(
                    "sigmas are " + own_s + ", " + outside_s + " and " + common_s + ", not >= 0");
        }
    }

    /** Of a log that nothing but its own part makes uncertain. */
    public static ClockDoubt own(double sigma_s) {
        return new ClockDoubt(sigma_s, 0, sigma_s, 0);
    }

    /** The same with an independent part more of its own. */
    public ClockDoubt plusOwn(double sigma_s) {
        return new ClockDoubt(
                Math.hypot(own_s, sigma_s), group, Math.hypot(outside_s, sigma_s), common_s);
    }

    /** The same with an independent part more against other groups. */
    ClockDoubt plusOutside(double sigma_s) {
        return new ClockDoubt(own_s, group, Math.hypot(outside_s, sigma_s), common_s);
    }

    /** One standard deviation of an instant against the same instant of another's clock (s). */
    public double against_s(ClockDoubt other) {
        return group == other.group
                ? Math.hypot(own_s, other.own_s)
                : Math.hypot(outside_s, other.outside_s);
    }

    /** One standard deviation of an instant against true time (s). */
    public double absolute_s() {
        return Math.hypot(outside_s, common_s);
    }
}
