package pairdown.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.tail.TailSeason;

/**
 * What all attempts below a folder say together.
 *
 * @param title as the team gave it
 * @param attempts all of them, usable or not, in order of time, those without a time last
 * @param repeatabilities one for each configuration in which the lead dived, the latest dive's
 *     first
 * @param tails power and tail over the attempts, one for each lead aircraft
 * @param settings what the figures were found with
 * @param criteria the team's own for the next step, met or not met
 * @param notes what was read over, in words
 * @param madeFrom differs whenever attempts, criteria, settings or program do; empty where unknown
 */
public record Season(
        Optional<String> title,
        List<AttemptSummary> attempts,
        Ladder ladder,
        List<Repeatability> repeatabilities,
        Envelope envelope,
        List<TailSeason> tails,
        SeasonSettings settings,
        List<Criterion> criteria,
        List<String> notes,
        String madeFrom) {
    public Season {
        attempts = List.copyOf(attempts);
        repeatabilities = List.copyOf(repeatabilities);
        tails = List.copyOf(tails);
        criteria = List.copyOf(criteria);
        notes = List.copyOf(notes);
    }

    /** Of the configuration that the lead dived in last. */
    public Repeatability repeatability() {
        return repeatabilities.get(0);
    }

    /** From summaries in any order, judged by the team's criteria. */
    public static Season of(List<AttemptSummary> found, SeasonPlan plan) {
        List<AttemptSummary> ordered = inOrder(Repeats.setAside(inOrder(found)));
        SeasonSettings settings = plan.settings();
        List<AttemptSummary> usable = ordered.stream().filter(AttemptSummary::usable).toList();
        Ladder ladder = Ladder.of(usable, settings);
        return new Season(
                plan.criteria().title(),
                ordered,
                ladder,
                Repeatability.byConfiguration(usable, settings),
                Envelope.of(usable, settings),
                TailSeason.of(
                        usable.stream().flatMap(a -> a.tail().stream()).toList(), plan.tail()),
                settings,
                plan.criteria().judge(usable),
                notes(plan, ladder),
                "");
    }

    private static List<String> notes(SeasonPlan plan, Ladder ladder) {
        List<String> notes = new ArrayList<>(plan.notes());
        for (List<String> names : ladder.namesApartByCase()) {
            notes.add(
                    "flyers told apart by their spelling alone: "
                            + String.join(", ", names)
                            + "; give one person one id");
        }
        return notes;
    }

    private static List<AttemptSummary> inOrder(List<AttemptSummary> attempts) {
        return attempts.stream()
                .sorted(
                        (a, b) ->
                                a.usable() != b.usable()
                                        ? Boolean.compare(b.usable(), a.usable())
                                        : (a.start() + a.folder())
                                                .compareTo(b.start() + b.folder()))
                .toList();
    }

    Season madeFrom(String content) {
        return new Season(
                title,
                attempts,
                ladder,
                repeatabilities,
                envelope,
                tails,
                settings,
                criteria,
                notes,
                content);
    }
}
