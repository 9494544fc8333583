package pairdown.format.igc;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.format.source.ByteLines;
import pairdown.format.source.DayClock;
import pairdown.format.source.LogSource;
import pairdown.format.source.Notes;
import pairdown.format.source.Numbers;
import pairdown.format.source.Rows;
import pairdown.format.source.Text;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;

/** Reads one IGC log. Records A, D, F, G, L and unknown ones carry nothing that is used. */
final class IgcReader {
    private static final Pattern DATE =
            Pattern.compile("H[FOP]DTE(?:DATE)?\\s*:?\\s*(\\d{2})(\\d{2})(\\d{2}).*");
    private static final int B_LENGTH = IgcFix.LENGTH;
    private static final int K_LENGTH = 7;

    private final Notes notes = new Notes();
    private final Rows rows;
    private final DayClock clock = new DayClock();
    private final List<String> declaration = new ArrayList<>();
    private List<IgcExtension> onFixes = List.of();
    private List<IgcExtension> onData = List.of();
    private Optional<HeightDatum> datum = Optional.empty();
    private boolean pressureSeen;
    private final FlatFixes flatFixes;

    IgcReader(LogSource source) {
        this.rows = new Rows(source, "igc", notes);
        this.flatFixes = new FlatFixes(rows, notes);
    }

    Track read(ByteLines lines) throws IOException, UnusableInputException {
        while (lines.next()) {
            if (lines.isTooLong()) {
                notes.skip(lines.number(), "line too long for any record");
            } else if (lines.length() > 0) {
                record(lines);
            }
        }
        flatFixes.settle();
        if (!pressureSeen) {
            rows.clearAll(Channel.PRESSURE_ALTITUDE);
        }
        if (!clock.isDated()) {
            notes.warn("no date (HFDTE record): times are from midnight of the first day");
        }
        noteDeclaration();
        return rows.finish(clock.isDated(), decidedDatum());
    }

    private void record(ByteLines lines) {
        switch (lines.bytes()[lines.from()]) {
            case 'B' -> fix(lines);
            case 'H' -> header(lines);
            case 'I' -> onFixes = extensions(lines, B_LENGTH);
            case 'J' -> onData = extensions(lines, K_LENGTH);
            case 'K' -> data(lines);
            case 'E' -> event(lines);
            case 'C' -> declaration.add(lines.text().substring(1).strip());
            case 'A', 'D', 'F', 'G', 'L', 'M', 'N', 'O', 'P', 'Q' -> {}
            default -> notes.skip(lines.number(), "no IGC record: " + Text.quote(lines.latin1()));
        }
    }

    private List<IgcExtension> extensions(ByteLines lines, int fixedLength) {
        List<IgcExtension> declared =
                IgcExtension.declared(lines.latin1(), lines.number(), fixedLength, notes);
        List<String> unused =
                declared.stream()
                        .filter(e -> e.meaning().isEmpty())
                        .map(IgcExtension::code)
                        .filter(c -> !List.of("LAD", "LOD", "TDS").contains(c))
                        .toList();
        if (!unused.isEmpty()) {
            notes.warn("extensions without a channel, not used: " + String.join(" ", unused));
        }
        return declared;
    }

    private void fix(ByteLines lines) {
        if (!lines.isWhole() && lines.length() < declaredLength()) {
            notes.skip(lines.number(), "fix cut short at the end of the file");
            return;
        }
        if (!IgcFix.isFix(lines) || lines.length() < B_LENGTH) {
            notes.skip(
                    lines.number(),
                    lines.length() < B_LENGTH
                            ? "fix cut short"
                            : "damaged fix " + Text.quote(lines.latin1()));
            return;
        }
        byte[] a = lines.bytes();
        int b = lines.from();
        long tod_ns = IgcFix.timeOfDay_ns(a, b + 1);
        if (tod_ns < 0) {
            notes.skip(lines.number(), "no time of day: " + Text.quote(lines.latin1()));
            return;
        }
        rows.begin(clock.at(tod_ns + decimals_ns(lines), rows), lines.number());
        double pressure_m = height(a, b + 25);
        rows.set(Channel.PRESSURE_ALTITUDE, pressure_m);
        pressureSeen |= pressure_m != 0 && !Double.isNaN(pressure_m);
        position(lines, a[b + 24] != 'A');
        extras(lines, onFixes);
    }

    private int declaredLength() {
        return onFixes.stream().mapToInt(IgcExtension::to).max().orElse(B_LENGTH);
    }

