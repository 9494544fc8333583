package pairdown.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import pairdown.attempt.WholeFile;
import pairdown.debrief.Debrief;
import pairdown.gl.Pixels;
import pairdown.gl.Shaders;
import pairdown.input.Keymap;
import pairdown.kept.KeptDebriefs;
import pairdown.panel.Front;
import pairdown.panel.Opening;
import pairdown.panel.Operator;
import pairdown.panel.Panels;
import pairdown.replay.Alignment;
import pairdown.replay.Desk;
import pairdown.replay.ViewState;
import pairdown.scene.Blueprint;
import pairdown.scene.Diorama;
import pairdown.scene.Overlay;
import pairdown.settings.PanelKind;
import pairdown.settings.SettingsFile;
import pairdown.settings.ViewerSettings;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Words;

/** Panels, operator and what is opened behind them: all of the replay window but the drawing. */
final class ReplayDesk implements AutoCloseable {
    private static final DateTimeFormatter NAME_TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss.SSS").withZone(ZoneOffset.UTC);

    private final Words words = Words.of(Locale.getDefault());
    private final Keymap keys = Keymap.standard();
    private final Panels panels = new Panels(words, keys);
    private final Desk state;
    private final Operator operator;
    private final Opening<Found> opening;
    private final Front front;
    private Optional<Found.Ready> shown = Optional.empty();
    private Optional<Debrief> ghost = Optional.empty();
    private GhostChoice choice;

    /**
     * @param kept debriefs made before
     * @param wake called from another thread when there is something new to see
     */
    ReplayDesk(
            SettingsFile file,
            ViewerSettings settings,
            KeptDebriefs kept,
            GhostChoice choice,
            Runnable wake) {
        this.state = new Desk(settings);
        this.operator = new Operator(state);
        this.opening = new Opening<>(new AttemptLoader(words, kept), wake);
        this.front = new Front(state, operator, keys, opening, file);
        this.choice = choice;
    }

    Words words() {
        return words;
    }

    Panels panels() {
        return panels;
    }

    Front front() {
        return front;
    }

    /**
     * Begins to read the first attempt and the one to lay over it, or with what to do first. It may
     * begin before there is a window.
     *
     * @param problem to be told at once
     */
    void begin(List<Path> attempts, Optional<String> problem) {
        problem.ifPresent(p -> state.tell(Optional.of(new Desk.Notice(p, true))));
        state.start(attempts.isEmpty());
        if (!attempts.isEmpty()) {
            opening.open(attempts.get(0));
        }
        if (attempts.size() > 1) {
            opening.overlay(attempts.get(1));
        }
    }

    Desk state() {
        return state;
    }

    ViewerSettings settings() {
        return state.settings();
    }

    /** Whether what lies over the scene hides all of it. */
    boolean coversScene() {
        return state.isStarting() || state.isHelping();
    }

    /** What was read since last time. */
    Optional<Opening.Opened<Found>> poll() {
        return opening.poll(state);
    }

    /**
     * A scene on its way into the card's memory, while what was shown before is shown on.
     *
     * @param takeUp to be run as it is shown
     */
    record Coming(Diorama diorama, Runnable takeUp) {}

    /** Sets an attempt up to be seen. */
    Coming show(Found.Ready ready, Shaders shaders) {
        Blueprint blueprint = ready.blueprint();
        ViewState view = new ViewState(ready.loaded().debrief());
        view.playback().seek(blueprint.recording().beginning_s());
        return new Coming(
                new Diorama(shaders, blueprint, view, Optional.empty()), () -> takeUp(ready, view));
    }

    private void takeUp(Found.Ready ready, ViewState view) {
        Loaded loaded = ready.loaded();
        shown = Optional.of(ready);
        ghost = Optional.empty();
        panels.show(ready.board(), view, operator);
        front.opened(loaded.folder());
        state.shows(Optional.of(absolute(loaded)), Optional.empty());
        tell(loaded.complaints());
    }

    /** What the window is called by what it shows. */
    Optional<String> title() {
        return shown.map(r -> "Pairdown: " + r.loaded().debrief().attempt().id());
    }

    /** Shows what is wrong, a line for each. */
    void tell(List<String> complaints) {
        if (!complaints.isEmpty()) {
            state.tell(Optional.of(new Desk.Notice(String.join("\n", complaints), true)));
        }
    }

    /**
     * Lists the attempts of a season.
     *
     * @param opensLatest whether the latest usable one is to be opened: nothing is shown yet
     */
    void list(Found.Attempts attempts, boolean opensLatest) {
        List<Desk.SeasonLine> lines = attempts.lines();
        state.season(lines, Optional.of(attempts.season()));
        if (settings().panel() != PanelKind.SEASON) {
            state.settings(settings().withToggled(PanelKind.SEASON));
        }
        if (opensLatest) {
            lines.stream()
                    .filter(line -> line.summary().usable())
                    .findFirst()
                    .ifPresent(line -> opening.open(line.folder()));
        }
    }

