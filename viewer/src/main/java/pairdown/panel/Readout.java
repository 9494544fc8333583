package pairdown.panel;

import org.jspecify.annotations.Nullable;
import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Body;
import pairdown.replay.Desk;
import pairdown.replay.Link;
import pairdown.replay.Moment;
import pairdown.theme.Sizes;
import pairdown.words.Line;
import pairdown.words.Measure;

/**
 * The figures of the moment over the scene: a box for each flyer with the chosen one's first.
 * Beside two views it is short, so that the first of them has room.
 */
final class Readout {
    private static final float BOX_MM = 72;
    private static final float CHOSEN_MM = 35;
    private static final float SHORT_MM = 13;
    private static final float LEFT_MM = 5.2f;
    private static final float GHOST_MM = 10.5f;
    private static final float OTHER_MM = 8;
    private static final int MOST_OTHERS = 3;

    /** Figures are this share of their full size. */
    private static final float SMALLER = 0.85f;

    /** Under this sink there is no honest count of seconds (m/s). */
    private static final double LEAST_SINK_MPS = 2;

    /** Closer in time than this the two already pass (s). */
    private static final double LEAST_AHEAD_S = 0.1;

    private Readout() {}

    /** Over the scene's upper left corner. */
    static void paint(
            Sheet sheet, Board board, Desk desk, Moment moment, Rect scene, boolean isShort) {
        float x = scene.x() + sheet.sizes().gap();
        float y = scene.y() + sheet.sizes().gap();
        int chosen = board.pair(desk);
        if (chosen >= 0) {
            Link link = linkOf(moment, board, chosen);
            if (link != null) {
                float height = sheet.sizes().mm(chosenHeight_mm(board, moment, isShort));
                ground(sheet, x, y, height);
                chosen(sheet, board, moment, link, x, y, isShort);
                y += height + sheet.sizes().gap();
            }
        }
        int shown = 0;
        for (int i = 0; i < moment.links().size() && shown < MOST_OTHERS; i++) {
            Link link = moment.links().get(i);
            boolean fits = y + sheet.sizes().mm(OTHER_MM) < scene.bottom();
            if (fits && chosen >= 0 && !isOf(link, board, chosen)) {
                other(sheet, link, x, y);
                y += sheet.sizes().mm(OTHER_MM) + sheet.sizes().gap() / 2;
                shown++;
            }
        }
    }

    /** How far it reaches down from the scene's upper edge. */
    static float height(Sizes sizes, Board board, Desk desk, Moment moment, boolean isShort) {
        float height = sizes.gap();
        if (board.pair(desk) >= 0) {
            height += sizes.mm(chosenHeight_mm(board, moment, isShort)) + sizes.gap();
        }
        int others = Math.min(MOST_OTHERS, moment.links().size() - 1);
        return height + Math.max(0, others) * (sizes.mm(OTHER_MM) + sizes.gap() / 2);
    }

    /** How far it reaches from the scene's left edge. */
    static float width(Sizes sizes) {
        return 2 * sizes.gap() + sizes.mm(BOX_MM);
    }

    private static float chosenHeight_mm(Board board, Moment moment, boolean isShort) {
        float own = isShort ? SHORT_MM : CHOSEN_MM;
        float left = board.heights().breakOff_m().isPresent() ? LEFT_MM : 0;
        return own + left + (moment.ghost().isPresent() ? GHOST_MM : 0);
    }

    static @Nullable Link linkOf(Moment moment, Board board, int pair) {
        for (int i = 0; i < moment.links().size(); i++) {
            if (isOf(moment.links().get(i), board, pair)) {
                return moment.links().get(i);
            }
        }
        return null;
    }

    private static boolean isOf(Link link, Board board, int pair) {
        return link.pair().flyer().equals(board.debrief().pairs().get(pair).flyer());
    }

    private static void ground(Sheet sheet, float x, float y, float height) {
        float width = sheet.sizes().mm(BOX_MM);
        float round = sheet.sizes().mm(1.2);
        sheet.canvas().roundFill(x, y, width, height, round, sheet.palette().paper());
        sheet.canvas()
                .outline(x, y, width, height, round, sheet.sizes().hair(), sheet.palette().edge());
    }

