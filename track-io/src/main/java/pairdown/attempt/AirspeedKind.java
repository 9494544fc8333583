package pairdown.attempt;

/** Which airspeed a figure is. */
public enum AirspeedKind {
    CALIBRATED("calibrated"),
    TRUE("true");

    private final String key;

    AirspeedKind(String key) {
        this.key = key;
    }

    /** The spelling in files. */
    public String key() {
        return key;
    }
}
