package pairdown.format.csv;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairdown.format.source.Numbers;
import pairdown.format.source.Text;
import pairdown.time.GpsTime;
import pairdown.time.IsoTime;
import pairdown.units.LoggedUnit;

/** Finds the column of times, and what kind they are, from headings and the first rows. */
final class TimeHeading {
    private static final Set<String> TIME =
            Set.of(
                    "time",
                    "timestamp",
                    "datetime",
                    "utc",
                    "elapsed",
                    "clock",
                    "epoch",
                    "unixtime",
                    "t",
                    "seconds",
                    "sec",
                    "secs",
                    "gmt",
                    "tow",
                    "itow",
                    "uptime",
                    "hms",
                    "milliseconds",
                    "millis",
                    "ms",
                    "unix",
                    "s",
                    "hour",
                    "timeofday",
                    "tod");
    private static final Set<String> ZONE = Set.of("utc", "gmt");
    private static final Set<String> DATE = Set.of("date", "day", "ymd");
    private static final Set<String> MAY_STAND_BY =
            Set.of(
                    "gps",
                    "gnss",
                    "utc",
                    "local",
                    "of",
                    "day",
                    "date",
                    "stamp",
                    "since",
                    "start",
                    "log",
                    "logger",
                    "system",
                    "iso",
                    "iso8601",
                    "week",
                    "unix",
                    "posix",
                    "z",
                    "zulu",
                    "gmt",
                    "in",
                    "from",
                    "zero",
                    "run",
                    "recorded",
                    "at",
                    "instant",
                    "s",
                    "ms",
                    "1970",
                    "boot",
                    "relative",
                    "mission",
                    "flight",
                    "total",
                    "into",
                    "and",
                    "the",
                    "receiver",
                    "device",
                    "i",
                    "fix",
                    "sample",
                    "record",
                    "measurement");

    /** Greatest counts that can still be seconds, milliseconds, microseconds from 1970. */
    private static final double LEAST_UNIX_S = 3e8;

    /** The years 2000 and 2100 in a spreadsheet's days, and the ten seconds between two rows. */
    private static final double LEAST_SERIAL_DAY = 36_526;

    private static final double MOST_SERIAL_DAY = 73_051;
    private static final double MOST_SERIAL_STEP = 10 / 86_400.0;

    private static final double MOST_UNIX_S = 1e11;
    private static final double MOST_UNIX_MS = 1e14;
    private static final double MOST_UNIX_US = 1e17;

    private final List<Heading> headings;
    private final List<List<String>> rows;
    private final Dialect dialect;
    private final List<String> warnings;

    private TimeHeading(
            List<Heading> headings,
            List<List<String>> rows,
            Dialect dialect,
            List<String> warnings) {
        this.headings = headings;
        this.rows = rows;
        this.dialect = dialect;
        this.warnings = warnings;
    }

    /** Whether a heading names a time or date. */
    static boolean isOne(Heading heading) {
        return isTime(heading) || isDate(heading) || isWeek(heading);
    }

    private static boolean isTime(Heading heading) {
        List<String> words = heading.wordsBesideZone();
        return !words.isEmpty()
                && words.stream().anyMatch(TIME::contains)
                && words.stream().allMatch(w -> TIME.contains(w) || MAY_STAND_BY.contains(w));
    }

    private static boolean isDate(Heading heading) {
        List<String> words = heading.words();
        return words.stream().anyMatch(DATE::contains)
                && words.stream().noneMatch(w -> TIME.contains(w) && !ZONE.contains(w))
                && words.stream().allMatch(w -> DATE.contains(w) || MAY_STAND_BY.contains(w));
    }

    private static boolean isWeek(Heading heading) {
        List<String> words = heading.words();
        return words.contains("week")
                && words.stream()
                        .allMatch(
                                w ->
                                        Set.of("week", "gps", "gnss", "number", "no", "wn")
                                                .contains(w));
    }

    /** The column of times, if there is one whose first rows can be read. */
    static Optional<TimeColumn> find(
            List<Heading> headings,
            List<List<String>> rows,
            Dialect dialect,
            List<String> warnings) {
        return new TimeHeading(headings, rows, dialect, warnings).find();
    }

    private Optional<TimeColumn> find() {
        Optional<ClockParts> parts = ClockParts.among(headings);
        List<Integer> times = new ArrayList<>();
        int date = -1;
        int week = -1;
        for (int i = 0; i < headings.size(); i++) {
            if (parts.isPresent() && ClockParts.isOne(headings.get(i))) {
                continue;
            }
            if (isWeek(headings.get(i))) {
                week = i;
            } else if (isDate(headings.get(i)) && date < 0) {
                date = i;
            } else if (isTime(headings.get(i))) {
                times.add(i);
            }
        }
        Optional<TimeColumn> absolute = absolute(times, date, week);
        if (absolute.isPresent()) {
            return absolute;
        }
        if (parts.isPresent()) {
            List<Integer> dates = parts.get().date();
            return Optional.of(
                    parts.get()
                            .column(
                                    dates.size() == 1 ? samples(dates.get(0)) : List.of(),
                                    dialect.decimalMark()));
        }
        for (int column : times) {
            Optional<TimeColumn> relative = relative(column);
            if (relative.isPresent()) {
                return relative;
            }
        }
        return Optional.empty();
    }