    private static void chosen(
            Sheet sheet, Board board, Moment moment, Link link, float x, float y, boolean isShort) {
        float left = x + sheet.sizes().mm(2);
        float right = x + sheet.sizes().mm(BOX_MM - 2);
        float row = y + sheet.sizes().mm(3.4);
        row =
                isShort
                        ? inShort(sheet, moment, link, left, right, row)
                        : inFull(sheet, board, moment, link, left, right, row);
        if (board.heights().breakOff_m().isPresent()) {
            row += sheet.sizes().mm(LEFT_MM);
            left(sheet, board, moment, left, row);
        }
        if (moment.ghost().isPresent()) {
            GhostReadout.paint(
                    sheet,
                    link,
                    moment.ghost().get().moment(),
                    left,
                    right,
                    row + sheet.sizes().mm(5.2));
        }
    }

    private static float inFull(
            Sheet sheet, Board board, Moment moment, Link link, float left, float right, float y) {
        float text = sheet.sizes().text();
        String state = sheet.word(stateOf(link, moment));
        sheet.text(state, right, y, Face.TEXT_BOLD, text, Align.RIGHT);
        float free = right - sheet.width(state, Face.TEXT_BOLD, text);
        float from = name(sheet, link, left, y, free) + sheet.sizes().mm(2);
        String clock = board.clock(link);
        if (from + sheet.width(clock, Face.TEXT, text) < free) {
            sheet.softText(clock, from, y, text, Align.LEFT);
        }
        float row = y + sheet.sizes().mm(6.2);
        sheet.softText(sheet.word(gapName(link)), left, row, text, Align.LEFT);
        gap(sheet, link, right, row);
        row += sheet.sizes().mm(5.6);
        sheet.softText(sheet.word("readout.closure"), left, row, text, Align.LEFT);
        closure(sheet, link, right, row);
        row += sheet.sizes().mm(5.8);
        place(sheet, link, left, right, row);
        row += sheet.sizes().mm(5.2);
        miss(sheet, board, link, left, right, row);
        row += sheet.sizes().mm(5.2);
        lead(sheet, board, moment, left, right, row);
        return row;
    }

    /** Where the flyer is the two views show. */
    private static float inShort(
            Sheet sheet, Moment moment, Link link, float left, float right, float y) {
        name(sheet, link, left, y, gap(sheet, link, right, y));
        float row = y + sheet.sizes().mm(5.6);
        String state = sheet.word(stateOf(link, moment));
        sheet.softText(state, left, row, sheet.sizes().text(), Align.LEFT);
        closure(sheet, link, right, row);
        return row;
    }

    /** The answer is where it ends. */
    private static float name(Sheet sheet, Link link, float left, float row, float end) {
        float r = sheet.sizes().marker() * 1.2f;
        sheet.marker(link.flyer(), left + sheet.sizes().mm(1.3), row, r);
        float from = left + sheet.sizes().mm(4);
        float text = sheet.sizes().text();
        float most = end - from - sheet.sizes().mm(1);
        String name = sheet.fitting(link.pair().flyer(), Face.TEXT_BOLD, text, most);
        sheet.text(name, from, row, Face.TEXT_BOLD, text, Align.LEFT);
        return from + sheet.width(name, Face.TEXT_BOLD, text);
    }

    /** The answer is where it begins. */
    private static float gap(Sheet sheet, Link link, float right, float row) {
        float end = plusMinus(sheet, Measure.DISTANCE, gap(link), gapSigma(link), right, row);
        sheet.figures().addNumber(sheet.line(), Measure.DISTANCE, gap(link));
        return figure(sheet, end, row);
    }

    private static void closure(Sheet sheet, Link link, float right, float row) {
        double closure = link.figure(Figure.CLOSURE_RATE);
        double sigma = link.figure(Figure.CLOSURE_SIGMA);
        float end = plusMinus(sheet, Measure.CLOSURE, closure, sigma, right, row);
        sheet.figures().addSigned(sheet.line(), Measure.CLOSURE, closure);
        figure(sheet, end, row);
    }

