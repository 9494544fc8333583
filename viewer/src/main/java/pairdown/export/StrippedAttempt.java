package pairdown.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import pairdown.attempt.Role;
import pairdown.attempt.WholeFile;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.motion.Trajectory;
import pairdown.pair.PairDebrief;
import pairdown.phase.Event;
import pairdown.phase.EventKind;
import pairdown.time.Span;
import pairdown.track.UnusableInputException;

/**
 * A zip of an attempt's results for people who need not know who, where and when: positions as seen
 * from the lead, seconds from the first exit, initials for names, nothing that a person typed and
 * no log.
 */
public final class StrippedAttempt {
    private static final String README =
            """
            Results of a formation attempt, stripped of place, date and names.

            results.json           pairs, events, limits, power and tail; times in seconds from the first exit
            pairs/LEAD-FLYER.csv   where the flyer was, seen from the lead's centre of gravity
            participants/WHO.csv   airspeed, sink and controls; heights from the lead's at the first exit

            A unit ends each field's name. What can't be known is absent. This is a record, for people
            already qualified and authorised: it does not teach, plan or approve a flight. What a log
            does not show may have happened all the same.
            """;

    private final Debrief debrief;
    private final Initials initials;
    private final Trajectory lead;
    private final Span told;

    private StrippedAttempt(Debrief debrief, Trajectory lead) {
        this.debrief = debrief;
        this.initials = new Initials(debrief.attempt());
        this.lead = lead;
        this.told = told(debrief);
    }

    /**
     * Writes it.
     *
     * @throws UnusableInputException without a lead's track, which positions are seen from
     */
    public static void write(Debrief debrief, Path zip) throws IOException, UnusableInputException {
        Trajectory lead =
                debrief.lead()
                        .flatMap(ParticipantDebrief::trajectory)
                        .orElseThrow(
                                () ->
                                        new UnusableInputException(
                                                "has no track of a lead to see positions from",
                                                String.valueOf(debrief.attempt().folder()),
                                                "give the lead's log, or share without stripping"));
        StrippedAttempt stripped = new StrippedAttempt(debrief, lead);
        WholeFile.write(zip, stripped::writeTo);
    }

    private void writeTo(Path file) throws IOException {
        double zero_s = told.start_s();
        StrippedSeries series = new StrippedSeries(debrief, told, height_m(zero_s));
        try (Archive archive = Archive.at(file)) {
            archive.addText("README.txt", README);
            archive.addText("results.json", new StrippedJson(debrief, initials, zero_s).text());
            for (PairDebrief pair : debrief.pairs()) {
                String who = initials.of(pair.lead()) + "-" + initials.of(pair.flyer());
                archive.addText("pairs/" + who + ".csv", series.of(pair));
            }
            for (ParticipantDebrief p : debrief.participants()) {
                if (p.trajectory().isPresent()) {
                    String who = initials.of(p.id());
                    archive.addText("participants/" + who + ".csv", series.of(p));
                }
            }
        }
    }

    private double height_m(double t_s) {
        double inside_s = Math.max(lead.start_s(), Math.min(lead.end_s(), t_s));
        return debrief.frame().toGeodetic(lead.at(inside_s).position_m()).height_m();
    }

    /** From the first jumper's exit to the last opening, or as far as the logs go. */
    private static Span told(Debrief debrief) {
        OptionalDouble from_s = times(debrief, EventKind.EXIT).min();
        OptionalDouble to_s = times(debrief, EventKind.OPENING).max();
        double start_s = from_s.orElse(debrief.span().start_s());
        return new Span(start_s, Math.max(start_s, to_s.orElse(debrief.span().end_s())));
    }

    private static DoubleStream times(Debrief debrief, EventKind kind) {
        return debrief.events().stream()
                .filter(e -> e.kind() == kind)
                .filter(e -> e.participants().stream().anyMatch(id -> jumps(debrief, id)))
                .mapToDouble(Event::time_s);
    }

    private static boolean jumps(Debrief debrief, String id) {
        return debrief.participant(id)
                .map(p -> p.participant().role())
                .filter(Role::isJumper)
                .isPresent();
    }
}
