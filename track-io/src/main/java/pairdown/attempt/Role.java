package pairdown.attempt;

/** What a participant is in an attempt. */
public enum Role {
    /** The aircraft joined on; at most one. */
    LEAD("lead"),
    FLYER("flyer"),
    /** The exit aircraft. */
    JUMPSHIP("jumpship"),
    CAMERA("camera");

    private final String key;

    Role(String key) {
        this.key = key;
    }

    /** The spelling in files. */
    public String key() {
        return key;
    }

    /** Whether this is an aircraft rather than a person. */
    public boolean isAircraft() {
        return this == LEAD || this == JUMPSHIP;
    }

    /** Whether this leaves the exit aircraft and opens a canopy. */
    public boolean isJumper() {
        return this == FLYER || this == CAMERA;
    }
}
