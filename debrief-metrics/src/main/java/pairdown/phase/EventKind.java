package pairdown.phase;

import java.util.Locale;

/** What can happen at an instant worth jumping to. */
public enum EventKind {
    EXIT,
    STABLE,
    GATE_IN,
    MATCH_START,
    MATCH_END,
    CLOSEST,
    TOUCH_START,
    TOUCH_END,
    WORST_CLOSURE,
    BREAK_OFF,
    OPENING,
    LIMIT,
    EPISODE_START,
    EPISODE_END,
    POWER_CHANGE,
    LOG_END;

    /** The spelling in files: {@code "match-start"}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
