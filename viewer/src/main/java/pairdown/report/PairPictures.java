package pairdown.report;

import java.util.ArrayList;
import java.util.List;
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
 * A pair's pictures: the closest approach from three vantage points, then the way there in profile
 * and in plan. All are ordered at once and fetched later.
 */
final class PairPictures {
    /** From as far as shows the last hundred metres or so of the way. */
    private static final double FROM_AFAR = 0.3;

    private final Words words;
    private final Pictures pictures;
    private final List<CompletableFuture<Optional<Picture>>> ordered = new ArrayList<>();
    private final String clock;

    private PairPictures(Words words, Pictures pictures, String clock) {
        this.words = words;
        this.pictures = pictures;
        this.clock = clock;
    }

    /** Orders the pictures of a pair; none where it has no closest approach. */
    static PairPictures order(
            Debrief debrief, PairDebrief pair, Words words, Figures figures, Pictures pictures) {
        Optional<Approach> closest = pair.closest();
        String clock =
                closest.map(a -> figures.clock(debrief.axis(), a.time_s(), Facts.CLOCK_DECIMALS))
                        .orElse("");
        PairPictures order = new PairPictures(words, pictures, clock);
        closest.ifPresent(a -> order.all(a, pair));
        return order;
    }

    private void all(Approach closest, PairDebrief pair) {
        boolean left = pair.slotArm().map(a -> a.right_m()).orElse(closest.right_m()) < 0;
        Vantage side = Vantage.of(left ? Kind.SQUARE_ON_LEFT : Kind.SQUARE_ON);
        Vantage above = Vantage.of(Kind.PLAN);
        Vantage tip = Vantage.of(left ? Kind.LEFT_WINGTIP : Kind.RIGHT_WINGTIP);
        double t_s = closest.time_s();
        add(new View(t_s, side, 1), "square-on");
        add(new View(t_s, above, 1), "plan");
        add(new View(t_s, tip, 1), tip.name());
        add(new View(t_s, side, FROM_AFAR), "profile-way");
        add(new View(t_s, above, FROM_AFAR), "plan-way");
    }

    private void add(View view, String key) {
        String caption = words.get("report.picture." + key, clock);
        ordered.add(
                pictures.order(view)
                        .thenApply(image -> image.map(i -> new Picture(Jpeg.uri(i), caption))));
    }

    /** Those that could be drawn; waits for them. */
    List<Picture> fetch() {
        return ordered.stream().map(CompletableFuture::join).flatMap(Optional::stream).toList();
    }
}
