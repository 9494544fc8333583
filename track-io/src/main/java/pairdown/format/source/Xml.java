package pairdown.format.source;

import com.ctc.wstx.api.WstxInputProperties;
import com.ctc.wstx.exc.WstxLazyException;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * XML as logs have it, read as a stream by a parser that fetches nothing, expands nothing and holds
 * no more than one element's text and the names it has met, which are few and short. Namespaces are
 * left alone: damaged and hand-made files often lack the declaration of a prefix they use, and
 * local names tell enough.
 */
public final class Xml {
    private static final int MOST_TEXT = 1 << 20;
    private static final int MOST_ATTRIBUTE = 1 << 16;
    private static final int MOST_DEPTH = 200;
    private static final int MOST_ATTRIBUTES = 100;

    /** Bytes within which the XML declaration stands. */
    private static final int DECLARATION = 200;

    private static final Pattern EIGHT_BITS =
            Pattern.compile(
                    "\\s*<\\?xml[^>]*encoding\\s*=\\s*[\"']((?:iso-8859-|windows-12)[0-9]+)[\"']",
                    Pattern.CASE_INSENSITIVE);

    private static final Pattern FIRST_TAG =
            Pattern.compile("<(?:[a-z0-9_]+:)?([a-z0-9_]+)[\\s>/]");
    private static final XMLInputFactory FACTORY = hardened();

    private Xml() {}

    private static XMLInputFactory hardened() {
        // Found as a service: naming the class would need the annotations it carries to compile.
        // Looked for where this class is from, whatever thread comes first.
        XMLInputFactory factory =
                XMLInputFactory.newFactory(
                        XMLInputFactory.class.getName(), Xml.class.getClassLoader());
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        factory.setProperty(WstxInputProperties.P_MAX_TEXT_LENGTH, MOST_TEXT);
        factory.setProperty(WstxInputProperties.P_MAX_ATTRIBUTE_SIZE, MOST_ATTRIBUTE);
        factory.setProperty(WstxInputProperties.P_MAX_ELEMENT_DEPTH, MOST_DEPTH);
        factory.setProperty(WstxInputProperties.P_MAX_ATTRIBUTES_PER_ELEMENT, MOST_ATTRIBUTES);
        return factory;
    }

    /**
     * A parser at the start of the document. Bytes that are no letters in the document's encoding
     * become replacement characters: one of them must not end the reading.
     */
    public static XMLStreamReader open(InputStream in) throws IOException, XMLStreamException {
        BufferedInputStream bytes = new BufferedInputStream(in);
        bytes.mark(DECLARATION);
        byte[] head = bytes.readNBytes(DECLARATION);
        bytes.reset();
        Reader letters = new ShortWords(new InputStreamReader(bytes, encoding(head)));
        return new FewNames(FACTORY.createXMLStreamReader(letters));
    }

    /** A declared encoding of eight bits a letter; all else has become UTF-8 before. */
    private static Charset encoding(byte[] head) {
        String text = new String(head, StandardCharsets.ISO_8859_1);
        Matcher declared = EIGHT_BITS.matcher(text);
        return declared.lookingAt() && Charset.isSupported(declared.group(1))
                ? Charset.forName(declared.group(1))
                : StandardCharsets.UTF_8;
    }

    /** The name of the element the parser is at, without its prefix. */
    public static String localName(XMLStreamReader xml) {
        String name = xml.getLocalName();
        return name.substring(name.indexOf(':') + 1);
    }

    /** An attribute, without regard to prefixes, or an empty text. */
    public static String attribute(XMLStreamReader xml, String name) {
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (xml.getAttributeLocalName(i).equals(name)) {
                return xml.getAttributeValue(i);
            }
        }
        return "";
    }

    /**
     * The text the parser is at. The parser reads it only now, so that what nobody asks for is not
     * held, and finds only now where it is broken.
     */
    public static String text(XMLStreamReader xml) throws XMLStreamException {
        try {
            return xml.getText();
        } catch (WstxLazyException e) {
            throw new XMLStreamException(e.getMessage(), e);
        }
    }

    /** The line a parser has come to. */
    public static long line(XMLStreamReader xml) {
        return Math.max(xml.getLocation().getLineNumber(), 0);
    }

    /** Whether the first element of a document has this local name. */
    public static boolean rootIs(byte[] head, String name) {
        String text = Text.decode(head, 0, Math.min(head.length, 1 << 14)).toLowerCase(Locale.ROOT);
        int start = text.indexOf('<');
        if (start < 0 || !text.substring(0, start).isBlank()) {
            return false;
        }
        Matcher m = FIRST_TAG.matcher(text);
        return m.find() && m.group(1).equals(name);
    }

    /**
     * Throws what really happened when a stream failed under a parser; else says whether XML is
     * broken.
     */
    public static void rethrowInput(XMLStreamException e) throws IOException {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof IOException io && !(t instanceof java.io.CharConversionException)) {
                throw io;
            }
        }
        if (e.getNestedException() instanceof IOException io
                && !(io instanceof java.io.CharConversionException)) {
            throw io;
        }
    }
}
