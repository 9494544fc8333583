package pairdown.format.nmea;

import java.util.EnumMap;
import java.util.Map;
import pairdown.time.IsoTime;
import pairdown.track.Channel;

/** What the sentences of one instant say together. */
final class Epoch {
    long timeOfDay_ns = IsoTime.NONE;
    long line;
    int day = -1;
    int month;
    int year;
    double latitude_deg = Double.NaN;
    double longitude_deg = Double.NaN;
    int decimals = -1;
    boolean fixed;
    boolean refused;
    String refusal = "";
    final Map<Channel, Double> values = new EnumMap<>(Channel.class);

    void clear(long timeOfDay, long lineNumber) {
        timeOfDay_ns = timeOfDay;
        line = lineNumber;
        day = -1;
        latitude_deg = Double.NaN;
        longitude_deg = Double.NaN;
        decimals = -1;
        fixed = false;
        refused = false;
        refusal = "";
        values.clear();
    }

    void put(Channel channel, double value) {
        if (!Double.isNaN(value)) {
            values.put(channel, value);
        }
    }

    void putIfAbsent(Channel channel, double value) {
        if (!Double.isNaN(value)) {
            values.putIfAbsent(channel, value);
        }
    }

    void refuse(String reason) {
        refused = true;
        refusal = reason;
    }

    boolean isEmpty() {
        return timeOfDay_ns == IsoTime.NONE;
    }
}
