package pairdown.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.camera.Vantage;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.input.Keymap;
import pairdown.replay.ViewState;
import pairdown.replay.ViewState.Layer;
import pairdown.words.Words;

/** The vantage points, each with a button for the second view, and what of the scene is shown. */
final class ViewRows {
    private final Words words;
    private final Keymap keys;

    ViewRows(Words words, Keymap keys) {
        this.words = words;
        this.keys = keys;
    }

    /** Differs whenever the rows would. */
    static long key(ViewState view) {
        long key = Key64.mix(3, (long) view.vantage().hashCode());
        key = Key64.mix(key, (long) view.second().hashCode());
        key = Key64.mix(key, view.frame() == ViewState.Frame.LEAD);
        key = Key64.mix(key, view.isFollowing());
        key = Key64.mix(key, view.enlargement());
        for (Layer layer : LAYERS) {
            key = Key64.mix(key, view.shows(layer));
        }
        return key;
    }

    private static final Layer[] LAYERS = Layer.values();

    List<Row> rows(ViewState view) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < view.vantages().size(); i++) {
            rows.add(vantage(view, i));
        }
        rows.add(toggle(Action.SPLIT, view.second().isPresent()));
        rows.add(
                choice(
                        Action.FRAME,
                        view.frame() == ViewState.Frame.LEAD ? "view.lead-fixed" : "view.world"));
        rows.add(choice(Action.FOLLOW, view.isFollowing() ? "view.follows" : "view.stays"));
        rows.add(
                Row.fact(
                                words.get("action.enlarge"),
                                "\u00d7 "
                                        + Math.round(view.enlargement())
                                        + "   "
                                        + keys.label(Action.ENLARGE))
                        .doing(Command.of(Action.ENLARGE), view.enlargement() > 1));
        rows.add(toggle(Action.TRAILS, view.shows(Layer.TRAILS)));
        rows.add(toggle(Action.GATES, view.shows(Layer.GATES)));
        rows.add(toggle(Action.ELLIPSOIDS, view.shows(Layer.ELLIPSOIDS)));
        rows.add(toggle(Action.VECTORS, view.shows(Layer.VECTORS)));
        rows.add(toggle(Action.LABELS, view.shows(Layer.LABELS)));
        rows.add(toggle(Action.GHOST, view.shows(Layer.GHOST)));
        return rows;
    }

    private Row vantage(ViewState view, int number) {
        Vantage vantage = view.vantages().get(number);
        String name =
                vantage.who()
                        .map(id -> words.get("vantage.eyes", id))
                        .orElseGet(() -> words.get("vantage." + vantage.kind().key()));
        return Row.fact(name, keyOf(number, vantage))
                .doing(new Command(Action.LOOK_FROM, number), vantage.equals(view.vantage()))
                .beside(
                        new Row.Aside(
                                words.get("view.second"),
                                new Command(Action.LOOK_SECOND, number),
                                view.second().equals(Optional.of(vantage))));
    }

    /** The digit that leads there. */
    private String keyOf(int number, Vantage vantage) {
        if (vantage.kind() == Vantage.Kind.ORBIT) {
            return keys.label(Action.FREE_ORBIT);
        }
        return number < 9 ? String.valueOf(number + 1) : "";
    }

    private Row toggle(Action action, boolean on) {
        return choice(action, on ? "strip.on" : "strip.off").doing(Command.of(action), on);
    }

    private Row choice(Action action, String state) {
        return Row.fact(
                        words.get("action." + action.key()),
                        words.get(state) + "   " + keys.label(action))
                .doing(Command.of(action), false);
    }
}
