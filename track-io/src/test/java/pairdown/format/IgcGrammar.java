package pairdown.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The layout of records in the FAI/IGC Technical Specification for GNSS Flight Recorders, second
 * edition, AL8 (1 February 2023), Appendix A: the columns of A, H, I and B, and which record may
 * follow which. Lengths of lines, the headers a file needs and what E stands before are from memory
 * of that text. The G record is not asked for: a converted copy is unsigned.
 */
final class IgcGrammar {
    /** Without the end of line. */
    private static final int LONGEST = 76;

    /** Manufacturer (XXX: none of the registered ones), then the recorder's three characters. */
    private static final Pattern A = Pattern.compile("A[A-Z]{3}[A-Z0-9]{3}.*");

    private static final Pattern DATE =
            Pattern.compile("HFDTE(0[1-9]|[12]\\d|3[01])(0[1-9]|1[0-2])\\d\\d");
    private static final Pattern HEADER = Pattern.compile("H[FOP][A-Z0-9]{3}[ -~]*");
    private static final Pattern FIX =
            Pattern.compile(
                    "B([01]\\d|2[0-3])[0-5]\\d[0-5]\\d" // time
                            + "([0-8]\\d[0-5]\\d{4}|9000000)[NS]"
                            + "(0\\d\\d|1[0-7]\\d|180)[0-5]\\d{4}[EW]"
                            + "[AV]([-0]\\d{4}|[1-9]\\d{4}){2}"
                            + "\\d*");
    private static final Pattern EVENT =
            Pattern.compile("E([01]\\d|2[0-3])[0-5]\\d[0-5]\\d[A-Z]{3}[ -~]*");
    private static final Pattern EXTENSION = Pattern.compile("(\\d\\d)(\\d\\d)([A-Z]{3})");

    private static final List<String> NEEDED =
            List.of("PLT", "CM2", "GTY", "GID", "DTM", "RFW", "RHW", "FTY", "GPS", "PRS");

    private int fixLength = 35;
    private int fixes;
    private boolean began;
    private boolean event;
    private final List<String> headers = new ArrayList<>();

    private IgcGrammar() {}

    /** Checks a file; how many fixes it has. */
    static int require(byte[] written) {
        String text = new String(written, StandardCharsets.ISO_8859_1);
        assertTrue(text.endsWith("\r\n"), "the last line has an end");
        String[] lines = text.split("\r\n", 0);
        assertTrue(A.matcher(lines[0]).matches(), lines[0]);
        assertTrue(DATE.matcher(lines[1]).matches(), lines[1]);
        IgcGrammar grammar = new IgcGrammar();
        for (int i = 1; i < lines.length; i++) {
            grammar.line(lines[i]);
        }
        assertTrue(grammar.headers.containsAll(NEEDED), grammar.headers.toString());
        assertFalse(grammar.event, "an event stands before a fix");
        return grammar.fixes;
    }

    private void line(String line) {
        assertTrue(line.length() <= LONGEST, line);
        assertFalse(line.isEmpty() || line.contains("\n"), "no line is empty");
        switch (line.charAt(0)) {
            case 'H' -> {
                boolean date = DATE.matcher(line).matches();
                assertTrue(date || (!began && HEADER.matcher(line).matches()), line);
                headers.add(line.substring(2, 5));
            }
            case 'I' -> {
                assertFalse(began, "I stands before the first fix");
                extensions(line);
            }
            case 'E' -> {
                assertTrue(EVENT.matcher(line).matches(), line);
                event = true;
            }
            case 'B' -> {
                assertTrue(FIX.matcher(line).matches(), line);
                assertEquals(fixLength, line.length(), line);
                fixes++;
                began = true;
                event = false;
            }
            default -> throw new AssertionError("not written here: " + line);
        }
    }

    /** Number of fields, then first byte, last byte and code of each, without a hole. */
    private void extensions(String line) {
        int count = Integer.parseInt(line.substring(1, 3));
        assertEquals(3 + 7 * count, line.length(), line);
        Matcher field = EXTENSION.matcher(line).region(3, line.length());
        while (field.lookingAt()) {
            assertEquals(fixLength + 1, Integer.parseInt(field.group(1)), line);
            fixLength = Integer.parseInt(field.group(2));
            field.region(field.end(), line.length());
        }
        assertEquals(line.length(), field.regionStart(), line);
    }
}
