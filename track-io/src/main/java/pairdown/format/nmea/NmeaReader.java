package pairdown.format.nmea;

import static pairdown.format.nmea.Sentence.code;

import java.io.IOException;
import pairdown.format.source.ByteLines;
import pairdown.format.source.DayClock;
import pairdown.format.source.LogSource;
import pairdown.format.source.Notes;
import pairdown.format.source.Rows;
import pairdown.format.source.Text;
import pairdown.time.IsoTime;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.Track;
import pairdown.track.UnusableInputException;
import pairdown.units.Unit;

/**
 * Reads one NMEA log. Sentences of one time of day make one row; those without a time (VTG, GSA)
 * belong to the row being made. Where two sentences give the same quantity, RMC outranks VTG for
 * speed and track, and the position with more decimals wins.
 */
final class NmeaReader {
    private static final int RMC = code('R', 'M', 'C');
    private static final int GGA = code('G', 'G', 'A');
    private static final int GNS = code('G', 'N', 'S');
    private static final int VTG = code('V', 'T', 'G');
    private static final int GSA = code('G', 'S', 'A');
    private static final int GST = code('G', 'S', 'T');
    private static final int ZDA = code('Z', 'D', 'A');
    private static final int GLL = code('G', 'L', 'L');

    private final Notes notes = new Notes();
    private final Rows rows;
    private final DayClock clock = new DayClock();
    private final Sentence sentence = new Sentence();
    private final Epoch epoch = new Epoch();
    private boolean checksums;

    /** Whether the log has sentences that say more than GLL, which is then left alone. */
    private boolean fullSentences;

    private double lastSeparation_m = Double.NaN;

    NmeaReader(LogSource source) {
        this.rows = new Rows(source, "nmea", notes);
    }

    static boolean isUsed(int type) {
        return type == RMC || type == GGA || type == GNS || type == GLL || type == ZDA;
    }

    Track read(ByteLines lines) throws IOException, UnusableInputException {
        while (lines.next()) {
            if (lines.isTooLong()) {
                notes.skip(lines.number(), "line too long for any sentence");
                continue;
            }
            switch (sentence.find(lines)) {
                case SOUND -> {
                    checksums = true;
                    sentence(lines.number());
                }
                case UNCHECKED -> unchecked(lines);
                case DAMAGED -> skip(lines, "checksum does not fit: ");
                case NONE -> {
                    if (!lines.isBlank() && !lines.hasAt(0, "#") && !lines.hasAt(0, "!")) {
                        skip(lines, "no NMEA sentence: ");
                    }
                }
            }
        }
        flush();
        if (!clock.isDated()) {
            notes.warn("no date (RMC or ZDA sentence): times are from midnight of the first day");
        }
        boolean separate = !Double.isNaN(lastSeparation_m);
        if (!separate) {
            notes.warn("no geoid separation (GGA or GNS sentence) in the log");
        }
        return rows.finish(clock.isDated(), HeightDatum.MSL);
    }

    /** A sentence without checksum is trusted only where none has one, and never when cut. */
    private void unchecked(ByteLines lines) {
        if (checksums || !lines.isWhole()) {
            skip(lines, "sentence cut short: ");
        } else {
            sentence(lines.number());
        }
    }

    private void skip(ByteLines lines, String reason) {
        notes.skip(lines.number(), () -> reason + Text.quote(lines.latin1()));
    }

    private void sentence(long line) {
        int type = sentence.type();
        fullSentences |= type == RMC || type == GGA || type == GNS;
        if (type == RMC) {
            rmc(line);
        } else if (type == GGA) {
            gga(line);
        } else if (type == GNS) {
            gns(line);
        } else if (type == GLL && !fullSentences) {
            gll(line);
        } else if (type == GST) {
            gst(line);
        } else if (type == ZDA) {
            zda(line);
        } else if (type == VTG) {
            vtg();
        } else if (type == GSA) {
            gsa();
        }
    }

    /** Makes the sentence's time the current epoch; false if it has none. */
    private boolean enter(int field, long line) {
        long tod_ns = sentence.timeOfDay_ns(field);
        if (tod_ns == IsoTime.NONE) {
            return false;
        }
        if (epoch.timeOfDay_ns != tod_ns) {
            flush();
            epoch.clear(tod_ns, line);
        }
        return true;
    }

    private void rmc(long line) {
        boolean valid = sentence.letter(2) == 'A';
        if (!enter(1, line)) {
            noTime(line, valid);
            return;
        }
        char mode = sentence.letter(12);
        int day = sentence.twoDigits(9, 0);
        int month = sentence.twoDigits(9, 2);
        int year = sentence.twoDigits(9, 4);
        if (valid && day > 0 && month > 0 && year >= 0) {
            date(day, month, year < 80 ? 2000 + year : 1900 + year);
        }
        if (!valid || mode == 'N') {
            epoch.refuse("no fix (RMC status V)");
        } else if (mode == 'E') {
            epoch.refuse("dead reckoning, not a fix");
        } else {
            position(3, 5);
            fixType(mode);
            epoch.put(Channel.GROUND_SPEED, Unit.KNOT.toBase(sentence.number(7)));
            epoch.put(Channel.TRACK, sentence.number(8));
        }
    }