    /**
     * Begins to lay an attempt of the season list over the one shown, or takes it off.
     *
     * @return the scene without it, where it was laid over
     */
    Optional<Coming> overlay(int number, Diorama current, Shaders shaders) {
        if (number < 0 || number >= state.season().size()) {
            return Optional.empty();
        }
        Path folder = state.season().get(number).folder();
        if (!state.overlaid().equals(Optional.of(folder))) {
            opening.overlay(folder);
            return Optional.empty();
        }
        return again(
                current,
                shaders,
                Optional.empty(),
                () -> {
                    ghost = Optional.empty();
                    state.shows(state.shown(), Optional.empty());
                });
    }

    /** Sets a second attempt up over the one shown; empty if the two share no moment. */
    Optional<Coming> overlay(Found.Ready ready, Diorama current, Shaders shaders) {
        Loaded other = ready.loaded();
        Debrief first = current.moment().debrief();
        Optional<GhostChoice> possible = choice.orNext(first, other.debrief());
        Optional<Alignment> alignment = possible.flatMap(p -> p.alignment(first, other.debrief()));
        if (alignment.isEmpty()) {
            String what = words.get("ghost.none", other.debrief().attempt().id());
            state.tell(Optional.of(new Desk.Notice(what, true)));
            return Optional.empty();
        }
        choice = possible.get();
        return again(
                current,
                shaders,
                Optional.of(new Overlay(ready.blueprint(), alignment.get())),
                () -> {
                    ghost = Optional.of(other.debrief());
                    state.shows(state.shown(), Optional.of(absolute(other)));
                    tellAlignment(first, other.debrief());
                });
    }

    /** The same attempt seen as before, with another ghost or none. */
    private Optional<Coming> again(
            Diorama current, Shaders shaders, Optional<Overlay> over, Runnable takeUp) {
        return shown.map(Found.Ready::blueprint)
                .map(b -> new Coming(new Diorama(shaders, b, current.view(), over), takeUp));
    }

    private static Path absolute(Loaded loaded) {
        return loaded.folder().toAbsolutePath().normalize();
    }

    /** Lays the second attempt over the first on the next moment that both have. */
    void alignNext(Diorama current) {
        choice.next()
                .orNext(current.moment().debrief(), ghostDebrief(current))
                .ifPresent(next -> align(current, next));
    }

    /** Lays it where the gap first came down to a size. */
    void alignOnGap(Diorama current, double gap_m) {
        align(current, GhostChoice.ofGap(gap_m));
    }

    private Debrief ghostDebrief(Diorama current) {
        return ghost.orElse(current.moment().debrief());
    }

    private void align(Diorama current, GhostChoice wished) {
        if (ghost.isEmpty()) {
            state.tell(Optional.of(new Desk.Notice(words.get("ghost.how"), false)));
            return;
        }
        Optional<Alignment> alignment = wished.alignment(current.moment().debrief(), ghost.get());
        if (alignment.isEmpty()) {
            state.tell(Optional.of(new Desk.Notice(words.get("ghost.no-gap"), true)));
            return;
        }
        choice = wished;
        current.moment().align(alignment.get());
        tellAlignment(current.moment().debrief(), ghost.get());
    }

    private void tellAlignment(Debrief first, Debrief laid) {
        Figures figures = new Figures(settings().units(), words.locale());
        String gap = figures.text(Measure.DISTANCE, choice.gap_m(first));
        String on = words.get("ghost.on." + choice.on().key(), gap);
        String what = words.get("ghost.laid", laid.attempt().id(), on);
        state.tell(Optional.of(new Desk.Notice(what, false)));
    }

    /** Keeps what the window shows beside the attempt's results. */
    void savePicture(Pixels pixels, double t_s) {
        if (shown.isEmpty()) {
            return;
        }
        Debrief debrief = shown.get().loaded().debrief();
        String time = NAME_TIME.format(debrief.axis().instant(t_s));
        Path file =
                shown.get().loaded().folder().resolve("debrief").resolve("replay-" + time + ".png");
        try {
            if (!Files.isDirectory(shown.get().loaded().folder())) {
                throw new NoSuchFileException("the attempt's folder is gone");
            }
            WholeFile.write(file, to -> ImageIO.write(pixels.toImage(), "png", to.toFile()));
            state.tell(Optional.of(new Desk.Notice(words.get("picture.kept", "" + file), false)));
        } catch (IOException e) {
            String what = words.get("picture.lost", "" + file, "" + e.getMessage());
            state.tell(Optional.of(new Desk.Notice(what, true)));
        }
    }

    @Override
    public void close() {
        opening.close();
    }
}
