package pairdown.pair;

/** What gave the axes a relative position is expressed in. */
public enum Axes {
    /** Logged attitude: full, tilted body axes. */
    BODY("body"),
    /** Level, along the direction of the lead's motion through the air. */
    AIR("air"),
    /** Level, along the ground track: no wind is known. */
    GROUND("ground");

    private final String key;

    Axes(String key) {
        this.key = key;
    }

    /** The spelling in files. */
    public String key() {
        return key;
    }
}
