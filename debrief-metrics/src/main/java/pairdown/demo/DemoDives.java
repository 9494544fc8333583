package pairdown.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pairdown.attempt.AirspeedKind;
import pairdown.demo.physics.DiveEvent;
import pairdown.demo.physics.LeadPlan;
import pairdown.demo.physics.Scenario;
import pairdown.demo.receiver.Draws;
import pairdown.demo.truth.Truth;
import pairdown.units.Unit;

/** The dives of the lead alone: three at idle, twenty in reverse at the target. */
final class DemoDives {
    private static final int PRACTICE = 20;

    /** Practice dives, counted from 1, in which the pilot adds more reverse than the tail bears. */
    private static final Set<Integer> TOO_MUCH = Set.of(4, 9, 15);

    private static final List<Double> IDLE_MPH = List.of(85.0, 105.0, 120.0);
    private static final double RECORDER_HZ = 5;

    private DemoDives() {}

    static List<DemoAttempt> idle(long seed) {
        List<DemoAttempt> dives = new ArrayList<>();
        for (int i = 0; i < IDLE_MPH.size(); i++) {
            double speed_mps = Unit.MILE_PER_HOUR.toBase(IDLE_MPH.get(i));
            LeadPlan plan =
                    LeadPlan.USUAL
                            .withDive(LeadPlan.Dive.IDLE)
                            .withTarget(AirspeedKind.TRUE, speed_mps, 17.78);
            String id = String.format(Locale.ROOT, "2031-05-02-%02d", i + 1);
            Scenario scenario = DemoScenarios.day(seed, "2031-05-02T01:00:00Z", i).withLead(plan);
            String title = String.format(Locale.ROOT, "Idle dive at %.0f mph", IDLE_MPH.get(i));
            String lesson =
                    "Plain idle dives: at 85 mph the lead sinks half as fast as the flyers must,"
                            + " and where it sinks as fast it is far faster. The envelopes do not"
                            + " overlap.";
            dives.add(
                    new DemoAttempt(
                            "idle-dives/" + id,
                            lesson,
                            scenario,
                            DemoPlans.alone(id, title),
                            DemoDives::logs));
        }
        return dives;
    }

    static List<DemoAttempt> practice(long seed) {
        List<DemoAttempt> dives = new ArrayList<>();
        for (int i = 1; i <= PRACTICE; i++) {
            dives.add(practice(seed, i));
        }
        return dives;
    }

    private static DemoAttempt practice(long seed, int number) {
        int day = 5 + (number - 1) / 7;
        int load = (number - 1) % 7 + 1;
        String id = String.format(Locale.ROOT, "2031-05-%02d-%02d", day, load);
        String morning = String.format(Locale.ROOT, "2031-05-%02dT00:20:00Z", day);
        Draws draws = Draws.of(seed, id, "plan");
        LeadPlan lead = LeadPlan.USUAL.withMass(1650 - 12 * (load - 1));
        boolean tooMuch = TOO_MUCH.contains(number);
        if (tooMuch) {
            lead =
                    lead.withEvents(
                            new DiveEvent.OverReverse(
                                    draws.between(22, 30),
                                    draws.between(1.3, 1.4),
                                    draws.between(2.2, 3.2)));
        } else if (number % 5 == 0) {
            lead = lead.withEvents(new DiveEvent.HarmlessPower(draws.between(45, 50), 12, 3));
        }
        String lesson =
                "Practice dive "
                        + number
                        + " of 20"
                        + (tooMuch
                                ? ": more reverse than the tail bears, and an episode."
                                : ": held on target.");
        return new DemoAttempt(
                "practice-dives/" + id,
                lesson,
                DemoScenarios.day(seed, morning, load).withLead(lead),
                DemoPlans.alone(id, "Practice dive " + number),
                DemoDives::logs);
    }

    private static List<DemoLog> logs(Truth truth) {
        DemoCast cast = new DemoCast(truth);
        return List.of(
                DemoLog.of(cast.lead("csv").rate(2), DemoForms.MSL_CSV),
                DemoLog.of(cast.recorder().rate(RECORDER_HZ), DemoForms.RECORDER));
    }
}
