package pairdown.clock;

import java.time.Instant;
import java.util.List;
import pairdown.time.TimeAxis;
import pairdown.track.Track;

/** Finds the clock that all logs of an attempt share. */
public final class CommonClock {
    private CommonClock() {}

    /**
     * Maps each log's time onto UTC. Never guesses: a log without evidence gets {@link
     * ClockMethod#NONE} and the reason in words.
     *
     * @param logs at least one
     * @throws IllegalArgumentException without a log
     */
    public static ClockSolution align(List<LoadedLog> logs, ClockSettings settings) {
        if (logs.isEmpty()) {
            throw new IllegalArgumentException("a common clock needs at least one log");
        }
        return new Alignment(logs, settings).solve();
    }

    /** Starts at the first fix of any usable log, or at the epoch of time if none is usable. */
    static TimeAxis axis(List<LoadedLog> logs, List<ClockResult> results) {
        Instant first = Instant.MAX;
        for (int i = 0; i < logs.size(); i++) {
            ClockResult r = results.get(i);
            if (!r.isUsable()) {
                continue;
            }
            Track track = logs.get(i).track();
            double tLog_s = track.time_s(firstFix(track));
            Instant at =
                    track.epoch()
                            .map(e -> new TimeAxis(e).instant(r.map().toUtc_s(tLog_s)))
                            .orElseGet(
                                    () ->
                                            new TimeAxis(r.zero().orElseThrow())
                                                    .instant(tLog_s * (1 + r.map().rate())));
            if (track.hasPositions() && at.isBefore(first)) {
                first = at;
            }
        }
        return new TimeAxis(first.equals(Instant.MAX) ? Instant.EPOCH : first);
    }

    private static int firstFix(Track track) {
        for (int i = 0; i < track.size(); i++) {
            if (track.hasPosition(i)) {
                return i;
            }
        }
        return 0;
    }
}
