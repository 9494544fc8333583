package pairdown.demo.physics;

import java.util.EnumMap;
import java.util.Map;
import pairdown.atmosphere.Atmosphere;
import pairdown.track.Channel;

/** Channels written down a row after the other. */
final class Columns {
    private final Map<Channel, Column> columns = new EnumMap<>(Channel.class);

    void put(Channel channel, double value) {
        columns.computeIfAbsent(channel, c -> new Column()).add(value);
    }

    /** The air data of a row: airspeeds, pressure and its altitude, temperature. */
    void putAir(Air air, double height_m, double true_mps) {
        double pressure_hPa = air.pressure_hPa(height_m);
        put(Channel.TRUE_AIRSPEED, true_mps);
        put(Channel.INDICATED_AIRSPEED, air.calibrated_mps(true_mps, height_m));
        put(Channel.STATIC_PRESSURE, pressure_hPa);
        put(Channel.PRESSURE_ALTITUDE, Atmosphere.pressureAltitude_m(pressure_hPa));
        put(Channel.OUTSIDE_AIR_TEMPERATURE, air.temperature_C(height_m));
    }

    void putHeading(double heading_rad) {
        double heading_deg = Math.toDegrees(heading_rad);
        put(Channel.HEADING, heading_deg - 360 * Math.floor(heading_deg / 360));
    }

    Map<Channel, double[]> toMap() {
        Map<Channel, double[]> out = new EnumMap<>(Channel.class);
        columns.forEach((c, v) -> out.put(c, v.toArray()));
        return out;
    }
}
