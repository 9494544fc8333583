package pairdown.input;

import java.util.Locale;

/**
 * Everything a person can do. Each has a key ({@link Keymap}) but those marked as needing a value,
 * which only something on screen gives: an instant, a place in a list.
 */
public enum Action {
    PLAY(Group.TIME),
    TURN(Group.TIME),
    FASTER(Group.TIME),
    SLOWER(Group.TIME),
    REAL_TIME(Group.TIME),
    STEP_ON(Group.TIME),
    STEP_BACK(Group.TIME),
    SECOND_ON(Group.TIME),
    SECOND_BACK(Group.TIME),
    TEN_ON(Group.TIME),
    TEN_BACK(Group.TIME),
    TO_START(Group.TIME),
    TO_END(Group.TIME),
    NEXT_EVENT(Group.TIME),
    PREVIOUS_EVENT(Group.TIME),
    NEXT_MATCH(Group.TIME),
    PREVIOUS_MATCH(Group.TIME),
    NEXT_EPISODE(Group.TIME),
    PREVIOUS_EPISODE(Group.TIME),
    NEXT_FINDING(Group.TIME),
    PREVIOUS_FINDING(Group.TIME),
    LOOP(Group.TIME),
    TYPE_TIME(Group.TIME),
    WHOLE_RECORD(Group.TIME),

    NEXT_VANTAGE(Group.VIEW),
    PREVIOUS_VANTAGE(Group.VIEW),
    VANTAGE_1(Group.VIEW),
    VANTAGE_2(Group.VIEW),
    VANTAGE_3(Group.VIEW),
    VANTAGE_4(Group.VIEW),
    VANTAGE_5(Group.VIEW),
    VANTAGE_6(Group.VIEW),
    VANTAGE_7(Group.VIEW),
    VANTAGE_8(Group.VIEW),
    VANTAGE_9(Group.VIEW),
    FREE_ORBIT(Group.VIEW),
    FRAME(Group.VIEW),
    FOLLOW(Group.VIEW),
    SPLIT(Group.VIEW),
    SWAP_VIEWS(Group.VIEW),
    NEARER(Group.VIEW),
    FARTHER(Group.VIEW),
    WIDER(Group.VIEW),
    NARROWER(Group.VIEW),
    ORBIT_LEFT(Group.VIEW),
    ORBIT_RIGHT(Group.VIEW),
    ORBIT_UP(Group.VIEW),
    ORBIT_DOWN(Group.VIEW),
    ENLARGE(Group.VIEW),
    TRAILS(Group.VIEW),
    GATES(Group.VIEW),
    ELLIPSOIDS(Group.VIEW),
    VECTORS(Group.VIEW),
    LABELS(Group.VIEW),
    GHOST(Group.VIEW),
    GHOST_ALIGNMENT(Group.VIEW),
    GHOST_GAP(Group.VIEW),
    NEXT_FLYER(Group.VIEW),
    PREVIOUS_FLYER(Group.VIEW),
    FULL_SCREEN(Group.VIEW),
    SAVE_PICTURE(Group.VIEW),

    STRIPS(Group.STRIPS),
    STRIPS_ZOOM_IN(Group.STRIPS),
    STRIPS_ZOOM_OUT(Group.STRIPS),
    STRIPS_LATER(Group.STRIPS),
    STRIPS_EARLIER(Group.STRIPS),
    STRIPS_ALL(Group.STRIPS),
    STRIPS_DOWN(Group.STRIPS),
    STRIPS_UP(Group.STRIPS),
    CURSOR_A(Group.STRIPS),
    CURSOR_B(Group.STRIPS),
    NO_CURSORS(Group.STRIPS),
    STRIP_1(Group.STRIPS),
    STRIP_2(Group.STRIPS),
    STRIP_3(Group.STRIPS),
    STRIP_4(Group.STRIPS),
    STRIP_5(Group.STRIPS),
    STRIP_6(Group.STRIPS),
    STRIP_7(Group.STRIPS),
    STRIP_8(Group.STRIPS),
    STRIP_9(Group.STRIPS),
    STRIP_10(Group.STRIPS),
    STRIP_11(Group.STRIPS),
    STRIP_12(Group.STRIPS),
    STRIP_13(Group.STRIPS),

