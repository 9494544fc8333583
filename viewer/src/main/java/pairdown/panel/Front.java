package pairdown.panel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import pairdown.attempt.Mark;
import pairdown.attempt.MarksFile;
import pairdown.gl.FolderDialog;
import pairdown.gl.Key;
import pairdown.gl.WindowEvent;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.HitAreas;
import pairdown.input.Keymap;
import pairdown.input.Pointer;
import pairdown.replay.Desk;
import pairdown.settings.SettingsFile;
import pairdown.settings.ViewerSettings;
import pairdown.settings.WindowSize;
import pairdown.track.UnusableInputException;
import pairdown.units.Dimension;
import pairdown.units.Quantity;

/**
 * Where a person's doings arrive: it turns a window's events into commands, has the operator carry
 * them out, and does what touches files: opening, marks, settings. Commands and events that are the
 * scene's or the window's are handed on.
 */
public final class Front {
    private final Desk desk;
    private final Operator operator;
    private final Keymap keys;
    private final Opening<?> opening;
    private final SettingsFile settingsFile;
    private final Pointer pointer = new Pointer();
    private ViewerSettings written;
    private Optional<Path> attemptFolder = Optional.empty();

    public Front(
            Desk desk,
            Operator operator,
            Keymap keys,
            Opening<?> opening,
            SettingsFile settingsFile) {
        this.desk = desk;
        this.operator = operator;
        this.keys = keys;
        this.opening = opening;
        this.settingsFile = settingsFile;
        this.written = desk.settings();
    }

    public Pointer pointer() {
        return pointer;
    }

    /**
     * Takes an event of the window.
     *
     * @param areas what lies under the pointer
     * @param scene gets events over the scene
     * @param others gets commands that are neither time's nor the desk's nor files'
     */
    public void take(
            WindowEvent event,
            HitAreas areas,
            Consumer<WindowEvent> scene,
            Consumer<Command> others) {
        if (event instanceof WindowEvent.KeyTurned key) {
            if (key.pressed()) {
                pressed(key, others);
            }
        } else if (event instanceof WindowEvent.Typed typed) {
            if (desk.asking() != Desk.Asking.NOTHING) {
                desk.type(typed.codePoint());
            }
        } else if (event instanceof WindowEvent.Dropped dropped) {
            drop(dropped.paths());
        } else if (!pointer.take(event, areas, command -> apply(command, others))) {
            scene.accept(event);
        }
    }

    /** Two folders are two attempts, one to be laid over the other. */
    private void drop(List<Path> paths) {
        if (paths.size() > 1 && paths.stream().allMatch(Files::isDirectory)) {
            opening.open(paths.get(0));
            opening.overlay(paths.get(1));
        } else {
            opening.open(paths);
        }
    }

    private void pressed(WindowEvent.KeyTurned key, Consumer<Command> others) {
        if (desk.asking() != Desk.Asking.NOTHING) {
            switch (key.key()) {
                case ENTER, PAD_ENTER -> accept(others);
                case ESCAPE -> apply(Command.of(Action.CANCEL), others);
                case BACKSPACE -> desk.eraseLast();
                default -> {}
            }
            return;
        }
        Key main = key.key() == Key.PAD_ENTER ? Key.ENTER : key.key();
        keys.action(main, key.held()).ifPresent(action -> apply(Command.of(action), others));
        // The key that asked also arrives as a character typed, unless another was held with it.
        boolean types = !key.held().control() && !key.held().alt();
        if (types && desk.asking() != Desk.Asking.NOTHING) {
            desk.skipNextCharacter();
        }
    }

    /** Carries out a command, or hands it on. */
    public void apply(Command command, Consumer<Command> others) {
        boolean done = files(command, others) || operator.apply(command);
        if (!done) {
            others.accept(command);
        }
        keepSettings();
    }

    private boolean files(Command command, Consumer<Command> others) {
        switch (command.action()) {
            case OPEN -> openByDialog();
            case OPEN_LAST -> openRecent(0);
            case OPEN_RECENT -> openRecent((int) command.value());
            case OPEN_ATTEMPT -> openAttempt((int) command.value());
            case OPEN_SEASON -> openSeason();
            case ACCEPT -> accept(others);
            case DELETE_MARK -> operator.chosenMark().ifPresent(mark -> keep(m -> m.remove(mark)));
            default -> {
                return false;
            }
        }
        return true;
    }

