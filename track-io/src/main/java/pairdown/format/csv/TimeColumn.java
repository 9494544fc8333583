package pairdown.format.csv;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import pairdown.format.source.Numbers;
import pairdown.format.source.Text;
import pairdown.time.IsoTime;

/**
 * How a row's time is read from its cells, to nanoseconds from 1970 UTC or from the log's own zero.
 */
abstract class TimeColumn {
    static final long SECOND_NS = 1_000_000_000L;
    private static final long DAY_NS = 86_400 * SECOND_NS;

    private static final int SERIAL_DAY_OF_1970 = 25_569;

    /** Counts from 1970 end in the year 2200, as dates do. */
    private static final double MOST_S = 7.26e9;

    /** What came of reading a row's time: the reason where there is none. */
    private String complaint = "no time";

    /** The row's time, or {@link IsoTime#NONE}. */
    abstract long ns(Cells cells);

    /** Whether the times are instants. */
    abstract boolean isAbsolute();

    /** What the times assume, in words. */
    List<String> warnings() {
        return List.of();
    }

    /** Why the last row has no time. */
    String complaint() {
        return complaint;
    }

    long refuse(String reason) {
        complaint = reason;
        return IsoTime.NONE;
    }

    /** A date and time in one cell, a missing zone being UTC. */
    static TimeColumn iso(int column) {
        return new TimeColumn() {
            private boolean zoneless;

            @Override
            long ns(Cells cells) {
                IsoTime.Reading r = Clocks.dateTime(cells.ascii(column));
                if (!r.isReadable()) {
                    return refuse("no time in " + quoted(cells, column));
                }
                zoneless |= !r.hasZone();
                return r.local_ns() - (r.hasZone() ? r.offset_ns() : 0);
            }

            @Override
            boolean isAbsolute() {
                return true;
            }

            @Override
            List<String> warnings() {
                return zoneless ? List.of("times name no zone: taken as UTC") : List.of();
            }
        };
    }

    /** A number that counts from 1970 or from the log's own zero. */
    static TimeColumn counted(int column, double unit_s, byte decimalMark, boolean absolute) {
        return new TimeColumn() {
            @Override
            long ns(Cells cells) {
                double value = number(cells, column, decimalMark);
                double t_s = value * unit_s;
                return t_s < MOST_S && t_s >= (absolute ? 0 : -MOST_S)
                        ? Math.round(t_s * 1e6) * 1000
                        : refuse("no time in " + quoted(cells, column));
            }

            @Override
            boolean isAbsolute() {
                return absolute;
            }
        };
    }

    /**
     * Days and their parts from 30 December 1899, as spreadsheets count them (ECMA-376 part 1,
     * 18.17.4.1, the 1900 date base from March 1900 on).
     */
    static TimeColumn serialDays(int column, byte decimalMark) {
        return new TimeColumn() {
            @Override
            long ns(Cells cells) {
                double t_s = (number(cells, column, decimalMark) - SERIAL_DAY_OF_1970) * 86_400;
                return t_s >= 0 && t_s < MOST_S
                        ? Math.round(t_s * 1e3) * 1_000_000
                        : refuse("no time in " + quoted(cells, column));
            }

            @Override
            boolean isAbsolute() {
                return true;
            }

            @Override
            List<String> warnings() {
                return List.of("times taken as days of a spreadsheet's calendar, in UTC");
            }
        };
    }

    /** A date or a time of day, wherever in a row it stands. */
    interface Part {
        /** From 1970, or from midnight; {@link IsoTime#NONE} where it can't be read. */
        long ns(Cells cells);

        /** What the row has there. */
        String text(Cells cells);

        /** A part that is one text. */
        static Part of(Function<Cells, String> text, ToLongFunction<String> ns) {
            return new Part() {
                @Override
                public long ns(Cells cells) {
                    return ns.applyAsLong(text.apply(cells));
                }

                @Override
                public String text(Cells cells) {
                    return text.apply(cells);
                }
            };
        }

        /** A date and time of day without a zone in one text. */
        static Part dateTime(Function<Cells, String> text) {
            return of(text, t -> Clocks.dateTime(t).local_ns());
        }

        /** The moment that a date and a time of day make together. */
        static Part sum(Part date, Part time) {
            return new Part() {
                @Override
                public long ns(Cells cells) {
                    long day_ns = date.ns(cells);
                    long time_ns = time.ns(cells);
                    return day_ns == IsoTime.NONE || time_ns == IsoTime.NONE
                            ? IsoTime.NONE
                            : day_ns + time_ns;
                }

                @Override
                public String text(Cells cells) {
                    return date.text(cells) + " " + time.text(cells);
                }
            };
        }

        /** A time of day in one text. */
        static Part timeOfDay(Function<Cells, String> text, byte decimalMark) {
            return of(text, t -> Clocks.timeOfDay_ns(decimalMark == ',' ? t.replace(',', '.') : t));
        }
    }

    /** A date and a time of day in two columns. */
    static TimeColumn split(int dateColumn, DateOrder order, Part time) {
        return split(Part.of(cells -> cells.ascii(dateColumn), order::day_ns), guess(order), time);
    }

    /** What is to be said of an order of dates. */
    static List<String> guess(DateOrder order) {
        return order.isGuess()
                ? List.of("dates like 3/4/2031 taken as day/month", "times taken as UTC")
                : List.of();
    }

