package pairdown.track;

/** What a log's {@link Channel#HEIGHT} is measured from. */
public enum HeightDatum {
    /** The WGS 84 ellipsoid. */
    ELLIPSOID("ellipsoid"),
    /** Mean sea level: the geoid of the log's own receiver, or a model. */
    MSL("msl"),
    /**
     * The format leaves it open and nothing in the log says; taken as MSL until evidence decides.
     */
    UNKNOWN("unknown");

    private final String key;

    HeightDatum(String key) {
        this.key = key;
    }

    /** The spelling in files. */
    public String key() {
        return key;
    }
}