    private void position(ByteLines lines, boolean flat) {
        byte[] a = lines.bytes();
        int b = lines.from();
        double lat = IgcFix.degrees(a, b + 7, 2, further(lines, "LAD"));
        double lon = IgcFix.degrees(a, b + 15, 3, further(lines, "LOD"));
        boolean placed =
                rows.position(a[b + 14] == 'S' ? -lat : lat, a[b + 23] == 'W' ? -lon : lon);
        if (!placed) {
            return;
        }
        flatFixes.placed(flat, lines.number());
        double height_m = height(a, b + 30);
        if (flat) {
            rows.set(Channel.FIX_TYPE, 2);
        } else if (height_m != 0) {
            rows.set(Channel.HEIGHT, height_m);
        }
    }

    /** Five characters, the first a digit or a minus. */
    private static double height(byte[] a, int at) {
        return Numbers.parse(a, at, at + 5, (byte) 0);
    }

    private double further(ByteLines lines, String code) {
        for (IgcExtension e : onFixes) {
            if (e.code().equals(code) && e.to() <= lines.length()) {
                int digits = Numbers.digits(lines.bytes(), lines.from() + e.from(), e.length());
                return digits < 0 ? 0 : digits / Math.pow(10, e.length());
            }
        }
        return 0;
    }

    private long decimals_ns(ByteLines lines) {
        return Math.round(further(lines, "TDS") * 1e9);
    }

    private void extras(ByteLines lines, List<IgcExtension> extensions) {
        for (IgcExtension e : extensions) {
            Optional<IgcExtension.Meaning> meaning = e.meaning();
            if (meaning.isEmpty()) {
                continue;
            }
            if (e.to() > lines.length()) {
                notes.skip(lines.number(), e.code() + " is missing: line cut short");
                continue;
            }
            double value = e.value(lines.bytes(), lines.from(), meaning.get());
            if (Double.isNaN(value)) {
                String raw = lines.latin1().substring(e.from(), e.to());
                notes.skip(lines.number(), e.code() + " " + Text.quote(raw) + " is no number");
            } else if (value != 0 || !isAccuracy(meaning.get().channel())) {
                rows.set(meaning.get().channel(), value);
            }
        }
    }

    /** Zero there means that the recorder has none. */
    private static boolean isAccuracy(Channel channel) {
        return channel == Channel.HORIZONTAL_ACCURACY || channel == Channel.VERTICAL_ACCURACY;
    }

    private void data(ByteLines lines) {
        long tod_ns =
                lines.length() < K_LENGTH
                        ? -1
                        : IgcFix.timeOfDay_ns(lines.bytes(), lines.from() + 1);
        boolean useful = onData.stream().anyMatch(e -> e.meaning().isPresent());
        if (tod_ns < 0) {
            notes.skip(lines.number(), "damaged K record");
        } else if (useful) {
            rows.beginAside(clock.near(tod_ns), lines.number());
            extras(lines, onData);
        }
    }

    private void event(ByteLines lines) {
        long tod_ns =
                lines.length() < K_LENGTH
                        ? -1
                        : IgcFix.timeOfDay_ns(lines.bytes(), lines.from() + 1);
        if (tod_ns < 0) {
            notes.skip(lines.number(), "damaged event record");
        } else {
            notes.event(clock.near(tod_ns), lines.text().substring(K_LENGTH).strip());
        }
    }

    private void noteDeclaration() {
        if (rows.size() > 0 && !declaration.isEmpty()) {
            notes.event(rows.time_ns(0), "declared task: " + String.join("; ", declaration));
        }
    }

    private void header(ByteLines lines) {
        String text = lines.text();
        Matcher date = DATE.matcher(text);
        if (date.matches()) {
            boolean good = clock.date(date.group(1), date.group(2), date.group(3), rows);
            if (!good) {
                notes.skip(lines.number(), "no such date: " + Text.quote(text));
            }
        } else if (text.length() > 5 && text.startsWith("ALG", 2)) {
            datum = statedDatum(text.substring(5));
        } else if (text.length() > 5 && text.startsWith("ALP", 2) && text.contains("MSL")) {
            notes.warn("pressure altitude is set to a sea-level pressure (HFALP), not 1013.25 hPa");
        } else if (text.length() > 5 && text.startsWith("DTM", 2) && !text.contains("84")) {
            notes.warn("positions are not on WGS 84: " + text.strip());
        }
    }

    private static Optional<HeightDatum> statedDatum(String text) {
        if (text.contains("ELL")) {
            return Optional.of(HeightDatum.ELLIPSOID);
        }
        if (text.contains("GEO") || text.contains("MSL")) {
            return Optional.of(HeightDatum.MSL);
        }
        return Optional.empty();
    }

    private HeightDatum decidedDatum() {
        if (datum.isEmpty()) {
            notes.warn("height datum not stated (HFALG): taken as the ellipsoid");
        }
        return datum.orElse(HeightDatum.ELLIPSOID);
    }
}
