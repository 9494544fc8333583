package pairdown.replay;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairdown.attempt.Mark;
import pairdown.season.AttemptSummary;
import pairdown.season.Season;
import pairdown.settings.PanelKind;
import pairdown.settings.ViewerSettings;
import pairdown.time.Span;

/**
 * What the person has chosen to see on the panels: the one place where that state lives. Actions
 * change it; drawing only reads it. The scene's own choices are in {@link ViewState}.
 */
public final class Desk {
    /** What is being typed. */
    public enum Asking {
        NOTHING,
        /** An instant to go to. */
        TIME,
        /** A mark's note. */
        NOTE,
        /** The gap that two attempts are aligned on. */
        GAP,
        /** A folder to open. */
        PATH
    }

    /**
     * Something to tell the person.
     *
     * @param isProblem whether something went wrong; else it is good to know
     */
    public record Notice(String text, boolean isProblem) {}

    /**
     * Something is going on in the background.
     *
     * @param share done of it, 0 to 1; NaN where that is not known
     */
    public record Progress(String what, double share) {}

    /** An attempt of the season list, and where it lies. */
    public record SeasonLine(AttemptSummary summary, Path folder) {}

    /** What is good to know goes away by itself; a problem stays until it is shut (s). */
    private static final double NOTE_LASTS_S = 6;

    /** Narrower than this strips show nothing new (s). */
    private static final double NARROWEST_WINDOW_S = 0.5;

    private ViewerSettings settings;
    private final Map<PanelKind, Integer> scroll = new EnumMap<>(PanelKind.class);
    private final StringBuilder typed = new StringBuilder();
    private boolean skipsNext;
    private int chosenPair;
    private int chosenMark = -1;
    private int stripScroll;
    private double windowStart_s = Double.NaN;
    private double windowEnd_s = Double.NaN;
    private double cursorA_s = Double.NaN;
    private double cursorB_s = Double.NaN;
    private boolean whole;
    private boolean helping;
    private boolean starting;
    private Asking asking = Asking.NOTHING;
    private Mark.Kind markKind = Mark.Kind.MOMENT;
    private Optional<Notice> notice = Optional.empty();
    private Optional<Progress> progress = Optional.empty();
    private List<Mark> marks = List.of();
    private double noticeLeft_s;
    private List<SeasonLine> season = List.of();
    private Optional<Season> seasonFound = Optional.empty();
    private Optional<Path> shown = Optional.empty();
    private Optional<Path> overlaid = Optional.empty();
    private int revision;

    public Desk(ViewerSettings settings) {
        this.settings = settings;
    }

    public ViewerSettings settings() {
        return settings;
    }

    public void settings(ViewerSettings chosen) {
        settings = chosen;
        revision++;
    }

    /** Rises with every change of a list or a choice that kept pictures are made from. */
    public int revision() {
        return revision;
    }

    /** Forgets what belongs to one attempt: another is shown from now on. */
    public void forgetAttempt() {
        chosenPair = 0;
        chosenMark = -1;
        stripScroll = 0;
        scroll.clear();
        windowStart_s = Double.NaN;
        windowEnd_s = Double.NaN;
        noCursors();
        whole = false;
        marks = List.of();
        revision++;
    }

    /** The pair that read-outs, strips and bands are about, a number in the debrief's pairs. */
    public int chosenPair() {
        return chosenPair;
    }

    public void choosePair(int number) {
        chosenPair = number;
        revision++;
    }

    /** A number in {@link #marks}, −1 for none. */
    public int chosenMark() {
        return chosenMark;
    }

    public void chooseMark(int number) {
        chosenMark = number;
        revision++;
    }

    /** How many lines a panel is scrolled down. */
    public int scroll(PanelKind panel) {
        return scroll.getOrDefault(panel, 0);
    }

    public void scroll(PanelKind panel, int lines) {
        scroll.put(panel, Math.max(0, lines));
        revision++;
    }

    /** A list can't be scrolled past its end: whoever knows its length says so. */
    public void scrollAtMost(PanelKind panel, int lines) {
        if (scroll(panel) > lines) {
            scroll.put(panel, lines);
        }
    }

    /** The number of the first strip shown. */
    public int stripScroll() {
        return stripScroll;
    }

    public void stripScroll(int first) {
        stripScroll = Math.max(0, first);
        revision++;
    }

