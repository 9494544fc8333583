package pairdown.format.csv;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pairdown.format.source.Text;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.units.LoggedUnit;

/** Finds the layout of a CSV log from its own header: the row with the most headings known here. */
final class HeaderLayout {
    private static final int MOST_NAMED = 5;

    private final Dialect dialect;
    private final SampleLines lines;

    private HeaderLayout(Dialect dialect, SampleLines lines) {
        this.dialect = dialect;
        this.lines = lines;
    }

    /** The layout, or empty where no row reads like a header. */
    static Optional<Layout> of(byte[] head) {
        Dialect dialect = Dialect.of(head);
        return new HeaderLayout(dialect, SampleLines.of(head, dialect)).find();
    }

    private Optional<Layout> find() {
        int best = -1;
        int most = 1;
        for (int i = 0; i < lines.size(); i++) {
            int known = known(lines.cells(i));
            if (known > most) {
                most = known;
                best = i;
            }
        }
        return best < 0 ? Optional.empty() : layout(best);
    }

    /** Whether the last line reads like a header, so that nothing follows it. */
    static boolean isHeaderAlone(SampleLines lines) {
        return lines.size() > 0 && known(lines.cells(lines.size() - 1)) > 1;
    }

    private static int known(List<String> cells) {
        int known = 0;
        for (String cell : cells) {
            Heading heading = Heading.of(cell);
            known += Words.meaning(heading).isPresent() || TimeHeading.isOne(heading) ? 1 : 0;
        }
        return known;
    }

    private Optional<Layout> layout(int header) {
        List<Heading> headings = new ArrayList<>();
        lines.cells(header).forEach(cell -> headings.add(Heading.of(cell)));
        int firstData = header + 1;
        if (firstData < lines.size() && SampleLines.isUnits(lines.cells(firstData))) {
            List<String> units = lines.cells(firstData);
            for (int i = 0; i < Math.min(units.size(), headings.size()); i++) {
                headings.set(i, headings.get(i).or(SampleLines.unit(units.get(i))));
            }
            firstData++;
        }
        List<String> warnings = new ArrayList<>();
        Optional<TimeColumn> time =
                TimeHeading.find(headings, lines.from(firstData), dialect, warnings);
        if (time.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                withColumns(
                        headings,
                        lines.lineNumber(header) + firstData - header,
                        time.get(),
                        warnings));
    }

    private Layout withColumns(
            List<Heading> headings, long firstDataLine, TimeColumn time, List<String> warnings) {
        Map<Channel, ValueColumn> columns = new EnumMap<>(Channel.class);
        Hemispheres hemispheres = Hemispheres.among(headings);
        List<String> unknown = new ArrayList<>();
        HeightDatum datum = HeightDatum.UNKNOWN;
        boolean signOpen = false;
        for (int i = 0; i < headings.size(); i++) {
            Heading heading = headings.get(i);
            Optional<Words.Meaning> found = Words.meaning(heading);
            if (found.isEmpty()) {
                if (!heading.text().isBlank()
                        && !TimeHeading.isOne(heading)
                        && !ClockParts.isOne(heading)
                        && !hemispheres.has(i)) {
                    unknown.add(heading.text());
                }
                continue;
            }
            Words.Meaning meaning = found.get();
            Channel channel = meaning.channel();
            boolean better = channel == Channel.HEIGHT && meaning.datum() == Words.Datum.ELLIPSOID;
            if (columns.containsKey(channel) && !better) {
                warnings.add(
                        "column '" + heading.text() + "' not used: " + channel.key() + " is there");
                continue;
            }
            columns.put(channel, column(i, heading, meaning));
            signOpen |= channel == Channel.VELOCITY_DOWN && !meaning.signStated();
            if (channel == Channel.HEIGHT) {
                datum = datum(meaning.datum());
            }
            if (heading.words().contains("magnetic") || heading.words().contains("mag")) {
                warnings.add("headings are magnetic, not true");
            }
        }
        courseForHeading(columns, warnings);
        if (!unknown.isEmpty()) {
            warnings.add(notUsed(unknown));
        }
        return new Layout(
                dialect,
                firstDataLine,
                headings.size(),
                time,
                List.copyOf(columns.values()),
                hemispheres,
                datum,
                signOpen,
                warnings);
    }

    /** Columns whose heading is in no words known here: a coach may miss one of them. */
    private static String notUsed(List<String> columns) {
        String named =
                columns.stream()
                        .limit(MOST_NAMED)
                        .map(Text::quote)
                        .collect(Collectors.joining(", "));
        int more = columns.size() - MOST_NAMED;
        return "columns not known and not used: "
                + named
                + (more > 0 ? " and " + more + " more" : "");
    }

    /**
     * A receiver's log without attitude or airspeed has no compass: its "heading" is the direction
     * of motion.
     */
    private static void courseForHeading(Map<Channel, ValueColumn> columns, List<String> warnings) {
        ValueColumn heading = columns.get(Channel.HEADING);
        boolean instruments =
                columns.containsKey(Channel.PITCH)
                        || columns.containsKey(Channel.ROLL)
                        || columns.containsKey(Channel.INDICATED_AIRSPEED)
                        || columns.containsKey(Channel.TRUE_AIRSPEED)
                        || columns.containsKey(Channel.TRACK);
        if (heading != null
                && columns.containsKey(Channel.LATITUDE)
                && !instruments
                && !heading.name().equals(Channel.HEADING.key())) {
            columns.remove(Channel.HEADING);
            columns.put(
                    Channel.TRACK,
                    new ValueColumn(
                            heading.index(),
                            heading.name(),
                            Channel.TRACK,
                            heading.factor(),
                            heading.offset()));
            warnings.add(
                    "column '"
                            + heading.name()
                            + "' taken as the direction of motion: the log has no"
                            + " attitude");
        }
    }

    private static ValueColumn column(int index, Heading heading, Words.Meaning meaning) {
        LoggedUnit unit = heading.unit().orElse(new LoggedUnit(LoggedUnit.Measure.SHARE, 1, 0));
        return new ValueColumn(
                index,
                heading.text(),
                meaning.channel(),
                unit.factor() * meaning.sign(),
                unit.offset() * meaning.sign());
    }

    private static HeightDatum datum(Words.Datum datum) {
        return switch (datum) {
            case MSL -> HeightDatum.MSL;
            case ELLIPSOID -> HeightDatum.ELLIPSOID;
            case NONE -> HeightDatum.UNKNOWN;
        };
    }
}