    private void openByDialog() {
        FolderDialog.Answer answer = FolderDialog.ask();
        switch (answer.outcome()) {
            case CHOSEN -> answer.folder().ifPresent(opening::open);
            case LEFT -> {}
            case NONE_HERE -> desk.ask(Desk.Asking.PATH, "");
        }
    }

    private void openRecent(int number) {
        List<String> recent = desk.settings().recent();
        if (number >= 0 && number < recent.size()) {
            // A damaged settings file may hold what no path can be.
            openTyped(recent.get(number));
        }
    }

    private void openAttempt(int number) {
        if (number >= 0 && number < desk.season().size()) {
            opening.open(desk.season().get(number).folder());
        }
    }

    private void accept(Consumer<Command> others) {
        Desk.Asking asked = desk.asking();
        switch (asked) {
            case TIME -> {
                if (!operator.seekTyped()) {
                    problem("'" + desk.typed() + "' is no time; type 15:02:11.3 or +12.5");
                }
            }
            case NOTE -> {
                // What was typed stays where it could not be kept: there may be a mend.
                Optional<Mark> typed = operator.typedMark();
                if (typed.isPresent() && !keep(m -> m.add(typed.get()))) {
                    return;
                }
            }
            case GAP -> alignOnTyped(desk.typed().toString(), others);
            case PATH -> openTyped(desk.typed().toString().strip());
            case NOTHING -> {
                return;
            }
        }
        desk.ask(Desk.Asking.NOTHING, "");
    }

    private void openSeason() {
        Optional<Path> above = desk.shown().map(Path::getParent);
        if (above.isPresent()) {
            opening.season(above.get());
        } else {
            problem("no attempt with a folder is shown; drop a folder of attempts on the window");
        }
    }

    private void alignOnTyped(String typed, Consumer<Command> others) {
        try {
            double gap_m = Quantity.parse(typed, Dimension.LENGTH);
            others.accept(new Command(Action.ALIGN_ON_GAP, gap_m));
        } catch (IllegalArgumentException e) {
            problem(e.getMessage() + "; type a distance like 30 m");
        }
    }

    private void openTyped(String typed) {
        try {
            if (!typed.isEmpty()) {
                opening.open(Path.of(typed));
            }
        } catch (InvalidPathException e) {
            problem("'" + typed + "' is no path; type where the attempt's folder lies");
        }
    }

    /**
     * Changes the marks as they are in the file now: another window may have added to them, and a
     * damaged file is not written over.
     *
     * @return whether it is kept, or there is nowhere to keep it
     */
    private boolean keep(Consumer<List<Mark>> change) {
        if (attemptFolder.isEmpty()) {
            return true;
        }
        Path folder = attemptFolder.get();
        try {
            if (!Files.isDirectory(folder)) {
                throw new NoSuchFileException("the folder is gone");
            }
            List<Mark> marks = new ArrayList<>(MarksFile.read(folder));
            change.accept(marks);
            marks.sort(Comparator.comparing(Mark::time));
            MarksFile.write(folder, marks);
            desk.marks(marks);
            return true;
        } catch (UnusableInputException e) {
            problem(String.valueOf(e.getMessage()));
        } catch (IOException e) {
            problem(
                    folder.resolve(MarksFile.NAME)
                            + ": the mark could not be kept ("
                            + e.getMessage()
                            + "); check the folder and its permissions");
        }
        return false;
    }

    private void problem(String text) {
        desk.tell(Optional.of(new Desk.Notice(text, true)));
    }

    /** The window is shut: the next one is as large. */
    public void shut(WindowSize size) {
        desk.settings(desk.settings().withWindow(size));
        keepSettings();
    }

    private void keepSettings() {
        if (desk.settings().equals(written)) {
            return;
        }
        written = desk.settings();
        try {
            settingsFile.write(written);
        } catch (IOException e) {
            problem(
                    settingsFile.path()
                            + ": settings could not be kept ("
                            + e.getMessage()
                            + "); they hold until the window is shut");
        }
    }

    /** What was opened is shown from now on: its marks, and its folder among the recent ones. */
    public void opened(Path given) {
        Path folder = given.toAbsolutePath().normalize();
        desk.forgetAttempt();
        attemptFolder = Optional.of(folder);
        desk.start(false);
        try {
            desk.marks(MarksFile.read(folder));
        } catch (UnusableInputException e) {
            problem(String.valueOf(e.getMessage()));
        }
        desk.settings(desk.settings().withOpened(folder.toString()));
        keepSettings();
    }
}