    /** What stands in the line, large; the answer is where it begins. */
    private static float figure(Sheet sheet, float right, float row) {
        float size = sheet.sizes().figure() * SMALLER;
        sheet.text(sheet.written(), right, row, Face.FIGURES_BOLD, size, Align.RIGHT);
        return right - sheet.width(sheet.written(), Face.FIGURES_BOLD, size);
    }

    /** One sigma and the unit, smaller than what they belong to; the answer is where they begin. */
    private static float plusMinus(
            Sheet sheet, Measure measure, double value, double sigma, float right, float row) {
        Line line = sheet.line();
        sheet.figures().addPlusMinus(line, measure, value, sigma);
        sheet.figures().addUnit(line, measure);
        float size = sheet.sizes().text();
        sheet.text(line, right, row, Face.FIGURES, size, Align.RIGHT);
        return right - sheet.width(line, Face.FIGURES, size);
    }

    /** In thirds, each a word and a figure; the unit after the last. */
    private static void place(Sheet sheet, Link link, float left, float right, float row) {
        float size = sheet.sizes().small();
        float third = (right - left - sheet.sizes().mm(2)) / 3;
        place(sheet, "readout.ahead", link.figure(Figure.AHEAD), left, row);
        place(sheet, "readout.right", link.figure(Figure.RIGHT), left + third, row);
        float end = place(sheet, "readout.above", link.figure(Figure.ABOVE), left + 2 * third, row);
        String unit = sheet.figures().symbol(Measure.DISTANCE);
        sheet.softText(unit, end + sheet.sizes().mm(1), row, size, Align.LEFT);
    }

    /** The answer is where it ends. */
    private static float place(Sheet sheet, String name, double value, float left, float row) {
        float size = sheet.sizes().small();
        sheet.softText(sheet.word(name), left, row, size, Align.LEFT);
        float from = left + sheet.width(sheet.word(name), Face.TEXT, size) + sheet.sizes().mm(1);
        Line line = sheet.line();
        sheet.figures().addSigned(line, Measure.DISTANCE, value);
        sheet.text(line, from, row, Face.FIGURES, size, Align.LEFT);
        return from + sheet.width(line, Face.FIGURES, size);
    }

    /**
     * Where the two pass if neither does anything: the seconds in which it can still be changed.
     */
    private static void miss(
            Sheet sheet, Board board, Link link, float left, float right, float row) {
        double miss_m = link.figure(Figure.PREDICTED_MISS);
        double in_s = link.figure(Figure.PREDICTED_MISS_IN);
        if (!link.isPresent() || Double.isNaN(link.figure(Figure.SEPARATION))) {
            return;
        }
        Line line = sheet.line();
        if (Double.isNaN(miss_m)) {
            line.add(sheet.word("readout.holding"));
        } else if (!(in_s >= LEAST_AHEAD_S)) {
            line.add(sheet.word("readout.apart"));
        } else {
            double horizon_s = board.debrief().settings().pairs().horizon_s();
            line.add(sheet.word(in_s < horizon_s ? "readout.passes" : "readout.in")).add(' ');
            sheet.figures().add(line, Measure.DURATION, in_s).add(": ");
            double sigma_m = link.figure(Figure.PREDICTED_MISS_SIGMA);
            sheet.figures().add(line, Measure.DISTANCE, miss_m, sigma_m);
        }
        float size = sheet.sizes().text();
        float fit = (right - left) / Math.max(1, sheet.width(line, Face.FIGURES, size));
        sheet.text(line, left, row, Face.FIGURES, size * Math.min(1, fit), Align.LEFT);
    }

