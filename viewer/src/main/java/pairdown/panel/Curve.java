package pairdown.panel;

/**
 * One curve of a strip.
 *
 * @param label what it is called at its end and beside its value: a participant's id, or a text
 * @param number of the participant whose colour and marker it has
 * @param pair the pair it belongs to, −1 where it stands for itself: strips show the chosen pair's
 *     strongly and others' faintly
 * @param isLimit whether it is drawn as a limit
 */
record Curve(String label, int number, int pair, boolean isLimit, Pyramid values) {}
