package pairdown.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import pairdown.attempt.Role;
import pairdown.season.AttemptSummary.TargetPoint;
import pairdown.stats.Bootstrap;
import pairdown.stats.Interval;

/**
 * Where each machine has flown steadily, in calibrated airspeed and sink, and whether the lead's
 * and the flyers' meet there. What has not been flown is not known to be out of reach.
 *
 * @param machines one for each machine and configuration
 * @param overlapArea_m2ps2 of the hull of all the lead's points with that of all the flyers';
 *     absent unless both have three points
 * @param gap the least distance between the two clouds, in steps of the settings' scales; absent
 *     without points of both
 * @param missingForce where the lead has flown the target's airspeed: the retarding force it lacked
 * @param question whether calibrated and true airspeed may have been confused, in words
 */
public record Envelope(
        List<Machine> machines,
        OptionalDouble overlapArea_m2ps2,
        Optional<Gap> gap,
        Optional<MissingForce> missingForce,
        Optional<String> question) {
    private static final GeometryFactory PLANE = new GeometryFactory();

    /** Standard gravity (m/s²), exact: ISO 2533. */
    private static final double G_MPS2 = 9.80665;

    /** A segment this near the target's airspeed tells of the force there (m/s). */
    private static final double NEAR_MPS = 2;

    /** Masses are known to this share, sink to 0.3 m/s: in every interval (common practice). */
    private static final double MASS_SHARE = 0.03;

    private static final double SINK_SIGMA_MPS = 0.3;

    public Envelope {
        machines = List.copyOf(machines);
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

    /** A corner of a hull. */
    public record Corner(double calibratedAirspeed_mps, double sink_mps) {}

    /** The two nearest points of the lead's and the flyers' clouds. */
    public record Gap(double distance, Corner lead, Corner flyer) {}

    /**
     * The retarding force missing at the target, ΔF = W (sink wanted − sink flown) / V.
     *
     * @param segments how many segments near the target's airspeed it is from
     */
    public record MissingForce(double value_N, double low_N, double high_N, int segments) {}

    static Envelope of(List<AttemptSummary> attempts, SeasonSettings settings) {
        List<SteadySegment> all = attempts.stream().flatMap(a -> a.segments().stream()).toList();
        Optional<TargetPoint> target =
                attempts.stream().flatMap(a -> a.target().stream()).reduce((a, b) -> b);
        List<SteadySegment> lead = ofRole(all, Role.LEAD);
        List<SteadySegment> flyers = ofRole(all, Role.FLYER);
        Geometry leadHull = hull(lead);
        Geometry flyerHull = hull(flyers);
        boolean areas = leadHull.getDimension() == 2 && flyerHull.getDimension() == 2;
        return new Envelope(
                machines(all),
                areas
                        ? OptionalDouble.of(leadHull.intersection(flyerHull).getArea())
                        : OptionalDouble.empty(),
                gap(lead, flyers, settings),
                target.flatMap(t -> missingForce(lead, t, settings)),
                target.flatMap(t -> question(lead, t)));
    }

    private static List<SteadySegment> ofRole(List<SteadySegment> all, Role role) {
        return all.stream().filter(s -> s.role().equals(role.key())).toList();
    }

    private static List<Machine> machines(List<SteadySegment> all) {
        Map<List<String>, List<SteadySegment>> groups =
                new TreeMap<>((a, b) -> String.join("\n", a).compareTo(String.join("\n", b)));
        for (SteadySegment s : all) {
            groups.computeIfAbsent(
                            List.of(s.machine(), s.role(), s.configuration()),
                            k -> new ArrayList<>())
                    .add(s);
        }
        List<Machine> machines = new ArrayList<>();
        groups.forEach(
                (key, segments) ->
                        machines.add(
                                new Machine(
                                        key.get(0),
                                        key.get(1),
                                        key.get(2),
                                        segments,
                                        corners(hull(segments)))));
        return machines;
    }

    private static Geometry hull(List<SteadySegment> segments) {
        Coordinate[] points =
                segments.stream()
                        .map(s -> new Coordinate(s.calibratedAirspeed_mps(), s.sink_mps()))
                        .toArray(Coordinate[]::new);
        return PLANE.createMultiPointFromCoords(points).convexHull();
    }

    private static List<Corner> corners(Geometry hull) {
        List<Corner> corners = new ArrayList<>();
        Coordinate[] c = hull.getCoordinates();
        int n = hull.getDimension() == 2 ? c.length - 1 : c.length;
        for (int i = 0; i < n; i++) {
            corners.add(new Corner(c[i].getX(), c[i].getY()));
        }
        return corners;
    }

    private static Optional<Gap> gap(
            List<SteadySegment> lead, List<SteadySegment> flyers, SeasonSettings settings) {
        Optional<Gap> best = Optional.empty();
        for (SteadySegment l : lead) {
            for (SteadySegment f : flyers) {
                double distance =
                        Math.hypot(
                                (l.calibratedAirspeed_mps() - f.calibratedAirspeed_mps())
                                        / settings.airspeedScale_mps(),
                                (l.sink_mps() - f.sink_mps()) / settings.sinkScale_mps());
                if (best.isEmpty() || distance < best.get().distance()) {
                    best = Optional.of(new Gap(distance, corner(l), corner(f)));
                }
            }
        }
        return best;
    }

    private static Corner corner(SteadySegment s) {
        return new Corner(s.calibratedAirspeed_mps(), s.sink_mps());
    }

    private static Optional<MissingForce> missingForce(
            List<SteadySegment> lead, TargetPoint target, SeasonSettings settings) {
        boolean truly = target.kind().equals("true");
        double[] forces_N =
                lead.stream()
                        .filter(
                                s ->
                                        s.mass_kg().isPresent()
                                                && !s.configuration().contains("reverse"))
                        .filter(
                                s ->
                                        Math.abs(airspeed(s, truly) - target.airspeed_mps())
                                                < NEAR_MPS)
                        .mapToDouble(
                                s ->
                                        s.mass_kg().getAsDouble()
                                                * G_MPS2
                                                * (target.sink_mps() - s.sink_mps())
                                                / s.trueAirspeed_mps())
                        .toArray();
        if (forces_N.length == 0) {
            return Optional.empty();
        }
        double mean_N = mean(forces_N);
        double weight_N = lead.get(0).mass_kg().orElse(0) * G_MPS2;
        double spread_N =
                1.96
                        * Math.hypot(
                                MASS_SHARE * mean_N,
                                SINK_SIGMA_MPS * weight_N / target.airspeed_mps());
        Optional<Interval> sample =
                Bootstrap.DEFAULT.interval(forces_N, Envelope::mean, settings.confidence());
        double low_N = sample.map(Interval::low).orElse(mean_N);
        double high_N = sample.map(Interval::high).orElse(mean_N);
        return Optional.of(
                new MissingForce(
                        mean_N,
                        mean_N - Math.hypot(mean_N - low_N, spread_N),
                        mean_N + Math.hypot(high_N - mean_N, spread_N),
                        forces_N.length));
    }

    private static double airspeed(SteadySegment s, boolean truly) {
        return truly ? s.trueAirspeed_mps() : s.calibratedAirspeed_mps();
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        return sum / values.length;
    }

    /**
     * Where the lead's steady true airspeed meets the number that the target calls calibrated, or
     * the other way.
     */
    private static Optional<String> question(List<SteadySegment> lead, TargetPoint target) {
        boolean truly = target.kind().equals("true");
        List<SteadySegment> atSink =
                lead.stream()
                        .filter(s -> Math.abs(s.sink_mps() - target.sink_mps()) < 1.5)
                        .toList();
        if (atSink.size() < 3) {
            return Optional.empty();
        }
        double asSaid = mean(atSink.stream().mapToDouble(s -> airspeed(s, truly)).toArray());
        double other = mean(atSink.stream().mapToDouble(s -> airspeed(s, !truly)).toArray());
        boolean fitsOther =
                Math.abs(other - target.airspeed_mps()) < 1
                        && Math.abs(asSaid - target.airspeed_mps()) > 2;
        return fitsOther
                ? Optional.of(
                        "at the target's sink the lead flew the target's number as "
                                + (truly ? "calibrated" : "true")
                                + " airspeed: is the target's kind of airspeed the one meant?")
                : Optional.empty();
    }
}
