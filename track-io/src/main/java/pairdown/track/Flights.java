package pairdown.track;

import java.util.ArrayList;
import java.util.List;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.vector.Vec3;

/**
 * Finds the flights in a log: parts between long ground stays or long gaps. Together they cover
 * every row, cut in the middle of a stay; a log that never flies is one part.
 */
public final class Flights {
    /** A part of the log between two cuts, and whether it spans a flight's height. */
    private record Part(int from, int to, boolean flown) {}

    private final Track track;
    private final FlightSettings settings;

    private Flights(Track track, FlightSettings settings) {
        this.track = track;
        this.settings = settings;
    }

    /** The flights in order of time, at least one. */
    public static List<Flight> of(Track track) {
        return of(track, FlightSettings.DEFAULT);
    }

    /** The flights in order of time, at least one. */
    public static List<Flight> of(Track track, FlightSettings settings) {
        return new Flights(track, settings).flights();
    }

    private List<Flight> flights() {
        List<Part> parts = new ArrayList<>();
        int from = 0;
        for (int cut : cuts()) {
            parts.add(part(from, cut));
            from = cut;
        }
        parts.add(part(from, track.size()));
        return joined(parts);
    }

    private Part part(int from, int to) {
        return new Part(from, to, heightSpan_m(from, to) >= settings.flightHeight_m());
    }

    /** Parts that don't fly go with the flight after them, or at the end with the one before. */
    private static List<Flight> joined(List<Part> parts) {
        List<Flight> flights = new ArrayList<>();
        int from = 0;
        int lastEnd = 0;
        for (Part part : parts) {
            if (part.flown()) {
                flights.add(new Flight(from, part.to()));
                from = part.to();
            }
            lastEnd = part.to();
        }
        if (flights.isEmpty()) {
            return List.of(new Flight(0, lastEnd));
        }
        Flight last = flights.remove(flights.size() - 1);
        flights.add(new Flight(last.fromRow(), lastEnd));
        return List.copyOf(flights);
    }

    /** Rows before which the log is cut, rising, none of them 0 or the size. */
    private List<Integer> cuts() {
        double longGap_s =
                Math.max(settings.gap_s(), settings.gapSteps() * Gaps.usualStep_s(track));
        List<Integer> cuts = new ArrayList<>();
        int stayFrom = -1;
        LocalFrame frame = null;
        int last = -1;
        for (int row = 0; row < track.size(); row++) {
            if (!track.hasPosition(row)) {
                continue;
            }
            Geodetic place = track.positionAsRead(row);
            if (last >= 0 && track.time_s(row) - track.time_s(last) > longGap_s) {
                cuts.add(row);
                stayFrom = -1;
            } else if (stayFrom >= 0 && frame != null && !isNear(frame, place)) {
                addStayCut(cuts, stayFrom, last);
                stayFrom = -1;
            }
            if (stayFrom < 0) {
                stayFrom = row;
                frame = LocalFrame.at(place);
            }
            last = row;
        }
        return cuts;
    }

    private void addStayCut(List<Integer> cuts, int from, int to) {
        double stay_s = track.time_s(to) - track.time_s(from);
        int middle = track.rowAtOrBefore(track.time_s(from) + stay_s / 2);
        int lastCut = cuts.isEmpty() ? 0 : cuts.get(cuts.size() - 1);
        if (stay_s >= settings.stay_s() && middle > lastCut) {
            cuts.add(middle);
        }
    }

    private boolean isNear(LocalFrame frame, Geodetic place) {
        Vec3 d = frame.toEnu(place);
        return Math.hypot(d.x(), d.y()) <= settings.stayRadius_m()
                && Math.abs(d.z()) <= settings.stayHeight_m();
    }

    private double heightSpan_m(int from, int to) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int row = from; row < to; row++) {
            double h = track.value(Channel.HEIGHT, row);
            double height_m = Double.isNaN(h) ? track.value(Channel.PRESSURE_ALTITUDE, row) : h;
            if (!Double.isNaN(height_m)) {
                low = Math.min(low, height_m);
                high = Math.max(high, height_m);
            }
        }
        return high - low;
    }
}
