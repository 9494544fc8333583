package pairdown.format.source;

import com.fasterxml.jackson.core.JsonProcessingException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Turns bytes of unknown encoding into words, and rubbish into something that can be printed. */
public final class Text {
    private static final int SHOWN = 40;

    private Text() {}

    /** UTF-8 where the bytes are, else Latin-1, which every sequence of bytes is. */
    public static String decode(byte[] bytes, int from, int to) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes, from, to - from))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
        }
    }

    /** A short, printable quotation of what a log has. */
    public static String quote(CharSequence text) {
        StringBuilder out = new StringBuilder("'");
        for (int i = 0; i < text.length() && out.length() <= SHOWN; i++) {
            char c = text.charAt(i);
            out.append(Character.isISOControl(c) || c > 0x2fff ? '?' : c);
        }
        return out.append(text.length() > SHOWN ? "…'" : "'").toString();
    }

    /** What a JSON parser complains of, without its words on where that began. */
    public static String complaint(JsonProcessingException e) {
        return String.valueOf(e.getOriginalMessage())
                .replaceAll("(?s) \\((?:for \\w+ starting|start marker) at .*", "");
    }

    /** A name as XML text or in an attribute. */
    public static String xml(String name) {
        return name.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
