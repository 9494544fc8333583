package pairdown.panel;

import java.util.EnumMap;
import java.util.Map;
import pairdown.replay.Heights;
import pairdown.replay.Recording;
import pairdown.settings.StripKind;
import pairdown.track.Channel;
import pairdown.words.Words;

/** The strips of one debrief, their pyramids made once. */
final class StripBook {
    private final Map<StripKind, StripData> strips = new EnumMap<>(StripKind.class);

    StripBook(Recording recording, Heights heights, Words words) {
        PairStrips pair = new PairStrips(recording, words);
        MotionStrips motion = new MotionStrips(recording, heights, words);
        SystemsStrips systems = new SystemsStrips(recording, words);
        for (StripKind kind : StripKind.values()) {
            strips.put(kind, strip(kind, pair, motion, systems));
        }
    }

    private static StripData strip(
            StripKind kind, PairStrips pair, MotionStrips motion, SystemsStrips systems) {
        return switch (kind) {
            case GAP -> pair.gap();
            case CLOSURE -> pair.closure();
            case RATES -> pair.rates();
            case AIRSPEED -> motion.airspeed();
            case SINK -> motion.sink();
            case HEIGHT -> motion.height();
            case POWER -> systems.power();
            case ELEVATOR -> systems.control(StripKind.ELEVATOR, Channel.ELEVATOR);
            case RUDDER -> systems.control(StripKind.RUDDER, Channel.RUDDER);
            case TURNING -> systems.turning();
            case EFFECTIVENESS -> systems.effectiveness();
            case RETARDING -> systems.retarding();
            case TRUST -> motion.trust();
        };
    }

    StripData get(StripKind kind) {
        StripData strip = strips.get(kind);
        if (strip == null) {
            throw new IllegalArgumentException("no strip " + kind);
        }
        return strip;
    }
}
