package pairdown.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairdown.season.SeasonSamples.flown;
import static pairdown.season.SeasonSamples.segment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pairdown.season.Envelope.Corner;
import pairdown.season.Envelope.Machine;

class EnvelopeTest {
    private static Envelope of(SteadySegment... segments) {
        return Envelope.of(List.of(flown(1, segments)), SeasonSettings.DEFAULT);
    }

    /** The four corners of an upright rectangle and its middle. */
    private static SteadySegment[] box(
            String machine, String role, String how, double v, double sink, double dv, double dz) {
        return new SteadySegment[] {
            segment(machine, role, how, v, sink),
            segment(machine, role, how, v + dv, sink),
            segment(machine, role, how, v + dv, sink + dz),
            segment(machine, role, how, v, sink + dz),
            segment(machine, role, how, v + dv / 2, sink + dz / 2)
        };
    }

    private static SteadySegment[] all(SteadySegment[]... parts) {
        return Arrays.stream(parts).flatMap(Arrays::stream).toArray(SteadySegment[]::new);
    }

    @Test
    void theHullIsThoseCornersAndNotWhatLiesInside() {
        Machine lead = of(box("lead", "lead", "idle", 34, 8, 4, 3)).machines().get(0);
        assertEquals(5, lead.segments().size());
        assertEquals(4, lead.hull().size());
        assertTrue(lead.hull().contains(new Corner(38, 11)));
    }

    /** Rectangles 34–38 × 8–11 and 36–40 × 10–14 share 36–38 × 10–11: 2 m/s times 1 m/s. */
    @Test
    void theOverlapIsTheSharedPartOfThePlane() {
        Envelope e =
                of(
                        all(
                                box("lead", "lead", "idle", 34, 8, 4, 3),
                                box("blue", "flyer", "as flown", 36, 10, 4, 4)));
        assertEquals(2, e.overlapArea_m2ps2().orElseThrow(), 1e-9);
        assertEquals("blue", e.overlaps().get(0).flyer());
        assertEquals(2, e.overlaps().get(0).area_m2ps2(), 1e-9);
        List<Corner> corners = e.overlaps().get(0).polygons().get(0);
        assertEquals(4, corners.size());
        assertTrue(corners.contains(new Corner(36, 10)) && corners.contains(new Corner(38, 11)));
    }

    /**
     * The triangles (30, 10) (40, 10) (35, 20) and (30, 16) (40, 16) (35, 6): by hand, the wide
     * part between 10 and 16 less two corners. At sink z the first is 20 − z wide, the second z −
     * 6; the lesser is z − 6 up to 13 and 20 − z above, over 10 … 16: 2 · ∫ from 10 to 13 of (z −
     * 6) dz = 33.
     */
    @Test
    void theOverlapOfTrianglesEqualsTheOneByHand() {
        Envelope e =
                of(
                        segment("lead", "lead", "idle", 30, 10),
                        segment("lead", "lead", "idle", 40, 10),
                        segment("lead", "lead", "idle", 35, 20),
                        segment("blue", "flyer", "as flown", 30, 16),
                        segment("blue", "flyer", "as flown", 40, 16),
                        segment("blue", "flyer", "as flown", 35, 6));
        assertEquals(33, e.overlapArea_m2ps2().orElseThrow(), 1e-9);
    }

    @Test
    void whatLiesBetweenTwoConfigurationsCountsAsFlownInNeither() {
        Envelope e =
                of(
                        all(
                                box("lead", "lead", "idle", 34, 5, 4, 2),
                                box("lead", "lead", "flap 40°, reverse", 34, 17, 4, 2),
                                box("blue", "flyer", "as flown", 34, 9, 4, 4)));
        assertEquals(0, e.overlapArea_m2ps2().orElseThrow());
        assertTrue(e.overlaps().get(0).polygons().isEmpty());
    }

    @Test
    void eachConfigurationOfTheLeadIsHeldAgainstEachFlyer() {
        Envelope e =
                of(
                        all(
                                box("lead", "lead", "idle", 34, 5, 4, 2),
                                box("lead", "lead", "reverse", 34, 12, 4, 4),
                                box("blue", "flyer", "as flown", 34, 10, 4, 4),
                                box("amber", "flyer", "as flown", 39, 15, 4, 4)));
        assertEquals(
                List.of("idle amber 0", "idle blue 0", "reverse amber 0", "reverse blue 8"),
                e.overlaps().stream()
                        .map(
                                o ->
                                        o.configuration()
                                                + " "
                                                + o.flyer()
                                                + " "
                                                + Math.round(o.area_m2ps2()))
                        .toList());
        // Idle's (38, 7) to blue's (38, 10): three steps of sink.
        assertEquals(3, e.overlaps().get(1).nearest().distance(), 1e-9);
    }

