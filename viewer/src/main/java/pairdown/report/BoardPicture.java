package pairdown.report;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import pairdown.camera.Vantage;
import pairdown.camera.Vantage.Kind;
import pairdown.debrief.Debrief;
import pairdown.pair.Approach;
import pairdown.pair.PairDebrief;
import pairdown.report.Pictures.View;
import pairdown.report.ReportModel.TimedPicture;
import pairdown.words.Figures;
import pairdown.words.Words;

/**
 * The board page's picture: the formation at the closest approach of all, in grey for a printer.
 */
final class BoardPicture {
    private BoardPicture() {}

    static CompletableFuture<Optional<TimedPicture>> order(
            Debrief debrief, Words words, Figures figures, Pictures pictures) {
        Optional<PairDebrief> nearest = Nearest.of(debrief.pairs(), 1).stream().findFirst();
        if (nearest.isEmpty()) {
            return CompletableFuture.completedFuture(Optional.empty());
        }
        String at = "/pairs/" + debrief.pairs().indexOf(nearest.get());
        Approach closest = nearest.get().closest().orElseThrow();
        Kind side = closest.right_m() < 0 ? Kind.SQUARE_ON_LEFT : Kind.SQUARE_ON;
        Facts facts = new Facts(debrief.axis(), words, figures);
        Prose caption =
                facts.prose(
                        "report.picture.board",
                        Prose.words(nearest.get().flyer()),
                        Prose.of(facts.clock(closest.time_s(), at + "/closest/time")));
        return pictures.order(new View(closest.time_s(), Vantage.of(side), 1))
                .thenApply(
                        image -> image.map(i -> new TimedPicture(Jpeg.uri(Jpeg.grey(i)), caption)));
    }
}
