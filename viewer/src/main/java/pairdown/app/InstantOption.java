package pairdown.app;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairdown.debrief.Debrief;
import pairdown.phase.Event;
import pairdown.time.Span;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * An instant as typed: a moment in ISO 8601, a time of day in UTC, seconds from the first exit
 * ({@code +12.5} or {@code -3}), or an event by its name ({@code closest}), the first of that kind.
 */
final class InstantOption {
    static final String HELP =
            "an instant in UTC (2031-05-14T15:02:11.350Z or 15:02:11.350), seconds from the first"
                    + " exit (+12.5, -3), or an event (closest, exit, match-start, opening …)";

    private static final Pattern SECONDS = Pattern.compile("[+-]\\d+(\\.\\d*)?");
    private static final double DAY_S = 86_400;

    private InstantOption() {}

    /**
     * The instant on the debrief's axis.
     *
     * @throws ParameterException if it is none, or outside the record
     */
    static double parse(String typed, Debrief debrief, CommandLine line) {
        OptionalDouble t_s = read(typed.trim(), debrief);
        if (t_s.isEmpty()) {
            throw new ParameterException(line, "'" + typed + "' is no instant; type " + HELP);
        }
        Span span = debrief.span();
        if (!span.contains(t_s.getAsDouble())) {
            throw new ParameterException(
                    line,
                    "'"
                            + typed
                            + "' is outside the record, which runs from "
                            + debrief.axis().instant(span.start_s())
                            + " to "
                            + debrief.axis().instant(span.end_s()));
        }
        return t_s.getAsDouble();
    }

    private static OptionalDouble read(String typed, Debrief debrief) {
        Matcher seconds = SECONDS.matcher(typed);
        if (seconds.matches()) {
            OptionalDouble exit = firstOf("exit", debrief);
            return OptionalDouble.of(
                    exit.orElse(debrief.span().start_s()) + Double.parseDouble(typed));
        }
        OptionalDouble event = firstOf(typed.toLowerCase(Locale.ROOT), debrief);
        if (event.isPresent()) {
            return event;
        }
        try {
            return OptionalDouble.of(timeOfDay(LocalTime.parse(typed), debrief));
        } catch (DateTimeParseException notATimeOfDay) {
            return absolute(typed, debrief);
        }
    }

    private static OptionalDouble absolute(String typed, Debrief debrief) {
        try {
            return OptionalDouble.of(debrief.axis().seconds(Instant.parse(typed)));
        } catch (DateTimeParseException notAnInstant) {
            return OptionalDouble.empty();
        }
    }

    private static OptionalDouble firstOf(String kind, Debrief debrief) {
        return debrief.events().stream()
                .filter(e -> e.kind().key().equals(kind))
                .mapToDouble(Event::time_s)
                .min();
    }

    /** On the day that puts it into the record, if one does. */
    private static double timeOfDay(LocalTime time, Debrief debrief) {
        double midnight_s =
                debrief.axis()
                        .seconds(
                                debrief.axis()
                                        .instant(debrief.span().start_s())
                                        .atZone(ZoneOffset.UTC)
                                        .toLocalDate()
                                        .atStartOfDay(ZoneOffset.UTC)
                                        .toInstant());
        double t_s = midnight_s + time.toNanoOfDay() * 1e-9;
        return t_s < debrief.span().start_s() ? t_s + DAY_S : t_s;
    }
}
