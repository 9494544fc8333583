package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.net.URL;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.Source;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * The published schemas of GPX 1.1 (TopoGrafix) and KML 2.2 (OGC 07-147r2, from the test library
 * kml-v_2_2_0-schema 1.1.0), with the gx elements of tracks; see ORIGIN.md in {@code reference}.
 */
final class XmlSchemas {
    private static final String GX = "http://www.google.com/kml/ext/2.2";
    private static final Schema GPX = schema(resource("/pairdown/format/reference/gpx-1.1.xsd"));
    private static final Schema KML =
            schema(
                    resource("/kml/2.2.0/ogckml22.xsd"),
                    resource("/pairdown/format/reference/kml-gx-tracks.xsd"));

    private XmlSchemas() {}

    private static URL resource(String name) {
        return Objects.requireNonNull(XmlSchemas.class.getResource(name), name);
    }

    private static Schema schema(URL... files) {
        Source[] sources = new Source[files.length];
        for (int i = 0; i < files.length; i++) {
            sources[i] = new StreamSource(files[i].toString());
        }
        try {
            SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
            // Nothing is fetched: a schema that isn't on the class path is an error.
            factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "file,jar:file");
            return factory.newSchema(sources);
        } catch (SAXException e) {
            throw new AssertionError(e);
        }
    }

    static void requireGpx(byte[] written) throws Exception {
        GPX.newValidator().validate(new StreamSource(new ByteArrayInputStream(written)));
    }

    /** Valid, and with what a schema can't say: as many instants as coordinates and values. */
    static void requireKml(byte[] written) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(written));
        KML.newValidator().validate(new DOMSource(document));
        NodeList tracks = document.getElementsByTagNameNS(GX, "Track");
        for (int i = 0; i < tracks.getLength(); i++) {
            Element track = (Element) tracks.item(i);
            int coordinates = track.getElementsByTagNameNS(GX, "coord").getLength();
            assertEquals(coordinates, track.getElementsByTagNameNS("*", "when").getLength());
            NodeList arrays = track.getElementsByTagNameNS(GX, "SimpleArrayData");
            for (int j = 0; j < arrays.getLength(); j++) {
                Element array = (Element) arrays.item(j);
                assertEquals(coordinates, array.getElementsByTagNameNS(GX, "value").getLength());
            }
        }
    }
}