    HELP(Group.PANELS),
    TRUST(Group.PANELS),
    FLYERS(Group.PANELS),
    EVENTS(Group.PANELS),
    LIMITS(Group.PANELS),
    TAIL(Group.PANELS),
    SEASON(Group.PANELS),
    MARKS(Group.PANELS),
    VIEWS(Group.PANELS),
    CHOOSE_STRIPS(Group.PANELS),
    PANEL_DOWN(Group.PANELS),
    PANEL_UP(Group.PANELS),
    BIG_FIGURES(Group.PANELS),
    THEME(Group.PANELS),
    UNITS(Group.PANELS),
    AIRSPEED_UNIT(Group.PANELS),
    SINK_UNIT(Group.PANELS),
    HEIGHT_UNIT(Group.PANELS),
    DISTANCE_UNIT(Group.PANELS),
    LARGER(Group.PANELS),
    SMALLER(Group.PANELS),

    OPEN(Group.FILES),
    OPEN_PATH(Group.FILES),
    OPEN_LAST(Group.FILES),
    OPEN_SEASON(Group.FILES),
    START(Group.FILES),
    MARK(Group.FILES),
    MARK_TOUCH(Group.FILES),
    DELETE_MARK(Group.FILES),
    ACCEPT(Group.FILES),
    CANCEL(Group.FILES),
    QUIT(Group.FILES),

    /** Goes to the instant that is its value. */
    SEEK(Group.POINTED),
    /** The same on a strip, where the wheel zooms and the right button pans. */
    SEEK_ON_STRIP(Group.POINTED),
    /** Shows the strips from the instant that is its value, as wide as before. */
    PAN_STRIPS(Group.POINTED),
    /** Zooms the strips about the instant that is its value. */
    ZOOM_STRIPS_AT(Group.POINTED),
    UNZOOM_STRIPS_AT(Group.POINTED),
    /** Puts a cursor at the instant that is its value. */
    CURSOR_A_AT(Group.POINTED),
    CURSOR_B_AT(Group.POINTED),
    /** Looks from the vantage point of that number. */
    LOOK_FROM(Group.POINTED),
    /** Looks from it in the second view, or takes that view away. */
    LOOK_SECOND(Group.POINTED),
    /** Chooses the flyer of that number. */
    CHOOSE_FLYER(Group.POINTED),
    /** Chooses the mark of that number. */
    CHOOSE_MARK(Group.POINTED),
    /** Opens the recent folder of that number. */
    OPEN_RECENT(Group.POINTED),
    /** Opens the attempt of that number in the season list. */
    OPEN_ATTEMPT(Group.POINTED),
    /** Lays the attempt of that number in the season list over the one shown, or takes it off. */
    OVERLAY_ATTEMPT(Group.POINTED),
    /** Aligns the second attempt where the gap first came down to the value (m). */
    ALIGN_ON_GAP(Group.POINTED),
    /** Gives the strips that share of the height. */
    STRIPS_SHARE(Group.POINTED);

    /** Where the overlay lists it. */
    public enum Group {
        TIME,
        VIEW,
        STRIPS,
        PANELS,
        FILES,
        /** Needs a value that only a place on screen gives; has no key. */
        POINTED;

        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final Group group;
    private final String key;

    Action(Group group) {
        this.group = group;
        this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public Group group() {
        return group;
    }

    /** Its name in texts: {@code "next-event"}. */
    public String key() {
        return key;
    }

    /** Whether it needs a value. */
    public boolean needsValue() {
        return group == Group.POINTED;
    }
}
