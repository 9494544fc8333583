package pairdown.geodesy;

/**
 * The WGS 84 ellipsoid and the conversion between geodetic and earth-centred coordinates.
 *
 * <p>Defining constants: EPSG registry, ellipsoid 7030. Derived: e² = f(2 − f), b = a(1 − f).
 */
public final class Wgs84 {
    /** Semi-major axis a (m). */
    public static final double A_M = 6378137.0;

    /** Flattening f. */
    public static final double F = 1 / 298.257223563;

    /** Semi-minor axis b (m). */
    public static final double B_M = A_M * (1 - F);

    /** First eccentricity squared. */
    public static final double E2 = F * (2 - F);

    /** Mean radius (2a + b)/3 (m): R₁ of the IUGG, for what a sphere is near enough to. */
    public static final double MEAN_RADIUS_M = (2 * A_M + B_M) / 3;

    /** Length of a degree of a great circle on the sphere of that radius (m). */
    public static final double MEAN_DEGREE_M = Math.toRadians(MEAN_RADIUS_M);

    private static final double E4 = E2 * E2;

    private Wgs84() {}

    /**
     * Earth-centred coordinates of a geodetic point. Exact; rounding below 1e-9 m of the radius.
     */
    public static Ecef toEcef(Geodetic p) {
        double lat_rad = Math.toRadians(p.latitude_deg());
        double lon_rad = Math.toRadians(p.longitude_deg());
        double sinLat = Math.sin(lat_rad);
        double cosLat = Math.cos(lat_rad);
        double n = primeVertical_m(sinLat);
        return new Ecef(
                (n + p.height_m()) * cosLat * Math.cos(lon_rad),
                (n + p.height_m()) * cosLat * Math.sin(lon_rad),
                (n * (1 - E2) + p.height_m()) * sinLat);
    }

    /**
     * Geodetic coordinates of an earth-centred point, closed form of H. Vermeille, "Direct
     * transformation from geocentric coordinates to geodetic coordinates", J. Geodesy 76 (2002)
     * 451–454. Valid outside the evolute (further than 43 km from the centre); error below 1e-9°
     * and 1e-6 m there.
     *
     * @throws IllegalArgumentException nearer to the Earth's centre
     */
    public static Geodetic toGeodetic(Ecef c) {
        double p = (c.x_m() * c.x_m() + c.y_m() * c.y_m()) / (A_M * A_M);
        double q = (1 - E2) / (A_M * A_M) * c.z_m() * c.z_m();
        double r = (p + q - E4) / 6;
        if (!(r > 0)) {
            throw new IllegalArgumentException(
                    "no geodetic height this near to the Earth's centre: " + c);
        }
        double s = E4 * p * q / (4 * r * r * r);
        double t = Math.cbrt(1 + s + Math.sqrt(s * (2 + s)));
        double u = r * (1 + t + 1 / t);
        double v = Math.sqrt(u * u + E4 * q);
        double w = E2 * (u + v - q) / (2 * v);
        double k = Math.sqrt(u + v + w * w) - w;
        double rho = Math.hypot(c.x_m(), c.y_m());
        double d = k * rho / (k + E2);
        double lat_rad = 2 * Math.atan2(c.z_m(), d + Math.hypot(d, c.z_m()));
        double height_m = (k + E2 - 1) / k * Math.hypot(d, c.z_m());
        double lon_deg = rho == 0 ? 0 : Math.toDegrees(Math.atan2(c.y_m(), c.x_m()));
        return new Geodetic(Math.toDegrees(lat_rad), lon_deg, height_m);
    }

    /** Radius of curvature N in the prime vertical (m) where the sine of latitude is given. */
    static double primeVertical_m(double sinLat) {
        return A_M / Math.sqrt(1 - E2 * sinLat * sinLat);
    }
}
