package pairdown.season;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.ChosenSettings;
import pairdown.attempt.JsonFields;
import pairdown.attempt.SeasonFile;
import pairdown.debrief.DebriefSettings;
import pairdown.tail.TailSettings;
import pairdown.track.UnusableInputException;

/**
 * What the team's {@code season.json} says: its name, its criteria for the next step, and the
 * numbers it wants otherwise than usual: under {@code settings}, those of the season's own figures
 * as {@code season}, and those that each attempt is debriefed by where it does not set them itself.
 *
 * @param tail what power and tail of all attempts together are judged by
 * @param notes what was read over or is otherwise than usual, in words
 */
public record SeasonPlan(
        Criteria criteria, SeasonSettings settings, TailSettings tail, List<String> notes) {
    private static final String GROUP = SeasonFile.GROUP + ".";
    private static final String CONFIDENCE = GROUP + "confidence";

    public SeasonPlan {
        notes = List.copyOf(notes);
    }

    /** The names of a season's settings are those in its group. */
    private record Groups(SeasonSettings season) {
        static final Groups DEFAULT = new Groups(SeasonSettings.DEFAULT);
    }

    /** Judged by some criteria, with the usual settings. */
    public static SeasonPlan of(Criteria criteria) {
        return new SeasonPlan(criteria, SeasonSettings.DEFAULT, TailSettings.DEFAULT, List.of());
    }

    /**
     * That of a season's folder; as usual and with no criteria where it has no such file.
     *
     * @throws UnusableInputException if the file makes no sense
     */
    static SeasonPlan read(Path folder) throws UnusableInputException {
        List<String> notes = new ArrayList<>();
        Optional<JsonFields> team = SeasonFile.read(folder, notes);
        return team.isPresent() ? of(team.get(), notes) : of(Criteria.NONE);
    }

    private static SeasonPlan of(JsonFields team, List<String> notes)
            throws UnusableInputException {
        Criteria criteria = Criteria.of(team);
        ChosenSettings chosen = SeasonFile.settings(team);
        team.sayUnknown();
        ChosenSettings own = chosen.only(name -> name.startsWith(GROUP));
        ChosenSettings attempts = chosen.only(name -> !name.startsWith(GROUP));
        Groups groups = own.over(Groups.class, Groups.DEFAULT, CONFIDENCE::equals);
        DebriefSettings each = DebriefSettings.of(attempts);
        notes.addAll(own.notes(Groups.DEFAULT));
        notes.addAll(attempts.notes(DebriefSettings.DEFAULT));
        return new SeasonPlan(criteria, groups.season(), each.tail(), notes);
    }
}
