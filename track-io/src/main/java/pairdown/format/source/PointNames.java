package pairdown.format.source;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pairdown.track.Channel;

/** Plain names that extensions of XML and JSON formats use for a channel, beside its own. */
public final class PointNames {
    private static final Map<String, Channel> NAMES =
            Map.ofEntries(
                    Map.entry("speed", Channel.GROUND_SPEED),
                    Map.entry("speeds", Channel.GROUND_SPEED),
                    Map.entry("groundspeed", Channel.GROUND_SPEED),
                    Map.entry("course", Channel.TRACK),
                    Map.entry("bearing", Channel.TRACK),
                    Map.entry("track", Channel.TRACK),
                    Map.entry("accuracy", Channel.HORIZONTAL_ACCURACY),
                    Map.entry("horizontalaccuracy", Channel.HORIZONTAL_ACCURACY),
                    Map.entry("hacc", Channel.HORIZONTAL_ACCURACY),
                    Map.entry("verticalaccuracy", Channel.VERTICAL_ACCURACY),
                    Map.entry("altitudeaccuracy", Channel.VERTICAL_ACCURACY),
                    Map.entry("vacc", Channel.VERTICAL_ACCURACY),
                    Map.entry("speedaccuracy", Channel.SPEED_ACCURACY),
                    Map.entry("sacc", Channel.SPEED_ACCURACY),
                    Map.entry("velocitynorth", Channel.VELOCITY_NORTH),
                    Map.entry("velocityeast", Channel.VELOCITY_EAST),
                    Map.entry("velocitydown", Channel.VELOCITY_DOWN),
                    Map.entry("satellites", Channel.SATELLITES),
                    Map.entry("sat", Channel.SATELLITES),
                    Map.entry("geoidheight", Channel.GEOID_SEPARATION),
                    Map.entry("pressurealtitude", Channel.PRESSURE_ALTITUDE));

    private PointNames() {}

    /** What a format says in its own way, and an extension can't say again. */
    private static final Set<Channel> PLACE =
            EnumSet.of(Channel.LATITUDE, Channel.LONGITUDE, Channel.HEIGHT);

    /** The channel of a name, in SI units as these formats have them. */
    public static Optional<Channel> channel(String name) {
        Channel plain = NAMES.get(name);
        if (plain != null) {
            return Optional.of(plain);
        }
        Optional<Channel> own = Channel.ofKey(name);
        return own.isPresent()
                ? own.filter(channel -> !PLACE.contains(channel))
                : Optional.ofNullable(NAMES.get(bare(name)));
    }

    /** Small letters, without what parts words. */
    private static String bare(String name) {
        StringBuilder bare = new StringBuilder(name.length());
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c != '_' && c != '-' && c != ' ') {
                bare.append(c);
            }
        }
        return bare.toString().toLowerCase(Locale.ROOT);
    }
}
