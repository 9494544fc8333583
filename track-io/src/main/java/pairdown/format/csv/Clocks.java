package pairdown.format.csv;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.time.IsoTime;

/** Dates and times as spreadsheets write them, beside ISO 8601. */
final class Clocks {
    private static final long SECOND_NS = 1_000_000_000L;

    /** Day, month and year with dots or slashes, then a time: the order is told by the dots. */
    private static final Pattern DAY_FIRST =
            Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})[ T](.+)");

    private static final Pattern HALF_DAY =
            Pattern.compile("(.*\\d)\\s*([AaPp])\\.?[Mm]\\.?", Pattern.DOTALL);
    private static final Pattern COMPACT = Pattern.compile("(\\d{5,6})(\\.\\d*)?");

    private Clocks() {}

    /** A date and time in one text. */
    static IsoTime.Reading dateTime(String text) {
        IsoTime.Reading iso = IsoTime.read(text);
        if (iso.isReadable()) {
            return iso;
        }
        Matcher dotted = DAY_FIRST.matcher(text);
        if (dotted.matches()) {
            long day_ns =
                    IsoTime.day_ns(
                            Integer.parseInt(dotted.group(3)),
                            Integer.parseInt(dotted.group(2)),
                            Integer.parseInt(dotted.group(1)));
            long time_ns = timeOfDay_ns(dotted.group(4));
            if (day_ns != IsoTime.NONE && time_ns != IsoTime.NONE) {
                return new IsoTime.Reading(day_ns + time_ns, IsoTime.NONE);
            }
        }
        return new IsoTime.Reading(IsoTime.NONE, IsoTime.NONE);
    }

    /** The first word of a date and time in one text. */
    static String dateOf(String text) {
        return text.substring(0, blank(text));
    }

    /** What follows the first word of a date and time in one text. */
    static String timeOf(String text) {
        return text.substring(blank(text)).strip();
    }

    private static int blank(String text) {
        int blank = text.indexOf(' ');
        return blank < 0 ? text.length() : blank;
    }

    /** A time of day: {@code 15:02:11.35}, {@code 3:02:11 PM}, {@code 150211.35}. */
    static long timeOfDay_ns(String text) {
        String plain = text.strip();
        if (plain.endsWith("Z") || plain.endsWith("z")) {
            plain = plain.substring(0, plain.length() - 1);
        }
        Matcher half = HALF_DAY.matcher(plain);
        if (half.matches()) {
            long t_ns = IsoTime.timeOfDay_ns(half.group(1).strip());
            boolean afternoon = half.group(2).toLowerCase(Locale.ROOT).equals("p");
            if (t_ns == IsoTime.NONE || t_ns >= 13L * 3600 * SECOND_NS) {
                return IsoTime.NONE;
            }
            long inHalf_ns = t_ns % (12L * 3600 * SECOND_NS);
            return inHalf_ns + (afternoon ? 12L * 3600 * SECOND_NS : 0);
        }
        Matcher compact = COMPACT.matcher(plain);
        if (compact.matches() && compact.group(1).length() == 5) {
            plain = "0" + plain;
        }
        return IsoTime.timeOfDay_ns(plain);
    }
}
