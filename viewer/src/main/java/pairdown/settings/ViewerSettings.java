package pairdown.settings;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import pairdown.words.Units;

/**
 * The person's choices, kept from one start to the next.
 *
 * @param zoom factor on all sizes, {@value #LEAST_ZOOM} to {@value #MOST_ZOOM}
 * @param stripsShare share of the height between top and transport that strips take, 0 to 1
 * @param recent folders opened, the latest first
 * @param window as it was shut last
 */
public record ViewerSettings(
        boolean isDark,
        Units units,
        double zoom,
        boolean hasBigFigures,
        PanelKind panel,
        Set<StripKind> strips,
        double stripsShare,
        List<String> recent,
        WindowSize window) {
    public static final double LEAST_ZOOM = 0.6;
    public static final double MOST_ZOOM = 2.5;

    /** More would not fit the start panel of a small laptop. */
    private static final int MOST_RECENT = 6;

    private static final double ZOOM_STEP = 1.1;

    /** Light, for the sun; the strips a first debrief asks for. */
    public static final ViewerSettings DEFAULT =
            new ViewerSettings(
                    false,
                    Units.MILES,
                    1,
                    false,
                    PanelKind.TRUST,
                    EnumSet.allOf(StripKind.class),
                    0.45,
                    List.of(),
                    WindowSize.DEFAULT);

    public ViewerSettings {
        zoom = Math.max(LEAST_ZOOM, Math.min(MOST_ZOOM, zoom));
        stripsShare = Math.max(0, Math.min(1, stripsShare));
        strips = Set.copyOf(strips);
        recent = List.copyOf(recent.subList(0, Math.min(MOST_RECENT, recent.size())));
    }

    public ViewerSettings withOtherTheme() {
        return new ViewerSettings(
                !isDark, units, zoom, hasBigFigures, panel, strips, stripsShare, recent, window);
    }

    public ViewerSettings with(Units other) {
        return new ViewerSettings(
                isDark, other, zoom, hasBigFigures, panel, strips, stripsShare, recent, window);
    }

    public ViewerSettings larger() {
        return withZoom(zoom * ZOOM_STEP);
    }

    public ViewerSettings smaller() {
        return withZoom(zoom / ZOOM_STEP);
    }

    public ViewerSettings withZoom(double other) {
        return new ViewerSettings(
                isDark, units, other, hasBigFigures, panel, strips, stripsShare, recent, window);
    }

    public ViewerSettings withOtherFigures() {
        return new ViewerSettings(
                isDark, units, zoom, !hasBigFigures, panel, strips, stripsShare, recent, window);
    }

    /** With this panel open; with none if it was. */
    public ViewerSettings withToggled(PanelKind wanted) {
        PanelKind next = panel == wanted ? PanelKind.NONE : wanted;
        return new ViewerSettings(
                isDark, units, zoom, hasBigFigures, next, strips, stripsShare, recent, window);
    }

    /** With a strip shown or hidden, whichever it was not. */
    public ViewerSettings withToggled(StripKind strip) {
        EnumSet<StripKind> next = EnumSet.noneOf(StripKind.class);
        next.addAll(strips);
        if (!next.remove(strip)) {
            next.add(strip);
        }
        return new ViewerSettings(
                isDark, units, zoom, hasBigFigures, panel, next, stripsShare, recent, window);
    }

    public ViewerSettings withStripsShare(double share) {
        return new ViewerSettings(
                isDark, units, zoom, hasBigFigures, panel, strips, share, recent, window);
    }

    /** With a folder as the one opened last. */
    public ViewerSettings withOpened(String folder) {
        List<String> next = new ArrayList<>(recent);
        next.remove(folder);
        next.add(0, folder);
        return new ViewerSettings(
                isDark, units, zoom, hasBigFigures, panel, strips, stripsShare, next, window);
    }

    /** With a window of this size the next time. */
    public ViewerSettings withWindow(WindowSize size) {
        return new ViewerSettings(
                isDark, units, zoom, hasBigFigures, panel, strips, stripsShare, recent, size);
    }
}
