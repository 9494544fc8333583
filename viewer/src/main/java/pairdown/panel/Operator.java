package pairdown.panel;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.attempt.Mark;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.pair.PairDebrief;
import pairdown.phase.EventKind;
import pairdown.replay.Desk;
import pairdown.replay.Playback;
import pairdown.settings.PanelKind;
import pairdown.settings.StripKind;
import pairdown.settings.ViewerSettings;
import pairdown.time.Span;

/**
 * Carries out actions on time and desk. What needs a window, a file or the scene's own state is not
 * its to do: it says so and the caller does it.
 */
public final class Operator {
    private static final double STEP_S = 0.1;
    private static final double STRIP_ZOOM = 1.4;
    private static final double PAN_SHARE = 0.25;
    private static final int ROWS_A_KEY = 3;

    /** What strips take of the height, gone round by a key: none, some, most. */
    private static final double SOME = 0.45;

    private static final double MOST = 0.72;

    private static final List<StripKind> STRIPS = List.of(StripKind.values());

    private static final List<Action> STRIP_ACTIONS =
            List.of(
                    Action.STRIP_1,
                    Action.STRIP_2,
                    Action.STRIP_3,
                    Action.STRIP_4,
                    Action.STRIP_5,
                    Action.STRIP_6,
                    Action.STRIP_7,
                    Action.STRIP_8,
                    Action.STRIP_9,
                    Action.STRIP_13,
                    Action.STRIP_10,
                    Action.STRIP_11,
                    Action.STRIP_12);

    private final Desk desk;
    private Optional<Board> board = Optional.empty();
    private Optional<Playback> playback = Optional.empty();

    public Operator(Desk desk) {
        this.desk = desk;
    }

    /** From now on actions of time are carried out on this. */
    void operate(Board shown, Playback time) {
        board = Optional.of(shown);
        playback = Optional.of(time);
    }

    /** The action that shows or hides the n-th strip. */
    static Action stripAction(int number) {
        return STRIP_ACTIONS.get(number);
    }

    /**
     * Carries out a command.
     *
     * @return whether it was carried out; false for what is the caller's
     */
    public boolean apply(Command command) {
        return settings(command)
                || overlays(command)
                || (playback.isPresent()
                        && board.isPresent()
                        && (time(command, playback.get(), board.get())
                                || strips(command, playback.get(), board.get())
                                || lists(command, playback.get(), board.get())));
    }

    private boolean settings(Command command) {
        ViewerSettings s = desk.settings();
        Optional<ViewerSettings> next =
                switch (command.action()) {
                    case TRUST -> Optional.of(s.withToggled(PanelKind.TRUST));
                    case FLYERS -> Optional.of(s.withToggled(PanelKind.FLYERS));
                    case EVENTS -> Optional.of(s.withToggled(PanelKind.EVENTS));
                    case LIMITS -> Optional.of(s.withToggled(PanelKind.LIMITS));
                    case TAIL -> Optional.of(s.withToggled(PanelKind.TAIL));
                    case SEASON -> Optional.of(s.withToggled(PanelKind.SEASON));
                    case MARKS -> Optional.of(s.withToggled(PanelKind.MARKS));
                    case VIEWS -> Optional.of(s.withToggled(PanelKind.VIEWS));
                    case CHOOSE_STRIPS -> Optional.of(s.withToggled(PanelKind.STRIPS));
                    case BIG_FIGURES -> Optional.of(s.withOtherFigures());
                    case THEME -> Optional.of(s.withOtherTheme());
                    case UNITS -> Optional.of(s.with(s.units().next()));
                    case AIRSPEED_UNIT -> Optional.of(s.with(s.units().withNextAirspeed()));
                    case SINK_UNIT -> Optional.of(s.with(s.units().withOtherSink()));
                    case HEIGHT_UNIT -> Optional.of(s.with(s.units().withOtherHeight()));
                    case DISTANCE_UNIT -> Optional.of(s.with(s.units().withOtherDistance()));
                    case LARGER -> Optional.of(s.larger());
                    case SMALLER -> Optional.of(s.smaller());
                    case STRIPS -> Optional.of(s.withStripsShare(nextShare(s.stripsShare())));
                    case STRIPS_SHARE -> Optional.of(s.withStripsShare(command.value()));
                    default -> stripOf(command.action()).map(s::withToggled);
                };
        next.ifPresent(desk::settings);
        return next.isPresent();
    }

