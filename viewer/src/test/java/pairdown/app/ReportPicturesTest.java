package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pairdown.camera.Vantage;
import pairdown.debrief.Debrief;
import pairdown.gl.NeedsGl;
import pairdown.replay.SyntheticDebrief;
import pairdown.report.Pictures.View;
import pairdown.words.Figures;
import pairdown.words.Units;

@NeedsGl
class ReportPicturesTest {
    @Test
    void oneContextDrawsEveryOrderAndNoTwoAreAlike() {
        Debrief debrief = new SyntheticDebrief().build();
        double t_s = debrief.pairs().get(0).closest().orElseThrow().time_s();
        Figures figures = new Figures(Units.MILES, Locale.ENGLISH);
        Set<Integer> seen = new HashSet<>();
        try (ReportPictures pictures = new ReportPictures(debrief, Optional.empty(), figures)) {
            for (Vantage.Kind kind : Set.of(Vantage.Kind.PLAN, Vantage.Kind.SQUARE_ON)) {
                for (double nearer : new double[] {1, 0.3}) {
                    BufferedImage image =
                            pictures.order(new View(t_s, Vantage.of(kind), nearer))
                                    .join()
                                    .orElseThrow();
                    assertTrue(coloursOf(image).size() > 50, "an empty picture");
                    assertTrue(seen.add(coloursOf(image).hashCode()), "the same picture again");
                }
            }
            assertTrue(pictures.whyNone().isEmpty());
        }
    }

    private static Set<Integer> coloursOf(BufferedImage image) {
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours;
    }
}
