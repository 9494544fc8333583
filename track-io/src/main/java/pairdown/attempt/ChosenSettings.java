package pairdown.attempt;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import pairdown.track.UnusableInputException;

/**
 * Numbers that a team wants otherwise than usual, from the {@code settings} of {@code attempt.json}
 * or {@code season.json}: {@code {"smoother": {"flyerJerk_m2ps5": 8}}}. A name is that of a field
 * of a settings record, those of its group before it; its unit is in its name. What the fields are
 * is known only to the package that uses them, so names are checked when a record is made from
 * them.
 *
 * @param values in the order of the files
 */
public record ChosenSettings(List<Chosen> values) {
    /** As usual. */
    public static final ChosenSettings NONE = new ChosenSettings(List.of());

    /** A number this many times the usual one, or this part of it, is a slip of the unit. */
    private static final double FURTHEST = 100;

    private static final JsonMapper MAPPER = new JsonMapper();

    /**
     * One number.
     *
     * @param name groups and field, with dots between
     * @param where file and line
     */
    public record Chosen(String name, double value, String where) {
        UnusableInputException complaint(String what, String mend) {
            return new UnusableInputException(what, where, mend);
        }

        private JsonPointer pointer() {
            return JsonPointer.compile("/" + name.replace('.', '/'));
        }

        /** The same as the file's reader would say it: with the value that is usual. */
        private String toText(double usual) {
            return String.format(
                    Locale.ROOT, "%s is set to %s, usually %s", name, plain(value), plain(usual));
        }

        private static String plain(double number) {
            return number == Math.rint(number) && Math.abs(number) < 1e9
                    ? Long.toString((long) number)
                    : Double.toString(number);
        }
    }

    public ChosenSettings {
        values = List.copyOf(values);
    }

    /**
     * The numbers of a {@code settings} object.
     *
     * @throws UnusableInputException if one is no number
     */
    static ChosenSettings read(JsonFields settings) throws UnusableInputException {
        List<Chosen> values = new ArrayList<>();
        settings.collectNumbers("", values);
        return new ChosenSettings(values);
    }

    /** These, and of the others those that are not set here. */
    ChosenSettings orElse(ChosenSettings others) {
        List<Chosen> all = new ArrayList<>(values);
        others.values.stream()
                .filter(o -> values.stream().noneMatch(v -> v.name.equals(o.name)))
                .forEach(all::add);
        return new ChosenSettings(all);
    }

    /** Those with certain names. */
    public ChosenSettings only(Predicate<String> names) {
        return new ChosenSettings(values.stream().filter(v -> names.test(v.name)).toList());
    }

    /**
     * A record of settings, with records of settings in it as groups, in which these numbers stand
     * instead of the usual ones.
     *
     * @param isFixed names that nobody may set
     * @throws UnusableInputException if there is no such setting, it is fixed, or its value makes
     *     no sense, naming file and line
     */
    public <R extends Record> R over(Class<R> type, R usual, Predicate<String> isFixed)
            throws UnusableInputException {
        if (values.isEmpty()) {
            return usual;
        }
        ObjectNode tree = MAPPER.valueToTree(usual);
        for (Chosen chosen : values) {
            put(tree, chosen, isFixed);
        }
        try {
            return MAPPER.treeToValue(tree, type);
        } catch (JsonProcessingException e) {
            throw values.get(values.size() - 1)
                    .complaint(
                            "settings that don't go together: " + rootMessage(e),
                            "mend it there or in the settings above it");
        }
    }

    private static void put(ObjectNode tree, Chosen chosen, Predicate<String> isFixed)
            throws UnusableInputException {
        JsonNode usual = tree.at(chosen.pointer());
        JsonNode group = tree.at(chosen.pointer().head());
        if (!usual.isNumber() || !(group instanceof ObjectNode fields)) {
            throw chosen.complaint(
                    "no setting \"" + chosen.name + "\"", "use one of: " + known(tree, chosen));
        }
        if (isFixed.test(chosen.name)) {
            throw chosen.complaint(
                    "\"" + chosen.name + "\" is fixed by what results mean", "leave it out");
        }
        String field = chosen.name.substring(chosen.name.lastIndexOf('.') + 1);
        double ratio = chosen.value / usual.asDouble();
        if (!(ratio >= 1 / FURTHEST && ratio <= FURTHEST)) {
            throw chosen.complaint(
                    chosen.toText(usual.asDouble()),
                    "give a number within a hundredth and a hundred times of what is usual");
        }
        if (usual.isIntegralNumber()) {
            if (chosen.value != Math.rint(chosen.value)) {
                throw chosen.complaint("\"" + field + "\" is no count", "give a whole number");
            }
            fields.put(field, (long) chosen.value);
        } else {
            fields.put(field, chosen.value);
        }
    }

    /** The names in the group that was meant, or of the groups. */
    private static String known(ObjectNode tree, Chosen chosen) {
        JsonPointer at = chosen.pointer().head();
        while (!tree.at(at).isObject()) {
            at = at.head();
        }
        List<String> names = new ArrayList<>();
        for (Iterator<String> it = tree.at(at).fieldNames(); it.hasNext(); ) {
            names.add(it.next());
        }
        return String.join(", ", names);
    }

    private static String rootMessage(JsonProcessingException e) {
        Throwable t = e;
        while (t.getCause() != null) {
            t = t.getCause();
        }
        return String.valueOf(t.getMessage());
    }

    /** What is otherwise than usual, a sentence for each number. */
    public List<String> notes(Record usual) {
        ObjectNode tree = MAPPER.valueToTree(usual);
        return values.stream().map(v -> v.toText(tree.at(v.pointer()).asDouble())).toList();
    }

    /** A record of settings as a tree, as results show it. */
    public static ObjectNode tree(Record settings) {
        return MAPPER.valueToTree(settings);
    }
}
