package pairdown.input;

/**
 * An action to carry out.
 *
 * @param value an instant (s), a number in a list or a share, for actions that need one; else 0
 */
public record Command(Action action, double value) {
    public static Command of(Action action) {
        return new Command(action, 0);
    }
}
