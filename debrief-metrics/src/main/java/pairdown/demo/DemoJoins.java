package pairdown.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pairdown.demo.logfile.Damage;
import pairdown.demo.physics.Behaviour;
import pairdown.demo.physics.FlyerPlan;
import pairdown.demo.physics.Scenario;
import pairdown.demo.physics.ShipPlan;
import pairdown.demo.receiver.GnssPlan;
import pairdown.demo.receiver.GnssPlan.ClockPlan;
import pairdown.demo.receiver.GnssPlan.HeightPlan;
import pairdown.demo.receiver.GnssPlan.Velocity;
import pairdown.demo.receiver.Sight;

/** The attempts in which flyers join on, from 150 m down to both wing tips. */
final class DemoJoins {
    /** Wall clock of the field ahead of UTC: 8 h 45 min. */
    private static final double FIELD_AHEAD_S = 31_500;

    /** Height above the field of a call that is followed 40 ft below 6,500 ft (m). */
    private static final double LATE_BREAK_OFF_M = 1816;

    private final long seed;

    private DemoJoins(long seed) {
        this.seed = seed;
    }

    static List<DemoAttempt> of(long seed) {
        DemoJoins joins = new DemoJoins(seed);
        return List.of(
                joins.wide(),
                joins.localTime(),
                joins.through(),
                joins.onGate(),
                joins.lateExit(),
                joins.fifteen(),
                joins.dropout(),
                joins.hover(),
                joins.oneSide(),
                joins.bothSides());
    }

    private static DemoAttempt attempt(
            String title,
            String lesson,
            Scenario scenario,
            AttemptPlan plan,
            Function<DemoCast, List<DemoLog>> logs) {
        return new DemoAttempt(
                plan.id(),
                title + ": " + lesson,
                scenario,
                plan,
                truth -> logs.apply(new DemoCast(truth)));
    }

    /** The usual logs with those of {@code others} in place of the same participants'. */
    private static List<DemoLog> instead(List<DemoLog> usual, DemoLog... others) {
        List<DemoLog> logs = new ArrayList<>(usual);
        for (DemoLog other : others) {
            logs.replaceAll(
                    log ->
                            log.plan().participant().equals(other.plan().participant())
                                            && log.plan().getClass() == other.plan().getClass()
                                    ? other
                                    : log);
        }
        return logs;
    }

    private DemoAttempt wide() {
        AttemptPlan plan = DemoPlans.gate("2031-05-12-01", "First co-flight, 150 m gate", 150, 20);
        return attempt(
                "150 m",
                "speeds matched for some nine seconds at 150 m: real progress, though far.",
                DemoScenarios.joined(seed, "2031-05-12T01:00:00Z", 0, DemoScenarios.both(150, 7)),
                plan,
                cast ->
                        instead(
                                cast.usual(DemoForms.BRIEF_CSV),
                                DemoLog.of(
                                        cast.lead("nmea").velocity(Velocity.SPEED_AND_TRACK),
                                        DemoForms.NMEA),
                                DemoLog.of(
                                        cast.jumper("blue", "csv"),
                                        DemoForms.CSV,
                                        new Damage.Repeated(0.3, 3),
                                        new Damage.CutEnd()),
                                DemoLog.of(cast.jumper("amber", "kml").rate(2), DemoForms.KML)));
    }

    private DemoAttempt localTime() {
        AttemptPlan plan = DemoPlans.gate("2031-05-12-02", "60 m gate", 60, 20);
        return attempt(
                "60 m",
                "amber's log has the field's wall clock written as UTC, 8 h 45 min ahead, and"
                        + " blue's has GPS time, 18 s ahead: the ride up tells both.",
                DemoScenarios.joined(seed, "2031-05-12T01:00:00Z", 1, DemoScenarios.both(60, 8)),
                plan,
                cast -> {
                    ClockPlan wall = ClockPlan.USUAL.shifted(-FIELD_AHEAD_S);
                    return instead(
                            cast.usual(DemoForms.BRIEF_CSV),
                            DemoLog.of(
                                    cast.jumper("blue", "gpx").rate(2).clock(ClockPlan.GPS_TIME),
                                    DemoForms.GPX),
                            DemoLog.of(cast.jumper("amber", "csv").clock(wall), DemoForms.CSV));
                });
    }

