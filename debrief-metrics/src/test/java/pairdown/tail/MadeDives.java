package pairdown.tail;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import pairdown.attempt.AirspeedKind;
import pairdown.clock.ClockResult;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.demo.AttemptPlan;
import pairdown.demo.SimulatedAttempt;
import pairdown.demo.physics.DiveEvent;
import pairdown.demo.physics.GustLevel;
import pairdown.demo.physics.LeadPlan;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.Simulation;
import pairdown.demo.receiver.LogPlan;
import pairdown.demo.receiver.RecorderPlan;
import pairdown.demo.truth.TrueEpisode;
import pairdown.demo.truth.TruePowerChange;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;
import pairdown.track.UnusableInputException;

/**
 * Simulated dives of the lead alone, debriefed whole from the logs its receiver and its recorder
 * would have written. A seed draws the air, the mass, the recorder's rate and what happens on the
 * way: more reverse than the tail bears, and things that only look like its loss.
 */
final class MadeDives {
    private static final double[] RATES_HZ = {5, 6, 8, 10};

    /** Channels that some recorders lack. */
    enum Logged {
        ALL,
        NO_ELEVATOR,
        NO_RUDDER,
        NO_LEVER,
        NO_POWER,
        NO_CONTROLS,
        NO_RATES,
        ONCE_A_SECOND;

        private Set<Channel> lost() {
            return switch (this) {
                case ALL, ONCE_A_SECOND -> EnumSet.noneOf(Channel.class);
                case NO_ELEVATOR -> EnumSet.of(Channel.ELEVATOR);
                case NO_RUDDER -> EnumSet.of(Channel.RUDDER);
                case NO_LEVER -> EnumSet.of(Channel.POWER_LEVER);
                case NO_POWER ->
                        EnumSet.of(Channel.POWER_LEVER, Channel.BLADE_ANGLE, Channel.TORQUE);
                case NO_CONTROLS -> EnumSet.of(Channel.ELEVATOR, Channel.RUDDER, Channel.AILERON);
                case NO_RATES ->
                        EnumSet.of(Channel.PITCH_RATE, Channel.YAW_RATE, Channel.ROLL_RATE);
            };
        }
    }

    private MadeDives() {}

    /** A dive as it truly was. */
    static Truth fly(long seed) {
        Random random = new Random(seed * 7919);
        LeadPlan lead = LeadPlan.USUAL.withMass(1500 + 250 * random.nextDouble());
        Scenario scenario =
                Scenario.practice(seed)
                        .withAir(
                                Scenario.practice(seed)
                                        .air()
                                        .withGusts(gusts(random))
                                        .withWeather(
                                                1005 + 20 * random.nextDouble(),
                                                -8 + 18 * random.nextDouble()));
        if (isIdle(seed)) {
            double speed_mps = 38 + 14 * random.nextDouble();
            lead =
                    lead.withDive(LeadPlan.Dive.IDLE)
                            .withTarget(AirspeedKind.TRUE, speed_mps, 17.78);
            return Simulation.run(scenario.withLead(lead));
        }
        return Simulation.run(
                scenario.withLead(lead.withEvents(events(random).toArray(DiveEvent[]::new))));
    }

    /** Every eighth dive is one at idle. */
    static boolean isIdle(long seed) {
        return seed % 8 == 0;
    }

    private static GustLevel gusts(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> GustLevel.SMOOTH;
            case 1 -> GustLevel.LIGHT;
            default -> GustLevel.MODERATE;
        };
    }

    private static List<DiveEvent> events(Random random) {
        List<Integer> kinds = new ArrayList<>(List.of(0, 0, 1, 2, 3));
        Collections.shuffle(kinds, random);
        List<DiveEvent> events = new ArrayList<>();
        double after_s = 8 + 6 * random.nextDouble();
        for (int kind : kinds) {
            events.add(event(kind, after_s, random));
            after_s += 15 + 6 * random.nextDouble();
        }
        return events;
    }

    private static DiveEvent event(int kind, double after_s, Random random) {
        return switch (kind) {
            case 0 ->
                    new DiveEvent.OverReverse(
                            after_s,
                            1.28 + 0.17 * random.nextDouble(),
                            2 + 3 * random.nextDouble());
            case 1 ->
                    new DiveEvent.HarmlessPower(
                            after_s, 11 + 7 * random.nextDouble(), 2 + 3 * random.nextDouble());
            case 2 ->
                    new DiveEvent.Turbulence(
                            after_s, 4 + 4 * random.nextDouble(), 2 + 3 * random.nextDouble());
            default ->
                    new DiveEvent.Sideslip(
                            after_s,
                            3 + 3 * random.nextDouble(),
                            (random.nextBoolean() ? 1 : -1) * (4 + 5 * random.nextDouble()));
        };
    }

    /** A dive's logs, with what some recorders lack. */
    static SimulatedAttempt log(Truth truth, long seed, Logged logged) {
        List<LogPlan> plans = new ArrayList<>();
        for (LogPlan p : LogPlan.standard(truth)) {
            plans.add(p instanceof RecorderPlan r ? recorder(r, seed, logged) : p);
        }
        return SimulatedAttempt.of(truth, AttemptPlan.STANDARD, seed, plans);
    }

    private static RecorderPlan recorder(RecorderPlan plan, long seed, Logged logged) {
        Set<Channel> channels = EnumSet.copyOf(plan.channels());
        channels.removeAll(logged.lost());
        double rate_Hz =
                logged == Logged.ONCE_A_SECOND ? 1 : RATES_HZ[(int) (seed % RATES_HZ.length)];
        return plan.rate(rate_Hz).channels(channels);
    }

    static Debrief debrief(SimulatedAttempt made) throws UnusableInputException {
        return Debriefer.debrief(made.attempt(), made.logs(), step -> {});
    }

    /**
     * What to add to true times for the times at which the recorder's events stand in a debrief:
     * the axis's zero, and the error of the recorder's clock, which is not the tail's to answer
     * for.
     */
    static double ahead_s(SimulatedAttempt made, Debrief debrief) {
        double ahead_s = debrief.axis().seconds(made.truth().start());
        for (ClockResult clock : debrief.clock()) {
            Optional<Instant> zero = made.faults(clock.file()).zero();
            if (zero.isPresent() && clock.zero().isPresent()) {
                ahead_s +=
                        debrief.axis().seconds(clock.zero().get())
                                - debrief.axis().seconds(zero.get());
            }
        }
        return ahead_s;
    }

    /** True episodes on the debrief's axis. */
    static List<TrueEpisode> episodes(SimulatedAttempt made, Debrief debrief) {
        double ahead_s = ahead_s(made, debrief);
        return made.truth().episodes().stream()
                .map(
                        e ->
                                new TrueEpisode(
                                        e.start_s() + ahead_s,
                                        e.end_s() + ahead_s,
                                        e.precededBy().map(c -> later(c, ahead_s)),
                                        e.endedAfter().map(c -> later(c, ahead_s))))
                .toList();
    }

    private static TruePowerChange later(TruePowerChange c, double by_s) {
        return new TruePowerChange(c.time_s() + by_s, c.from_pct(), c.to_pct());
    }
}
