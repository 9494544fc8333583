package pairdown.format.csv;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.time.IsoTime;

/** In what order a column of dates has day, month and year; found from the dates themselves. */
enum DateOrder {
    /** {@code 2031-05-14}, {@code 20310514}. */
    ISO("(\\d{4})[-/.]?(\\d{2})[-/.]?(\\d{2})", 1, 2, 3, false),
    /** {@code 14.05.2031}, {@code 14/05/2031} where a day over 12 shows it. */
    DAY_FIRST("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4}|\\d{2})", 3, 2, 1, false),
    /** {@code 05/14/2031} where a day over 12 shows it. */
    MONTH_FIRST("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4}|\\d{2})", 3, 1, 2, false),
    /** {@code 03/04/2031}: nothing shows it. */
    DAY_FIRST_GUESSED("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4}|\\d{2})", 3, 2, 1, true),
    /** {@code 140531}, as receivers write it. */
    SIX_DIGITS("(\\d{2})(\\d{2})(\\d{2})", 3, 2, 1, false),
    /** {@code 14-May-2031}. */
    NAMED("(\\d{1,2})[-/. ]([A-Za-z]{3,9})[-/. ](\\d{4}|\\d{2})", 3, 2, 1, false);

    private static final List<String> MONTHS =
            List.of(
                    "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov",
                    "dec");

    private final Pattern pattern;
    private final int year;
    private final int month;
    private final int day;
    private final boolean guess;

    DateOrder(String pattern, int year, int month, int day, boolean guess) {
        this.pattern = Pattern.compile(pattern);
        this.year = year;
        this.month = month;
        this.day = day;
        this.guess = guess;
    }

    boolean isGuess() {
        return guess;
    }

    /** Midnight on the date, from 1970, or {@link IsoTime#NONE}. */
    long day_ns(String text) {
        Matcher m = pattern.matcher(text.strip());
        if (!m.matches()) {
            return IsoTime.NONE;
        }
        int y = Integer.parseInt(m.group(year));
        return IsoTime.day_ns(
                y < 80 ? 2000 + y : y < 100 ? 1900 + y : y,
                this == NAMED ? named(m.group(month)) : Integer.parseInt(m.group(month)),
                Integer.parseInt(m.group(day)));
    }

    /** The number of a month, 0 if there is none of that name. */
    private static int named(String month) {
        return 1 + MONTHS.indexOf(month.substring(0, 3).toLowerCase(Locale.ROOT));
    }

    /** The first order under which every sample is a date, or ISO if there is none. */
    static DateOrder of(List<String> samples) {
        boolean dotted = samples.stream().anyMatch(s -> s.matches(".*\\d\\.\\d.*"));
        for (DateOrder order : values()) {
            if (!samples.isEmpty()
                    && samples.stream().allMatch(s -> order.day_ns(s) != IsoTime.NONE)) {
                boolean ambiguous =
                        order == DAY_FIRST
                                && !dotted
                                && samples.stream()
                                        .allMatch(s -> MONTH_FIRST.day_ns(s) != IsoTime.NONE);
                if (!ambiguous) {
                    return order;
                }
                return DAY_FIRST_GUESSED;
            }
        }
        return ISO;
    }

    static boolean isDate(String text) {
        for (DateOrder order : values()) {
            if (order.day_ns(text) != IsoTime.NONE) {
                return true;
            }
        }
        return false;
    }
}
