package pairdown.app;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import pairdown.geodesy.Geodetic;
import pairdown.time.Span;
import pairdown.track.Flight;
import pairdown.track.Skipped;
import pairdown.track.Track;

/** Inspections as {@code inspect --json} prints them. */
final class InspectionJson {
    private static final DateTimeFormatter MILLIS =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
                    .withZone(ZoneOffset.UTC);
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(JsonWriteFeature.ESCAPE_NON_ASCII).build();
    private static final int DEGREE_DECIMALS = 9;
    private static final int METRE_DECIMALS = 3;

    private final ArrayNode files = JsonNodeFactory.instance.arrayNode();

    void add(String file, Inspection log) {
        ObjectNode node = files.addObject();
        node.put("file", file);
        node.put("usable", true);
        node.put("format", log.report().format());
        node.put("fixes", log.fixes());
        if (log.fixes() == 0) {
            node.put("rows", log.rows());
        }
        log.start().ifPresent(t -> node.put("start", iso(t)));
        log.end().ifPresent(t -> node.put("end", iso(t)));
        log.rate_Hz().ifPresent(rate -> node.put("rate_Hz", rate));
        node.put("absoluteTime", log.track().hasAbsoluteTime());
        if (log.firstFix().isPresent()) {
            node.put("datum", log.datum());
        }
        log.geoidSeparation_m().ifPresent(n -> node.put("geoidSeparation_m", n));
        ArrayNode channels = node.putArray("channels");
        log.channels().forEach(channels::add);
        log.firstFix().ifPresent(fix -> firstFix(node.putObject("firstFix"), fix, log));
        flights(node.putArray("flights"), log);
        gaps(node.putArray("gaps"), log);
        skipped(node.putObject("skipped"), log);
        ArrayNode warnings = node.putArray("warnings");
        log.report().warnings().forEach(warnings::add);
    }

    void addUnusable(String file, String reason) {
        ObjectNode node = files.addObject();
        node.put("file", file);
        node.put("usable", false);
        node.put("reason", reason);
    }

    /** In ASCII alone, since a terminal may have any encoding. */
    String text() {
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(files);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException("memory can't fail", e);
        }
    }

    private static String iso(Instant t) {
        return MILLIS.format(t.plusNanos(500_000));
    }

    private static void firstFix(ObjectNode node, Geodetic fix, Inspection log) {
        node.put("latitude_deg", Inspection.rounded(fix.latitude_deg(), DEGREE_DECIMALS));
        node.put("longitude_deg", Inspection.rounded(fix.longitude_deg(), DEGREE_DECIMALS));
        if (log.firstFixHasHeight()) {
            node.put("height_m", Inspection.rounded(fix.height_m(), METRE_DECIMALS));
        }
    }

    private static void flights(ArrayNode flights, Inspection log) {
        Track track = log.track();
        for (Flight flight : log.flights()) {
            ObjectNode node = flights.addObject();
            time(node, "start", track, track.time_s(flight.fromRow()));
            time(node, "end", track, track.time_s(flight.toRow() - 1));
            node.put("fixes", track.fixes(flight.fromRow(), flight.toRow()));
        }
    }

    private static void gaps(ArrayNode gaps, Inspection log) {
        for (Span gap : log.gaps()) {
            ObjectNode node = gaps.addObject();
            time(node, "start", log.track(), gap.start_s());
            time(node, "end", log.track(), gap.end_s());
        }
    }

    /** An instant, or seconds from the log's own zero under a name that says so. */
    private static void time(ObjectNode node, String name, Track track, double t_s) {
        Inspection.instant(track, t_s)
                .ifPresentOrElse(
                        t -> node.put(name, iso(t)),
                        () -> node.put(name + "_s", Inspection.rounded(t_s, METRE_DECIMALS)));
    }

    private static void skipped(ObjectNode node, Inspection log) {
        node.put("count", log.report().skippedCount());
        ArrayNode examples = node.putArray("examples");
        for (Skipped skipped : log.report().skipped()) {
            ObjectNode example = examples.addObject();
            example.put("line", skipped.line());
            example.put("reason", skipped.reason());
        }
    }
}
