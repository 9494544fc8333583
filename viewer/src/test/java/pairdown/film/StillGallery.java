package pairdown.film;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.gl.NoGraphicsException;
import pairdown.replay.SyntheticDebrief;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Units;

/** Pictures of a made-up attempt from every vantage point, to look at: {@code FOLDER [t_s …]}. */
final class StillGallery {
    private StillGallery() {}

    public static void main(String[] args) throws java.io.IOException, NoGraphicsException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        Debrief debrief = new SyntheticDebrief().withGapAt(84).build();
        Figures figures = new Figures(Units.MILES, Locale.ROOT);
        try (Studio studio = Studio.open(debrief, 1366, 768, Optional.empty(), Optional.empty())) {
            for (int i = 1; i < args.length; i++) {
                double t_s = Double.parseDouble(args[i]);
                for (Vantage vantage : Vantage.of(debrief)) {
                    Palette palette = i % 2 == 1 ? Palette.LIGHT : Palette.DARK;
                    Theme theme = new Theme(palette, Sizes.atPercent(100));
                    ImageIO.write(
                            studio.still(t_s, vantage, theme, figures, true).toImage(),
                            "png",
                            folder.resolve(vantage.name() + "-" + args[i] + ".png").toFile());
                }
            }
        }
    }
}
