package pairdown.format.csv;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairdown.time.IsoTime;

/**
 * Times in columns of their parts, none of which is a time by itself: hour, minute and second,
 * beside year, month and day or a column of whole dates.
 *
 * @param date columns of year, month and day; one column of dates; or none
 * @param time columns of hour, minute and second
 */
record ClockParts(List<Integer> date, List<Integer> time) {
    private static final List<Set<String>> DATE =
            List.of(Set.of("year", "yyyy"), Set.of("month", "mon"), Set.of("day"));
    private static final List<Set<String>> TIME =
            List.of(
                    Set.of("hour", "hours", "hr", "hh"),
                    Set.of("minute", "minutes", "min"),
                    Set.of("second", "seconds", "sec", "ss"));
    private static final Set<String> BESIDE = Set.of("utc", "gps", "gnss", "time");
    private static final long SECOND_NS = 1_000_000_000L;

    /** The parts among a header's columns, if hour, minute and second are there. */
    static Optional<ClockParts> among(List<Heading> headings) {
        List<Integer> time = columns(headings, TIME);
        if (time.isEmpty()) {
            return Optional.empty();
        }
        List<Integer> parts = columns(headings, DATE);
        List<Integer> date = parts.isEmpty() ? columns(headings, List.of(Set.of("date"))) : parts;
        return Optional.of(new ClockParts(date, time));
    }

    /** One column for each part, or none at all where one is missing. */
    private static List<Integer> columns(List<Heading> headings, List<Set<String>> parts) {
        List<Integer> found = parts.stream().map(names -> column(headings, names)).toList();
        return found.contains(-1) ? List.of() : found;
    }

    private static int column(List<Heading> headings, Set<String> names) {
        return IntStream.range(0, headings.size())
                .filter(i -> isNamed(headings.get(i), names))
                .findFirst()
                .orElse(-1);
    }

    private static boolean isNamed(Heading heading, Set<String> names) {
        List<String> words =
                Heading.words(heading.text()).stream().filter(w -> !BESIDE.contains(w)).toList();
        return words.size() == 1 && names.contains(words.get(0));
    }

    /** Whether a heading names a part of a time. */
    static boolean isOne(Heading heading) {
        return Stream.concat(DATE.stream(), TIME.stream()).anyMatch(n -> isNamed(heading, n));
    }

    /** Instants where there is a date, else times from midnight on. */
    TimeColumn column(List<String> dates, byte decimalMark) {
        TimeColumn.Part clock = part(time, n -> timeOfDay_ns(n), decimalMark);
        if (date.isEmpty()) {
            return TimeColumn.timeOfDay(clock);
        }
        if (date.size() == 1) {
            return TimeColumn.split(date.get(0), DateOrder.of(dates), clock);
        }
        return TimeColumn.split(part(date, n -> day_ns(n), decimalMark), List.of(), clock);
    }

    private interface Reading {
        long ns(double[] numbers);
    }

    private static TimeColumn.Part part(List<Integer> columns, Reading reading, byte decimalMark) {
        return new TimeColumn.Part() {
            private final double[] numbers = new double[columns.size()];

            @Override
            public long ns(Cells cells) {
                for (int i = 0; i < numbers.length; i++) {
                    numbers[i] = TimeColumn.number(cells, columns.get(i), decimalMark);
                }
                return reading.ns(numbers);
            }

            @Override
            public String text(Cells cells) {
                return String.join(" ", columns.stream().map(cells::text).toList());
            }
        };
    }

    private static long timeOfDay_ns(double[] n) {
        boolean whole = n[0] == Math.rint(n[0]) && n[1] == Math.rint(n[1]);
        boolean inRange = n[0] >= 0 && n[0] < 24 && n[1] >= 0 && n[1] < 60;
        return whole && inRange && n[2] >= 0 && n[2] < 61
                ? Math.round(n[0] * 3600 + n[1] * 60) * SECOND_NS + Math.round(n[2] * 1e6) * 1000
                : IsoTime.NONE;
    }

    private static long day_ns(double[] n) {
        boolean inRange =
                n[0] >= 0 && n[0] < 10_000 && n[1] >= 1 && n[1] < 13 && n[2] >= 1 && n[2] < 32;
        return inRange
                ? IsoTime.day_ns((int) (n[0] < 80 ? 2000 + n[0] : n[0]), (int) n[1], (int) n[2])
                : IsoTime.NONE;
    }
}
