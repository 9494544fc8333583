package pairdown.format.csv;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pairdown.format.source.LogSource;
import pairdown.format.source.Numbers;
import pairdown.time.IsoTime;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.UnusableInputException;
import pairdown.units.LoggedUnit;
import pairdown.units.Unit;

/** Makes the layout of a CSV log as its column map says. */
final class MappedLayout {
    private static final String KINDS =
            "iso, unix-seconds, unix-millis, gps-seconds-of-week, seconds, local";

    private final ColumnMap map;
    private final LogSource source;
    private final Dialect dialect;
    private final SampleLines lines;
    private final List<String> warnings = new ArrayList<>();
    private HeightDatum datum = HeightDatum.UNKNOWN;

    private MappedLayout(ColumnMap map, LogSource source, byte[] head) {
        this.map = map;
        this.source = source;
        Dialect found = Dialect.of(head);
        byte delimiter = map.delimiter().orElse(found.delimiter());
        this.dialect =
                new Dialect(
                        delimiter,
                        map.decimal()
                                .orElseGet(
                                        () ->
                                                Dialect.decimalMark(
                                                        Dialect.sample(head), delimiter)));
        this.lines = SampleLines.of(head, dialect);
    }

    static Layout of(ColumnMap map, LogSource source, byte[] head) throws UnusableInputException {
        return new MappedLayout(map, source, head).layout();
    }

    private Layout layout() throws UnusableInputException {
        int headerRow = map.skipRows();
        if (headerRow >= lines.size()) {
            throw source.unusable(
                    headerRow + 1L, "has no header row there", "mend skipRows in " + map.file());
        }
        List<String> header = lines.cells(headerRow);
        int firstData = headerRow + 1;
        List<String> units = List.of();
        if (firstData < lines.size() && SampleLines.isUnits(lines.cells(firstData))) {
            units = lines.cells(firstData);
            firstData++;
        }
        List<ValueColumn> columns = new ArrayList<>();
        for (ColumnMap.Mapped mapped : map.channels()) {
            int index = index(header, mapped.column(), headerRow);
            columns.add(column(mapped, index, header.get(index), units));
        }
        return new Layout(
                dialect,
                firstData + 1L,
                header.size(),
                time(header, headerRow, firstData),
                columns,
                Hemispheres.among(header.stream().map(Heading::of).toList()),
                datum,
                false,
                warnings);
    }

