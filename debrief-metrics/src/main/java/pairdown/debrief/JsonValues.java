package pairdown.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.OptionalDouble;
import pairdown.geodesy.Geodetic;
import pairdown.time.Span;
import pairdown.time.TimeAxis;

/**
 * How values are spelt in result files: what can't be known is absent, instants are ISO 8601 to the
 * millisecond.
 */
public final class JsonValues {
    private static final DateTimeFormatter ISO_MILLIS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'").withZone(ZoneOffset.UTC);
    private static final int DECIMALS = 4;
    private static final int DEGREE_DECIMALS = 9;
    private static final long HALF_MILLI_NS = 500_000;

    private final TimeAxis axis;

    public JsonValues(TimeAxis axis) {
        this.axis = axis;
    }

    /** An instant on the attempt's axis, to the nearest millisecond. */
    public String time(double t_s) {
        return time(axis.instant(t_s));
    }

    public String time(Instant instant) {
        return ISO_MILLIS.format(instant.plusNanos(HALF_MILLI_NS));
    }

    /** Puts a number, or nothing where it is not finite. */
    public void put(ObjectNode o, String field, double value) {
        put(o, field, value, DECIMALS);
    }

    public void put(ObjectNode o, String field, OptionalDouble value) {
        value.ifPresent(v -> put(o, field, v));
    }

    private static void put(ObjectNode o, String field, double value, int decimals) {
        if (Double.isFinite(value)) {
            o.put(field, rounded(value, decimals));
        }
    }

    private static double rounded(double value, int decimals) {
        double r =
                BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).doubleValue();
        return r == 0 ? 0 : r;
    }

    public void span(ObjectNode o, Span span) {
        o.put("start", time(span.start_s())).put("end", time(span.end_s()));
    }

    public void place(ObjectNode o, Geodetic place) {
        put(o, "latitude_deg", place.latitude_deg(), DEGREE_DECIMALS);
        put(o, "longitude_deg", place.longitude_deg(), DEGREE_DECIMALS);
        put(o, "height_m", place.height_m());
    }

    /** Puts a list of sentences, or nothing where there are none. */
    public void words(ObjectNode o, String field, List<String> words) {
        if (!words.isEmpty()) {
            ArrayNode array = o.putArray(field);
            words.forEach(array::add);
        }
    }
}
