package pairdown.demo;

import java.util.List;
import pairdown.demo.logfile.Damage;
import pairdown.demo.logfile.LogForm;
import pairdown.demo.receiver.LogPlan;

/**
 * A log of the demo season: what it holds and what its file looks like.
 *
 * @param damage what happened to the file, in this order
 */
record DemoLog(LogPlan plan, LogForm form, List<Damage> damage) {
    DemoLog {
        damage = List.copyOf(damage);
    }

    static DemoLog of(LogPlan plan, LogForm form, Damage... damage) {
        return new DemoLog(plan, form, List.of(damage));
    }
}
