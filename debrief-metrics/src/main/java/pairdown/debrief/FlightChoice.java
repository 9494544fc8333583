package pairdown.debrief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.clock.LoadedLog;
import pairdown.time.Span;
import pairdown.time.TimeAxis;
import pairdown.track.Flight;
import pairdown.track.Flights;
import pairdown.track.LogReport;
import pairdown.track.Track;

/**
 * Where a log holds several flights, takes the one that overlaps the other logs most; where none
 * does, the longest. What was taken is said in the log's warnings.
 */
final class FlightChoice {
    private FlightChoice() {}

    static List<LoadedLog> choose(List<LoadedLog> logs) {
        List<List<Flight>> flights = logs.parallelStream().map(l -> Flights.of(l.track())).toList();
        Optional<TimeAxis> axis =
                logs.stream()
                        .flatMap(l -> l.track().epoch().stream())
                        .findFirst()
                        .map(TimeAxis::new);
        List<LoadedLog> chosen = new ArrayList<>();
        for (int i = 0; i < logs.size(); i++) {
            LoadedLog log = logs.get(i);
            if (flights.get(i).size() < 2) {
                chosen.add(log);
                continue;
            }
            double best = Double.NEGATIVE_INFINITY;
            Flight taken = flights.get(i).get(0);
            for (Flight flight : flights.get(i)) {
                double score = score(log, flight, i, logs, axis);
                if (score > best) {
                    best = score;
                    taken = flight;
                }
            }
            chosen.add(cut(log, taken, flights.get(i).size()));
        }
        return chosen;
    }

    /** Seconds shared with other logs; a flight's own length decides between equals. */
    private static double score(
            LoadedLog log, Flight flight, int self, List<LoadedLog> logs, Optional<TimeAxis> axis) {
        Track track = log.track();
        double duration_s = track.time_s(flight.toRow() - 1) - track.time_s(flight.fromRow());
        double shared_s = 0;
        if (axis.isPresent() && track.hasAbsoluteTime()) {
            Span span = span(track, flight.fromRow(), flight.toRow() - 1, axis.get());
            for (int j = 0; j < logs.size(); j++) {
                Track other = logs.get(j).track();
                if (j != self && other.hasAbsoluteTime()) {
                    shared_s += overlap_s(span, span(other, 0, other.size() - 1, axis.get()));
                }
            }
        }
        return shared_s + 1e-3 * duration_s;
    }

    private static Span span(Track track, int from, int to, TimeAxis axis) {
        double epoch_s = axis.seconds(track.epoch().orElseThrow());
        return new Span(epoch_s + track.time_s(from), epoch_s + track.time_s(to));
    }

    private static double overlap_s(Span a, Span b) {
        return Math.max(0, Math.min(a.end_s(), b.end_s()) - Math.max(a.start_s(), b.start_s()));
    }

    private static LoadedLog cut(LoadedLog log, Flight flight, int of) {
        Track part = log.track().slice(flight.fromRow(), flight.toRow());
        LogReport report = part.report();
        List<String> warnings = new ArrayList<>(report.warnings());
        warnings.add(
                of
                        + " flights in the file; the one of "
                        + Math.round((part.end_s() - part.start_s()) / 60)
                        + " min that overlaps the other logs is used");
        LogReport said = report.withWarnings(warnings);
        return new LoadedLog(log.participant(), log.ref(), part.withReport(said));
    }
}
