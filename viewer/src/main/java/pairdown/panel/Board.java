package pairdown.panel;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pairdown.debrief.Debrief;
import pairdown.pair.Bearing;
import pairdown.pair.ClosureExceedance;
import pairdown.pair.MatchedWindow;
import pairdown.pair.PairDebrief;
import pairdown.pair.PairSeries.Figure;
import pairdown.phase.Event;
import pairdown.phase.EventKind;
import pairdown.replay.Desk;
import pairdown.replay.Heights;
import pairdown.replay.Link;
import pairdown.replay.Recording;
import pairdown.safety.Finding;
import pairdown.tail.Episode;
import pairdown.time.Span;
import pairdown.words.Words;

/**
 * One recording made ready for the panels: everything that need not be worked out each frame. It
 * takes a while and needs no window: made where the recording is read.
 */
public final class Board {
    /** Shown before the first exit and after the last opening (s). */
    private static final double MARGIN_S = 20;

    private static final int HOURS = 12;

    private final Recording recording;
    private final StripBook strips;
    private final Heights heights;
    private final Span span;
    private final Span focus;
    private final double[] matchStarts_s;
    private final double[] episodeStarts_s;
    private final double[] findings_s;
    private final Map<Bearing.Level, List<String>> clock;
    private final int number;

    public Board(Recording recording, Words words) {
        this.recording = recording;
        this.heights = Heights.of(recording.debrief());
        this.strips = new StripBook(recording, heights, words);
        this.span = recording.debrief().span();
        this.focus = focusOf(recording);
        this.matchStarts_s = matchStarts(debrief());
        this.episodeStarts_s = starts(episodes());
        this.findings_s = findings(debrief());
        this.clock = clock(words);
        this.number = System.identityHashCode(this);
    }

    private static Map<Bearing.Level, List<String>> clock(Words words) {
        Map<Bearing.Level, List<String>> clock = new EnumMap<>(Bearing.Level.class);
        for (Bearing.Level level : Bearing.Level.values()) {
            String key = "bearing." + level.key();
            clock.put(
                    level,
                    IntStream.rangeClosed(1, HOURS)
                            .mapToObj(hour -> words.get(key, String.valueOf(hour)))
                            .toList());
        }
        return clock;
    }

    /**
     * Where a flyer is seen from its lead, by the clock whose 12 is the nose; empty where it has no
     * direction.
     */
    String clock(Link link) {
        double ahead_m = link.figure(Figure.AHEAD);
        double right_m = link.figure(Figure.RIGHT);
        double bearing_deg = Bearing.bearing_deg(ahead_m, right_m);
        if (Double.isNaN(bearing_deg) || Double.isNaN(link.figure(Figure.CLOSURE_RATE))) {
            return "";
        }
        double level_m = Math.hypot(ahead_m, right_m);
        double elevation_deg = Bearing.elevation_deg(level_m, link.figure(Figure.ABOVE));
        List<String> hours = clock.get(Bearing.levelOf(elevation_deg));
        return hours == null ? "" : hours.get(Bearing.hourOf(bearing_deg) - 1);
    }

    private static Span focusOf(Recording recording) {
        Span all = recording.debrief().span();
        double first_s = Double.POSITIVE_INFINITY;
        double last_s = Double.NEGATIVE_INFINITY;
        for (Event event : recording.events()) {
            if (event.kind() == EventKind.EXIT) {
                first_s = Math.min(first_s, event.time_s());
            }
            if (event.kind() == EventKind.EXIT || event.kind() == EventKind.OPENING) {
                last_s = Math.max(last_s, event.time_s());
            }
        }
        double from_s = Math.max(all.start_s(), first_s - MARGIN_S);
        double to_s = Math.min(all.end_s(), last_s + MARGIN_S);
        // Without an opening the last exit would cut the flight off.
        boolean sensible = to_s - from_s > 3 * MARGIN_S;
        return sensible ? new Span(from_s, to_s) : all;
    }

    private static double[] matchStarts(Debrief debrief) {
        return debrief.pairs().stream()
                .flatMap(pair -> pair.matched().windows().stream())
                .map(MatchedWindow::span)
                .mapToDouble(Span::start_s)
                .sorted()
                .toArray();
    }

    private static double[] starts(List<Span> spans) {
        return spans.stream().mapToDouble(Span::start_s).sorted().toArray();
    }

    private static double[] findings(Debrief debrief) {
        List<Double> at = new ArrayList<>();
        for (Finding finding : debrief.safety()) {
            if (finding.outcome() != Finding.Outcome.CLEAR) {
                finding.time_s().ifPresent(at::add);
            }
        }
        for (PairDebrief pair : debrief.pairs()) {
            pair.closureExceedances().stream()
                    .map(ClosureExceedance::span)
                    .forEach(s -> at.add(s.start_s()));
        }
        return at.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    public Recording recording() {
        return recording;
    }

    Debrief debrief() {
        return recording.debrief();
    }

    StripBook strips() {
        return strips;
    }

    Heights heights() {
        return heights;
    }

    /** Differs between two boards alive at once: part of every picture's key. */
    int number() {
        return number;
    }

    /** What scrub bar and, until zoomed, strips show. */
    Span shown(Desk desk) {
        return desk.showsWhole() ? span : focus;
    }

    double windowStart_s(Desk desk) {
        double start_s = desk.windowStart_s();
        return Double.isNaN(start_s) ? shown(desk).start_s() : start_s;
    }

    double windowEnd_s(Desk desk) {
        double end_s = desk.windowEnd_s();
        return Double.isNaN(end_s) ? shown(desk).end_s() : end_s;
    }

    Span span() {
        return span;
    }

    double[] matchStarts_s() {
        return matchStarts_s;
    }

    double[] episodeStarts_s() {
        return episodeStarts_s;
    }

    double[] findings_s() {
        return findings_s;
    }

    final List<Span> episodes() {
        return debrief().tailControl().stream()
                .flatMap(tail -> tail.episodes().stream())
                .map(Episode::span)
                .toList();
    }

    /** The chosen pair's number, or −1 without pairs. */
    int pair(Desk desk) {
        int count = debrief().pairs().size();
        return count == 0 ? -1 : Math.floorMod(desk.chosenPair(), count);
    }

    /** Whether the chosen flyer has a slot, so that a gap to it is known; not without a flyer. */
    boolean hasSlot(Desk desk) {
        int chosen = pair(desk);
        return chosen >= 0 && debrief().pairs().get(chosen).slot().isPresent();
    }
}
