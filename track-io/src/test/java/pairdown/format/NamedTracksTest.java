package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.jenetics.jpx.GPX;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import pairdown.track.Track;

/** Several tracks in one file, each under its name. */
class NamedTracksTest {
    private static final String ODD = "two & <three>";

    @Test
    void gpxIsValidAndAnotherReaderSeesEachTrackUnderItsName() throws Exception {
        byte[] written = written("gpx");
        XmlSchemas.requireGpx(written);
        List<io.jenetics.jpx.Track> read =
                GPX.Reader.of(GPX.Reader.Mode.STRICT)
                        .read(new ByteArrayInputStream(written))
                        .tracks()
                        .toList();
        assertEquals(
                List.of(Optional.of("one"), Optional.of(ODD)),
                read.stream().map(io.jenetics.jpx.Track::getName).toList());
        assertEquals(2, read.get(1).getSegments().get(0).getPoints().size());
    }

    @Test
    void kmlHasAPlacemarkForEachWithAnInstantForEveryPoint() throws Exception {
        XmlSchemas.requireKml(written("kml"));
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document kml = factory.newDocumentBuilder().parse(new ByteArrayInputStream(written("kml")));
        var placemarks = kml.getElementsByTagNameNS("*", "Placemark");
        assertEquals(2, placemarks.getLength());
        Element second = (Element) placemarks.item(1);
        assertEquals(ODD, second.getElementsByTagNameNS("*", "name").item(0).getTextContent());
        assertEquals(2, second.getElementsByTagNameNS("*", "when").getLength());
        assertEquals(2, second.getElementsByTagNameNS("*", "coord").getLength());
    }

    @Test
    void geoJsonIsACollectionOfNamedFeatures() throws Exception {
        JsonNode json = new ObjectMapper().readTree(written("geojson"));
        assertEquals("FeatureCollection", json.path("type").asText());
        assertEquals(3, GeoJsonRules.require(written("geojson")));
        assertEquals(ODD, json.at("/features/1/properties/name").asText());
        assertEquals("MultiLineString", json.at("/features/1/geometry/type").asText());
        assertEquals("Point", json.at("/features/0/geometry/type").asText(), "one fix alone");
    }

    @Test
    void aFormatForOneTrackAFileIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> written("igc"));
    }

    @Test
    void oneTrackAloneIsWrittenAsBefore() throws Exception {
        String text = new String(TestLogs.written(one(), "gpx"), StandardCharsets.UTF_8);
        assertTrue(!text.contains("<name>"), text);
    }

    private static byte[] written(String format) throws Exception {
        Map<String, Track> tracks = new LinkedHashMap<>();
        tracks.put("one", one());
        tracks.put(
                ODD,
                TestLogs.read(
                        "time,lat,lon,pitch_deg",
                        "2031-05-14T15:02:12Z,-24.6,15.5,-3",
                        "2031-05-14T15:02:13Z,-24.7,15.6,-4"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LogFiles.write(tracks, format, out);
        return out.toByteArray();
    }

    private static Track one() throws Exception {
        return TestLogs.read("time,lat,lon,alt", "2031-05-14T15:02:12Z,-24.5,15.5,900");
    }
}
