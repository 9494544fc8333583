package pairdown.panel;

import pairdown.gl.Canvas.Align;
import pairdown.gl.Canvas.Face;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Body;
import pairdown.replay.Desk;
import pairdown.replay.Link;
import pairdown.replay.Moment;
import pairdown.words.Line;
import pairdown.words.Measure;

/**
 * Figures read at 2 m, in the side panel's place: the chosen flyer's gap and closure, each with one
 * sigma under it, and the seconds to the break-off height.
 */
final class BigReadout {
    private static final float MARGIN_MM = 3;
    private static final float NAME_MM = 5;

    /** How much of its block a figure may take: the rest is its name's and its sigma's. */
    private static final float MOST_OF_BLOCK = 0.5f;

    private static final int BLOCKS = 3;

    private BigReadout() {}

    static void paint(Sheet sheet, Board board, Desk desk, Moment moment, Rect area) {
        sheet.canvas()
                .fill(area.x(), area.y(), area.width(), area.height(), sheet.palette().paper());
        int chosen = board.pair(desk);
        Link link = chosen < 0 ? null : Readout.linkOf(moment, board, chosen);
        if (link == null) {
            return;
        }
        whose(sheet, link, area);
        Line line = sheet.line();
        sheet.figures().addNumber(line, Measure.DISTANCE, Readout.gap(link));
        block(sheet, area, 0, Readout.gapName(link), Measure.DISTANCE);
        sigma(sheet, area, 0, Measure.DISTANCE, Readout.gap(link), Readout.gapSigma(link));
        double closure = link.figure(Figure.CLOSURE_RATE);
        sheet.figures().addSigned(sheet.line(), Measure.CLOSURE, closure);
        block(sheet, area, 1, "readout.closure", Measure.CLOSURE);
        sigma(sheet, area, 1, Measure.CLOSURE, closure, link.figure(Figure.CLOSURE_SIGMA));
        secondsOrHeight(sheet, board, moment, area);
    }

    private static void whose(Sheet sheet, Link link, Rect area) {
        float size = sheet.sizes().heading();
        float right = area.right() - sheet.sizes().mm(MARGIN_MM);
        String name = sheet.fitting(link.pair().flyer(), Face.TEXT_BOLD, size, area.width() / 2);
        float middle = area.y() + sheet.sizes().mm(NAME_MM);
        sheet.text(name, right, middle, Face.TEXT_BOLD, size, Align.RIGHT);
        float r = sheet.sizes().marker() * 1.5f;
        float before = sheet.width(name, Face.TEXT_BOLD, size) + sheet.sizes().mm(2) + r;
        sheet.marker(link.flyer(), right - before, middle, r);
    }

    private static void secondsOrHeight(Sheet sheet, Board board, Moment moment, Rect area) {
        if (moment.subject().isEmpty() || !moment.subject().get().isPresent()) {
            return;
        }
        Body lead = moment.subject().get();
        double height_m = board.heights().height_m(lead.east_m(), lead.north_m(), lead.up_m());
        Line line = sheet.line();
        double left_s = Readout.secondsLeft(board, height_m, -lead.velocityUp_mps());
        if (Double.isNaN(left_s)) {
            sheet.figures().addNumber(line, Measure.HEIGHT, height_m);
            block(sheet, area, 2, "readout.height", Measure.HEIGHT);
        } else {
            line.addFixed(left_s, 0, '.');
            block(sheet, area, 2, "readout.seconds-left", Measure.DURATION);
        }
    }

    /** What stands in the sheet's line, under its name and unit. */
    private static void block(Sheet sheet, Rect area, int row, String name, Measure measure) {
        float block = area.height() / BLOCKS;
        float top = area.y() + row * block;
        float left = area.x() + sheet.sizes().mm(MARGIN_MM);
        float heading = sheet.sizes().heading();
        float middle = top + sheet.sizes().mm(NAME_MM);
        sheet.text(sheet.word(name), left, middle, Face.TEXT_BOLD, heading, Align.LEFT);
        float named = sheet.width(sheet.word(name), Face.TEXT_BOLD, heading);
        sheet.softText(
                sheet.figures().symbol(measure),
                left + named + sheet.sizes().mm(MARGIN_MM),
                middle,
                heading,
                Align.LEFT);
        float size = Math.max(sheet.sizes().bigFigure(), MOST_OF_BLOCK * block);
        float room = area.width() - 2 * sheet.sizes().mm(MARGIN_MM);
        float wide = sheet.width(sheet.written(), Face.FIGURES_BOLD, size);
        sheet.text(
                sheet.written(),
                area.right() - sheet.sizes().mm(MARGIN_MM),
                top + block / 2,
                Face.FIGURES_BOLD,
                size * Math.min(1, room / Math.max(1, wide)),
                Align.RIGHT);
    }

    private static void sigma(
            Sheet sheet, Rect area, int row, Measure measure, double value, double sigma) {
        Line line = sheet.line();
        sheet.figures().addPlusMinus(line, measure, value, sigma);
        float block = area.height() / BLOCKS;
        sheet.text(
                line,
                area.right() - sheet.sizes().mm(MARGIN_MM),
                area.y() + (row + 0.87f) * block,
                Face.FIGURES,
                sheet.sizes().bigFigure() / 2,
                Align.RIGHT);
    }
}
