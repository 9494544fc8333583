package pairdown.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import pairdown.attempt.AirspeedKind;
import pairdown.attempt.Role;
import pairdown.attempt.Target;

/**
 * Where each machine has flown steadily, in calibrated airspeed and sink, and whether the lead's
 * and the flyers' meet there. What has not been flown is not known to be out of reach.
 *
 * @param machines one for each machine and configuration
 * @param overlapArea_m2ps2 of the lead's hulls, one for each configuration, with the flyers'; 0
 *     where they lie apart, absent unless both have one with an area
 * @param overlaps of the lead in each configuration with each flyer, those that have hulls with an
 *     area
 * @param gap the least distance between the two clouds, in steps of the settings' scales; absent
 *     without points of both
 * @param missingForces by configuration of the lead, where it has flown the target's airspeed; the
 *     least first
 * @param target the latest attempt's with one
 * @param question whether calibrated and true airspeed may have been confused, in words
 * @param notes what can't be known and why
 */
public record Envelope(
        List<Machine> machines,
        OptionalDouble overlapArea_m2ps2,
        List<Overlap> overlaps,
        Optional<Gap> gap,
        List<MissingForce> missingForces,
        Optional<TargetMark> target,
        Optional<String> question,
        List<String> notes) {
    public Envelope {
        machines = List.copyOf(machines);
        overlaps = List.copyOf(overlaps);
        missingForces = List.copyOf(missingForces);
        notes = List.copyOf(notes);
    }

    /**
     * One machine in one configuration.
     *
     * @param hull corners of the convex hull, (airspeed, sink) in order round it; the points
     *     themselves where they span no area
     */
    public record Machine(
            String machine,
            String role,
            String configuration,
            List<SteadySegment> segments,
            List<Corner> hull) {
        public Machine {
            segments = List.copyOf(segments);
            hull = List.copyOf(hull);
        }
    }

    /** A point of the plane: a corner of a hull. */
    public record Corner(double calibratedAirspeed_mps, double sink_mps) {}

    /**
     * Where the lead's hull in one configuration meets one flyer's.
     *
     * @param polygons what both have round them; none where they lie apart
     * @param nearest the two nearest points flown
     */
    public record Overlap(
            String configuration,
            String flyer,
            double area_m2ps2,
            List<List<Corner>> polygons,
            Gap nearest) {
        public Overlap {
            polygons = polygons.stream().map(List::copyOf).toList();
        }
    }

    /** The two nearest points of the lead's and the flyers' clouds. */
    public record Gap(double distance, Corner lead, String flyer, Corner flown) {}

    /**
     * The target in the plane.
     *
     * @param set as the attempt gives it
     * @param calibratedAirspeed_mps its airspeed; where the target is a true airspeed, at the mean
     *     density of the lead's steady flight, absent where there is none
     */
    public record TargetMark(Target set, OptionalDouble calibratedAirspeed_mps) {}

    /** The retarding force missing at the target in the configuration that lacks least. */
    public Optional<MissingForce> missingForce() {
        return missingForces.stream().findFirst();
    }

    /** How many steady segments of the lead and the flyers it rests on. */
    public int segments() {
        return machines.stream()
                .filter(m -> isLead(m) || isFlyer(m))
                .mapToInt(m -> m.segments().size())
                .sum();
    }

    static Envelope of(List<AttemptSummary> attempts, SeasonSettings settings) {
        List<SteadySegment> all = attempts.stream().flatMap(a -> a.segments().stream()).toList();
        List<Target> targets = attempts.stream().flatMap(a -> a.target().stream()).toList();
        Optional<Target> target = targets.stream().reduce((a, b) -> b);
        List<SteadySegment> lead = ofRole(all, Role.LEAD);
        List<SteadySegment> flyers = ofRole(all, Role.FLYER);
        List<Machine> machines = machines(all);
        Region leadRegion = region(machines.stream().filter(Envelope::isLead).toList());
        Region flyerRegion = region(machines.stream().filter(Envelope::isFlyer).toList());
        List<MissingForce> forces =
                target.map(t -> MissingForce.of(lead, t, settings)).orElse(List.of());
        return new Envelope(
                machines,
                leadRegion.hasArea() && flyerRegion.hasArea()
                        ? OptionalDouble.of(leadRegion.intersection(flyerRegion).area_m2ps2())
                        : OptionalDouble.empty(),
                overlaps(machines, settings),
                gap(lead, flyers, settings),
                forces,
                target.map(t -> new TargetMark(t, calibrated_mps(t, lead))),
                AirspeedQuestion.of(lead, targets),
                notes(leadRegion, flyerRegion, lead, target, forces));
    }

    private static boolean isLead(Machine m) {
        return m.role().equals(Role.LEAD.key());
    }

    private static boolean isFlyer(Machine m) {
        return m.role().equals(Role.FLYER.key());
    }

    private static List<SteadySegment> ofRole(List<SteadySegment> all, Role role) {
        return all.stream().filter(s -> s.role().equals(role.key())).toList();
    }

    private static List<Machine> machines(List<SteadySegment> all) {
        record Key(String machine, String role, String configuration) {}
        Map<Key, List<SteadySegment>> groups =
                new TreeMap<>(
                        Comparator.comparing(Key::machine)
                                .thenComparing(Key::role)
                                .thenComparing(Key::configuration));
        for (SteadySegment s : all) {
            groups.computeIfAbsent(
                            new Key(s.machine(), s.role(), s.configuration()),
                            k -> new ArrayList<>())
                    .add(s);
        }
        List<Machine> machines = new ArrayList<>();
        groups.forEach(
                (key, segments) ->
                        machines.add(
                                new Machine(
                                        key.machine(),
                                        key.role(),
                                        key.configuration(),
                                        segments,
                                        Region.hull(segments).corners())));
        return machines;
    }

    private static Region region(List<Machine> machines) {
        return Region.union(machines.stream().map(m -> Region.hull(m.segments())).toList());
    }

    private static List<Overlap> overlaps(List<Machine> machines, SeasonSettings settings) {
        Map<String, List<Machine>> flyers = new TreeMap<>();
        machines.stream()
                .filter(Envelope::isFlyer)
                .forEach(m -> flyers.computeIfAbsent(m.machine(), k -> new ArrayList<>()).add(m));
        List<Overlap> overlaps = new ArrayList<>();
        for (Machine lead : machines.stream().filter(Envelope::isLead).toList()) {
            flyers.forEach((n, of) -> overlap(lead, n, of, settings).ifPresent(overlaps::add));
        }
        return overlaps;
    }

    private static Optional<Overlap> overlap(
            Machine lead, String flyer, List<Machine> flown, SeasonSettings settings) {
        Region leadRegion = Region.hull(lead.segments());
        Region flyerRegion = region(flown);
        if (!leadRegion.hasArea() || !flyerRegion.hasArea()) {
            return Optional.empty();
        }
        Region both = leadRegion.intersection(flyerRegion);
        List<SteadySegment> segments = flown.stream().flatMap(m -> m.segments().stream()).toList();
        return gap(lead.segments(), segments, settings)
                .map(
                        nearest ->
                                new Overlap(
                                        lead.configuration(),
                                        flyer,
                                        both.area_m2ps2(),
                                        both.polygons().stream().map(Region::corners).toList(),
                                        nearest));
    }

    /** By squares: a season has millions of pairs of segments, and only the nearest is told. */
    private static Optional<Gap> gap(
            List<SteadySegment> lead, List<SteadySegment> flyers, SeasonSettings settings) {
        double[] v = flyers.stream().mapToDouble(f -> steps(f, settings)[0]).toArray();
        double[] z = flyers.stream().mapToDouble(f -> steps(f, settings)[1]).toArray();
        double least = Double.POSITIVE_INFINITY;
        Optional<Gap> best = Optional.empty();
        for (SteadySegment l : lead) {
            double[] at = steps(l, settings);
            for (int i = 0; i < v.length; i++) {
                double squared = sq(v[i] - at[0]) + sq(z[i] - at[1]);
                if (squared < least) {
                    least = squared;
                    SteadySegment f = flyers.get(i);
                    best =
                            Optional.of(
                                    new Gap(Math.sqrt(squared), corner(l), f.machine(), corner(f)));
                }
            }
        }
        return best;
    }

    /** A segment's airspeed and sink in steps of equal weight. */
    private static double[] steps(SteadySegment s, SeasonSettings settings) {
        return new double[] {
            s.calibratedAirspeed_mps() / settings.airspeedScale_mps(),
            s.sink_mps() / settings.sinkScale_mps()
        };
    }

    private static double sq(double v) {
        return v * v;
    }

    private static Corner corner(SteadySegment s) {
        return new Corner(s.calibratedAirspeed_mps(), s.sink_mps());
    }

    private static OptionalDouble calibrated_mps(Target t, List<SteadySegment> lead) {
        if (t.kind() == AirspeedKind.CALIBRATED) {
            return OptionalDouble.of(t.airspeed_mps());
        }
        OptionalDouble ratio =
                lead.stream()
                        .mapToDouble(s -> s.calibratedAirspeed_mps() / s.trueAirspeed_mps())
                        .average();
        return ratio.isPresent()
                ? OptionalDouble.of(ratio.getAsDouble() * t.airspeed_mps())
                : OptionalDouble.empty();
    }

    private static List<String> notes(
            Region lead,
            Region flyers,
            List<SteadySegment> leadSegments,
            Optional<Target> target,
            List<MissingForce> forces) {
        List<String> notes = new ArrayList<>();
        if (!lead.hasArea()) {
            notes.add(
                    "overlap can't be told: the lead has no three steady segments in one"
                            + " configuration");
        }
        if (!flyers.hasArea()) {
            notes.add("overlap can't be told: no flyer has three steady segments");
        }
        if (target.isEmpty()) {
            notes.add("missing force can't be told: no attempt has a target");
        } else if (forces.isEmpty()) {
            notes.add(
                    leadSegments.stream().anyMatch(s -> s.mass_kg().isPresent())
                            ? "missing force can't be told: the lead has no steady segment near"
                                    + " the target's airspeed without reverse"
                            : "missing force can't be told: the lead's mass is not given");
        }
        return notes;
    }
}
