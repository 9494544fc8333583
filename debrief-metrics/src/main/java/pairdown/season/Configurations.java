package pairdown.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pairdown.track.Channel;
import pairdown.track.Series;

/** What shape a machine was in, in words, as far as its logs tell. */
final class Configurations {
    /** Where no log tells. */
    static final String AS_FLOWN = "as flown";

    /** Power behind flight idle: the last word where it was so. */
    static final String REVERSE = "reverse";

    private Configurations() {}

    /**
     * Flap to ten degrees and power as forward, idle or reverse; what was not logged is not in it.
     *
     * @param reverse_pct lever below this is behind flight idle, above minus this it is forward
     */
    static String at(Map<Channel, Series> systems, double t_s, double reverse_pct) {
        List<String> parts = new ArrayList<>();
        value(systems, Channel.FLAP, t_s)
                .map(f -> String.format(Locale.ROOT, "flap %.0f°", Math.rint(f / 10) * 10))
                .ifPresent(parts::add);
        value(systems, Channel.POWER_LEVER, t_s)
                .map(lever -> power(lever, reverse_pct))
                .ifPresent(parts::add);
        return parts.isEmpty() ? AS_FLOWN : String.join(", ", parts);
    }

    private static String power(double lever_pct, double reverse_pct) {
        if (lever_pct < reverse_pct) {
            return REVERSE;
        }
        return lever_pct <= -reverse_pct ? "idle" : "forward power";
    }

    private static Optional<Double> value(Map<Channel, Series> systems, Channel c, double t_s) {
        return Optional.ofNullable(systems.get(c))
                .map(s -> s.at(t_s))
                .filter(v -> !Double.isNaN(v));
    }
}
