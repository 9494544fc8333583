package pairdown.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeoidTest {
    private final Geoid geoid = Geoid.egm96();

    /** The checksum is that of the published WW15MGH.DAC. */
    @Test
    void thePackedGridIsThePublishedOneBitForBit() throws Exception {
        ByteBuffer published = ByteBuffer.allocate(2 * Geoid.ROWS * Geoid.COLUMNS);
        for (int row = 0; row < Geoid.ROWS; row++) {
            for (int column = 0; column < Geoid.COLUMNS; column++) {
                published.putShort((short) geoid.count(row, column));
            }
        }
        assertEquals(
                "9dcaf4efd6857aaa2e1e2e2c574d3f5264eacf47024cdcd5291c40ddad5e5acc",
                HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256").digest(published.array())));
    }

    /**
     * Rows 1 to 6: sample output OUTINTPT.DAT of the NGA/NASA EGM96 readme. Row 7: GeographicLib
     * GeoidEval manual page. Rows 8 to 13, the poles and the equator: gpsd 3.22 tests/test_geoid.c,
     * made with GeoidEval egm96-5. Last three: help page of MathWorks geoidegm96. Tolerances: what
     * a bicubic on the 15-minute grid can give.
     */
    @ParameterizedTest
    @CsvSource({
        "38.628155, 269.779155, -31.628, 0.02",
        "-14.621217, 305.021114, -2.969, 0.02",
        "46.874319, 102.448729, -43.575, 0.02",
        "-23.617446, 133.874712, 15.871, 0.02",
        "38.625473, 359.999500, 50.066, 0.02",
        "-0.466744, 0.002300, 17.329, 0.02",
        "16.775833, -3.009444, 28.7068, 0.02",
        "51.46970, -0.45943, 46.3061, 0.03",
        "39.861666, -104.673166, -18.4209, 0.03",
        "61.171333, -149.991164, 7.8563, 0.04",
        "-22.92170, -68.158401, 39.3400, 0.04",
        "1.350190, 103.994003, 8.3503, 0.03",
        "44.094556, -121.200222, -19.8008, 0.03",
        "90, 0, 13.6050, 0.01",
        "90, 123.4, 13.6050, 0.01",
        "-90, -77, -29.5350, 0.01",
        "0, 0, 17.1630, 0.01",
        "0, 180, 21.1534, 0.01",
        "42.4, 71.0, -36.59, 0.03",
        "39.3, -77.2, -33.01, 0.03",
        "33.4, 36.5, 25.55, 0.03"
    })
    void undulationIsThePublishedOne(double lat, double lon, double undulation_m, double tol_m) {
        assertEquals(undulation_m, geoid.undulation_m(lat, lon), tol_m);
    }

    @Test
    void aFullTurnOfLongitudeChangesNothing() {
        assertEquals(geoid.undulation_m(12.3, -45.6), geoid.undulation_m(12.3, 314.4), 1e-9);
        assertEquals(geoid.undulation_m(12.3, 179.99), geoid.undulation_m(12.3, -180.01), 1e-9);
    }

    @Test
    void theSurfaceIsContinuousAcrossCellsPolesAndTheDateLine() {
        assertEquals(geoid.undulation_m(10, 20), geoid.undulation_m(10 + 1e-9, 20 - 1e-9), 1e-6);
        assertEquals(geoid.undulation_m(-16.8, 180), geoid.undulation_m(-16.8, -180), 1e-9);
        assertEquals(geoid.undulation_m(89.9999999, 0), geoid.undulation_m(90, 180), 1e-4);
    }

    @Test
    void aLatitudeBeyondThePoleIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> geoid.undulation_m(90.1, 0));
        assertThrows(IllegalArgumentException.class, () -> geoid.undulation_m(Double.NaN, 0));
    }
}
