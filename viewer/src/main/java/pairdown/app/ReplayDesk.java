package pairdown.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import pairdown.debrief.Debrief;
import pairdown.debrief.ResultFolder;
import pairdown.gl.Pixels;
import pairdown.gl.Shaders;
import pairdown.input.Keymap;
import pairdown.panel.Front;
import pairdown.panel.Opening;
import pairdown.panel.Operator;
import pairdown.panel.Panels;
import pairdown.replay.Alignment;
import pairdown.replay.Desk;
import pairdown.replay.Moment;
import pairdown.replay.Recording;
import pairdown.replay.ViewState;
import pairdown.scene.Diorama;
import pairdown.settings.SettingsFile;
import pairdown.settings.ViewerSettings;
import pairdown.words.Words;

/** Panels, operator and what is opened behind them: all of the replay window but the drawing. */
final class ReplayDesk implements AutoCloseable {
    /** How long before the closest approach the replay opens: the joining is seen at once. */
    private static final double LEAD_IN_S = 20;

    private static final DateTimeFormatter NAME_TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss.SSS").withZone(ZoneOffset.UTC);

    private final Words words = Words.of(Locale.getDefault());
    private final Keymap keys = Keymap.standard();
    private final Panels panels = new Panels(words, keys);
    private final Desk state;
    private final Operator operator;
    private final Opening<Loaded> opening;
    private final Front front;
    private Optional<Loaded> shown = Optional.empty();
    private Optional<Moment> ghost = Optional.empty();
    private GhostChoice choice;

    /**
     * @param wake called from another thread when there is something new to see
     */
    ReplayDesk(SettingsFile file, ViewerSettings settings, GhostChoice choice, Runnable wake) {
        this.state = new Desk(settings);
        this.operator = new Operator(state);
        this.opening = new Opening<>(new AttemptLoader(), wake);
        this.front = new Front(state, operator, keys, opening, file);
        this.choice = choice;
    }

    Panels panels() {
        return panels;
    }

    Front front() {
        return front;
    }

    /** Begins to read the first attempt and the one to lay over it. */
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
    Optional<Opening.Opened<Loaded>> poll() {
        return opening.poll(state);
    }

    /** Sets an attempt up to be seen. */
    Diorama show(Loaded loaded, Shaders shaders) {
        shown = Optional.of(loaded);
        ghost = Optional.empty();
        Recording recording = Recording.of(loaded.debrief());
        ViewState view = new ViewState(loaded.debrief());
        view.playback().seek(recording.middle_s() - LEAD_IN_S);
        panels.show(recording, view.playback(), operator);
        front.opened(loaded.folder());
        tell(loaded.complaints());
        return new Diorama(shaders, recording, view, loaded.relief(), Optional.empty());
    }

    private void tell(List<String> complaints) {
        if (!complaints.isEmpty()) {
            state.tell(Optional.of(new Desk.Notice(String.join("\n", complaints), true)));
        }
    }

    /** Sets a second attempt up over the one shown; empty if the two share no moment. */
    Optional<Diorama> overlay(Loaded other, Diorama current, Shaders shaders) {
        GhostChoice wished = choice.withGate(current.moment().debrief());
        Optional<GhostChoice> possible = wished.orNext(current.moment().debrief(), other.debrief());
        if (possible.isEmpty()) {
            String what = words.get("ghost.none", other.debrief().attempt().id());
            state.tell(Optional.of(new Desk.Notice(what, true)));
            return Optional.empty();
        }
        choice = possible.get();
        Moment laid = new Moment(Recording.of(other.debrief()));
        ghost = Optional.of(laid);
        tellAlignment(laid);
        Alignment alignment =
                choice.alignment(current.moment().debrief(), other.debrief()).orElseThrow();
        return Optional.of(
                new Diorama(
                        shaders,
                        current.moment().recording(),
                        current.view(),
                        shown.flatMap(Loaded::relief),
                        Optional.of(new Moment.Ghost(laid, alignment))));
    }

    /** Lays the second attempt over the first on the next moment that both have. */
    void alignNext(Diorama current) {
        if (ghost.isEmpty()) {
            state.tell(Optional.of(new Desk.Notice(words.get("ghost.how"), false)));
            return;
        }
        Moment laid = ghost.get();
        choice.next()
                .orNext(current.moment().debrief(), laid.debrief())
                .ifPresent(
                        next -> {
                            choice = next;
                            next.alignment(current.moment().debrief(), laid.debrief())
                                    .ifPresent(current.moment()::align);
                            tellAlignment(laid);
                        });
    }

    private void tellAlignment(Moment laid) {
        String on = words.get("ghost.on." + choice.on().key());
        String what = words.get("ghost.laid", laid.debrief().attempt().id(), on);
        state.tell(Optional.of(new Desk.Notice(what, false)));
    }

    /** Keeps what the window shows beside the attempt's results. */
    void savePicture(Pixels pixels, double t_s) {
        if (shown.isEmpty()) {
            return;
        }
        Debrief debrief = shown.get().debrief();
        String time = NAME_TIME.format(debrief.axis().instant(t_s));
        Path file = shown.get().folder().resolve("debrief").resolve("replay-" + time + ".png");
        try {
            ResultFolder.write(file, to -> ImageIO.write(pixels.toImage(), "png", to.toFile()));
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
