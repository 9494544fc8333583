package pairdown.season;

import pairdown.debrief.Debrief;

/** Makes a season's summary of one debrief, for tests of other packages. */
public final class Summaries {
    private Summaries() {}

    public static AttemptSummary of(Debrief debrief) {
        return new Summariser(SeasonSettings.DEFAULT).summarise(debrief, debrief.attempt().id());
    }
}
