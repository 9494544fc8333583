package pairdown.panel;

import pairdown.input.Action;
import pairdown.replay.Desk;
import pairdown.settings.PanelKind;

/** The column of buttons at the left edge: what can be opened. */
final class Rail {
    private static final Action[] BUTTONS = {
        Action.START,
        Action.TRUST,
        Action.FLYERS,
        Action.EVENTS,
        Action.LIMITS,
        Action.TAIL,
        Action.SEASON,
        Action.MARKS,
        Action.VIEWS,
        Action.CHOOSE_STRIPS,
        Action.BIG_FIGURES,
        Action.HELP
    };

    private Rail() {}

    static void paint(Sheet sheet, Rect area, Desk desk) {
        sheet.canvas()
                .fill(area.x(), area.y(), area.width(), area.height(), sheet.palette().panel());
        float height = area.height() / BUTTONS.length;
        for (int i = 0; i < BUTTONS.length; i++) {
            Action action = BUTTONS[i];
            sheet.button(
                    new Rect(area.x(), area.y() + i * height, area.width(), height),
                    sheet.word("rail." + action.key()),
                    action,
                    0,
                    isOn(action, desk));
        }
    }

    private static boolean isOn(Action action, Desk desk) {
        // Big figures stand in the panel's place.
        boolean isCovered = desk.settings().hasBigFigures();
        PanelKind open = isCovered ? PanelKind.NONE : desk.settings().panel();
        return switch (action) {
            case TRUST -> open == PanelKind.TRUST;
            case FLYERS -> open == PanelKind.FLYERS;
            case EVENTS -> open == PanelKind.EVENTS;
            case LIMITS -> open == PanelKind.LIMITS;
            case TAIL -> open == PanelKind.TAIL;
            case SEASON -> open == PanelKind.SEASON;
            case MARKS -> open == PanelKind.MARKS;
            case VIEWS -> open == PanelKind.VIEWS;
            case CHOOSE_STRIPS -> open == PanelKind.STRIPS;
            case BIG_FIGURES -> desk.settings().hasBigFigures();
            case HELP -> desk.isHelping();
            case START -> desk.isStarting();
            default -> false;
        };
    }
}