    /** A date and a time of day, with what is to be said of the date. */
    static TimeColumn split(Part date, List<String> ofDate, Part time) {
        return new TimeColumn() {
            private boolean zoneless;

            @Override
            long ns(Cells cells) {
                long day_ns = date.ns(cells);
                long time_ns = time.ns(cells);
                if (day_ns == IsoTime.NONE || time_ns == IsoTime.NONE) {
                    return refuse(
                            "no time in "
                                    + Text.quote(date.text(cells))
                                    + " "
                                    + Text.quote(time.text(cells)));
                }
                zoneless |= !time.text(cells).endsWith("Z");
                return day_ns + time_ns;
            }

            @Override
            boolean isAbsolute() {
                return true;
            }

            @Override
            List<String> warnings() {
                return !ofDate.isEmpty()
                        ? ofDate
                        : zoneless ? List.of("times name no zone: taken as UTC") : List.of();
            }
        };
    }

    /** A time of day without date: from the first midnight, days added as it passes midnight. */
    static TimeColumn timeOfDay(Part time) {
        return new TimeColumn() {
            private long day_ns;
            private long last_ns = IsoTime.NONE;

            @Override
            long ns(Cells cells) {
                long t_ns = time.ns(cells);
                if (t_ns == IsoTime.NONE) {
                    return refuse("no time in " + Text.quote(time.text(cells)));
                }
                if (last_ns != IsoTime.NONE && day_ns + t_ns < last_ns - DAY_NS / 2) {
                    day_ns += DAY_NS;
                }
                last_ns = day_ns + t_ns;
                return last_ns;
            }

            @Override
            boolean isAbsolute() {
                return false;
            }

            @Override
            List<String> warnings() {
                return List.of(
                        "times of day without a date: counted from midnight, no absolute time");
            }
        };
    }

    /** Local dates and times, or times of day of one local date, in a zone. */
    static TimeColumn local(int column, ZoneId zone, Optional<Long> day_ns) {
        Part full = Part.dateTime(cells -> cells.ascii(column));
        return local(day_ns.<Part>map(day -> new DaysOn(column, day, full)).orElse(full), zone);
    }

    /** Local dates and times in a zone. */
    static TimeColumn local(Part wall, ZoneId zone) {
        return new LocalTimeColumn(wall, zone);
    }

    /** Times of day from a date on, a day later each time they pass midnight. */
    private static final class DaysOn implements Part {
        private final int column;
        private final Part full;
        private long day_ns;
        private long last_ns = IsoTime.NONE;

        DaysOn(int column, long day_ns, Part full) {
            this.column = column;
            this.day_ns = day_ns;
            this.full = full;
        }

        @Override
        public long ns(Cells cells) {
            long time_ns = Clocks.timeOfDay_ns(text(cells));
            if (time_ns == IsoTime.NONE) {
                return full.ns(cells);
            }
            if (last_ns != IsoTime.NONE && day_ns + time_ns < last_ns - DAY_NS / 2) {
                day_ns += DAY_NS;
            }
            last_ns = day_ns + time_ns;
            return last_ns;
        }

        @Override
        public String text(Cells cells) {
            return cells.ascii(column);
        }
    }

    static double number(Cells cells, int column, byte decimalMark) {
        return column < cells.size()
                ? Numbers.parse(cells.bytes(), cells.from(column), cells.to(column), decimalMark)
                : Double.NaN;
    }

    static String quoted(Cells cells, int column) {
        return Text.quote(cells.text(column));
    }

    /** Local wall-clock time; hours that a change of clocks skips or repeats are said. */
    private static final class LocalTimeColumn extends TimeColumn {
        private final Part wall;
        private final ZoneId zone;
        private long lastLocal_ns = IsoTime.NONE;
        private long cachedMinute = Long.MIN_VALUE;
        private List<ZoneOffset> cachedOffsets = List.of();
        private boolean repeatedHour;
        private boolean inSecondPass;

        LocalTimeColumn(Part wall, ZoneId zone) {
            this.wall = wall;
            this.zone = zone;
        }

        @Override
        long ns(Cells cells) {
            long local_ns = wall.ns(cells);
            if (local_ns == IsoTime.NONE) {
                return refuse("no time in " + Text.quote(wall.text(cells)));
            }
            List<ZoneOffset> offsets = offsets(local_ns);
            if (offsets.isEmpty()) {
                return refuse(
                        Text.quote(wall.text(cells))
                                + " does not exist in "
                                + zone
                                + ": clocks went forward");
            }
            repeatedHour |= offsets.size() > 1;
            inSecondPass =
                    offsets.size() > 1
                            && (inSecondPass
                                    || (lastLocal_ns != IsoTime.NONE
                                            && local_ns < lastLocal_ns - 1800 * SECOND_NS));
            lastLocal_ns = local_ns;
            ZoneOffset offset = offsets.get(inSecondPass ? 1 : 0);
            return local_ns - offset.getTotalSeconds() * SECOND_NS;
        }

        /** Offsets change on whole minutes; one look-up a minute of log is enough. */
        private List<ZoneOffset> offsets(long local_ns) {
            long minute = Math.floorDiv(local_ns, 60 * SECOND_NS);
            if (minute != cachedMinute) {
                cachedMinute = minute;
                cachedOffsets =
                        zone.getRules()
                                .getValidOffsets(
                                        LocalDateTime.ofEpochSecond(
                                                minute * 60, 0, ZoneOffset.UTC));
            }
            return cachedOffsets;
        }

        @Override
        boolean isAbsolute() {
            return true;
        }

        @Override
        List<String> warnings() {
            return repeatedHour
                    ? List.of(
                            "some local times come twice in "
                                    + zone
                                    + " (clocks went back): taken as the first, until they step back")
                    : List.of();
        }
    }
}
