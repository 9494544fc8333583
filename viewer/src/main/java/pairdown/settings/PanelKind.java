package pairdown.settings;

import java.util.Locale;

/** The panels at the side; one is open at a time, or none. */
public enum PanelKind {
    TRUST,
    FLYERS,
    EVENTS,
    LIMITS,
    TAIL,
    SEASON,
    MARKS,
    NONE;

    /** Its name in texts and files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
