package pairdown.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.sf.geographiclib.Geodesic;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.frames.Frame;
import org.orekit.frames.TopocentricFrame;
import org.orekit.frames.Transform;
import pairdown.vector.Vec3;

class FramesTest {
    /** FAI/IGC Technical Specification AL8, glossary "WGS84": b = 6,356,752.314245 m. */
    @Test
    void theSemiMinorAxisIsThePublishedOne() {
        assertEquals(6356752.314245, Wgs84.B_M, 1e-6);
    }

    /** H. Moritz, Geodetic Reference System 1980: R₁ = 6371008.7714 m, from memory. */
    @Test
    void theMeanRadiusIsThePublishedOne() {
        assertEquals(6371008.7714, Wgs84.MEAN_RADIUS_M, 1e-3);
        assertEquals(111195.08, Wgs84.MEAN_DEGREE_M, 1e-2);
    }

    /**
     * GeographicLib 2.1.2 {@code CartConvert -p 6} and PROJ 9.1.1 {@code cct +proj=cart}, which
     * agree.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 6378137.000000, 0, 0",
        "90, 0, 0, 0, 0, 6356752.314245",
        "-90, 0, 1234.5, 0, 0, -6357986.814245",
        "0, 180, 0, -6378137.000000, 0, 0",
        "0, 90, 100, 0, 6378237.000000, 0",
        "45, 0, 0, 4517590.878849, 0, 4487348.408866",
        "-33.9, 18.4, 4000, 5031674.101394, 1673815.192761, -3539476.328341",
        "52, -1.2, 4000, 3936559.570622, -82459.168082, 5005955.388497",
        "61.2, -149.9, 4267.2, -2666980.786880, -1545994.687887, 5569852.483832",
        "-16.8, 179.9995, 4000, -6111452.251453, 53.332482, -1832811.783555",
        "37.5, -122.25, 20000, -2711974.015815, -4298218.673788, 3873739.327390",
        "-24.5, 15.5, 3657.6, 5599203.287523, 1552796.498811, -2630294.267392",
        "89.9999, 45, 4000, 7.902894, 7.902894, 6360752.314235",
        "10, 20, -50, 5902983.271865, 2148510.204330, 1100239.865326"
    })
    void earthCentredCoordinatesAreThePublishedOnesBothWays(
            double lat, double lon, double h, double x, double y, double z) {
        Ecef c = Wgs84.toEcef(Geodetic.ofDegrees(lat, lon, h));
        assertEquals(x, c.x_m(), 1e-6);
        assertEquals(y, c.y_m(), 1e-6);
        assertEquals(z, c.z_m(), 1e-6);
        Geodetic back = Wgs84.toGeodetic(c);
        assertEquals(lat, back.latitude_deg(), 1e-9);
        assertEquals(h, back.height_m(), 1e-6);
        if (Math.abs(lat) < 90) {
            assertEquals(lon, back.longitude_deg(), 1e-9);
        }
    }

    /** CartConvert -l, PROJ topocentric and Orekit TopocentricFrame, which agree to 1e-6 m. */
    @ParameterizedTest
    @CsvSource({
        "-24.5, 15.5, 3657.6, -24.499990971, 15.5, 3657.6, 0.000000, 1.000678, 0.000000",
        "-24.5, 15.5, 3657.6, -24.5, 15.500098677, 3655.6, 10.007115, -0.000004, -2.000008",
        "52, -1.2, 4000, 52.0002, -1.1995, 3990, 34.360292, 22.267517, -10.000131",
        "52, -1.2, 4000, 51.9955, -1.1927, 3500, 501.674355, -500.952602, -500.039349",
        "-16.8, 179.9995, 4000, -16.7995, -179.9995, 3950, 106.664408, 55.367749, -50.001133",
        "61.2, -149.9, 4267.2, 61.23, -149.83, 2500, 3761.576173, 3346.302862, -1769.182515",
        "-33.9, 18.4, 4000, -33.9, 18.4, -1000, 0.000000, 0.000000, -5000.000000",
        "0, 0, 4000, 0.0449, 0, 4000, 0.000000, 4967.919097, -1.946562",
        "-24.5, 15.5, 3657.6, -24.4, 15.6, 1000, 10145.064202, 11074.544718, -2675.323655"
    })
    void localCoordinatesAreThePublishedOnes(
            double lat0,
            double lon0,
            double h0,
            double lat,
            double lon,
            double h,
            double e,
            double n,
            double u) {
        Vec3 enu =
                LocalFrame.at(Geodetic.ofDegrees(lat0, lon0, h0))
                        .toEnu(Geodetic.ofDegrees(lat, lon, h));
        assertEquals(e, enu.x(), 1e-5);
        assertEquals(n, enu.y(), 1e-5);
        assertEquals(u, enu.z(), 1e-5);
    }

