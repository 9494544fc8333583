package pairdown.panel;

/**
 * One curve of a strip.
 *
 * @param label what it is called at its end and beside its value: a participant's id, or a text
 * @param number of the participant whose colour and marker it has
 * @param pair the pair it belongs to, {@link #ALWAYS} or {@link #BESIDE}: strips show the chosen
 *     pair's strongly and others' faintly
 * @param isLimit whether it is drawn as a limit
 */
record Curve(String label, int number, int pair, boolean isLimit, Pyramid values) {
    /** Of no pair and always shown strongly: the lead's. */
    static final int ALWAYS = -1;

    /** Of no pair and shown faintly: the exit aircraft's. */
    static final int BESIDE = -2;

    /** Whether it is shown strongly while this pair is chosen. */
    boolean isStrong(int chosen) {
        return pair == ALWAYS || pair == chosen;
    }
}
