package pairdown.clock;

/** What decided a log's clock. */
public enum ClockMethod {
    /** The log's own satellite time, not contradicted. */
    GNSS_TIME("gnss-time"),
    SHARED_RIDE("shared-ride"),
    AIR_DATA_MATCH("air-data-match"),
    /** Pinned by hand. */
    MARK("mark"),
    /** Nothing could tell: the log is not used with others. */
    NONE("none");

    private final String key;

    ClockMethod(String key) {
        this.key = key;
    }

    /** The spelling in files. */
    public String key() {
        return key;
    }
}