    /** Orekit 12.2, run here: {@code TopocentricFrame} on the WGS 84 ellipsoid. */
    @Property(tries = 300)
    void orekitAgreesAnywhere(
            @ForAll @DoubleRange(min = -89.9, max = 89.9) double lat,
            @ForAll @DoubleRange(min = -180, max = 180) double lon,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double dLat,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double dLon,
            @ForAll @DoubleRange(min = -400, max = 9000) double h) {
        Frame fixed = new Frame(Frame.getRoot(), Transform.IDENTITY, "earth", true);
        OneAxisEllipsoid earth = new OneAxisEllipsoid(Wgs84.A_M, Wgs84.F, fixed);
        TopocentricFrame local = new TopocentricFrame(earth, point(lat, lon, 3000), "local");
        Vector3D expected =
                fixed.getStaticTransformTo(local, (org.orekit.time.AbsoluteDate) null)
                        .transformPosition(earth.transform(point(lat + dLat, lon + dLon, h)));
        Vec3 enu =
                LocalFrame.at(Geodetic.ofDegrees(lat, lon, 3000))
                        .toEnu(Geodetic.ofDegrees(lat + dLat, lon + dLon, h));
        assertEquals(0, Vector3D.distance(expected, new Vector3D(enu.x(), enu.y(), enu.z())), 1e-5);
    }

    private static GeodeticPoint point(double lat, double lon, double h) {
        return new GeodeticPoint(Math.toRadians(lat), Math.toRadians(lon), h);
    }

    /**
     * GeographicLib-Java 2.0, run here: the chord of a short geodesic differs by its curvature
     * only.
     */
    @Property(tries = 300)
    void levelDistancesAgreeWithGeodesics(
            @ForAll @DoubleRange(min = -89, max = 89) double lat,
            @ForAll @DoubleRange(min = -180, max = 180) double lon,
            @ForAll @DoubleRange(min = 0.5, max = 1000) double distance_m,
            @ForAll @DoubleRange(min = 0, max = 360) double azimuth_deg) {
        var to = Geodesic.WGS84.Direct(lat, lon, azimuth_deg, distance_m);
        Vec3 enu =
                LocalFrame.at(Geodetic.ofDegrees(lat, lon, 0))
                        .toEnu(Geodetic.ofDegrees(to.lat2, to.lon2, 0));
        double chord_m = Math.sqrt(enu.x() * enu.x() + enu.y() * enu.y() + enu.z() * enu.z());
        double radius_m = 6.33e6;
        assertEquals(
                distance_m, chord_m, Math.pow(distance_m, 3) / (20 * radius_m * radius_m) + 1e-6);
        double azimuth = Math.toDegrees(Math.atan2(enu.x(), enu.y()));
        assertEquals(0, Math.IEEEremainder(azimuth - azimuth_deg, 360), 1e-3);
    }

    @Property(tries = 500)
    void thereAndBackIsTheSamePlace(
            @ForAll @DoubleRange(min = -90, max = 90) double lat,
            @ForAll @DoubleRange(min = -180, max = 180) double lon,
            @ForAll @DoubleRange(min = -1000, max = 40000) double h) {
        Geodetic back = Wgs84.toGeodetic(Wgs84.toEcef(Geodetic.ofDegrees(lat, lon, h)));
        assertEquals(lat, back.latitude_deg(), 1e-9);
        assertEquals(h, back.height_m(), 1e-6);
    }

    @Test
    void nearTheEarthsCentreThereIsNoHeight() {
        assertThrows(IllegalArgumentException.class, () -> Wgs84.toGeodetic(new Ecef(1, 2, 3)));
        assertThrows(IllegalArgumentException.class, () -> Geodetic.ofDegrees(91, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> Geodetic.ofDegrees(0, Double.NaN, 0));
    }
}
