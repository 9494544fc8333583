package pairdown.attempt;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import pairdown.track.UnusableInputException;
import pairdown.units.Dimension;
import pairdown.units.Quantity;

/**
 * The fields of one JSON object, read by name and type; remembers which were asked for, so that the
 * rest can be named.
 */
public final class JsonFields {
    private final JsonFile file;
    private final String pointer;
    private final JsonNode node;
    private final List<String> notes;
    private final Set<String> asked = new TreeSet<>();

    private JsonFields(JsonFile file, String pointer, JsonNode node, List<String> notes) {
        this.file = file;
        this.pointer = pointer;
        this.node = node;
        this.notes = notes;
    }

    /**
     * The fields of the file's top object.
     *
     * @param notes where fields read over are said
     * @throws UnusableInputException if the top is no object
     */
    public static JsonFields root(JsonFile file, List<String> notes) throws UnusableInputException {
        if (!file.root().isObject()) {
            throw file.complaint("not a JSON object", "", "begin with '{' and end with '}'");
        }
        return new JsonFields(file, "", file.root(), notes);
    }

    /** A complaint about one of these fields. */
    public UnusableInputException complaint(String field, String what, String mend) {
        return file.complaint(what, pointer + "/" + field, mend);
    }

    /** The names of all fields, in the file's order. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        for (Iterator<String> it = node.fieldNames(); it.hasNext(); ) {
            names.add(it.next());
        }
        return names;
    }

    private Optional<JsonNode> value(String field) {
        asked.add(field);
        return Optional.ofNullable(node.get(field)).filter(v -> !v.isNull());
    }

    public Optional<String> text(String field) throws UnusableInputException {
        Optional<JsonNode> v = value(field);
        if (v.isPresent() && !v.get().isValueNode()) {
            throw complaint(field, "\"" + field + "\" is no text", "write it in quotes");
        }
        return v.map(JsonNode::asText);
    }

    public Optional<JsonFields> object(String field) throws UnusableInputException {
        Optional<JsonNode> v = value(field);
        if (v.isPresent() && !v.get().isObject()) {
            throw complaint(field, "\"" + field + "\" is no object", "write it in braces: {…}");
        }
        return v.map(o -> new JsonFields(file, pointer + "/" + field, o, notes));
    }

    /** The objects of a list; empty if there is none. */
    public List<JsonFields> objects(String field) throws UnusableInputException {
        Optional<JsonNode> v = value(field);
        List<JsonFields> objects = new ArrayList<>();
        if (v.isEmpty()) {
            return objects;
        }
        if (!v.get().isArray()) {
            throw complaint(field, "\"" + field + "\" is no list", "write it in brackets: […]");
        }
        for (int i = 0; i < v.get().size(); i++) {
            String at = pointer + "/" + field + "/" + i;
            if (!v.get().get(i).isObject()) {
                throw file.complaint(
                        "an entry of \"" + field + "\" is no object",
                        at,
                        "write it in braces: {…}");
            }
            objects.add(new JsonFields(file, at, v.get().get(i), notes));
        }
        return objects;
    }

    /** A quantity typed as text with its unit, or a bare number in the dimension's base unit. */
    public OptionalDouble number(String field, Dimension dimension) throws UnusableInputException {
        return quantity(field, text -> Quantity.parse(text, dimension));
    }

    /** The same for a difference of two values, in which no zero point of a scale is. */
    public OptionalDouble difference(String field, Dimension dimension)
            throws UnusableInputException {
        return quantity(field, text -> Quantity.parseDifference(text, dimension));
    }

    private OptionalDouble quantity(String field, ToDoubleFunction<String> parse)
            throws UnusableInputException {
        Optional<JsonNode> v = value(field);
        if (v.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (v.get().isNumber()) {
            return OptionalDouble.of(v.get().asDouble());
        }
        if (!v.get().isTextual()) {
            throw complaint(field, "\"" + field + "\" is no quantity", "write it as \"30 m\"");
        }
        try {
            return OptionalDouble.of(parse.applyAsDouble(v.get().asText()));
        } catch (IllegalArgumentException e) {
            throw complaint(
                    field,
                    "\"" + field + "\": " + e.getMessage(),
                    "write the number and one of these units");
        }
    }

    public OptionalDouble positive(String field, Dimension dimension)
            throws UnusableInputException {
        OptionalDouble v = number(field, dimension);
        if (v.isPresent() && !(v.getAsDouble() > 0)) {
            throw complaint(
                    field, "\"" + field + "\" must be above zero", "give a positive quantity");
        }
        return v;
    }

    public OptionalDouble notNegative(String field, Dimension dimension)
            throws UnusableInputException {
        OptionalDouble v = number(field, dimension);
        if (v.isPresent() && !(v.getAsDouble() >= 0)) {
            throw complaint(field, "\"" + field + "\" can't be negative", "give zero or more");
        }
        return v;
    }

    /** A bare positive number in the unit its name says. */
    public OptionalDouble positive(String field) throws UnusableInputException {
        Optional<JsonNode> v = value(field);
        if (v.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!v.get().isNumber() || !(v.get().asDouble() > 0)) {
            throw complaint(
                    field,
                    "\"" + field + "\" must be a number above zero",
                    "its unit is in its name");
        }
        return OptionalDouble.of(v.get().asDouble());
    }

    /** All numbers of this object and of the objects in it, by their names with dots between. */
    void collectNumbers(String group, List<ChosenSettings.Chosen> into)
            throws UnusableInputException {
        for (String name : names()) {
            Optional<JsonFields> inner =
                    value(name).filter(JsonNode::isObject).isPresent()
                            ? object(name)
                            : Optional.empty();
            if (inner.isPresent()) {
                inner.get().collectNumbers(group + name + ".", into);
            } else if (value(name).filter(JsonNode::isNumber).isPresent()) {
                into.add(
                        new ChosenSettings.Chosen(
                                group + name,
                                node.get(name).asDouble(),
                                file.where(pointer + "/" + name)));
            } else {
                throw complaint(
                        name, "\"" + name + "\" must be a number", "its unit is in its name");
            }
        }
    }

    /** Notes each field that was never asked for. */
    public void sayUnknown() {
        for (String name : names()) {
            if (!asked.contains(name)) {
                notes.add(
                        file.place(pointer + "/" + name)
                                + ": field \""
                                + name
                                + "\" is not known and was read over (known here: "
                                + String.join(", ", asked)
                                + ")");
            }
        }
    }
}
