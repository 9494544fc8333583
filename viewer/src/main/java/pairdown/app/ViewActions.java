package pairdown.app;

import java.util.List;
import java.util.Optional;
import pairdown.camera.Vantage;
import pairdown.input.Action;
import pairdown.input.Command;
import pairdown.replay.ViewState;
import pairdown.replay.ViewState.Layer;
import pairdown.scene.Diorama;

/** Carries out the actions that change what of the scene is seen and whence. */
final class ViewActions {
    private static final double NEARER = 1.25;
    private static final double WIDER = 1.15;
    private static final double TURN_DEG = 7.5;

    private static final List<Action> BY_NUMBER =
            List.of(
                    Action.VANTAGE_1,
                    Action.VANTAGE_2,
                    Action.VANTAGE_3,
                    Action.VANTAGE_4,
                    Action.VANTAGE_5,
                    Action.VANTAGE_6,
                    Action.VANTAGE_7,
                    Action.VANTAGE_8,
                    Action.VANTAGE_9);

    private ViewActions() {}

    /**
     * Carries out a command.
     *
     * @return false if it is another's
     */
    static boolean apply(Command command, Diorama diorama) {
        ViewState view = diorama.view();
        switch (command.action()) {
            case LOOK_FROM -> look(view, (int) command.value());
            case LOOK_SECOND -> lookSecond(view, (int) command.value());
            case NEXT_VANTAGE -> view.step(1);
            case PREVIOUS_VANTAGE -> view.step(-1);
            case FREE_ORBIT -> diorama.orbitFromHere();
            case FRAME -> view.toggleFrame();
            case FOLLOW -> view.toggleFollowing();
            case SPLIT -> view.toggleSplit();
            case SWAP_VIEWS -> view.swapViews();
            case NEARER -> view.zoom(NEARER);
            case FARTHER -> view.zoom(1 / NEARER);
            case WIDER -> view.widen(WIDER);
            case NARROWER -> view.widen(1 / WIDER);
            case ENLARGE -> view.nextEnlargement();
            case ORBIT_LEFT -> turn(diorama, -TURN_DEG, 0);
            case ORBIT_RIGHT -> turn(diorama, TURN_DEG, 0);
            case ORBIT_UP -> turn(diorama, 0, TURN_DEG);
            case ORBIT_DOWN -> turn(diorama, 0, -TURN_DEG);
            case TRAILS -> view.toggle(Layer.TRAILS);
            case GATES -> view.toggle(Layer.GATES);
            case ELLIPSOIDS -> view.toggle(Layer.ELLIPSOIDS);
            case VECTORS -> view.toggle(Layer.VECTORS);
            case LABELS -> view.toggle(Layer.LABELS);
            case GHOST -> view.toggle(Layer.GHOST);
            default -> {
                return byNumber(command.action(), view);
            }
        }
        return true;
    }

    /** Turns the free camera, going over to it first. */
    static void turn(Diorama diorama, double right_deg, double up_deg) {
        diorama.orbitFromHere();
        diorama.view().orbit().turn(right_deg, up_deg);
    }

    private static boolean byNumber(Action action, ViewState view) {
        int number = BY_NUMBER.indexOf(action);
        if (number < 0) {
            return false;
        }
        look(view, number);
        return true;
    }

    private static void look(ViewState view, int number) {
        List<Vantage> vantages = view.vantages();
        if (number >= 0 && number < vantages.size()) {
            view.look(vantages.get(number));
        }
    }

    /** From there in the second view; pressed again, there is one view. */
    private static void lookSecond(ViewState view, int number) {
        List<Vantage> vantages = view.vantages();
        if (number < 0 || number >= vantages.size()) {
            return;
        }
        Vantage wanted = vantages.get(number);
        if (view.second().equals(Optional.of(wanted))) {
            view.toggleSplit();
        } else {
            view.lookSecond(wanted);
        }
    }
}
