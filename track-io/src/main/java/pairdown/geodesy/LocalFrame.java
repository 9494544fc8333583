package pairdown.geodesy;

import pairdown.vector.Mat3;
import pairdown.vector.Vec3;

/**
 * A local east-north-up frame: origin at a geodetic point, up along the ellipsoid's normal there.
 * Positions go through earth-centred coordinates, so nothing is flattened; away from the origin
 * "up" here is not the local vertical (0.09° at 10 km).
 */
public final class LocalFrame {
    private final Geodetic origin;
    private final Vec3 originEcef_m;
    private final Mat3 ecefToEnu;

    private LocalFrame(Geodetic origin) {
        this.origin = origin;
        this.originEcef_m = Wgs84.toEcef(origin).vector();
        double lat_rad = Math.toRadians(origin.latitude_deg());
        double lon_rad = Math.toRadians(origin.longitude_deg());
        double sinLat = Math.sin(lat_rad);
        double cosLat = Math.cos(lat_rad);
        double sinLon = Math.sin(lon_rad);
        double cosLon = Math.cos(lon_rad);
        this.ecefToEnu =
                Mat3.ofRows(
                        new Vec3(-sinLon, cosLon, 0),
                        new Vec3(-sinLat * cosLon, -sinLat * sinLon, cosLat),
                        new Vec3(cosLat * cosLon, cosLat * sinLon, sinLat));
    }

    public static LocalFrame at(Geodetic origin) {
        return new LocalFrame(origin);
    }

    public Geodetic origin() {
        return origin;
    }

    /** East, north and up (m) of a geodetic point in this frame. */
    public Vec3 toEnu(Geodetic point) {
        return ecefToEnu.times(Wgs84.toEcef(point).vector().minus(originEcef_m));
    }

    /** The geodetic point at east, north, up (m) of this frame. */
    public Geodetic toGeodetic(Vec3 enu_m) {
        Vec3 e = ecefToEnu.transposeTimes(enu_m).plus(originEcef_m);
        return Wgs84.toGeodetic(new Ecef(e.x(), e.y(), e.z()));
    }

    /** The rotation that takes directions of this frame's axes to those of {@code other}. */
    public Mat3 rotationTo(LocalFrame other) {
        return other.ecefToEnu.times(ecefToEnu.transpose());
    }
}
