package pairdown.report;

import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import pairdown.camera.Vantage;
import pairdown.camera.Vantage.Kind;
import pairdown.debrief.Debrief;
import pairdown.pair.Approach;
import pairdown.pair.PairDebrief;
import pairdown.report.Pictures.View;
import pairdown.report.ReportModel.Picture;
import pairdown.words.Figures;
import pairdown.words.Words;

/**
 * The board page's picture: the formation at the closest approach of all, in grey for a printer.
 */
final class BoardPicture {
    private BoardPicture() {}

    static CompletableFuture<Optional<Picture>> order(
            Debrief debrief, Words words, Figures figures, Pictures pictures) {
        Optional<PairDebrief> nearest =
                debrief.pairs().stream()
                        .filter(p -> p.closest().isPresent())
                        .min(Comparator.comparingDouble(BoardPicture::separation_m));
        if (nearest.isEmpty()) {
            return CompletableFuture.completedFuture(Optional.empty());
        }
        Approach closest = nearest.get().closest().orElseThrow();
        Kind side = closest.right_m() < 0 ? Kind.SQUARE_ON_LEFT : Kind.SQUARE_ON;
        String caption =
                words.get(
                        "report.picture.board",
                        nearest.get().flyer(),
                        figures.clock(debrief.axis(), closest.time_s()));
        return pictures.order(new View(closest.time_s(), Vantage.of(side), 1))
                .thenApply(image -> image.map(i -> new Picture(Jpeg.uri(Jpeg.grey(i)), caption)));
    }

    private static double separation_m(PairDebrief pair) {
        return pair.closest().orElseThrow().separation_m().value();
    }
}