    /** Where the strips begin (s); NaN as long as nobody zoomed them. */
    public double windowStart_s() {
        return windowStart_s;
    }

    public double windowEnd_s() {
        return windowEnd_s;
    }

    /** Shows a stretch on the strips, kept inside {@code all} and not too narrow. */
    public void window(double start_s, double end_s, Span all) {
        double length_s = Math.min(all.duration_s(), Math.max(NARROWEST_WINDOW_S, end_s - start_s));
        double from_s = Math.max(all.start_s(), Math.min(all.end_s() - length_s, start_s));
        windowStart_s = from_s;
        windowEnd_s = from_s + length_s;
    }

    /** Back to the stretch the attempt suggests. */
    public void noWindow() {
        windowStart_s = Double.NaN;
        windowEnd_s = Double.NaN;
    }

    /** NaN where there is none. */
    public double cursorA_s() {
        return cursorA_s;
    }

    public void cursorA(double t_s) {
        cursorA_s = t_s;
    }

    /** NaN where there is none. */
    public double cursorB_s() {
        return cursorB_s;
    }

    public void cursorB(double t_s) {
        cursorB_s = t_s;
    }

    public void noCursors() {
        cursorA_s = Double.NaN;
        cursorB_s = Double.NaN;
    }

    /** Whether the whole record is shown; else the part from before the first exit to the end. */
    public boolean showsWhole() {
        return whole;
    }

    public void toggleWhole() {
        whole = !whole;
        noWindow();
        revision++;
    }

    /** Whether the overlay with all keys is shown. */
    public boolean isHelping() {
        return helping;
    }

    public void help(boolean shown) {
        helping = shown;
    }

    /** Whether the start panel is shown. */
    public boolean isStarting() {
        return starting;
    }

    public void start(boolean shown) {
        starting = shown;
        revision++;
    }

    public Asking asking() {
        return asking;
    }

    /** Begins asking for something typed, with a text to begin with. */
    public void ask(Asking what, String first) {
        asking = what;
        skipsNext = false;
        typed.setLength(0);
        typed.append(first);
    }

    /** What has been typed so far. */
    public CharSequence typed() {
        return typed;
    }

    public void type(int codePoint) {
        if (!skipsNext) {
            typed.appendCodePoint(codePoint);
        }
        skipsNext = false;
    }

    /** The next character typed is that of the key which asked: it is not part of the answer. */
    public void skipNextCharacter() {
        skipsNext = true;
    }

    public void eraseLast() {
        if (!typed.isEmpty()) {
            typed.setLength(typed.offsetByCodePoints(typed.length(), -1));
        }
    }

    public Mark.Kind markKind() {
        return markKind;
    }

    public void markKind(Mark.Kind kind) {
        markKind = kind;
    }

    public Optional<Notice> notice() {
        return notice;
    }

    public void tell(Optional<Notice> what) {
        notice = what;
        boolean stays = what.map(Notice::isProblem).orElse(true);
        noticeLeft_s = stays ? Double.POSITIVE_INFINITY : NOTE_LASTS_S;
    }

    /** Lets real time pass. */
    public void elapse(double elapsed_s) {
        noticeLeft_s -= elapsed_s;
        if (noticeLeft_s < 0) {
            tell(Optional.empty());
        }
    }

    public Optional<Progress> progress() {
        return progress;
    }

    public void progress(Optional<Progress> what) {
        progress = what;
    }

    public List<Mark> marks() {
        return marks;
    }

    public void marks(List<Mark> all) {
        marks = List.copyOf(all);
        chosenMark = Math.min(chosenMark, marks.size() - 1);
        revision++;
    }

    public List<SeasonLine> season() {
        return season;
    }

    /** What all attempts of the list say together. */
    public Optional<Season> seasonFound() {
        return seasonFound;
    }

    public void season(List<SeasonLine> lines, Optional<Season> found) {
        season = List.copyOf(lines);
        seasonFound = found;
        revision++;
    }

    /** The folder of the attempt shown; empty for one made of loose files. */
    public Optional<Path> shown() {
        return shown;
    }

    /** The folder of the attempt laid over, if any. */
    public Optional<Path> overlaid() {
        return overlaid;
    }

    public void shows(Optional<Path> attempt, Optional<Path> other) {
        shown = attempt;
        overlaid = other;
        revision++;
    }
}