    private Optional<TimeColumn> absolute(List<Integer> times, int date, int week) {
        List<Integer> candidates = new ArrayList<>(times);
        if (date >= 0) {
            candidates.add(date);
        }
        for (int column : candidates) {
            Optional<TimeColumn> one = inZone(column, date).or(() -> instants(column));
            if (one.isPresent()) {
                return one;
            }
        }
        for (int column : times) {
            double unit_s = unitOfWeek_s(column);
            double seconds = first(column) * unit_s;
            if (week >= 0 && seconds >= 0 && seconds <= GpsTime.WEEK_S) {
                return Optional.of(
                        GpsColumn.withWeekColumn(column, unit_s, week, dialect.decimalMark()));
            }
        }
        for (int column : times) {
            List<String> dates = date < 0 ? List.of() : samples(date);
            if (isTimeOfDay(column) && !dates.isEmpty() && !DateOrder.isDate(dates.get(0))) {
                warnings.add("no date in " + Text.quote(dates.get(0)));
            }
            if (isTimeOfDay(column) && !dates.isEmpty() && DateOrder.isDate(dates.get(0))) {
                if (isLocal(column)) {
                    return withoutZone(column);
                }
                return Optional.of(TimeColumn.split(date, DateOrder.of(dates), timeOfDay(column)));
            }
        }
        return Optional.empty();
    }

    /** A column that holds whole instants by itself. */
    private Optional<TimeColumn> instants(int column) {
        if (isLocal(column)) {
            return Optional.empty();
        }
        for (String text : samples(column)) {
            IsoTime.Reading reading = Clocks.dateTime(text);
            boolean hasTime = text.length() > 10;
            if (reading.isReadable() && hasTime && Double.isNaN(Numbers.parse(text))) {
                return Optional.of(TimeColumn.iso(column));
            }
        }
        List<String> dates = datesBeside(column);
        if (!dates.isEmpty()) {
            DateOrder order = DateOrder.of(dates);
            return Optional.of(
                    TimeColumn.split(
                            dateOf(column, order), TimeColumn.guess(order), timeOf(column)));
        }
        if (isSerialDays(column)) {
            return Optional.of(TimeColumn.serialDays(column, dialect.decimalMark()));
        }
        double value = first(column);
        if (value >= LEAST_UNIX_S && value < MOST_UNIX_S && !unitIsSmall(column)) {
            return Optional.of(counted(column, 1, true));
        }
        if (value >= MOST_UNIX_S && value < MOST_UNIX_MS) {
            return Optional.of(counted(column, 1e-3, true));
        }
        if (value >= MOST_UNIX_MS && value < MOST_UNIX_US) {
            return Optional.of(counted(column, 1e-6, true));
        }
        return value >= MOST_UNIX_US && value < 1e20
                ? Optional.of(counted(column, 1e-9, true))
                : Optional.empty();
    }

    /** The dates of a column that has dates with times behind them, as spreadsheets write them. */
    private List<String> datesBeside(int column) {
        List<String> dates = samples(column).stream().map(Clocks::dateOf).toList();
        boolean times =
                samples(column).stream()
                        .anyMatch(t -> Clocks.timeOfDay_ns(Clocks.timeOf(t)) != IsoTime.NONE);
        return times && DateOrder.isDate(dates.get(0)) ? dates : List.of();
    }

    private static TimeColumn.Part dateOf(int column, DateOrder order) {
        return TimeColumn.Part.of(cells -> Clocks.dateOf(cells.ascii(column)), order::day_ns);
    }

    private TimeColumn.Part timeOf(int column) {
        return TimeColumn.Part.timeOfDay(
                cells -> Clocks.timeOf(cells.ascii(column)), dialect.decimalMark());
    }

    /** Local times in a zone that the heading names, if their dates are there. */
    private Optional<TimeColumn> inZone(int column, int date) {
        Optional<ZoneId> zone = headings.get(column).zone();
        if (zone.isEmpty()) {
            return Optional.empty();
        }
        if (samples(column).stream().anyMatch(t -> Clocks.dateTime(t).isReadable())) {
            return zone.map(z -> TimeColumn.local(column, z, Optional.empty()));
        }
        List<String> beside = datesBeside(column);
        if (!beside.isEmpty()) {
            return zone.map(z -> inZone(dateOf(column, said(beside)), timeOf(column), z));
        }
        List<String> dates = date < 0 ? List.of() : samples(date);
        return isTimeOfDay(column) && !dates.isEmpty() && DateOrder.isDate(dates.get(0))
                ? zone.map(
                        z ->
                                inZone(
                                        TimeColumn.Part.of(c -> c.ascii(date), said(dates)::day_ns),
                                        timeOfDay(column),
                                        z))
                : Optional.empty();
    }