    private DemoAttempt through() {
        AttemptPlan plan = DemoPlans.gate("2031-05-13-01", "30 m gate", 30, 20);
        FlyerPlan hot = DemoScenarios.left(30, 0).withBehaviour(new Behaviour.Through(2.5));
        return attempt(
                "30 m, too fast",
                "blue closes well over the closing limit, through the gate and out ahead; amber"
                        + " holds.",
                DemoScenarios.joined(
                        seed, "2031-05-13T01:00:00Z", 0, hot, DemoScenarios.right(30, 10)),
                plan,
                cast ->
                        instead(
                                cast.usual(DemoForms.BRIEF_CSV),
                                DemoLog.of(
                                        cast.jumper("blue", "csv").rate(10),
                                        DemoForms.BRIEF_CSV,
                                        new Damage.Rubbish(0.6, "#;;;\u0000restart 0x1F")),
                                DemoLog.of(
                                        cast.jumper("amber", "csv").heights(HeightPlan.MSL),
                                        DemoForms.WALL_CLOCK)));
    }

    private DemoAttempt onGate() {
        AttemptPlan plan = DemoPlans.gate("2031-05-13-02", "30 m gate, again", 30, 20);
        return attempt(
                "30 m again",
                "both on the gate. The recorder's clock was set by hand, 4.3 s off, and its"
                        + " pressure lags half a second: a lag is not a clock.",
                DemoScenarios.joined(seed, "2031-05-13T01:00:00Z", 1, DemoScenarios.both(30, 10)),
                plan,
                cast ->
                        instead(
                                cast.usual(DemoForms.BRIEF_CSV),
                                DemoLog.of(
                                        cast.jumper("blue", "csv"),
                                        DemoForms.MILLIS,
                                        new Damage.OutOfOrder(0.4, 3)),
                                DemoLog.of(cast.recorder().clockOff(4.3), DemoForms.SET_RECORDER)));
    }

    private DemoAttempt lateExit() {
        AttemptPlan plan =
                DemoPlans.gate("2031-05-14-01", "15 m gate, from the twin at 105 kt", 15, 20);
        return attempt(
                "15 m from a fast ship",
                "a late exit at 105 kt; closest about 22 m, and never matched for long.",
                DemoScenarios.day(seed, "2031-05-14T01:00:00Z", 0)
                        .withShip(ShipPlan.TWIN)
                        .withFlyers(
                                DemoScenarios.left(15, 1)
                                        .withBehaviour(new Behaviour.StayAway(19, 1))
                                        .withExit(1.2, 0)),
                plan,
                cast ->
                        instead(
                                cast.usual(DemoForms.BRIEF_CSV),
                                DemoLog.of(
                                        cast.jumper("blue", "csv")
                                                .sight(
                                                        Sight.USUAL
                                                                .keptAtExit()
                                                                .frozenFrom(
                                                                        cast.exit_s("blue") - 150,
                                                                        cast.exit_s("blue") - 144)),
                                        DemoForms.CSV,
                                        new Damage.ColdDate("2031-05-14", "1980-01-06", 12))));
    }

    private DemoAttempt fifteen() {
        AttemptPlan plan =
                DemoPlans.gate("2031-05-14-02", "15 m gate, from the helicopter at 60 kt", 15, 20);
        return attempt(
                "15 m from a slow ship",
                "leaving at 60 kt both come in gently and stay matched for 14 s and more.",
                DemoScenarios.joined(seed, "2031-05-14T01:00:00Z", 1, DemoScenarios.both(15, 15)),
                plan,
                cast ->
                        instead(
                                cast.usual(DemoForms.BRIEF_CSV),
                                kept(cast, "blue", "csv"),
                                kept(cast, "amber", "csv")));
    }

    private static DemoLog kept(DemoCast cast, String id, String ending) {
        return DemoLog.of(cast.jumper(id, ending).sight(Sight.USUAL.keptAtExit()), DemoForms.CSV);
    }

