package pairdown.debrief;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairdown.height.AlignedLog;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * The channels of a participant's logs that are not its position or velocity, on the attempt's
 * axis.
 */
final class SystemsChannels {
    private static final Set<Channel> MOTION =
            EnumSet.of(
                    Channel.LATITUDE,
                    Channel.LONGITUDE,
                    Channel.HEIGHT,
                    Channel.GEOID_SEPARATION,
                    Channel.VELOCITY_NORTH,
                    Channel.VELOCITY_EAST,
                    Channel.VELOCITY_DOWN,
                    Channel.GROUND_SPEED,
                    Channel.TRACK,
                    Channel.HORIZONTAL_ACCURACY,
                    Channel.VERTICAL_ACCURACY,
                    Channel.SPEED_ACCURACY,
                    Channel.SATELLITES,
                    Channel.FIX_TYPE);

    private SystemsChannels() {}

    /** Each channel from the log that has most of it. */
    static Map<Channel, Series> of(List<AlignedLog> logs) {
        Map<Channel, Series> systems = new EnumMap<>(Channel.class);
        for (AlignedLog log : logs) {
            for (Channel channel : log.track().channels()) {
                if (!MOTION.contains(channel)) {
                    Series series = series(log, channel);
                    Series had = systems.get(channel);
                    if (had == null || series.size() > had.size()) {
                        systems.put(channel, series);
                    }
                }
            }
        }
        return systems;
    }

    private static Series series(AlignedLog log, Channel channel) {
        int n = 0;
        for (int i = 0; i < log.size(); i++) {
            n += Double.isNaN(log.value(channel, i)) ? 0 : 1;
        }
        double[] t_s = new double[n];
        float[] value = new float[n];
        int k = 0;
        for (int i = 0; i < log.size(); i++) {
            double v = log.value(channel, i);
            if (!Double.isNaN(v)) {
                t_s[k] = log.time_s(i);
                value[k++] = (float) v;
            }
        }
        int[] measured = HeldValues.measured(t_s, value);
        double[] time_s = new double[measured.length];
        float[] kept = new float[measured.length];
        for (int i = 0; i < measured.length; i++) {
            time_s[i] = t_s[measured[i]];
            kept[i] = value[measured[i]];
        }
        return Series.of(time_s, kept, channel.isCircular());
    }
}
