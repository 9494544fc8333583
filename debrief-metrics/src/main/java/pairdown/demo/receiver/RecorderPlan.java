package pairdown.demo.receiver;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import pairdown.time.Span;
import pairdown.track.Channel;

/**
 * An aircraft's systems recorder, with its own zero instead of absolute time.
 *
 * @param zero_s the truth's time at the recorder's zero; drawn in the first 30 s if not told
 * @param offset_s for a recorder whose clock was set by hand, so that its log has absolute time:
 *     UTC = logged time + offset
 * @param rate_ppm how slow its clock is: true seconds = (1 + rate) × recorded seconds
 * @param pressureLag_s lag of pressure height and static pressure, first order
 * @param noisy whether readings are noisy and rounded
 * @param channels what it records, of what the truth has
 * @param kept the true stretch it covers; else all of the participant's motion
 */
public record RecorderPlan(
        String participant,
        String file,
        double rate_Hz,
        OptionalDouble zero_s,
        OptionalDouble offset_s,
        double rate_ppm,
        double pressureLag_s,
        boolean noisy,
        Set<Channel> channels,
        Optional<Span> kept)
        implements LogPlan {
    private static final Set<Channel> ALL =
            EnumSet.range(Channel.INDICATED_AIRSPEED, Channel.AILERON);

    public RecorderPlan {
        channels = Set.copyOf(channels);
    }

    /**
     * At 8 Hz, 30 ppm slow, pressure half a second late, all channels but true airspeed (common
     * practice, no published source).
     */
    public static RecorderPlan of(String participant, String file) {
        Set<Channel> channels = EnumSet.copyOf(ALL);
        channels.remove(Channel.TRUE_AIRSPEED);
        return new RecorderPlan(
                participant,
                file,
                8,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                30,
                0.5,
                true,
                channels,
                Optional.empty());
    }

    public RecorderPlan rate(double other_Hz) {
        return new RecorderPlan(
                participant,
                file,
                other_Hz,
                zero_s,
                offset_s,
                rate_ppm,
                pressureLag_s,
                noisy,
                channels,
                kept);
    }

    public RecorderPlan zero(double other_s) {
        return new RecorderPlan(
                participant,
                file,
                rate_Hz,
                OptionalDouble.of(other_s),
                offset_s,
                rate_ppm,
                pressureLag_s,
                noisy,
                channels,
                kept);
    }

    /** With a clock set by hand: UTC = logged time + offset. */
    public RecorderPlan clockOff(double by_s) {
        return new RecorderPlan(
                participant,
                file,
                rate_Hz,
                zero_s,
                OptionalDouble.of(by_s),
                rate_ppm,
                pressureLag_s,
                noisy,
                channels,
                kept);
    }

    public RecorderPlan pressureLag(double other_s) {
        return new RecorderPlan(
                participant,
                file,
                rate_Hz,
                zero_s,
                offset_s,
                rate_ppm,
                other_s,
                noisy,
                channels,
                kept);
    }

    public RecorderPlan channels(Set<Channel> other) {
        return new RecorderPlan(
                participant,
                file,
                rate_Hz,
                zero_s,
                offset_s,
                rate_ppm,
                pressureLag_s,
                noisy,
                other,
                kept);
    }

    public RecorderPlan keeping(double start_s, double end_s) {
        return new RecorderPlan(
                participant,
                file,
                rate_Hz,
                zero_s,
                offset_s,
                rate_ppm,
                pressureLag_s,
                noisy,
                channels,
                Optional.of(new Span(start_s, end_s)));
    }

    /** With its zero at the truth's start and no drift; its log has absolute time then. */
    @Override
    public RecorderPlan trulyAligned() {
        return new RecorderPlan(
                participant,
                file,
                rate_Hz,
                OptionalDouble.of(0),
                OptionalDouble.of(0),
                0,
                0,
                noisy,
                channels,
                kept);
    }
}