    private static TimeColumn inZone(TimeColumn.Part date, TimeColumn.Part time, ZoneId zone) {
        return TimeColumn.local(TimeColumn.Part.sum(date, time), zone);
    }

    /** The order of these dates; where it is a guess, that is said. */
    private DateOrder said(List<String> dates) {
        DateOrder order = DateOrder.of(dates);
        warnings.addAll(TimeColumn.guess(order).stream().limit(1).toList());
        return order;
    }

    /** Days of a spreadsheet's calendar: no log counts seconds in steps so small from so far on. */
    private boolean isSerialDays(int column) {
        List<Double> values = numbers(column);
        if (values.size() < 2 || headings.get(column).unit().isPresent()) {
            return false;
        }
        double first = values.get(0);
        double step = (values.get(values.size() - 1) - first) / (values.size() - 1);
        return first > LEAST_SERIAL_DAY
                && first < MOST_SERIAL_DAY
                && step > 0
                && step < MOST_SERIAL_STEP;
    }

    /** A count of milliseconds since power-on may reach what seconds from 1970 begin with. */
    private boolean unitIsSmall(int column) {
        return headings.get(column).unit().map(u -> u.factor() < 1).orElse(false)
                || headings.get(column).words().stream().anyMatch(w -> w.equals("ms"));
    }

    private TimeColumn counted(int column, double unit_s, boolean absolute) {
        return TimeColumn.counted(column, unit_s, dialect.decimalMark(), absolute);
    }

    private Optional<TimeColumn> relative(int column) {
        double value = first(column);
        if (!Double.isNaN(value)) {
            return Optional.of(counted(column, unit_s(column), false));
        }
        if (isTimeOfDay(column)) {
            return Optional.of(TimeColumn.timeOfDay(timeOfDay(column)));
        }
        boolean local = samples(column).stream().anyMatch(t -> Clocks.dateTime(t).isReadable());
        return local ? withoutZone(column) : Optional.empty();
    }

    /** Local times whose zone nobody told: their steps are right, their instant is not known. */
    private Optional<TimeColumn> withoutZone(int column) {
        warnings.add(
                "local times without a zone: no absolute time (name the zone in a column map, as"
                        + " 'local')");
        TimeColumn wall = TimeColumn.iso(column);
        boolean full = samples(column).stream().anyMatch(t -> Clocks.dateTime(t).isReadable());
        return Optional.of(full ? new Relative(wall) : TimeColumn.timeOfDay(timeOfDay(column)));
    }

    private TimeColumn.Part timeOfDay(int column) {
        return TimeColumn.Part.timeOfDay(cells -> cells.ascii(column), dialect.decimalMark());
    }

    /** A receiver's own iTOW, and what is more than a week in seconds, is in milliseconds. */
    private double unitOfWeek_s(int column) {
        Heading heading = headings.get(column);
        boolean small =
                String.join("", heading.words()).contains("itow") || first(column) > GpsTime.WEEK_S;
        return small && heading.unit().isEmpty() ? 1e-3 : unit_s(column);
    }

    private double unit_s(int column) {
        Heading heading = headings.get(column);
        if (heading.words().contains("ms") || heading.words().contains("milliseconds")) {
            return 1e-3;
        }
        return heading.unit()
                .filter(u -> u.measure() == LoggedUnit.Measure.TIME)
                .map(LoggedUnit::factor)
                .orElse(1.0);
    }

    private boolean isLocal(int column) {
        Heading heading = headings.get(column);
        return heading.words().contains("local") || heading.zone().isPresent();
    }

    private boolean isTimeOfDay(int column) {
        List<String> texts = samples(column);
        return !texts.isEmpty()
                && texts.stream().anyMatch(t -> Clocks.timeOfDay_ns(t) != IsoTime.NONE);
    }

    private double first(int column) {
        return numbers(column).stream().findFirst().orElse(Double.NaN);
    }

    private List<Double> numbers(int column) {
        return samples(column).stream()
                .map(t -> Numbers.parse(dialect.decimalMark() == ',' ? t.replace(',', '.') : t))
                .filter(value -> !Double.isNaN(value))
                .toList();
    }

    private List<String> samples(int column) {
        return rows.stream()
                .filter(r -> r.size() > column && !r.get(column).isEmpty())
                .map(r -> r.get(column))
                .toList();
    }

    /** The same steps, from the first row's time on. */
    private static final class Relative extends TimeColumn {
        private final TimeColumn wall;
        private long zero_ns = IsoTime.NONE;

        Relative(TimeColumn wall) {
            this.wall = wall;
        }

        @Override
        long ns(Cells cells) {
            long t_ns = wall.ns(cells);
            if (t_ns == IsoTime.NONE) {
                return refuse(wall.complaint());
            }
            if (zero_ns == IsoTime.NONE) {
                zero_ns = t_ns;
            }
            return t_ns - zero_ns;
        }

        @Override
        boolean isAbsolute() {
            return false;
        }
    }
}
