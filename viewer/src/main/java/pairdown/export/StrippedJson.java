package pairdown.export;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairdown.debrief.Debrief;
import pairdown.debrief.DebriefJson;

/**
 * A debrief's results without place, date, names or anything typed by a person. Only what is known
 * to be harmless is copied: numbers and flags, words of a fixed list of fields; names become
 * initials, instants become seconds. A field nobody thought of is left out.
 */
final class StrippedJson {
    private static final JsonMapper MAPPER = new JsonMapper();

    /** Parts of the file that are copied; all else is left out. */
    private static final List<String> PARTS =
            List.of("phases", "events", "pairs", "tailControl", "safety");

    private static final Set<String> INSTANTS = Set.of("time", "start", "end", "breakOff");
    private static final Set<String> WHO =
            Set.of("lead", "flyer", "participant", "other", "participants");

    /** Fields whose text comes from a fixed list of words, never from a person. */
    private static final Set<String> WORDS =
            Set.of(
                    "kind",
                    "phase",
                    "axes",
                    "endedBy",
                    "verdict",
                    "grade",
                    "evidence",
                    "signs",
                    "channel",
                    "rule",
                    "finding",
                    "unit");

    /** Heights say where a field lies; so only the difference of the two is told. */
    private static final String HEIGHT_RULE = "breakOffHeight";

    private final Debrief debrief;
    private final Initials initials;
    private final double zero_s;

    StrippedJson(Debrief debrief, Initials initials, double zero_s) {
        this.debrief = debrief;
        this.initials = initials;
        this.zero_s = zero_s;
    }

    /** As indented text. */
    String text() {
        return root().toPrettyString() + "\n";
    }

    private ObjectNode root() {
        ObjectNode out = MAPPER.createObjectNode();
        out.put("format", "pairdown-stripped").put("version", 1);
        debrief.attempt().gate_m().ifPresent(g -> out.put("gate_m", g));
        ArrayNode participants = out.putArray("participants");
        debrief.attempt()
                .participants()
                .forEach(
                        p ->
                                participants
                                        .addObject()
                                        .put("initials", initials.of(p.id()))
                                        .put("role", p.role().key()));
        ObjectNode all = DebriefJson.of(debrief);
        for (String part : PARTS) {
            if (all.has(part)) {
                out.set(part, stripped(part, all.get(part)));
            }
        }
        out.path("safety").forEach(StrippedJson::withoutHeights);
        return out;
    }

    /** A part without what might tell something; a missing node where nothing is left. */
    private JsonNode stripped(String field, JsonNode node) {
        if (node.isObject()) {
            return object(node);
        }
        if (node.isArray()) {
            ArrayNode out = MAPPER.createArrayNode();
            node.forEach(item -> addTo(out, stripped(field, item)));
            return out;
        }
        return node.isTextual() ? word(field, node.asText()) : node;
    }

    private ObjectNode object(JsonNode node) {
        ObjectNode out = MAPPER.createObjectNode();
        for (Map.Entry<String, JsonNode> entry : node.properties()) {
            String field = entry.getKey();
            if (INSTANTS.contains(field)) {
                out.put(field + "_s", seconds(entry.getValue().asText()));
            } else {
                JsonNode kept = stripped(field, entry.getValue());
                if (!kept.isMissingNode()) {
                    out.set(field, kept);
                }
            }
        }
        return out;
    }

    private static void addTo(ArrayNode out, JsonNode item) {
        if (!item.isMissingNode()) {
            out.add(item);
        }
    }

    private JsonNode word(String field, String text) {
        if (WHO.contains(field)) {
            return MAPPER.getNodeFactory().textNode(initials.of(text));
        }
        return WORDS.contains(field)
                ? MAPPER.getNodeFactory().textNode(text)
                : MAPPER.missingNode();
    }

    private double seconds(String instant) {
        double t_s = debrief.axis().seconds(Instant.parse(instant)) - zero_s;
        return Math.rint(t_s * 1000) / 1000;
    }

    private static void withoutHeights(JsonNode finding) {
        if (finding instanceof ObjectNode o && o.path("rule").asText().equals(HEIGHT_RULE)) {
            JsonNode value = o.remove("value");
            JsonNode limit = o.remove("limit");
            if (value != null && limit != null) {
                o.put("above_m", Math.rint((value.asDouble() - limit.asDouble()) * 10) / 10);
            }
        }
    }
}
