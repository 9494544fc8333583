package pairdown.replay;

import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries;
import pairdown.pair.PairSeries.Figure;

/**
 * One pair at the moment shown: the figures of its series there, NaN where a figure can't be known.
 * Filled anew in every frame.
 */
public final class Link {
    private final PairDebrief pair;
    private final int lead;
    private final int flyer;
    private double t_s;
    private int row = -1;

    Link(PairDebrief pair, int lead, int flyer) {
        this.pair = pair;
        this.lead = lead;
        this.flyer = flyer;
    }

    void fill(double t_s) {
        this.t_s = t_s;
        this.row = pair.series().rowNear(t_s);
    }

    public PairDebrief pair() {
        return pair;
    }

    /** The lead's number in the recording. */
    public int lead() {
        return lead;
    }

    /** The flyer's number in the recording. */
    public int flyer() {
        return flyer;
    }

    /** Whether the moment lies between the flyer's exit and its opening. */
    public boolean isPresent() {
        return row >= 0;
    }

    /** A figure of the pair's series, NaN where it can't be known. */
    public double figure(Figure figure) {
        PairSeries series = pair.series();
        if (figure == Figure.MATCHED || figure == Figure.TOUCH) {
            return row < 0 ? Double.NaN : series.value(figure, row);
        }
        return series.at(figure, t_s);
    }

    public boolean isMatched() {
        return figure(Figure.MATCHED) > 0.5;
    }

    public boolean isTouching() {
        return figure(Figure.TOUCH) > 0.5;
    }

    /** Whether the moment is one of those found over the closing limit, uncertainty allowed for. */
    public boolean isOverClosingLimit() {
        for (int i = 0; i < pair.closureExceedances().size(); i++) {
            if (pair.closureExceedances().get(i).span().contains(t_s)) {
                return true;
            }
        }
        return false;
    }
}
