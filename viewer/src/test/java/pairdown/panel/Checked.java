package pairdown.panel;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.clock.ClockDoubt;
import pairdown.clock.ClockMap;
import pairdown.clock.ClockMethod;
import pairdown.clock.ClockResult;
import pairdown.debrief.Debrief;
import pairdown.debrief.LogQuality;
import pairdown.height.HeightResult;
import pairdown.safety.Finding;
import pairdown.time.Span;
import pairdown.track.HeightDatum;
import pairdown.units.Estimate;

/** A debrief with clocks, heights, log qualities and findings as a real one has them. */
final class Checked {
    private Checked() {}

    static Debrief of(Debrief d) {
        return new Debrief(
                d.attempt(),
                d.settings(),
                d.axis(),
                d.frame(),
                d.span(),
                List.of(
                        clock("blue", "blue.csv", 0, ClockMethod.GNSS_TIME),
                        clock("amber", "amber.gpx", -2.41, ClockMethod.SHARED_RIDE),
                        clock("lead", "lead.nmea", 0, ClockMethod.GNSS_TIME),
                        clock("lead", "lead-systems.csv", 0, ClockMethod.AIR_DATA_MATCH)),
                List.of(
                        height("blue", "blue.csv", HeightDatum.MSL),
                        height("amber", "amber.gpx", HeightDatum.UNKNOWN),
                        height("lead", "lead.nmea", HeightDatum.MSL)),
                List.of(
                        quality("blue", "blue.csv", d.span(), List.of(), List.of()),
                        quality(
                                "amber",
                                "amber.gpx",
                                d.span(),
                                List.of(new Span(120, 123)),
                                List.of(
                                        "the clock was 2.41 s behind the others on the shared ride"
                                                + " and is shifted",
                                        "the format leaves open what heights are measured from;"
                                                + " taken as mean sea level")),
                        quality("lead", "lead.nmea", d.span(), List.of(), List.of()),
                        quality("lead", "lead-systems.csv", d.span(), List.of(), List.of())),
                d.wind(),
                d.participants(),
                d.events(),
                d.pairs(),
                d.tailControl(),
                List.of(
                        finding("blue", Finding.Outcome.EXCEEDED, 1649),
                        finding("amber", Finding.Outcome.WITHIN_UNCERTAINTY, 1674),
                        new Finding(
                                Finding.CLOSURE,
                                "blue",
                                Optional.of("lead"),
                                Finding.Outcome.CLEAR,
                                OptionalDouble.of(90),
                                OptionalDouble.of(5.6),
                                7.4,
                                OptionalDouble.of(0.2),
                                "m/s",
                                Optional.empty()),
                        new Finding(
                                "minimumSeparation",
                                "blue",
                                Optional.of("amber"),
                                Finding.Outcome.CANNOT_TELL,
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                30,
                                OptionalDouble.empty(),
                                "m",
                                Optional.of(
                                        "amber has no data for 3 s where the two were nearest")),
                        new Finding(
                                "maximumAirspeed",
                                "lead",
                                Optional.empty(),
                                Finding.Outcome.CLEAR,
                                OptionalDouble.of(104),
                                OptionalDouble.of(40.2),
                                62.6,
                                OptionalDouble.of(0.8),
                                "m/s",
                                Optional.empty())),
                List.of("no wind was known: no airspeed for amber"));
    }

    /** The same of a lead that nobody joined. */
    static Debrief withoutPairs(Debrief d) {
        return new Debrief(
                d.attempt(),
                d.settings(),
                d.axis(),
                d.frame(),
                d.span(),
                d.clock(),
                d.heights(),
                d.quality(),
                d.wind(),
                d.participants(),
                d.events(),
                List.of(),
                d.tailControl(),
                d.safety(),
                d.notes());
    }

    private static ClockResult clock(String who, String file, double offset_s, ClockMethod method) {
        return new ClockResult(
                who,
                file,
                new ClockMap(offset_s, 0),
                0.03,
                ClockDoubt.own(0.03),
                method,
                Optional.of(new Estimate(offset_s, 0.03)),
                OptionalDouble.of(0.11),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    private static HeightResult height(String who, String file, HeightDatum datum) {
        return new HeightResult(
                who, file, datum, 31.2, Optional.of(new Estimate(0.4, 0.8)), 0.8, List.of());
    }

    private static LogQuality quality(
            String who, String file, Span span, List<Span> gaps, List<String> warnings) {
        return new LogQuality(
                who,
                file,
                Optional.of("csv"),
                5400,
                OptionalDouble.of(5),
                Optional.of(span),
                gaps,
                List.of(),
                3,
                1,
                warnings);
    }

    private static Finding finding(String who, Finding.Outcome outcome, double value_m) {
        return new Finding(
                "breakOffHeight",
                who,
                Optional.empty(),
                outcome,
                OptionalDouble.of(131),
                OptionalDouble.of(value_m),
                1676,
                OptionalDouble.of(3),
                "m",
                Optional.empty());
    }
}
