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
    /** Whence the scene is seen, and what of it. */
    VIEWS,
    /** Which strips are shown. */
    STRIPS,
    NONE;

    /** Its name in texts and files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