    private static double nextShare(double share) {
        if (share <= 0) {
            return SOME;
        }
        return share < MOST ? MOST : 0;
    }

    private static Optional<StripKind> stripOf(Action action) {
        int number = STRIP_ACTIONS.indexOf(action);
        return number < 0 ? Optional.empty() : Optional.of(STRIPS.get(number));
    }

    private boolean overlays(Command command) {
        switch (command.action()) {
            case HELP -> desk.help(!desk.isHelping());
            case START -> desk.start(!desk.isStarting() || playback.isEmpty());
            case OPEN_PATH -> desk.ask(Desk.Asking.PATH, "");
            case GHOST_GAP -> desk.ask(Desk.Asking.GAP, "");
            case CANCEL -> cancel();
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Shuts the topmost of what lies over the scene. */
    private void cancel() {
        if (desk.asking() != Desk.Asking.NOTHING) {
            desk.ask(Desk.Asking.NOTHING, "");
        } else if (desk.notice().isPresent()) {
            desk.tell(Optional.empty());
        } else if (desk.isHelping()) {
            desk.help(false);
        } else if (desk.isStarting() && playback.isPresent()) {
            desk.start(false);
        } else {
            desk.noCursors();
        }
    }

    private boolean time(Command command, Playback time, Board shown) {
        switch (command.action()) {
            case PLAY -> time.toggle();
            case TURN -> time.turn();
            case FASTER -> time.faster();
            case SLOWER -> time.slower();
            case REAL_TIME -> time.atRate(1);
            case STEP_ON -> time.step(STEP_S);
            case STEP_BACK -> time.step(-STEP_S);
            case SECOND_ON -> time.step(1);
            case SECOND_BACK -> time.step(-1);
            case TEN_ON -> time.step(10);
            case TEN_BACK -> time.step(-10);
            case TO_START -> time.seek(shown.shown(desk).start_s());
            case TO_END -> time.seek(shown.shown(desk).end_s());
            case NEXT_EVENT -> time.toNext(shown.recording().eventTimes_s());
            case PREVIOUS_EVENT -> time.toPrevious(shown.recording().eventTimes_s());
            case NEXT_MATCH -> time.toNext(shown.matchStarts_s());
            case PREVIOUS_MATCH -> time.toPrevious(shown.matchStarts_s());
            case NEXT_EPISODE -> time.toNext(shown.episodeStarts_s());
            case PREVIOUS_EPISODE -> time.toPrevious(shown.episodeStarts_s());
            case NEXT_FINDING -> time.toNext(shown.findings_s());
            case PREVIOUS_FINDING -> time.toPrevious(shown.findings_s());
            case LOOP -> time.markLoop();
            case TYPE_TIME -> desk.ask(Desk.Asking.TIME, "");
            case WHOLE_RECORD -> desk.toggleWhole();
            case SEEK, SEEK_ON_STRIP -> time.seek(command.value());
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean strips(Command command, Playback time, Board shown) {
        double from_s = shown.windowStart_s(desk);
        double to_s = shown.windowEnd_s(desk);
        double pan_s = PAN_SHARE * (to_s - from_s);
        Span all = shown.span();
        switch (command.action()) {
            case STRIPS_ZOOM_IN -> zoom(time.t_s(), 1 / STRIP_ZOOM, shown);
            case STRIPS_ZOOM_OUT -> zoom(time.t_s(), STRIP_ZOOM, shown);
            case ZOOM_STRIPS_AT -> zoom(command.value(), 1 / STRIP_ZOOM, shown);
            case UNZOOM_STRIPS_AT -> zoom(command.value(), STRIP_ZOOM, shown);
            case STRIPS_LATER -> desk.window(from_s + pan_s, to_s + pan_s, all);
            case STRIPS_EARLIER -> desk.window(from_s - pan_s, to_s - pan_s, all);
            case PAN_STRIPS -> desk.window(command.value(), command.value() + to_s - from_s, all);
            case STRIPS_ALL -> desk.noWindow();
            case STRIPS_DOWN -> desk.stripScroll(Math.min(lastStrip(), desk.stripScroll() + 1));
            case STRIPS_UP -> desk.stripScroll(desk.stripScroll() - 1);
            case CURSOR_A -> desk.cursorA(time.t_s());
            case CURSOR_B -> desk.cursorB(time.t_s());
            case CURSOR_A_AT -> desk.cursorA(command.value());
            case CURSOR_B_AT -> desk.cursorB(command.value());
            case NO_CURSORS -> desk.noCursors();
            default -> {
                return false;
            }
        }
        return true;
    }

    private int lastStrip() {
        return Math.max(0, desk.settings().strips().size() - 1);
    }

    /** The instant zoomed about stays where it is. */
    private void zoom(double about_s, double factor, Board shown) {
        double from_s = shown.windowStart_s(desk);
        double to_s = shown.windowEnd_s(desk);
        double held_s = Math.max(from_s, Math.min(to_s, about_s));
        desk.window(
                held_s - (held_s - from_s) * factor,
                held_s + (to_s - held_s) * factor,
                shown.span());
    }

    private boolean lists(Command command, Playback time, Board shown) {
        PanelKind panel = desk.settings().panel();
        switch (command.action()) {
            case PANEL_DOWN -> desk.scroll(panel, desk.scroll(panel) + rows(command));
            case PANEL_UP -> desk.scroll(panel, desk.scroll(panel) - rows(command));
            case NEXT_FLYER -> desk.choosePair(shown.pair(desk) + 1);
            case PREVIOUS_FLYER -> desk.choosePair(shown.pair(desk) - 1);
            case CHOOSE_FLYER -> desk.choosePair((int) command.value());
            case CHOOSE_MARK -> chooseMark((int) command.value(), time, shown);
            case MARK -> askNote(Mark.Kind.MOMENT);
            case MARK_TOUCH -> askNote(Mark.Kind.TOUCH);
            default -> {
                return false;
            }
        }
        return true;
    }

    /** By as many as a button says; a key says nothing. */
    private static int rows(Command command) {
        return command.value() >= 1 ? (int) command.value() : ROWS_A_KEY;
    }

    private void chooseMark(int number, Playback time, Board shown) {
        if (number >= 0 && number < desk.marks().size()) {
            desk.chooseMark(number);
            time.seek(shown.debrief().axis().seconds(desk.marks().get(number).time()));
        }
    }

    private void askNote(Mark.Kind kind) {
        desk.markKind(kind);
        desk.ask(Desk.Asking.NOTE, "");
    }

    /** The moment shown with the note typed; empty without an attempt. */
    public Optional<Mark> typedMark() {
        if (board.isEmpty() || playback.isEmpty()) {
            return Optional.empty();
        }
        Board shown = board.get();
        Instant at = shown.debrief().axis().instant(playback.get().t_s());
        List<String> who = new ArrayList<>();
        int pair = shown.pair(desk);
        if (desk.markKind() == Mark.Kind.TOUCH && pair >= 0) {
            PairDebrief touched = shown.debrief().pairs().get(pair);
            who.add(touched.flyer());
            who.add(touched.lead());
        }
        NoteText note = NoteText.of(desk.typed().toString());
        return Optional.of(
                new Mark(
                        at.truncatedTo(ChronoUnit.MILLIS),
                        desk.markKind(),
                        who,
                        note.note(),
                        note.video()));
    }

    /** The mark chosen, if any. */
    public Optional<Mark> chosenMark() {
        int chosen = desk.chosenMark();
        return chosen >= 0 && chosen < desk.marks().size()
                ? Optional.of(desk.marks().get(chosen))
                : Optional.empty();
    }

    /**
     * Goes to the time typed.
     *
     * @return false if the text is no time
     */
    public boolean seekTyped() {
        if (board.isEmpty() || playback.isEmpty()) {
            return false;
        }
        Board shown = board.get();
        Optional<Double> t_s =
                TypedTime.parse(
                        desk.typed().toString(), shown.debrief().axis(), firstExit_s(shown));
        t_s.ifPresent(playback.get()::seek);
        return t_s.isPresent();
    }

    private static double firstExit_s(Board shown) {
        return shown.recording().events().stream()
                .filter(e -> e.kind() == EventKind.EXIT)
                .mapToDouble(pairdown.phase.Event::time_s)
                .findFirst()
                .orElse(shown.span().start_s());
    }
}
