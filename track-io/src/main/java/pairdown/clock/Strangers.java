package pairdown.clock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pairdown.attempt.Role;
import pairdown.time.Span;
import pairdown.time.TimeAxis;

/** Refuses logs that were not running while the others were: another flight, or another day. */
final class Strangers {
    /** Logs this far apart in time still belong to one outing (s). */
    private static final double SAME_OUTING_S = 600;

    private final List<LoadedLog> logs;
    private final List<ClockResult> results;
    private final TimeAxis rough;

    Strangers(List<LoadedLog> logs, List<ClockResult> results, TimeAxis rough) {
        this.logs = logs;
        this.results = results;
        this.rough = rough;
    }

    List<ClockResult> refuse() {
        int[] outing = outings();
        int main = main(outing);
        List<ClockResult> out = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            boolean stranger = results.get(i).isUsable() && outing[i] != main;
            out.add(stranger ? refused(results.get(i)) : results.get(i));
        }
        return out;
    }

    /** By log the lowest log it overlaps with, directly or through others. */
    private int[] outings() {
        int[] outing = new int[logs.size()];
        Arrays.setAll(outing, i -> i);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < outing.length; i++) {
                for (int j = i + 1; j < outing.length; j++) {
                    if (outing[i] != outing[j] && overlap(i, j)) {
                        int low = Math.min(outing[i], outing[j]);
                        outing[i] = low;
                        outing[j] = low;
                        changed = true;
                    }
                }
            }
        }
        return outing;
    }

    private boolean overlap(int i, int j) {
        if (!results.get(i).isUsable() || !results.get(j).isUsable()) {
            return false;
        }
        Span a = span(i);
        Span b = span(j);
        return a.start_s() - SAME_OUTING_S <= b.end_s() && b.start_s() - SAME_OUTING_S <= a.end_s();
    }

    private Span span(int i) {
        ClockResult r = results.get(i);
        LoadedLog log = logs.get(i);
        double base_s =
                log.track()
                        .epoch()
                        .map(e -> rough.seconds(e) + r.map().offset_s())
                        .orElseGet(() -> rough.seconds(r.zero().orElseThrow()));
        return new Span(base_s + log.track().start_s(), base_s + log.track().end_s());
    }

    /** The outing of most logs; among equals the lead's, else the first. */
    private int main(int[] outing) {
        int best = -1;
        long most = -1;
        for (int i = 0; i < outing.length; i++) {
            if (results.get(i).isUsable()) {
                long weight = weight(outing, outing[i]);
                if (weight > most) {
                    most = weight;
                    best = outing[i];
                }
            }
        }
        return best;
    }

    private long weight(int[] outing, int which) {
        long weight = 0;
        for (int i = 0; i < outing.length; i++) {
            if (outing[i] == which && results.get(i).isUsable()) {
                weight += 2;
                weight += logs.get(i).participant().role() == Role.LEAD ? 1 : 0;
            }
        }
        return weight;
    }

    private static ClockResult refused(ClockResult r) {
        List<String> warnings = new ArrayList<>(r.warnings());
        warnings.add(
                "the log does not overlap the others in time and shares no ride with them: another"
                        + " flight or another day? it is not used");
        return new ClockResult(
                r.participant(),
                r.file(),
                r.map(),
                0,
                r.doubt(),
                ClockMethod.NONE,
                r.measured(),
                r.residual_mps(),
                r.zero(),
                r.latency_s(),
                r.curve(),
                warnings);
    }
}
