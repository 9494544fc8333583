package pairdown.format.source;

import java.util.HashSet;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import javax.xml.stream.util.StreamReaderDelegate;

/**
 * A parser that stops at a document with more names than any log has: it holds each name it meets
 * once, of elements, attributes, entities and instructions.
 */
final class FewNames extends StreamReaderDelegate {
    private static final int MOST = 5000;
    private static final int MOST_LETTERS = 1 << 19;

    private final Set<String> names = new HashSet<>();
    private int letters;

    FewNames(XMLStreamReader xml) {
        super(xml);
    }

    @Override
    public int next() throws XMLStreamException {
        int event = super.next();
        switch (event) {
            case START_ELEMENT -> {
                meet(getLocalName());
                for (int i = getAttributeCount() - 1; i >= 0; i--) {
                    meet(getAttributeLocalName(i));
                }
            }
            case ENTITY_REFERENCE -> meet(getLocalName());
            case PROCESSING_INSTRUCTION -> meet(getPITarget());
            default -> {}
        }
        return event;
    }

    private void meet(String name) throws XMLStreamException {
        if (names.add(name)) {
            letters += name.length();
            if (names.size() > MOST || letters > MOST_LETTERS) {
                throw new XMLStreamException("more than " + names.size() + " names");
            }
        }
    }
}
