package pairdown.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.replay.ViewState;
import pairdown.scene.Diorama;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** How a picture or a film looks. */
final class ViewOptions {
    static final String CAMERAS =
            "square-on, square-on-left, astern-above, left-window, right-window, left-wingtip,"
                    + " right-wingtip, eyes (of the first flyer), eyes-ID, plan, door, ground, orbit";

    @Option(
            names = "--size",
            paramLabel = "WxH",
            converter = PictureSize.Converter.class,
            description = "size in pixels (default: 1280x720)")
    private PictureSize size = PictureSize.DEFAULT;

    @Option(names = "--dark", description = "light on dark")
    private boolean dark;

    @Option(names = "--world", description = "paths over the ground, not as seen from the lead")
    private boolean world;

    @Option(names = "--no-words", description = "without names, figures and scales")
    private boolean wordless;

    @Option(
            names = "--enlarge",
            paramLabel = "N",
            description = "participants N times as large; said on the picture (default: 1)")
    private double enlargement = 1;

    @Mixin private UnitsOption units = new UnitsOption();

    PictureSize size() {
        return size;
    }

    boolean hasWords() {
        return !wordless;
    }

    /** Looks for what a diorama shows. */
    Theme theme(Diorama diorama) {
        return new Theme(
                (dark ? Palette.DARK : Palette.LIGHT).forNames(diorama.moment().recording().ids()),
                Sizes.of(size.width_px(), size.height_px(), size.height_px() / 768f, 0, 1));
    }

    Figures figures() {
        return new Figures(units.units(), Locale.getDefault());
    }

    void apply(Diorama diorama, CommandLine line) {
        if (!(enlargement >= 1 && enlargement <= 100)) {
            throw new ParameterException(line, "--enlarge " + enlargement + " is outside 1 to 100");
        }
        diorama.view().enlarge(enlargement);
        if (world) {
            diorama.view().inFrame(ViewState.Frame.WORLD);
        }
    }

    /** The vantage points of a list of names, checked against who took part. */
    static List<Vantage> vantages(List<String> names, Debrief debrief, CommandLine line) {
        List<Vantage> found = new ArrayList<>();
        for (String name : names) {
            Vantage vantage =
                    Vantage.named(name)
                            .filter(
                                    v ->
                                            v.who()
                                                    .map(debrief::participant)
                                                    .map(p -> p.isPresent())
                                                    .orElse(true))
                            .orElseThrow(
                                    () ->
                                            new ParameterException(
                                                    line,
                                                    "no camera '"
                                                            + name
                                                            + "'; there are "
                                                            + CAMERAS));
            found.add(vantage);
        }
        return found;
    }
}
