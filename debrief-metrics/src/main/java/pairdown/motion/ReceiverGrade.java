package pairdown.motion;

import java.util.Arrays;
import java.util.stream.IntStream;
import pairdown.height.AlignedLog;
import pairdown.track.Channel;

/**
 * How good a receiver is, by what it says of itself: a survey receiver states centimetres. What a
 * consumer receiver states within metres is no better known than the default, and left alone.
 */
final class ReceiverGrade {
    /** Below this stated accuracy a receiver has resolved carrier phases. */
    private static final double SURVEY_M = 0.1;

    private ReceiverGrade() {}

    static ReceiverNoise of(AlignedLog log, ReceiverNoise consumer) {
        double stated_m =
                median(
                        IntStream.range(0, log.size())
                                .mapToDouble(i -> log.value(Channel.HORIZONTAL_ACCURACY, i))
                                .toArray());
        if (!(stated_m > 0 && stated_m < SURVEY_M)) {
            return consumer;
        }
        return consumer.positionTimes(stated_m / Math.hypot(1, consumer.levelBias_m()));
    }

    /** Median of the finite values; NaN where there are none. */
    static double median(double[] values) {
        double[] finite = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        return finite.length == 0 ? Double.NaN : finite[finite.length / 2];
    }
}
