package pairdown.demo;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pairdown.attempt.AirSettings;
import pairdown.attempt.Attempt;
import pairdown.attempt.BreakOff;
import pairdown.attempt.LeverArm;
import pairdown.attempt.Limits;
import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.attempt.Target;
import pairdown.format.source.Decimal;
import pairdown.units.Unit;

/** Writes a planned attempt as a team types it: quantities with the units of the trade. */
final class AttemptJson {
    private static final JsonMapper JSON = new JsonMapper();

    private AttemptJson() {}

    /**
     * The text of an {@code attempt.json}.
     *
     * @param mapped logs that a column map goes with
     */
    static String of(Attempt attempt, Set<String> mapped) {
        ObjectNode root = JSON.createObjectNode();
        root.put("attempt", attempt.id());
        attempt.title().ifPresent(t -> root.put("title", t));
        ArrayNode participants = root.putArray("participants");
        attempt.participants().forEach(p -> participant(participants.addObject(), p, mapped));
        attempt.target().ifPresent(t -> target(root.putObject("target"), t));
        attempt.gate_m().ifPresent(g -> root.put("gate", typed(g, Unit.METRE)));
        limits(root, attempt.limits());
        air(root, attempt.air());
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String typed(double base, Unit unit) {
        return Decimal.of(unit.fromBase(base), 1) + " " + unit.symbol();
    }

    private static void air(ObjectNode root, AirSettings air) {
        ObjectNode o = JSON.createObjectNode();
        air.qnh_hPa().ifPresent(q -> o.put("qnh", typed(q, Unit.HECTOPASCAL)));
        air.temperatureDeviation_C()
                .ifPresent(t -> o.put("temperatureDeviation", typed(t, Unit.CELSIUS)));
        if (!o.isEmpty()) {
            root.set("air", o);
        }
    }

    private static void participant(ObjectNode o, Participant p, Set<String> mapped) {
        o.put("id", p.id());
        o.put("role", p.role().key());
        p.slot().ifPresent(s -> o.put("slot", s));
        p.mass_kg().ifPresent(m -> o.put("mass", typed(m, Unit.KILOGRAM)));
        ArrayNode logs = o.putArray("logs");
        p.logs().forEach(l -> log(logs.addObject(), l, mapped));
        if (!p.slots().isEmpty()) {
            ObjectNode slots = o.putObject("slots");
            for (Map.Entry<String, LeverArm> slot : new TreeMap<>(p.slots()).entrySet()) {
                arm(slots.putObject(slot.getKey()), slot.getValue());
            }
        }
        p.antenna().ifPresent(a -> arm(o.putObject("antenna"), a));
    }

    private static void log(ObjectNode o, LogRef log, Set<String> mapped) {
        o.put("file", log.file());
        if (mapped.contains(log.file())) {
            o.put("columns", mapFile(log.file()));
        }
    }

    /** The column map's file for a log's. */
    static String mapFile(String file) {
        return file.replaceFirst("\\.[^.]+$", "") + ".columns.json";
    }

    private static void arm(ObjectNode o, LeverArm arm) {
        o.put("ahead_m", arm.ahead_m());
        o.put("right_m", arm.right_m());
        o.put("above_m", arm.above_m());
    }

    private static void target(ObjectNode o, Target t) {
        o.put("airspeed", typed(t.airspeed_mps(), Unit.MILE_PER_HOUR));
        o.put("airspeedKind", t.kind().key());
        o.put("sink", typed(t.sink_mps(), Unit.FOOT_PER_MINUTE));
        o.put("airspeedTolerance", typed(t.airspeedTolerance_mps(), Unit.METRE_PER_SECOND));
        o.put("sinkTolerance", typed(t.sinkTolerance_mps(), Unit.METRE_PER_SECOND));
        o.put("hold", typed(t.hold_s(), Unit.SECOND));
    }

    private static void limits(ObjectNode root, Limits limits) {
        ObjectNode o = JSON.createObjectNode();
        limits.breakOff().ifPresent(b -> breakOff(o, b));
        limits.maximumAirspeed_mps()
                .ifPresent(v -> o.put("maximumAirspeed", typed(v, Unit.MILE_PER_HOUR)));
        limits.minimumSeparation_m()
                .ifPresent(s -> o.put("minimumSeparation", typed(s, Unit.METRE)));
        if (!o.isEmpty()) {
            root.set("limits", o);
        }
    }

    private static void breakOff(ObjectNode o, BreakOff b) {
        o.put("breakOffHeight", typed(b.height_m(), Unit.FOOT));
        o.put("breakOffDatum", b.datum().name().toLowerCase(Locale.ROOT));
        if (b.datum() == BreakOff.Datum.AGL) {
            o.put("field", typed(b.field_m(), Unit.FOOT));
        }
    }
}