    private DemoAttempt dropout() {
        AttemptPlan plan = DemoPlans.gate("2031-05-15-01", "8 m gate", 8, 15);
        return attempt(
                "8 m, the sky lost",
                "blue's receiver loses the sky for 6 s at exit and is metres off after it; amber"
                        + " flies on its back for a while. Holes stay holes.",
                DemoScenarios.joined(
                        seed,
                        "2031-05-15T01:00:00Z",
                        0,
                        DemoScenarios.left(8, 12),
                        DemoScenarios.right(8, 8).withExit(0, 1.5)),
                plan,
                cast -> {
                    double exit_s = cast.exit_s("amber");
                    return instead(
                            cast.usual(DemoForms.BRIEF_CSV),
                            DemoLog.of(
                                    cast.jumper("blue", "csv").sight(Sight.USUAL.lostAtExit(6)),
                                    DemoForms.CSV),
                            DemoLog.of(
                                    cast.jumper("amber", "csv")
                                            .sight(
                                                    Sight.USUAL
                                                            .keptAtExit()
                                                            .invertedFrom(exit_s + 4, exit_s + 34)),
                                    DemoForms.CSV));
                });
    }

    private DemoAttempt hover() {
        AttemptPlan plan = DemoPlans.gate("2031-05-15-02", "4 m gate, one side", 4, 15);
        return attempt(
                "4 m, hand off",
                "blue hovers four metres from its slot, moving like one with the lead: it looks"
                        + " like a touch and is none.",
                DemoScenarios.joined(
                        seed,
                        "2031-05-15T01:00:00Z",
                        1,
                        DemoScenarios.left(4, 12).withBehaviour(new Behaviour.Hover(4, 12))),
                plan,
                cast ->
                        instead(
                                cast.usual(DemoForms.BRIEF_CSV),
                                fast(cast, "blue"),
                                fastLead(cast),
                                fastRecorder(cast)));
    }

    private DemoAttempt oneSide() {
        AttemptPlan plan = DemoPlans.gate("2031-05-16-01", "One side, hand on", 2, 12);
        return attempt(
                "one side",
                "blue holds the left tip for six seconds; the lead feels it.",
                DemoScenarios.joined(
                        seed,
                        "2031-05-16T00:30:00Z",
                        0,
                        DemoScenarios.left(2, 6).withBehaviour(new Behaviour.Touch(6))),
                plan,
                cast ->
                        instead(
                                cast.usual(DemoForms.BRIEF_CSV),
                                fast(cast, "blue"),
                                fastLead(cast),
                                fastRecorder(cast)));
    }

    private DemoAttempt bothSides() {
        AttemptPlan plan = DemoPlans.gate("2031-05-16-02", "Both sides, hand on", 2, 12);
        return attempt(
                "both sides",
                "amber leaves 40 ft below the break-off height; read as it stands, its log, whose"
                        + " heights are from the ellipsoid, would say 100 ft.",
                DemoScenarios.joined(
                                seed,
                                "2031-05-16T01:00:00Z",
                                1,
                                DemoScenarios.left(2, 6).withBehaviour(new Behaviour.Touch(6)),
                                DemoScenarios.right(2, 6).withBehaviour(new Behaviour.Touch(60)))
                        .withHeights(LATE_BREAK_OFF_M, Scenario.standard(seed).opening_m()),
                plan,
                cast ->
                        instead(
                                cast.usual(DemoForms.BRIEF_CSV),
                                fast(cast, "blue"),
                                fastLead(cast),
                                fastRecorder(cast),
                                DemoLog.of(
                                        cast.jumper("amber", "csv")
                                                .rate(10)
                                                .sight(Sight.USUAL.keptAtExit()),
                                        DemoForms.UNLABELLED)));
    }

    private static DemoLog fast(DemoCast cast, String id) {
        GnssPlan plan = cast.jumper(id, "csv").rate(10).sight(Sight.USUAL.keptAtExit());
        return DemoLog.of(plan, DemoForms.BRIEF_CSV);
    }

    /** Jolts need ten readings a second. */
    private static DemoLog fastRecorder(DemoCast cast) {
        return DemoLog.of(cast.recorder().rate(10), DemoForms.RECORDER);
    }

    private static DemoLog fastLead(DemoCast cast) {
        return DemoLog.of(cast.lead("csv").rate(10), DemoForms.MSL_CSV);
    }
}
