package pairdown.geodesy;

/**
 * A place on or above the WGS 84 ellipsoid.
 *
 * @param latitude_deg geodetic latitude, north positive, −90 to 90
 * @param longitude_deg east positive, any finite turn
 * @param height_m above the ellipsoid
 */
public record Geodetic(double latitude_deg, double longitude_deg, double height_m) {
    public Geodetic {
        if (!(Math.abs(latitude_deg) <= 90)) {
            throw new IllegalArgumentException("latitude " + latitude_deg + " is outside ±90");
        }
        if (!Double.isFinite(longitude_deg) || !Double.isFinite(height_m)) {
            throw new IllegalArgumentException(
                    "longitude and height must be finite, not " + longitude_deg + ", " + height_m);
        }
    }

    public static Geodetic ofDegrees(double latitude_deg, double longitude_deg, double height_m) {
        return new Geodetic(latitude_deg, longitude_deg, height_m);
    }
}
