package pairdown.format.nmea;

import pairdown.format.source.ByteLines;
import pairdown.format.source.Numbers;
import pairdown.time.IsoTime;

/**
 * One NMEA 0183 sentence as a cursor over the bytes of a line: fields by number, the address being
 * field 0. The object is used again for each line.
 */
final class Sentence {
    /** What came of looking for a sentence in a line. */
    enum Found {
        /** A sentence with a right checksum. */
        SOUND,
        /** A sentence without checksum. */
        UNCHECKED,
        /** A checksum that does not fit. */
        DAMAGED,
        /** No sentence at all. */
        NONE
    }

    private static final int MAX_FIELDS = 64;
    private static final long SECOND_NS = 1_000_000_000L;

    private byte[] bytes = {};
    private final int[] starts = new int[MAX_FIELDS + 1];
    private int fields;

    /**
     * Looks for a sentence: from the last {@code $} of the line, so that a stamp some loggers put
     * before it, or rubbish, does no harm.
     */
    Found find(ByteLines line) {
        bytes = line.bytes();
        int end = line.to();
        int start = -1;
        for (int i = line.from(); i < end; i++) {
            if (bytes[i] == '$') {
                start = i + 1;
            }
        }
        if (start < 0) {
            return Found.NONE;
        }
        int sum = 0;
        fields = 0;
        starts[0] = start;
        for (int i = start; i < end; i++) {
            byte b = bytes[i];
            if (b == '*') {
                close(i);
                return sum == checksum(i + 1, end) ? Found.SOUND : Found.DAMAGED;
            }
            sum ^= b & 0xff;
            if (b == ',') {
                close(i);
            }
        }
        close(end);
        return Found.UNCHECKED;
    }

    private void close(int end) {
        if (fields < MAX_FIELDS) {
            starts[++fields] = end + 1;
        }
    }

    private int checksum(int from, int end) {
        if (end - from < 2) {
            return -1;
        }
        int high = Character.digit(bytes[from], 16);
        int low = Character.digit(bytes[from + 1], 16);
        return high < 0 || low < 0 ? -1 : high * 16 + low;
    }

    int fields() {
        return fields;
    }

    /** The three letters after the talker, packed as one int; 0 for a proprietary sentence. */
    int type() {
        int from = starts[0];
        if (fields == 0 || starts[1] - 1 - from != 5 || bytes[from] == 'P') {
            return 0;
        }
        return code(bytes[from + 2], bytes[from + 3], bytes[from + 4]);
    }

    static int code(int a, int b, int c) {
        return (a << 16) | (b << 8) | c;
    }

    boolean isEmpty(int field) {
        return length(field) == 0;
    }

    private int length(int field) {
        return field >= fields ? 0 : starts[field + 1] - 1 - starts[field];
    }

    /** A one-letter field, or 0 where it is empty. */
    char letter(int field) {
        return length(field) == 0 ? 0 : (char) bytes[starts[field]];
    }

    /** A field's number, NaN where it is empty or none. */
    double number(int field) {
        int length = length(field);
        return length == 0
                ? Double.NaN
                : Numbers.parse(bytes, starts[field], starts[field] + length, (byte) '.');
    }

    /** Time of day from {@code hhmmss.ss}, or {@link IsoTime#NONE}. */
    long timeOfDay_ns(int field) {
        int length = length(field);
        if (length < 6) {
            return IsoTime.NONE;
        }
        int at = starts[field];
        int hour = Numbers.digits(bytes, at, 2);
        int minute = Numbers.digits(bytes, at + 2, 2);
        int second = Numbers.digits(bytes, at + 4, 2);
        if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 60) {
            return IsoTime.NONE;
        }
        double share = length > 6 ? Numbers.parse(bytes, at + 6, at + length, (byte) '.') : 0;
        if (!(share >= 0 && share < 1)) {
            return length == 7 && bytes[at + 6] == '.'
                    ? (hour * 3600L + minute * 60L + second) * SECOND_NS
                    : IsoTime.NONE;
        }
        return (hour * 3600L + minute * 60L + second) * SECOND_NS + Math.round(share * SECOND_NS);
    }

    /** Degrees from {@code dddmm.mmm} and the hemisphere in the next field; NaN if unreadable. */
    double degrees(int field) {
        double raw = number(field);
        char hemisphere = letter(field + 1);
        double degrees = Math.floor(raw / 100);
        double value = degrees + (raw - degrees * 100) / 60;
        boolean minutesReadable = raw >= 0 && raw - degrees * 100 < 60;
        return switch (hemisphere) {
            case 'N', 'E' -> minutesReadable ? value : Double.NaN;
            case 'S', 'W' -> minutesReadable ? -value : Double.NaN;
            default -> Double.NaN;
        };
    }

    /** Digits after the decimal point of a field. */
    int decimals(int field) {
        for (int i = 0; i < length(field); i++) {
            if (bytes[starts[field] + i] == '.') {
                return length(field) - i - 1;
            }
        }
        return 0;
    }

    /** Two digits of a field from {@code offset} on, −1 if there are none. */
    int twoDigits(int field, int offset) {
        return length(field) < offset + 2 ? -1 : Numbers.digits(bytes, starts[field] + offset, 2);
    }
}
