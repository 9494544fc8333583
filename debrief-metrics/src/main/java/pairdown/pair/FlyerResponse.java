package pairdown.pair;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import pairdown.time.Span;
import pairdown.track.Channel;
import pairdown.track.Series;

/** What an accelerometer on the flyer shows of a touch: the blow of hand on metal. */
final class FlyerResponse {
    private static final double EARLY_S = 1;

    /** The level before a blow is taken over this (s). */
    private static final double BASE_S = 0.5;

    private final List<Series> loads_g;
    private final PairSettings.Contact settings;

    FlyerResponse(Map<Channel, Series> systems, PairSettings.Contact settings) {
        this.settings = settings;
        this.loads_g =
                Stream.of(Channel.LONGITUDINAL_LOAD, Channel.LATERAL_LOAD, Channel.NORMAL_LOAD)
                        .filter(systems::containsKey)
                        .map(systems::get)
                        .filter(s -> SeriesStatistics.rate_Hz(s) >= settings.blow_Hz())
                        .toList();
    }

    /**
     * Whether a blow falls into a lock, or just before it: the load leaves the mean of the half
     * second before, all logged axes together, by enough and by a multiple of its scatter over the
     * seconds before.
     */
    boolean blowIn(Span lock) {
        if (loads_g.isEmpty()) {
            return false;
        }
        Series clock = loads_g.get(0);
        for (int i = Math.max(0, clock.indexAtOrBefore(lock.start_s() - EARLY_S));
                i < clock.size() && clock.time_s(i) <= lock.end_s();
                i++) {
            if (isBlow(clock.time_s(i))) {
                return true;
            }
        }
        return false;
    }

    private boolean isBlow(double t_s) {
        double off2 = 0;
        double scatter2 = 0;
        for (Series load_g : loads_g) {
            OptionalDouble before =
                    SeriesStatistics.mean(load_g, t_s - BASE_S, t_s - 1 / settings.blow_Hz());
            double off = load_g.at(t_s) - before.orElse(Double.NaN);
            double scatter =
                    SeriesStatistics.scatter(
                            load_g, t_s - settings.quiet_s(), t_s - 1 / settings.blow_Hz());
            off2 += off * off;
            scatter2 += scatter * scatter;
        }
        double least_g =
                Math.max(settings.blow_g(), settings.rollStepSigmas() * Math.sqrt(scatter2));
        return off2 >= least_g * least_g;
    }
}
