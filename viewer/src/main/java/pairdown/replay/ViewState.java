package pairdown.replay;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairdown.camera.Orbit;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;

/**
 * What the person has chosen to see of the scene: the one place where that state lives. Actions
 * change it; drawing only reads it.
 */
public final class ViewState {
    /** What stands still on screen. */
    public enum Frame {
        /** The lead: paths are drawn as seen from it, turning with it. */
        LEAD,
        /** The ground. */
        WORLD
    }

    /** Parts of the scene that can be left out. */
    public enum Layer {
        TRAILS,
        WHOLE_PATHS,
        SLOTS,
        GATES,
        ELLIPSOIDS,
        VECTORS,
        SIGHT_LINES,
        BREAK_OFF,
        LADDER,
        LABELS,
        GHOST
    }

    /** Enlargements of the participants that a key steps through; 1 is true to scale. */
    private static final List<Double> ENLARGEMENTS = List.of(1.0, 2.0, 5.0, 10.0);

    private static final double NARROWEST_DEG = 8;
    private static final double WIDEST_DEG = 100;

    private final Playback playback;
    private final List<Vantage> vantages;
    private final Orbit orbit = new Orbit();
    private final Set<Layer> hidden = EnumSet.noneOf(Layer.class);
    private Frame frame = Frame.LEAD;
    private Vantage vantage = Vantage.DEFAULT;
    private Optional<Vantage> second = Optional.empty();
    private boolean following = true;
    private double heldAt_s = Double.NaN;
    private double fieldOfView_deg = 40;
    private double enlargement = 1;
    private double zoom = 1;

    public ViewState(Debrief debrief) {
        this.playback = new Playback(debrief.span());
        this.vantages = Vantage.of(debrief);
    }

    public Playback playback() {
        return playback;
    }

    public Frame frame() {
        return frame;
    }

    public void toggleFrame() {
        frame = frame == Frame.LEAD ? Frame.WORLD : Frame.LEAD;
    }

    public void inFrame(Frame wanted) {
        frame = wanted;
    }

    public Vantage vantage() {
        return vantage;
    }

    /** All vantage points of this debrief, in the order of their keys. */
    public List<Vantage> vantages() {
        return vantages;
    }

    public void look(Vantage from) {
        vantage = from;
        zoom = 1;
    }

    /** The same, keeping how near the last one stood. */
    public void lookOn(Vantage from) {
        vantage = from;
    }

    /** The vantage point of the second view, where the screen is split. */
    public Optional<Vantage> second() {
        return second;
    }

    /** Splits the screen, or takes the second view away. */
    public void toggleSplit() {
        second =
                second.isPresent()
                        ? Optional.empty()
                        : Optional.of(
                                vantage.kind() == Vantage.Kind.PLAN
                                        ? Vantage.DEFAULT
                                        : Vantage.of(Vantage.Kind.PLAN));
    }

    public void lookSecond(Vantage from) {
        second = Optional.of(from);
    }

    /** Goes through the vantage points in order, 1 on or −1 back. */
    public void step(int by) {
        int at = vantages.indexOf(vantage);
        look(vantages.get(Math.floorMod(at + by, vantages.size())));
    }

    /** Swaps the two views of a split screen. */
    public void swapViews() {
        if (second.isPresent()) {
            Vantage other = second.get();
            second = Optional.of(vantage);
            vantage = other;
        }
    }

    public Orbit orbit() {
        return orbit;
    }

    /** Whether the camera moves with the lead; else it stays where it is in the world. */
    public boolean isFollowing() {
        return following;
    }

    public void toggleFollowing() {
        following = !following;
        heldAt_s = playback.t_s();
    }

    /** The instant the camera stays at the place of, where it does not follow. */
    public double heldAt_s() {
        return heldAt_s;
    }

    public double fieldOfView_deg() {
        return fieldOfView_deg;
    }

    public void widen(double factor) {
        fieldOfView_deg = Math.max(NARROWEST_DEG, Math.min(WIDEST_DEG, fieldOfView_deg * factor));
    }

    /**
     * How much nearer the vantage points outside the machines stand; above 1 nearer. The free orbit
     * has its own distance.
     */
    public double zoom() {
        return zoom;
    }

    /** Nearer with a factor above 1. */
    public void zoom(double factor) {
        if (vantage.kind() == Vantage.Kind.ORBIT) {
            orbit.zoom(1 / factor);
        } else {
            zoom = Math.max(0.02, Math.min(50, zoom * factor));
        }
    }

    /** How many times larger than life participants are drawn. */
    public double enlargement() {
        return enlargement;
    }

    public void nextEnlargement() {
        int at = ENLARGEMENTS.indexOf(enlargement);
        enlargement = ENLARGEMENTS.get((at + 1) % ENLARGEMENTS.size());
    }

    public void enlarge(double factor) {
        enlargement = factor;
    }

    public boolean shows(Layer layer) {
        return !hidden.contains(layer);
    }

    public void toggle(Layer layer) {
        if (!hidden.remove(layer)) {
            hidden.add(layer);
        }
    }
}
