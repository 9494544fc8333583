package pairdown.format.igc;

import pairdown.format.source.ByteLines;
import pairdown.format.source.Numbers;

/** The fixed part of a B record: {@code BHHMMSSDDMMmmmNDDDMMmmmEVPPPPPGGGGG}. */
final class IgcFix {
    static final int LENGTH = 35;
    private static final long SECOND_NS = 1_000_000_000L;

    private IgcFix() {}

    /** Whether a line has the shape of a B record, up to the validity. */
    static boolean isFix(ByteLines lines) {
        if (lines.length() < 25 || !lines.hasAt(0, "B")) {
            return false;
        }
        byte[] a = lines.bytes();
        int b = lines.from();
        return Numbers.digits(a, b + 1, 6) >= 0
                && Numbers.digits(a, b + 7, 7) >= 0
                && (a[b + 14] == 'N' || a[b + 14] == 'S')
                && Numbers.digits(a, b + 15, 8) >= 0
                && (a[b + 23] == 'E' || a[b + 23] == 'W');
    }

    /** Time of day, −1 if it is none. */
    static long timeOfDay_ns(byte[] a, int at) {
        int hour = Numbers.digits(a, at, 2);
        int minute = Numbers.digits(a, at + 2, 2);
        int second = Numbers.digits(a, at + 4, 2);
        if (hour < 0 || hour > 23 || minute < 0 || minute > 59 || second < 0 || second > 60) {
            return -1;
        }
        return (hour * 3600L + minute * 60L + second) * SECOND_NS;
    }

    /**
     * Degrees from {@code degreeDigits} of degrees and five of thousandths of a minute.
     *
     * @param further more decimals of the minute, as a share of its last digit
     */
    static double degrees(byte[] a, int at, int degreeDigits, double further) {
        int degrees = Numbers.digits(a, at, degreeDigits);
        int minutes = Numbers.digits(a, at + degreeDigits, 5);
        return degrees + (minutes + further) / 60_000;
    }
}
