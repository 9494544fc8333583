package pairdown.panel;

import java.util.List;
import java.util.Optional;
import pairdown.input.Command;

/**
 * One row of a side panel.
 *
 * @param number of the participant whose marker stands before it, −1 for none
 * @param isStrong whether it is a heading
 * @param left what it is about
 * @param right what it comes to, at the right edge
 * @param cells figures with their names, two to a line
 * @param lines sentences under it, wrapped
 * @param command what pressing it does, if anything
 * @param isOn whether it is the chosen one
 * @param picture drawn under its head, if any
 * @param aside a second thing to do with it, on a button of its own
 */
record Row(
        int number,
        boolean isStrong,
        String left,
        String right,
        List<Cell> cells,
        Optional<Picture> picture,
        List<String> lines,
        Optional<Command> command,
        boolean isOn,
        Optional<Aside> aside) {
    /** A figure with its name. */
    record Cell(String name, String figure) {}

    /** A button at the right of a row. */
    record Aside(String label, Command command, boolean isOn) {}

    /** A drawing as wide as the panel. */
    interface Picture {
        float height_mm();

        void paint(Sheet sheet, Rect area);
    }

    Row {
        cells = List.copyOf(cells);
        lines = List.copyOf(lines);
    }

    static Row heading(String text) {
        return new Row(
                -1,
                true,
                text,
                "",
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    static Row sentence(String text) {
        return new Row(
                -1,
                false,
                "",
                "",
                List.of(),
                Optional.empty(),
                List.of(text),
                Optional.empty(),
                false,
                Optional.empty());
    }

    static Row picture(Picture picture) {
        return new Row(
                -1,
                false,
                "",
                "",
                List.of(),
                Optional.of(picture),
                List.of(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    static Row fact(String left, String right) {
        return new Row(
                -1,
                false,
                left,
                right,
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    static Row about(int number, String left, String right) {
        return new Row(
                number,
                true,
                left,
                right,
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    Row with(List<Cell> figures) {
        return new Row(
                number, isStrong, left, right, figures, picture, lines, command, isOn, aside);
    }

    Row saying(List<String> sentences) {
        return new Row(
                number, isStrong, left, right, cells, picture, sentences, command, isOn, aside);
    }

    Row doing(Command pressed, boolean on) {
        return new Row(
                number,
                isStrong,
                left,
                right,
                cells,
                picture,
                lines,
                Optional.of(pressed),
                on,
                aside);
    }

    Row beside(Aside other) {
        return new Row(
                number,
                isStrong,
                left,
                right,
                cells,
                picture,
                lines,
                command,
                isOn,
                Optional.of(other));
    }
}
