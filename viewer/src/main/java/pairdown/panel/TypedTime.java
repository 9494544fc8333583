package pairdown.panel;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import pairdown.time.TimeAxis;

/**
 * A time as a person types it: a time of day in UTC ({@code 15:02:11.35}, {@code 15:02}), a whole
 * instant, or seconds from the first exit with a sign ({@code +12.5}).
 */
final class TypedTime {
    private static final int DAY_S = 86_400;

    private TypedTime() {}

    /**
     * Seconds on the axis; empty if the text is no time.
     *
     * @param exit_s what signed seconds count from
     */
    static Optional<Double> parse(String text, TimeAxis axis, double exit_s) {
        String typed = text.strip().replace(',', '.').replace('\u2212', '-');
        if (typed.matches("[+-]\\d+(\\.\\d*)?")) {
            return Optional.of(exit_s + Double.parseDouble(typed));
        }
        try {
            if (typed.indexOf('T') > 0) {
                return Optional.of(axis.seconds(Instant.parse(typed)));
            }
            String padded = typed.matches("\\d:.*") ? "0" + typed : typed;
            double ofDay_s = LocalTime.parse(padded).toNanoOfDay() * 1e-9;
            double epoch_s = axis.epoch().atZone(ZoneOffset.UTC).toLocalTime().toNanoOfDay() * 1e-9;
            double t_s = ofDay_s - epoch_s;
            // Past midnight: the nearer of the two days.
            return Optional.of(t_s < -DAY_S / 2.0 ? t_s + DAY_S : t_s);
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