    private int index(List<String> header, String name, int headerRow)
            throws UnusableInputException {
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).equals(name.strip())) {
                return i;
            }
        }
        for (int i = 0; i < header.size(); i++) {
            if (header.get(i).equalsIgnoreCase(name.strip())) {
                return i;
            }
        }
        throw source.unusable(
                headerRow + 1L,
                "has no column '" + name + "', only " + String.join(", ", header),
                "mend " + map.file());
    }

    private ValueColumn column(
            ColumnMap.Mapped mapped, int index, String heading, List<String> units)
            throws UnusableInputException {
        Channel channel = channel(mapped);
        Optional<LoggedUnit> unit = unit(mapped, channel);
        if (unit.isEmpty() && index < units.size()) {
            unit = SampleLines.unit(units.get(index));
        }
        if (unit.isEmpty() && mapped.scale() == 1 && mapped.offset() == 0) {
            unit = Heading.of(heading).unit();
        }
        LoggedUnit u =
                unit.filter(x -> Words.fits(channel, x))
                        .orElse(new LoggedUnit(LoggedUnit.Measure.SHARE, 1, 0));
        return new ValueColumn(
                index,
                heading,
                channel,
                mapped.scale() * u.factor(),
                mapped.offset() * u.factor() + u.offset());
    }

    private Channel channel(ColumnMap.Mapped mapped) throws UnusableInputException {
        Optional<Channel> channel = Channel.ofKey(mapped.channel());
        if (channel.isEmpty()) {
            throw new UnusableInputException(
                    "unknown channel '" + mapped.channel() + "'",
                    map.file(),
                    "use one of "
                            + Arrays.stream(Channel.values())
                                    .map(Channel::key)
                                    .collect(Collectors.joining(", ")));
        }
        if (channel.get() != Channel.HEIGHT || mapped.datum().isEmpty()) {
            return channel.get();
        }
        switch (mapped.datum().get()) {
            case "pressure" -> {
                return Channel.PRESSURE_ALTITUDE;
            }
            case "ellipsoid" -> datum = HeightDatum.ELLIPSOID;
            case "msl" -> datum = HeightDatum.MSL;
            default ->
                    throw new UnusableInputException(
                            "unknown datum '" + mapped.datum().get() + "'",
                            map.file(),
                            "use ellipsoid, msl or pressure");
        }
        return Channel.HEIGHT;
    }

    private Optional<LoggedUnit> unit(ColumnMap.Mapped mapped, Channel channel)
            throws UnusableInputException {
        if (mapped.unit().isEmpty()) {
            return Optional.empty();
        }
        String symbol = mapped.unit().get();
        Optional<LoggedUnit> unit = LoggedUnit.of(symbol);
        if (unit.isEmpty()) {
            throw new UnusableInputException(
                    "unknown unit '" + symbol + "' of " + mapped.channel(),
                    map.file(),
                    "use one of " + Unit.allSymbols());
        }
        if (!Words.fits(channel, unit.get())) {
            throw new UnusableInputException(
                    "unit '" + symbol + "' does not fit " + mapped.channel(),
                    map.file(),
                    channel.dimension()
                            .map(d -> "use one of " + Unit.symbolsOf(d))
                            .orElse("leave the unit out, or use scale"));
        }
        return unit;
    }

    private TimeColumn time(List<String> header, int headerRow, int firstData)
            throws UnusableInputException {
        if (map.time().isEmpty()) {
            List<Heading> headings = header.stream().map(Heading::of).toList();
            return TimeHeading.find(headings, lines.from(firstData), dialect, warnings)
                    .orElseThrow(
                            () ->
                                    new UnusableInputException(
                                            "names no time column", map.file(), "add \"time\""));
        }
        ColumnMap.Time time = map.time().get();
        int column = index(header, time.column(), headerRow);
        byte mark = dialect.decimalMark();
        return switch (time.as()) {
            case "iso" -> TimeColumn.iso(column);
            case "unix-seconds" -> TimeColumn.counted(column, 1, mark, true);
            case "unix-millis" -> TimeColumn.counted(column, 1e-3, mark, true);
            case "seconds" -> TimeColumn.counted(column, 1, mark, false);
            case "gps-seconds-of-week" -> gps(time, column, header, headerRow);
            case "local" -> TimeColumn.local(column, zone(time), date(time));
            default ->
                    throw new UnusableInputException(
                            "unknown time kind '" + time.as() + "'",
                            map.file(),
                            "use one of " + KINDS);
        };
    }

    /** The week is a number, or the name of the column that has it. */
    private TimeColumn gps(ColumnMap.Time time, int column, List<String> header, int headerRow)
            throws UnusableInputException {
        byte mark = dialect.decimalMark();
        String week = time.week().orElse("");
        if (week.matches("[0-9]{1,4}")) {
            return GpsColumn.ofTypedWeek(column, Integer.parseInt(week), mark);
        }
        if (week.isEmpty() || !Double.isNaN(Numbers.parse(week))) {
            throw new UnusableInputException(
                    "gps-seconds-of-week needs the GPS week",
                    map.file(),
                    "add \"week\": the number, or the name of its column");
        }
        return GpsColumn.withWeekColumn(column, 1, index(header, week, headerRow), mark);
    }

    private ZoneId zone(ColumnMap.Time time) throws UnusableInputException {
        if (time.zone().isEmpty()) {
            throw new UnusableInputException(
                    "local time needs its zone",
                    map.file(),
                    "add \"zone\", such as \"Africa/Windhoek\"");
        }
        try {
            return ZoneId.of(time.zone().get());
        } catch (DateTimeException e) {
            throw new UnusableInputException(
                    "unknown zone '" + time.zone().get() + "'",
                    map.file(),
                    "use a name like \"Africa/Windhoek\" or an offset like \"+02:00\"",
                    e);
        }
    }

    private Optional<Long> date(ColumnMap.Time time) throws UnusableInputException {
        if (time.date().isEmpty()) {
            return Optional.empty();
        }
        long day_ns = DateOrder.ISO.day_ns(time.date().get());
        if (day_ns == IsoTime.NONE) {
            throw new UnusableInputException(
                    "'" + time.date().get() + "' is no date", map.file(), "write it as 2031-05-14");
        }
        return Optional.of(day_ns);
    }
}
