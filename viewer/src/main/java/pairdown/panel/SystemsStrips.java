package pairdown.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.debrief.Debrief;
import pairdown.replay.Recording;
import pairdown.settings.StripKind;
import pairdown.tail.TailControl;
import pairdown.tail.TailSettings;
import pairdown.track.Channel;
import pairdown.words.Measure;
import pairdown.words.Words;

/** The strips of the lead's power and controls. */
final class SystemsStrips {
    /** A colour and shape that participants get last. */
    private static final int SECOND = 5;

    private final Debrief debrief;

    /** What counts as near a stop, as lost and as fast: as the episodes' signs have it. */
    private final TailSettings.Signs signs;

    private final int lead;
    private final Words words;

    SystemsStrips(Recording recording, Words words) {
        this.debrief = recording.debrief();
        this.signs = debrief.settings().tail().signs();
        this.lead = Math.max(0, recording.subject());
        this.words = words;
    }

    StripData power() {
        List<Curve> curves = new ArrayList<>();
        logged(Channel.POWER_LEVER, lead, "strip.lever").ifPresent(curves::add);
        logged(Channel.TORQUE, SECOND, "strip.torque").ifPresent(curves::add);
        return new StripData(
                StripKind.POWER,
                Measure.SHARE,
                true,
                -60,
                60,
                -100,
                120,
                curves,
                List.of(new StripData.Level(0, words.get("strip.idle"))),
                List.of(),
                words.get("strip.why.systems"));
    }

    StripData control(StripKind kind, Channel channel) {
        List<Curve> curves = new ArrayList<>();
        logged(channel, lead, "strip." + kind.key()).ifPresent(curves::add);
        return new StripData(
                kind,
                Measure.SHARE,
                true,
                -100,
                100,
                -100,
                100,
                curves,
                List.of(
                        new StripData.Level(signs.nearStop_pct(), words.get("strip.near-stop")),
                        new StripData.Level(-signs.nearStop_pct(), words.get("strip.near-stop"))),
                List.of(),
                words.get("strip.why.systems"));
    }

    StripData turning() {
        List<Curve> curves = new ArrayList<>();
        logged(Channel.PITCH_RATE, lead, "strip.pitch-rate").ifPresent(curves::add);
        logged(Channel.YAW_RATE, SECOND, "strip.yaw-rate").ifPresent(curves::add);
        double fast = signs.rate_dps();
        return new StripData(
                StripKind.TURNING,
                Measure.TURN_RATE,
                true,
                -fast,
                fast,
                -3 * fast,
                3 * fast,
                curves,
                List.of(
                        new StripData.Level(fast, words.get("strip.excursion")),
                        new StripData.Level(-fast, words.get("strip.excursion"))),
                List.of(),
                words.get("strip.why.systems"));
    }

    private Optional<Curve> logged(Channel channel, int number, String label) {
        return debrief.lead()
                .map(lead -> lead.systems().get(channel))
                .map(s -> new Curve(words.get(label), number, Curve.ALWAYS, false, Pyramid.of(s)));
    }

    StripData effectiveness() {
        List<StripData.Level> lines = new ArrayList<>();
        debrief.tailControl()
                .map(TailControl::standingEffectiveness)
                .ifPresent(
                        s ->
                                s.ifPresent(
                                        v -> {
                                            lines.add(
                                                    new StripData.Level(
                                                            v, words.get("strip.standing")));
                                            lines.add(
                                                    new StripData.Level(
                                                            signs.lostBelow() * v,
                                                            words.get("strip.lost")));
                                        }));
        return figure(StripKind.EFFECTIVENESS, "effectiveness", 0, 1.2, lines);
    }

    StripData retarding() {
        return figure(StripKind.RETARDING, "retardingCoefficient", 0, 1.2, List.of());
    }

    private StripData figure(
            StripKind kind, String name, double least, double greatest, List<StripData.Level> to) {
        List<Curve> curves = new ArrayList<>();
        debrief.tailControl()
                .map(tail -> tail.figures().get(name))
                .ifPresent(
                        s ->
                                curves.add(
                                        new Curve(
                                                words.get("strip." + kind.key()),
                                                lead,
                                                Curve.ALWAYS,
                                                false,
                                                Pyramid.of(s))));
        return new StripData(
                kind,
                Measure.RATIO,
                false,
                least,
                greatest,
                -0.5,
                3,
                curves,
                to,
                List.of(),
                words.get("strip.why.systems"));
    }
}
