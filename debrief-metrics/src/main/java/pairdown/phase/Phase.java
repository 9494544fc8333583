package pairdown.phase;

/** What a participant was doing. */
public enum Phase {
    ABOARD("aboard"),
    FLIGHT("flight"),
    CANOPY("canopy"),
    GROUND("ground"),
    CLIMB("climb"),
    RUN_IN("run-in"),
    DESCENT("descent"),
    RECOVERY("recovery");

    private final String key;

    Phase(String key) {
        this.key = key;
    }

    /** The spelling in files. */
    public String key() {
        return key;
    }
}