    private static void lead(
            Sheet sheet, Board board, Moment moment, float left, float right, float row) {
        if (moment.subject().isEmpty() || !moment.subject().get().isPresent()) {
            return;
        }
        Body lead = moment.subject().get();
        Line line = sheet.line();
        double height_m = board.heights().height_m(lead.east_m(), lead.north_m(), lead.up_m());
        sheet.figures().add(line, Measure.HEIGHT, height_m).add("  ↓ ");
        sheet.figures().add(line, Measure.SINK, -lead.velocityUp_mps());
        float size = sheet.sizes().text();
        float fit = (right - left) / Math.max(1, sheet.width(line, Face.FIGURES, size));
        sheet.text(line, left, row, Face.FIGURES, size * Math.min(1, fit), Align.LEFT);
    }

    /** The seconds on a line of their own: it is what a team runs out of. */
    private static void left(Sheet sheet, Board board, Moment moment, float left, float row) {
        double left_s = secondsLeft(board, moment);
        if (!Double.isNaN(left_s)) {
            Line line = sheet.line().addFixed(left_s, 0, '.').add(" s ");
            line.add(sheet.word("readout.left"));
            sheet.text(line, left, row, Face.FIGURES, sheet.sizes().text(), Align.LEFT);
        }
    }

    private static double secondsLeft(Board board, Moment moment) {
        if (moment.subject().isEmpty() || !moment.subject().get().isPresent()) {
            return Double.NaN;
        }
        Body lead = moment.subject().get();
        double height_m = board.heights().height_m(lead.east_m(), lead.north_m(), lead.up_m());
        return secondsLeft(board, height_m, -lead.velocityUp_mps());
    }

    /** Seconds to the break-off height at this sink; NaN where there is none or little sink. */
    static double secondsLeft(Board board, double height_m, double sink_mps) {
        return board.heights().breakOff_m().isPresent() && sink_mps > LEAST_SINK_MPS
                ? (height_m - board.heights().breakOff_m().getAsDouble()) / sink_mps
                : Double.NaN;
    }

    static String gapName(Link link) {
        return link.pair().slot().isPresent() ? "readout.gap" : "readout.separation";
    }

    static double gap(Link link) {
        return link.figure(link.pair().slot().isPresent() ? Figure.GAP : Figure.SEPARATION);
    }

    static double gapSigma(Link link) {
        boolean hasSlot = link.pair().slot().isPresent();
        return link.figure(hasSlot ? Figure.GAP_SIGMA : Figure.SEPARATION_SIGMA);
    }

    private static String stateOf(Link link, Moment moment) {
        if (!link.isPresent()) {
            return "readout.not-yet";
        }
        if (Double.isNaN(gap(link)) || moment.body(link.flyer()).isPredicted()) {
            return "readout.no-data";
        }
        if (link.isTouching()) {
            return "readout.touch";
        }
        if (link.isOverClosingLimit()) {
            return "readout.over";
        }
        if (link.isMatched()) {
            return "readout.matched";
        }
        return link.pair().matched().isKnown() ? "readout.free" : "readout.not-judged";
    }

    private static void other(Sheet sheet, Link link, float x, float y) {
        float height = sheet.sizes().mm(OTHER_MM);
        ground(sheet, x, y, height);
        float row = y + height / 2;
        float right = x + sheet.sizes().mm(BOX_MM - 2);
        Line line = sheet.line();
        if (link.isMatched()) {
            line.add(sheet.word("readout.matched")).add("  ");
        }
        sheet.figures().add(line, Measure.DISTANCE, gap(link), gapSigma(link));
        float text = sheet.sizes().text();
        sheet.text(line, right, row, Face.FIGURES_BOLD, text, Align.RIGHT);
        float end = right - sheet.width(line, Face.FIGURES_BOLD, text);
        float left = x + sheet.sizes().mm(2);
        sheet.marker(link.flyer(), left + sheet.sizes().mm(1.3), row, sheet.sizes().marker());
        float from = left + sheet.sizes().mm(4);
        String name =
                sheet.fitting(
                        link.pair().flyer(), Face.TEXT, text, end - from - sheet.sizes().mm(1));
        sheet.text(name, from, row, Face.TEXT, text, Align.LEFT);
    }
}
