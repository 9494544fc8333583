package pairdown.theme;

/** The shape that stands for a participant wherever its colour does. */
public enum Marker {
    DISC,
    SQUARE,
    TRIANGLE,
    DIAMOND,
    CROSS,
    RING,
    BAR,
    POINT_DOWN;

    private static final Marker[] ALL = values();

    /** The marker of a participant by its number. */
    public static Marker of(int number) {
        return ALL[Math.floorMod(number, ALL.length)];
    }
}
