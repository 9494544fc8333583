package pairdown.demo.receiver;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.time.Span;
import pairdown.track.HeightDatum;

/**
 * What was done to one log: what a debrief should find.
 *
 * @param offset_s UTC = logged time + offset, for positions; empty for a log with its own zero
 * @param zero the instant of the log's own zero
 * @param rate_ppm true seconds = (1 + rate) × logged seconds
 * @param latency_s how late positions are in the log; part of the offset
 * @param velocityLag_s how late velocities are behind positions
 * @param pressureLag_s lag of pressure readings
 * @param datum what heights are measured from
 * @param heightBias_m constant error of heights once read by that datum and EGM96
 * @param lost stretches without fixes (the truth's time)
 * @param inverted stretches with the antenna in shadow
 * @param frozen stretches in which the last fix is repeated
 * @param damage what was done to the file, in words
 */
public record InjectedFaults(
        String participant,
        String file,
        OptionalDouble offset_s,
        Optional<Instant> zero,
        double rate_ppm,
        double latency_s,
        double velocityLag_s,
        double pressureLag_s,
        HeightDatum datum,
        double heightBias_m,
        List<Span> lost,
        List<Span> inverted,
        List<Span> frozen,
        List<String> damage) {
    public InjectedFaults {
        lost = List.copyOf(lost);
        inverted = List.copyOf(inverted);
        frozen = List.copyOf(frozen);
        damage = List.copyOf(damage);
    }

    /** The same with damage done to the file. */
    public InjectedFaults withDamage(List<String> words) {
        return new InjectedFaults(
                participant,
                file,
                offset_s,
                zero,
                rate_ppm,
                latency_s,
                velocityLag_s,
                pressureLag_s,
                datum,
                heightBias_m,
                lost,
                inverted,
                frozen,
                words);
    }
}
