package pairdown.tail;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import pairdown.phase.Event;
import pairdown.phase.EventKind;

/** The instants of power and tail worth jumping to. */
public final class TailEvents {
    /** A move of power shortly before or after a descent belongs to its story. */
    private static final double ABOUT_DESCENT_S = 15;

    private TailEvents() {}

    /** Starts and ends of episodes, and power changes about the descents, in order of time. */
    public static List<Event> of(TailControl t) {
        List<Event> events = new ArrayList<>();
        List<String> who = List.of(t.participant());
        int n = 1;
        for (Episode e : t.episodes()) {
            String number = "tail episode " + n++;
            events.add(
                    new Event(
                            e.span().start_s(),
                            e.startSigma_s(),
                            EventKind.EPISODE_START,
                            who,
                            number
                                    + ", "
                                    + e.why()
                                    + e.precededBy().map(l -> preceded(l)).orElse("")));
            events.add(
                    new Event(
                            e.span().end_s(),
                            e.startSigma_s(),
                            EventKind.EPISODE_END,
                            who,
                            number + " over" + e.endedAfter().map(l -> ended(l)).orElse("")));
        }
        for (PowerChange c : t.powerChanges()) {
            if (aboutDescent(t, c.time_s())) {
                events.add(new Event(c.time_s(), 0, EventKind.POWER_CHANGE, who, words(c)));
            }
        }
        events.sort(Comparator.comparingDouble(Event::time_s));
        return List.copyOf(events);
    }

    private static boolean aboutDescent(TailControl t, double t_s) {
        List<DescentSequence> rows = t.review().sequences();
        return rows.isEmpty()
                || rows.stream()
                        .map(DescentSequence::descent)
                        .anyMatch(
                                d ->
                                        t_s >= d.start_s() - ABOUT_DESCENT_S
                                                && t_s <= d.end_s() + ABOUT_DESCENT_S);
    }

    private static String preceded(Episode.Link l) {
        return "; preceded " + lag(l) + " by " + words(l.change());
    }

    private static String ended(Episode.Link l) {
        return ", ended " + lag(l) + " after " + words(l.change());
    }

    private static String lag(Episode.Link l) {
        return String.format(Locale.ROOT, "about %.1f s (± %.1f s)", l.lag_s(), l.lagSigma_s());
    }

    private static String words(PowerChange c) {
        String quantity =
                switch (c.channel()) {
                    case POWER_LEVER -> "power lever ";
                    case BLADE_ANGLE -> "blade angle ";
                    case TORQUE -> "torque ";
                    case RETARDING_COEFFICIENT -> "Tc′ ";
                };
        int decimals =
                switch (c.channel()) {
                    case POWER_LEVER, TORQUE -> 0;
                    case BLADE_ANGLE -> 1;
                    case RETARDING_COEFFICIENT -> 2;
                };
        String unit =
                switch (c.channel()) {
                    case POWER_LEVER, TORQUE -> " %";
                    case BLADE_ANGLE -> "°";
                    case RETARDING_COEFFICIENT -> "";
                };
        return quantity
                + number(c.from(), decimals)
                + " to "
                + number(c.to(), decimals)
                + unit
                + (c.towardReverse() ? ", towards reverse" : ", forward");
    }

    /** A value that rounds to nothing has no sign. */
    private static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0[.0]*") ? text.substring(1) : text;
    }
}
