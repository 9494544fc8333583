package pairdown.panel;

import pairdown.settings.PanelKind;
import pairdown.settings.ViewerSettings;
import pairdown.theme.Sizes;

/**
 * Where the parts of the window lie. From the left: the rail; scene over strips; the side panel;
 * under all but the rail the scrub bar and the buttons.
 *
 * @param scene where the scene is drawn; what is left
 * @param strips empty where they are shut
 * @param side empty where no panel is open
 */
record Layout(Rect rail, Rect scene, Rect strips, Rect side, Rect scrub, Rect buttons, Rect whole) {
    private static final float RAIL_MM = 17;
    private static final float SIDE_LEAST_MM = 92;
    private static final float SIDE_MOST_MM = 125;
    private static final float SIDE_SHARE = 0.27f;
    private static final float SCRUB_MM = 17;
    private static final float BUTTONS_MM = 16;
    private static final float STRIP_LEAST_MM = 22;

    static Layout of(int width_px, int height_px, Sizes sizes, ViewerSettings settings) {
        float rail = sizes.mm(RAIL_MM);
        float buttons = sizes.mm(BUTTONS_MM);
        float scrub = sizes.mm(SCRUB_MM);
        float sideWidth =
                settings.panel() == PanelKind.NONE && !settings.hasBigFigures()
                        ? 0
                        : Math.max(
                                sizes.mm(SIDE_LEAST_MM),
                                Math.min(sizes.mm(SIDE_MOST_MM), SIDE_SHARE * width_px));
        float top = height_px - buttons - scrub;
        float stripsHeight =
                settings.stripsShare() <= 0
                        ? 0
                        : Math.max(
                                sizes.mm(STRIP_LEAST_MM),
                                Math.min(
                                        top - sizes.mm(STRIP_LEAST_MM),
                                        (float) (settings.stripsShare() * top)));
        float middle = width_px - rail - sideWidth;
        return new Layout(
                new Rect(0, 0, rail, height_px),
                new Rect(rail, 0, middle, top - stripsHeight),
                new Rect(rail, top - stripsHeight, middle, stripsHeight),
                new Rect(rail + middle, 0, sideWidth, top),
                new Rect(rail, top, width_px - rail, scrub),
                new Rect(rail, top + scrub, width_px - rail, buttons),
                new Rect(0, 0, width_px, height_px));
    }
}
