package pairdown.time;

/**
 * Reads ISO 8601 dates and times as logs write them, to nanoseconds from 1970 UTC. Wider than
 * {@link java.time.Instant#parse}: a blank for the T, a decimal comma, no seconds, offsets without
 * colon, the leap second 23:59:60 (which becomes the next second), a missing zone.
 */
public final class IsoTime {
    /** What every method returns for text it can't read. */
    public static final long NONE = Long.MIN_VALUE;

    static final long SECOND_NS = 1_000_000_000L;
    static final long DAY_NS = 86_400L * SECOND_NS;

    /**
     * @param local_ns date and time of day as written, from 1970, {@link #NONE} if unreadable
     * @param offset_ns what the text says local time is ahead of UTC, {@link #NONE} if it says
     *     nothing
     */
    public record Reading(long local_ns, long offset_ns) {
        public boolean isReadable() {
            return local_ns != NONE;
        }

        public boolean hasZone() {
            return offset_ns != NONE;
        }
    }

    private final CharSequence text;
    private int at;

    private IsoTime(CharSequence text) {
        this.text = text;
    }

    /**
     * Nanoseconds from 1970 UTC; a time without a zone is taken as UTC; {@link #NONE} if
     * unreadable.
     */
    public static long utc_ns(CharSequence text) {
        IsoTime reader = new IsoTime(text);
        long local_ns = reader.dateTime();
        if (local_ns == NONE) {
            return NONE;
        }
        long offset_ns = reader.offset();
        return reader.atEnd() ? local_ns - (offset_ns == NONE ? 0 : offset_ns) : NONE;
    }

    /** Date, time and zone kept apart. */
    public static Reading read(CharSequence text) {
        IsoTime reader = new IsoTime(text);
        long local_ns = reader.dateTime();
        long offset_ns = local_ns == NONE ? NONE : reader.offset();
        return reader.atEnd() ? new Reading(local_ns, offset_ns) : new Reading(NONE, NONE);
    }

    /** A time of day ({@code 12:34:56.7}) as nanoseconds from midnight, or {@link #NONE}. */
    public static long timeOfDay_ns(CharSequence text) {
        IsoTime reader = new IsoTime(text);
        reader.blanks();
        long time_ns = reader.timeOfDay();
        reader.blanks();
        return reader.at == text.length() ? time_ns : NONE;
    }

    /**
     * Nanoseconds from 1970 of midnight on a date, or {@link #NONE} where there is no such date or
     * it is outside the years 1970 to 2200, in which the difference of any two times fits a long.
     */
    public static long day_ns(int year, int month, int day) {
        if (year < 1970
                || year > 2200
                || month < 1
                || month > 12
                || day < 1
                || day > daysIn(year, month)) {
            return NONE;
        }
        int y = month <= 2 ? year - 1 : year;
        int era = Math.floorDiv(y, 400);
        int ofEra = y - era * 400;
        int ofYear = (153 * (month + (month > 2 ? -3 : 9)) + 2) / 5 + day - 1;
        int dayOfEra = ofEra * 365 + ofEra / 4 - ofEra / 100 + ofYear;
        return (era * 146_097L + dayOfEra - 719_468) * DAY_NS;
    }

    private static int daysIn(int year, int month) {
        return switch (month) {
            case 2 -> year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 29 : 28;
            case 4, 6, 9, 11 -> 30;
            default -> 31;
        };
    }

    private boolean atEnd() {
        blanks();
        return at == text.length();
    }

    private long dateTime() {
        blanks();
        int year = digits(4);
        boolean dashed = skip('-') || skip('/');
        int month = digits(2);
        if (dashed && !skip('-') && !skip('/')) {
            return NONE;
        }
        int day = digits(2);
        if (year < 0 || month < 0 || day < 0) {
            return NONE;
        }
        long day_ns = day_ns(year, month, day);
        if (day_ns == NONE || at == text.length()) {
            return day_ns;
        }
        if (!skip('T') && !skip('t')) {
            int before = at;
            blanks();
            if (at == before) {
                return NONE;
            }
        }
        if (at == text.length()) {
            return day_ns;
        }
        long time_ns = timeOfDay();
        return time_ns == NONE ? NONE : day_ns + time_ns;
    }

    private long timeOfDay() {
        int hour = shortNumber();
        boolean colon = skip(':');
        int minute = digits(2);
        int second = 0;
        if (hour < 0 || hour > 24 || minute < 0 || minute > 59) {
            return NONE;
        }
        if (colon ? skip(':') : at < text.length() && isDigit(text.charAt(at))) {
            second = digits(2);
        }
        if (second < 0 || second > 60) {
            return NONE;
        }
        long nanos = skip('.') || skip(',') ? fraction() : 0;
        if (nanos == NONE) {
            return NONE;
        }
        return ((hour * 60L + minute) * 60 + second) * SECOND_NS + nanos;
    }

    private long offset() {
        blanks();
        if (skip('Z') || skip('z')) {
            return 0;
        }
        if (skipWord("UTC") || skipWord("GMT")) {
            if (at == text.length()) {
                return 0;
            }
        }
        int sign = skip('+') ? 1 : skip('-') || skip('\u2212') ? -1 : 0;
        if (sign == 0) {
            return NONE;
        }
        int hours = digits(2);
        boolean colon = skip(':');
        int minutes = at < text.length() || colon ? digits(2) : 0;
        if (hours < 0 || hours > 18 || minutes < 0 || minutes > 59) {
            at = -1;
            return NONE;
        }
        return sign * (hours * 60L + minutes) * 60 * SECOND_NS;
    }

    private long fraction() {
        long nanos = 0;
        long unit = SECOND_NS / 10;
        int from = at;
        while (at < text.length() && isDigit(text.charAt(at))) {
            nanos += unit * (text.charAt(at++) - '0');
            unit /= 10;
        }
        return at == from ? NONE : nanos;
    }

    /** One or two digits before a colon, two without. */
    private int shortNumber() {
        if (at + 1 < text.length() && isDigit(text.charAt(at)) && text.charAt(at + 1) == ':') {
            return text.charAt(at++) - '0';
        }
        return digits(2);
    }

    private int digits(int count) {
        if (at < 0 || at + count > text.length()) {
            return -1;
        }
        int value = 0;
        for (int i = 0; i < count; i++) {
            char c = text.charAt(at + i);
            if (!isDigit(c)) {
                return -1;
            }
            value = value * 10 + c - '0';
        }
        at += count;
        return value;
    }

    private boolean skip(char c) {
        if (at >= 0 && at < text.length() && text.charAt(at) == c) {
            at++;
            return true;
        }
        return false;
    }

    private boolean skipWord(String word) {
        if (at + word.length() <= text.length()) {
            for (int i = 0; i < word.length(); i++) {
                if (text.charAt(at + i) != word.charAt(i)) {
                    return false;
                }
            }
            at += word.length();
            return true;
        }
        return false;
    }

    private void blanks() {
        while (at >= 0 && at < text.length() && text.charAt(at) <= ' ') {
            at++;
        }
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