    private void noTime(long line, boolean valid) {
        notes.skip(line, () -> valid ? "fix without a time" : "no fix yet");
    }

    private void gga(long line) {
        if (!enter(1, line)) {
            return;
        }
        int quality = (int) sentence.number(6);
        switch (quality) {
            case 0 -> epoch.refuse("no fix (GGA quality 0)");
            case 6 -> epoch.refuse("dead reckoning, not a fix");
            default -> {
                position(2, 4);
                heights(9, 11);
                epoch.put(Channel.SATELLITES, sentence.number(7));
                epoch.put(Channel.FIX_TYPE, fixTypeOfQuality(quality));
                simulated(quality == 8);
            }
        }
    }

    private void gns(long line) {
        if (!enter(1, line)) {
            return;
        }
        char best = sentence.letter(6);
        if (sentence.isEmpty(2) || best == 0) {
            epoch.refuse("no fix (GNS)");
            return;
        }
        position(2, 4);
        heights(9, 10);
        epoch.put(Channel.SATELLITES, sentence.number(7));
        if (best != 'N') {
            fixType(best);
        }
    }

    private void gll(long line) {
        if (enter(5, line) && sentence.letter(6) == 'A' && sentence.letter(7) != 'N') {
            position(1, 3);
        }
    }

    /**
     * One sigma of latitude, longitude and height; level accuracy is their mean square per axis.
     */
    private void gst(long line) {
        if (enter(1, line)) {
            double level_m = Math.hypot(sentence.number(6), sentence.number(7)) / Math.sqrt(2);
            epoch.put(Channel.HORIZONTAL_ACCURACY, level_m);
            epoch.put(Channel.VERTICAL_ACCURACY, sentence.number(8));
        }
    }

    private void zda(long line) {
        if (sentence.isEmpty(2) || !enter(1, line)) {
            return;
        }
        int day = (int) sentence.number(2);
        int month = (int) sentence.number(3);
        int year = (int) sentence.number(4);
        if (day > 0 && month > 0 && year >= 1980 && epoch.day < 0) {
            date(day, month, year);
        }
    }

    private void vtg() {
        if (epoch.isEmpty() || sentence.letter(9) == 'N') {
            return;
        }
        double knots = sentence.number(5);
        double speed_mps =
                Double.isNaN(knots)
                        ? Unit.KILOMETRE_PER_HOUR.toBase(sentence.number(7))
                        : Unit.KNOT.toBase(knots);
        epoch.putIfAbsent(Channel.GROUND_SPEED, speed_mps);
        epoch.putIfAbsent(Channel.TRACK, sentence.number(1));
    }

    private void gsa() {
        double dimensions = sentence.number(2);
        if (!epoch.isEmpty() && dimensions == 2) {
            epoch.values.put(Channel.FIX_TYPE, 2.0);
        }
    }

    private void date(int day, int month, int year) {
        epoch.day = day;
        epoch.month = month;
        epoch.year = year;
    }

    private void position(int latitudeField, int longitudeField) {
        double lat = sentence.degrees(latitudeField);
        double lon = sentence.degrees(longitudeField);
        if (Double.isNaN(lat) || Double.isNaN(lon)) {
            return;
        }
        boolean finer = sentence.decimals(latitudeField) > epoch.decimals;
        if (!epoch.fixed || finer) {
            epoch.latitude_deg = lat;
            epoch.longitude_deg = lon;
            epoch.decimals = sentence.decimals(latitudeField);
        }
        epoch.fixed = true;
    }

    private void heights(int mslField, int separationField) {
        epoch.put(Channel.HEIGHT, sentence.number(mslField));
        double separation_m = sentence.number(separationField);
        epoch.put(Channel.GEOID_SEPARATION, separation_m);
        if (!Double.isNaN(separation_m)) {
            lastSeparation_m = separation_m;
        }
    }

    private void fixType(char mode) {
        double type =
                switch (mode) {
                    case 'D', 'P' -> 4;
                    case 'F' -> 5;
                    case 'R' -> 6;
                    case 'A' -> 3;
                    default -> Double.NaN;
                };
        simulated(mode == 'S' || mode == 'M');
        epoch.putIfAbsent(Channel.FIX_TYPE, type);
    }

    private static double fixTypeOfQuality(int quality) {
        return switch (quality) {
            case 2, 3 -> 4;
            case 4 -> 6;
            case 5 -> 5;
            default -> 3;
        };
    }

    private void simulated(boolean so) {
        if (so) {
            notes.warn("the receiver marks its positions as simulated or typed in");
        }
    }

    private void flush() {
        if (epoch.isEmpty()) {
            return;
        }
        if (epoch.refused) {
            notes.skip(epoch.line, () -> epoch.refusal);
            return;
        }
        if (!epoch.fixed) {
            return;
        }
        if (epoch.day > 0) {
            if (!clock.isDated()) {
                clock.at(epoch.timeOfDay_ns, rows);
            }
            if (!clock.date(epoch.day, epoch.month, epoch.year, rows)) {
                notes.skip(epoch.line, "no such date");
            }
        }
        rows.begin(clock.at(epoch.timeOfDay_ns, rows), epoch.line);
        if (rows.position(epoch.latitude_deg, epoch.longitude_deg)) {
            epoch.values.forEach(rows::set);
        }
    }
}
