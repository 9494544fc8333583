package pairdown.tail;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import pairdown.time.Span;

/**
 * How far control faded, and that in words: which signs, how long, how far, what margin was left.
 */
record Grading(
        TailSettings.Signs settings,
        List<Episode.Sign> signs,
        Span span,
        OptionalDouble least,
        double own,
        OptionalDouble margin_pct) {
    Episode.Grade grade() {
        boolean faded = least.isPresent() && least.getAsDouble() <= settings.strongShare() * own;
        boolean pinned =
                margin_pct.isPresent() && margin_pct.getAsDouble() <= settings.strongMargin_pct();
        return faded || pinned ? Episode.Grade.STRONG : Episode.Grade.MILD;
    }

    String words() {
        StringBuilder words = new StringBuilder(grade().key());
        words.append(": ")
                .append(signs.stream().map(Grading::words).collect(Collectors.joining(", ")));
        say(words, " over %.1f s", span.duration_s());
        if (least.isPresent()) {
            say(words, "; effectiveness down to %.2f", least.getAsDouble());
            say(words, " of forward thrust, where this descent stood at %.2f", own);
        } else {
            words.append("; effectiveness could not be judged");
        }
        if (margin_pct.isPresent()) {
            say(words, "; elevator %.0f %% of travel from its stop", margin_pct.getAsDouble());
        }
        return words.toString();
    }

    private static void say(StringBuilder words, String format, double value) {
        words.append(String.format(Locale.ROOT, format, value));
    }

    private static String words(Episode.Sign sign) {
        return switch (sign) {
            case LOST_EFFECTIVENESS -> "lost effectiveness";
            case RAISED_ACTIVITY -> "more control for the same response";
            case RUDDER_REVERSALS -> "rudder reversals";
            case ELEVATOR_NEAR_STOP -> "elevator near its stop";
            case EXCURSION -> "motion off the fitted response";
        };
    }
}