    /** Nearest points (38, 11) and (40, 14): 2 m/s of airspeed is one step, 3 m/s of sink three. */
    @Test
    void cloudsApartHaveTheGapOfTheirNearestPoints() {
        Envelope e =
                of(
                        all(
                                box("lead", "lead", "idle", 34, 8, 4, 3),
                                box("blue", "flyer", "as flown", 40, 14, 4, 4)));
        assertEquals(0, e.overlapArea_m2ps2().orElseThrow());
        assertEquals(Math.hypot(1, 3), e.gap().orElseThrow().distance(), 1e-9);
        assertEquals(new Corner(38, 11), e.gap().orElseThrow().lead());
        assertEquals(10, e.segments());
    }

    @Test
    void twoPointsHaveNoAreaAndTheReasonIsSaid() {
        Envelope e =
                of(
                        all(
                                box("lead", "lead", "idle", 34, 8, 4, 3),
                                new SteadySegment[] {
                                    segment("blue", "flyer", "as flown", 36, 9),
                                    segment("blue", "flyer", "as flown", 37, 10)
                                }));
        assertTrue(e.overlapArea_m2ps2().isEmpty());
        assertTrue(e.notes().stream().anyMatch(n -> n.contains("no flyer has three")));
    }

    /**
     * W 18,632 N at V 38 m/s, wanted 17.78 m/s, flown 7.0 m/s: 5,286 N by hand. One standard
     * deviation of mass 3 %, sink 0.3 m/s, airspeed 1 m/s: 158.6, 147.1 and 139.1 N, together
     * 257.5, times 1.96.
     */
    @Test
    void missingForceEqualsTheWorkedExample() {
        MissingForce f =
                of(segment("lead", "lead", "flap 40°, idle", 38, 7.0)).missingForce().orElseThrow();
        assertEquals(5286, f.value_N(), 0.5);
        assertEquals(5286 - 1.96 * 257.5, f.low_N(), 1.5);
        assertEquals(5286 + 1.96 * 257.5, f.high_N(), 1.5);
        assertEquals(1, f.segments());
    }

    @Test
    void scatterOfTheSegmentsWidensTheInterval() {
        MissingForce alike = scattered(0).missingForce().orElseThrow();
        MissingForce wide = scattered(2.5).missingForce().orElseThrow();
        assertTrue(
                wide.high_N() - wide.low_N() > 1.3 * (alike.high_N() - alike.low_N()),
                () -> alike + " " + wide);
        assertTrue(wide.low_N() < 5286 && wide.high_N() > 5286, wide::toString);
    }

    private static Envelope scattered(double sd_mps) {
        Random random = new Random(3);
        List<SteadySegment> segments = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            segments.add(segment("lead", "lead", "idle", 38, 7 + sd_mps * random.nextGaussian()));
        }
        return of(segments.toArray(SteadySegment[]::new));
    }

    @Test
    void theConfigurationThatLacksLeastComesFirstAndReverseNotAtAll() {
        Envelope e =
                of(
                        segment("lead", "lead", "flap 0°, idle", 38, 5),
                        segment("lead", "lead", "flap 40°, idle", 38, 7),
                        segment("lead", "lead", "flap 40°, reverse", 38, 16),
                        segment("lead", "lead", "flap 40°, idle", 45, 12));
        assertEquals(
                List.of("flap 40°, idle", "flap 0°, idle"),
                e.missingForces().stream().map(MissingForce::configuration).toList());
        assertEquals(1, e.missingForce().orElseThrow().segments(), "45 m/s is another airspeed");
    }

    @Test
    void withoutFlightAtTheTargetsAirspeedTheForceIsAbsentAndTheReasonSaid() {
        Envelope e = of(segment("lead", "lead", "idle", 50, 7));
        assertTrue(e.missingForce().isEmpty());
        assertTrue(e.notes().stream().anyMatch(n -> n.contains("near the target's airspeed")));
    }
}
