package pairdown.season;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import pairdown.season.Envelope.Corner;

/**
 * A part of the plane of calibrated airspeed and sink, thin over JTS. Several configurations are
 * joined by union, not by a hull round all: what lies between two configurations was flown in
 * neither.
 */
record Region(Geometry shape) {
    private static final GeometryFactory PLANE = new GeometryFactory();

    /** The convex hull of segments: a polygon, or a line or point where they span no area. */
    static Region hull(Collection<SteadySegment> segments) {
        Coordinate[] points =
                segments.stream()
                        .map(s -> new Coordinate(s.calibratedAirspeed_mps(), s.sink_mps()))
                        .toArray(Coordinate[]::new);
        return new Region(PLANE.createMultiPointFromCoords(points).convexHull());
    }

    /** All of several; empty of none. Lines and points among them count for nothing. */
    static Region union(List<Region> regions) {
        List<Geometry> areas = regions.stream().filter(Region::hasArea).map(Region::shape).toList();
        return new Region(areas.isEmpty() ? PLANE.createPolygon() : UnaryUnionOp.union(areas));
    }

    Region intersection(Region other) {
        return new Region(shape.intersection(other.shape));
    }

    boolean hasArea() {
        return shape.getArea() > 0;
    }

    double area_m2ps2() {
        return shape.getArea();
    }

    /** Corners in order round it, the first not repeated; of a line or point, its points. */
    List<Corner> corners() {
        Coordinate[] c = shape.getCoordinates();
        int n = shape.getDimension() == 2 ? c.length - 1 : c.length;
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            corners.add(new Corner(c[i].getX(), c[i].getY()));
        }
        return corners;
    }

    /** Its polygons; none where it has no area. */
    List<Region> polygons() {
        List<Region> polygons = new ArrayList<>();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof Polygon p && p.getArea() > 0) {
                polygons.add(new Region(p.getFactory().createPolygon(p.getExteriorRing())));
            }
        }
        return polygons;
    }
}
