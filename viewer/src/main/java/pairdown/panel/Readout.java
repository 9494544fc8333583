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
 * The figures of the moment: a line of the lead's, and a box for each flyer with the chosen one's
 * first. In big figures the chosen flyer's gap, closure and the seconds to the break-off height
 * read at 2 m.
 */
final class Readout {
    private static final float BOX_MM = 72;
    private static final float CHOSEN_MM = 34.2f;
    private static final float LEFT_MM = 5.2f;
    private static final float GHOST_MM = 10.5f;
    private static final float OTHER_MM = 8;
    private static final int MOST_OTHERS = 3;

    /** Under this sink there is no honest count of seconds (m/s). */
    private static final double LEAST_SINK_MPS = 2;

    /** Closer in time than this the two already pass (s). */
    private static final double LEAST_AHEAD_S = 0.1;

    private Readout() {}

    /** Over the scene's upper left corner. */
    static void paint(Sheet sheet, Board board, Desk desk, Moment moment, Rect scene) {
        float x = scene.x() + sheet.sizes().gap();
        float y = scene.y() + sheet.sizes().gap();
        int chosen = board.pair(desk);
        if (chosen >= 0) {
            Link link = linkOf(moment, board, chosen);
            if (link != null) {
                chosen(sheet, board, moment, link, x, y);
                y += sheet.sizes().mm(chosenHeight_mm(board, moment)) + sheet.sizes().gap();
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
    static float height(Sizes sizes, Board board, Desk desk, Moment moment) {
        float height = sizes.gap();
        if (board.pair(desk) >= 0) {
            height += sizes.mm(chosenHeight_mm(board, moment)) + sizes.gap();
        }
        int others = Math.min(MOST_OTHERS, moment.links().size() - 1);
        return height + Math.max(0, others) * (sizes.mm(OTHER_MM) + sizes.gap() / 2);
    }

    /** How far it reaches from the scene's left edge. */
    static float width(Sizes sizes) {
        return 2 * sizes.gap() + sizes.mm(BOX_MM);
    }

    private static float chosenHeight_mm(Board board, Moment moment) {
        float left = board.heights().breakOff_m().isPresent() ? LEFT_MM : 0;
        return CHOSEN_MM + left + (moment.ghost().isPresent() ? GHOST_MM : 0);
    }

    private static @Nullable Link linkOf(Moment moment, Board board, int pair) {
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
        sheet.canvas()
                .roundFill(
                        x,
                        y,
                        sheet.sizes().mm(BOX_MM),
                        height,
                        sheet.sizes().mm(1.2),
                        sheet.palette().paper());
        sheet.canvas()
                .outline(
                        x,
                        y,
                        sheet.sizes().mm(BOX_MM),
                        height,
                        sheet.sizes().mm(1.2),
                        sheet.sizes().hair(),
                        sheet.palette().edge());
    }

    private static void chosen(
            Sheet sheet, Board board, Moment moment, Link link, float x, float y) {
        ground(sheet, x, y, sheet.sizes().mm(chosenHeight_mm(board, moment)));
        float left = x + sheet.sizes().mm(2);
        float right = x + sheet.sizes().mm(BOX_MM - 2);
        float row = y + sheet.sizes().mm(3.4);
        sheet.marker(
                link.flyer(), left + sheet.sizes().mm(1.3), row, sheet.sizes().marker() * 1.2f);
        sheet.text(
                link.pair().flyer(),
                left + sheet.sizes().mm(4),
                row,
                Face.TEXT_BOLD,
                sheet.sizes().text(),
                Align.LEFT);
        sheet.text(
                sheet.word(stateOf(link, moment)),
                right,
                row,
                Face.TEXT_BOLD,
                sheet.sizes().text(),
                Align.RIGHT);
        row += sheet.sizes().mm(6.2);
        figure(sheet, gapName(link), gap(link), Measure.DISTANCE, false, left, right, row);
        row += sheet.sizes().mm(5.6);
        figure(
                sheet,
                "readout.closure",
                link.figure(Figure.CLOSURE_RATE),
                Measure.CLOSURE,
                true,
                left,
                right,
                row);
        row += sheet.sizes().mm(5.8);
        place(sheet, link, left, right, row);
        row += sheet.sizes().mm(5.2);
        miss(sheet, board, link, left, right, row);
        row += sheet.sizes().mm(5.2);
        lead(sheet, board, moment, left, right, row);
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

    private static void figure(
            Sheet sheet,
            String name,
            double value,
            Measure measure,
            boolean signed,
            float left,
            float right,
            float row) {
        sheet.softText(sheet.word(name), left, row, sheet.sizes().text(), Align.LEFT);
        Line line = sheet.line();
        if (signed) {
            sheet.figures().addSigned(line, measure, value);
        } else {
            sheet.figures().addNumber(line, measure, value);
        }
        sheet.figures().addUnit(line, measure);
        sheet.text(
                line, right, row, Face.FIGURES_BOLD, sheet.sizes().figure() * 0.85f, Align.RIGHT);
    }

    private static void place(Sheet sheet, Link link, float left, float right, float row) {
        Line line = sheet.line();
        figures(sheet, line, "readout.ahead", link.figure(Figure.AHEAD));
        figures(sheet, line.add("  "), "readout.right", link.figure(Figure.RIGHT));
        figures(sheet, line.add("  "), "readout.above", link.figure(Figure.ABOVE));
        float size = sheet.sizes().text();
        float fit = (right - left) / Math.max(1, sheet.width(line, Face.FIGURES, size));
        sheet.text(line, left, row, Face.FIGURES, size * Math.min(1, fit), Align.LEFT);
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

    private static void figures(Sheet sheet, Line line, String name, double value) {
        line.add(sheet.word(name)).add(' ');
        sheet.figures().addSigned(line, Measure.DISTANCE, value);
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

    private static String gapName(Link link) {
        return link.pair().slot().isPresent() ? "readout.gap" : "readout.separation";
    }

    static double gap(Link link) {
        return link.figure(link.pair().slot().isPresent() ? Figure.GAP : Figure.SEPARATION);
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
        return link.isMatched() ? "readout.matched" : "readout.free";
    }

    private static void other(Sheet sheet, Link link, float x, float y) {
        float height = sheet.sizes().mm(OTHER_MM);
        ground(sheet, x, y, height);
        float row = y + height / 2;
        float left = x + sheet.sizes().mm(2);
        sheet.marker(link.flyer(), left + sheet.sizes().mm(1.3), row, sheet.sizes().marker());
        sheet.text(
                link.pair().flyer(),
                left + sheet.sizes().mm(4),
                row,
                Face.TEXT,
                sheet.sizes().text(),
                Align.LEFT);
        Line line = sheet.line();
        sheet.figures().add(line, Measure.DISTANCE, gap(link));
        if (link.isMatched()) {
            line.add(' ').add(sheet.word("readout.matched"));
        }
        sheet.text(
                line,
                x + sheet.sizes().mm(BOX_MM - 2),
                row,
                Face.FIGURES_BOLD,
                sheet.sizes().text(),
                Align.RIGHT);
    }

    /** The figures read at 2 m, in the side panel's place. */
    static void paintBig(Sheet sheet, Board board, Desk desk, Moment moment, Rect area) {
        sheet.canvas()
                .fill(area.x(), area.y(), area.width(), area.height(), sheet.palette().paper());
        int chosen = board.pair(desk);
        Link link = chosen < 0 ? null : linkOf(moment, board, chosen);
        if (link == null) {
            return;
        }
        float block = area.height() / 3;
        sheet.text(
                link.pair().flyer(),
                area.right() - sheet.sizes().mm(3),
                area.y() + sheet.sizes().mm(5),
                Face.TEXT_BOLD,
                sheet.sizes().heading(),
                Align.RIGHT);
        Line line = sheet.line();
        sheet.figures().addNumber(line, Measure.DISTANCE, gap(link));
        big(sheet, area, 0, block, gapName(link), Measure.DISTANCE, line);
        sheet.figures().addSigned(sheet.line(), Measure.CLOSURE, link.figure(Figure.CLOSURE_RATE));
        big(sheet, area, 1, block, "readout.closure", Measure.CLOSURE, line);
        secondsOrHeight(sheet, board, moment, area, block);
    }

    private static void secondsOrHeight(
            Sheet sheet, Board board, Moment moment, Rect area, float block) {
        if (moment.subject().isEmpty() || !moment.subject().get().isPresent()) {
            return;
        }
        Body lead = moment.subject().get();
        double height_m = board.heights().height_m(lead.east_m(), lead.north_m(), lead.up_m());
        Line line = sheet.line();
        double left_s = secondsLeft(board, height_m, -lead.velocityUp_mps());
        if (Double.isNaN(left_s)) {
            sheet.figures().addNumber(line, Measure.HEIGHT, height_m);
            big(sheet, area, 2, block, "readout.height", Measure.HEIGHT, line);
        } else {
            line.addFixed(left_s, 0, '.');
            big(sheet, area, 2, block, "readout.seconds-left", Measure.DURATION, line);
        }
    }

    private static void big(
            Sheet sheet,
            Rect area,
            int row,
            float block,
            String name,
            Measure measure,
            CharSequence figure) {
        float top = area.y() + row * block;
        float left = area.x() + sheet.sizes().mm(3);
        sheet.text(
                sheet.word(name),
                left,
                top + sheet.sizes().mm(5),
                Face.TEXT_BOLD,
                sheet.sizes().heading(),
                Align.LEFT);
        float named = sheet.width(sheet.word(name), Face.TEXT_BOLD, sheet.sizes().heading());
        sheet.softText(
                sheet.figures().symbol(measure),
                left + named + sheet.sizes().mm(3),
                top + sheet.sizes().mm(5),
                sheet.sizes().heading(),
                Align.LEFT);
        float size = sheet.sizes().bigFigure();
        float room = area.width() - sheet.sizes().mm(6);
        float fit = room / Math.max(1, sheet.width(figure, Face.FIGURES_BOLD, size));
        sheet.text(
                figure,
                area.right() - sheet.sizes().mm(3),
                top + block / 2 + sheet.sizes().mm(2),
                Face.FIGURES_BOLD,
                size * Math.min(1.4f, fit),
                Align.RIGHT);
    }
}
