package pairdown.format.igc;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairdown.format.source.Notes;
import pairdown.format.source.Numbers;
import pairdown.track.Channel;

/**
 * A field added to B records by an I record, or to K records by a J record.
 *
 * @param code three letters
 * @param from offset of its first byte, from 0
 * @param to offset after its last
 * @param meaning what its value becomes, if that is known here
 */
record IgcExtension(String code, int from, int to, Optional<Meaning> meaning) {
    /**
     * What a code's value becomes.
     *
     * @param digits digits of a value in whole units; each further digit is a decimal, as recorders
     *     write it (the specification leaves the units of longer fields open)
     * @param factor from whole units to the channel's
     */
    record Meaning(Channel channel, int digits, double factor) {}

    private static final double KMH = 1 / 3.6;

    /**
     * FAI/IGC Technical Specification AL8, chapter 7. FXA and VXA are twice the standard deviation.
     */
    private static final Map<String, Meaning> MEANINGS =
            Map.ofEntries(
                    Map.entry("FXA", new Meaning(Channel.HORIZONTAL_ACCURACY, 3, 0.5)),
                    Map.entry("VXA", new Meaning(Channel.VERTICAL_ACCURACY, 3, 0.5)),
                    Map.entry("SIU", new Meaning(Channel.SATELLITES, 2, 1)),
                    Map.entry("GSP", new Meaning(Channel.GROUND_SPEED, 3, KMH)),
                    Map.entry("TRT", new Meaning(Channel.TRACK, 3, 1)),
                    Map.entry("TAS", new Meaning(Channel.TRUE_AIRSPEED, 3, KMH)),
                    Map.entry("IAS", new Meaning(Channel.INDICATED_AIRSPEED, 3, KMH)),
                    Map.entry("OAT", new Meaning(Channel.OUTSIDE_AIR_TEMPERATURE, 3, 1)),
                    Map.entry("HDT", new Meaning(Channel.HEADING, 3, 1)),
                    Map.entry("ACX", new Meaning(Channel.LONGITUDINAL_LOAD, 2, 1)),
                    Map.entry("ACY", new Meaning(Channel.LATERAL_LOAD, 2, 1)),
                    Map.entry("ACZ", new Meaning(Channel.NORMAL_LOAD, 2, 1)));

    private static IgcExtension of(String code, int from, int to) {
        return new IgcExtension(code, from, to, Optional.ofNullable(MEANINGS.get(code)));
    }

    int length() {
        return to - from;
    }

    /** The value in the channel's unit; NaN if the bytes are no number. */
    double value(byte[] bytes, int lineFrom, Meaning meaning) {
        double raw = Numbers.parse(bytes, lineFrom + from, lineFrom + to, (byte) '.');
        return raw * meaning.factor() * Math.pow(10, meaning.digits() - length());
    }

    /** The fields that an I or J record declares; what can't be one is noted and left out. */
    static List<IgcExtension> declared(String record, long line, int firstFree, Notes notes) {
        List<IgcExtension> found = new ArrayList<>();
        for (int at = 3; at + 7 <= record.length(); at += 7) {
            int start = number(record, at);
            int end = number(record, at + 2);
            String code = record.substring(at + 4, at + 7);
            if (start > firstFree && end >= start && code.matches("[A-Z0-9]{3}")) {
                found.add(of(code, start - 1, end));
            } else {
                notes.skip(line, "extension '" + record.substring(at, at + 7) + "' can't be");
            }
        }
        return found;
    }

    private static int number(String text, int at) {
        double value = Numbers.parse(text.substring(at, at + 2));
        return Double.isNaN(value) ? -1 : (int) value;
    }
}
