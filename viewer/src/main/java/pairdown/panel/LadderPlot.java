package pairdown.panel;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pairdown.season.AttemptSummary.FlyerSummary;
import pairdown.season.Ladder;
import pairdown.season.Ladder.FlyerLadder;
import pairdown.season.Ladder.Rung;
import pairdown.words.Measure;

/**
 * The step-down at a glance: planned gates as dashes, each flyer's gap over the attempts with two
 * sigma either way, on a scale where equal steps are equal factors. A gap without a match is
 * hollow.
 */
final class LadderPlot implements Row.Picture {
    private static final float HEIGHT_MM = 46;

    /** Numbers along the gap's axis, in the unit shown. */
    private static final double[] TICKS = {
        0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000
    };

    /** Room over the widest and under the nearest gap, as a factor. */
    private static final double MARGIN = 1.3;

    /** Nearer than this nothing is told apart on the scale (m). */
    private static final double LEAST_M = 0.3;

    private final Ladder ladder;
    private final List<Integer> numbers;
    private final String shown;
    private final int places;
    private final int[] numberOfPlace;
    private final double least_m;
    private final double greatest_m;

    /**
     * @param numbers for each flyer of the ladder, the participant it looks like
     * @param attempts for each folder, the number its attempt has in the season
     * @param shown the folder of the attempt on show, as the ladder has it; empty for none
     */
    LadderPlot(Ladder ladder, List<Integer> numbers, Map<String, Integer> attempts, String shown) {
        this.ladder = ladder;
        this.numbers = List.copyOf(numbers);
        this.shown = shown;
        int last = 0;
        double least = Double.POSITIVE_INFINITY;
        double greatest = 0;
        for (FlyerLadder flyer : ladder.flyers()) {
            for (Rung rung : flyer.rungs()) {
                last = Math.max(last, rung.place());
                for (OptionalDouble v : List.of(rung.planned_m(), gap_m(rung.flown()))) {
                    if (v.isPresent()) {
                        least = Math.min(least, Math.max(LEAST_M, v.getAsDouble()));
                        greatest = Math.max(greatest, v.getAsDouble());
                    }
                }
            }
        }
        places = last + 1;
        numberOfPlace = new int[places];
        for (FlyerLadder flyer : ladder.flyers()) {
            for (Rung rung : flyer.rungs()) {
                numberOfPlace[rung.place()] = attempts.getOrDefault(rung.folder(), 0);
            }
        }
        least_m = least / MARGIN;
        greatest_m = greatest * MARGIN;
    }

    /** Whether there is anything to draw. */
    boolean hasGaps() {
        return greatest_m > least_m;
    }

    private static OptionalDouble gap_m(FlyerSummary flown) {
        return flown.medianGap_m().isPresent() ? flown.medianGap_m() : flown.leastGap_m();
    }

    @Override
    public float height_mm() {
        return HEIGHT_MM;
    }

    @Override
    public void paint(Sheet sheet, Rect area) {
        PanelPlot plot = new PanelPlot(sheet, area);
        Rect field = plot.field();
        plot.ground(
                sheet.word("season.gap") + " (" + sheet.figures().symbol(Measure.DISTANCE) + ")");
        plot.level(sheet.word("season.attempt-number"));
        highlight(sheet, field);
        for (double tick : TICKS) {
            double m = sheet.figures().fromShown(Measure.DISTANCE, tick);
            if (m > least_m && m < greatest_m) {
                plot.across(y(field, m), tick);
            }
        }
        int every = (int) Math.max(1, PanelPlot.step(places, 10));
        for (int place = 0; place < places; place += every) {
            plot.down(x(field, place), numberOfPlace[place]);
        }
        sheet.canvas().clip(field.x(), field.y(), field.width(), field.height());
        for (int i = 0; i < ladder.flyers().size(); i++) {
            for (Rung rung : ladder.flyers().get(i).rungs()) {
                rung(sheet, field, rung, i);
            }
        }
        sheet.canvas().unclip();
    }

    /** A column behind the attempt that is on show. */
    private void highlight(Sheet sheet, Rect field) {
        for (FlyerLadder flyer : ladder.flyers()) {
            for (Rung rung : flyer.rungs()) {
                if (!shown.isEmpty() && rung.folder().equals(shown)) {
                    float width = field.width() / places;
                    sheet.canvas()
                            .fill(
                                    x(field, rung.place()) - width / 2,
                                    field.y(),
                                    width,
                                    field.height(),
                                    sheet.palette().chosen());
                }
            }
        }
    }

    private void rung(Sheet sheet, Rect field, Rung rung, int flyer) {
        float column = field.width() / places;
        float middle = x(field, rung.place());
        if (rung.planned_m().isPresent()) {
            float y = y(field, rung.planned_m().getAsDouble());
            sheet.canvas()
                    .line(
                            middle - 0.4f * column,
                            y,
                            middle + 0.4f * column,
                            y,
                            sheet.sizes().curve(),
                            sheet.palette().limit());
        }
        OptionalDouble gap_m = gap_m(rung.flown());
        if (gap_m.isEmpty()) {
            return;
        }
        int count = ladder.flyers().size();
        float px =
                middle + (flyer - (count - 1) / 2f) * Math.min(0.3f * column, sheet.sizes().mm(3));
        int number = numbers.get(flyer);
        double sigma_m = rung.flown().sigma_m().orElse(0);
        double low_m = Math.max(least_m / 2, gap_m.getAsDouble() - 2 * sigma_m);
        sheet.canvas()
                .line(
                        px,
                        y(field, gap_m.getAsDouble() + 2 * sigma_m),
                        px,
                        y(field, low_m),
                        sheet.sizes().hair() * 1.5f,
                        sheet.palette().participant(number));
        float py = y(field, Math.max(LEAST_M, gap_m.getAsDouble()));
        float r = sheet.sizes().marker();
        sheet.marker(number, px, py, r);
        if (rung.flown().medianGap_m().isEmpty()) {
            sheet.canvas().disc(px, py, 0.4f * r, sheet.palette().paper());
        }
    }

    private float x(Rect field, int place) {
        return field.x() + (place + 0.5f) / places * field.width();
    }

    private float y(Rect field, double gap_m) {
        double share = Math.log(gap_m / least_m) / Math.log(greatest_m / least_m);
        return field.bottom() - (float) share * field.height();
    }
}
