package pairdown.attempt;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pairdown.track.UnusableInputException;
import pairdown.units.Dimension;

/**
 * Reads {@code attempt.json}. A value that makes no sense is a complaint with its line; a field
 * that is not known is read over and said, since a misspelt limit would otherwise be missing
 * without a word.
 */
final class AttemptFile {
    static final String NAME = "attempt.json";

    private final Path folder;
    private final JsonFile file;
    private final List<String> notes = new ArrayList<>();

    private AttemptFile(Path folder, JsonFile file) {
        this.folder = folder;
        this.file = file;
    }

    /** Reads the attempt described by {@code FOLDER/attempt.json}. */
    static Attempt read(Path folder) throws UnusableInputException {
        return of(folder, JsonFile.read(folder.resolve(NAME)));
    }

    /** The attempt that a manifest in {@code folder} describes. */
    static Attempt of(Path folder, JsonFile manifest) throws UnusableInputException {
        return new AttemptFile(folder, manifest).attempt();
    }

    private Attempt attempt() throws UnusableInputException {
        JsonFields root = JsonFields.root(file, notes);
        List<Participant> participants = participants(root);
        String fallback =
                Optional.ofNullable(folder.toAbsolutePath().normalize().getFileName())
                        .map(Path::toString)
                        .orElse("attempt");
        Optional<JsonFields> matched = root.object("matched");
        MatchedSettings settings =
                matched.isPresent() ? matched(matched.get()) : MatchedSettings.DEFAULT;
        Optional<String> id = root.text("attempt");
        Optional<String> title = root.text("title");
        Optional<Target> target = target(root);
        OptionalDouble gate_m = root.positive("gate", Dimension.LENGTH);
        Limits limits = limits(root);
        AirSettings air = air(root);
        ChosenSettings chosen = SeasonFile.settings(root);
        root.sayUnknown();
        return new Attempt(
                id.orElse(fallback),
                title,
                folder,
                participants,
                target,
                settings,
                gate_m,
                limits,
                air,
                chosen.orElse(SeasonFile.settingsAbove(folder)),
                notes);
    }

    private List<Participant> participants(JsonFields root) throws UnusableInputException {
        List<JsonFields> entries = root.objects("participants");
        if (entries.isEmpty()) {
            throw root.complaint(
                    "participants",
                    "no participants",
                    "list who took part, each with \"id\", \"role\" and \"logs\"");
        }
        List<Participant> participants = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (JsonFields entry : entries) {
            Participant p = participant(entry);
            if (!ids.add(p.id())) {
                throw entry.complaint(
                        "id",
                        "two participants are called '" + p.id() + "'",
                        "give each its own id");
            }
            if (p.role() == Role.LEAD
                    && participants.stream().anyMatch(q -> q.role() == Role.LEAD)) {
                throw entry.complaint(
                        "role",
                        "a second lead",
                        "an attempt has one lead: give the other another role");
            }
            participants.add(p);
        }
        checkSlots(participants, entries);
        return participants;
    }

    private void checkSlots(List<Participant> participants, List<JsonFields> entries)
            throws UnusableInputException {
        Set<String> known =
                participants.stream()
                        .filter(p -> p.role() == Role.LEAD)
                        .flatMap(p -> p.slots().keySet().stream())
                        .collect(Collectors.toSet());
        for (int i = 0; i < participants.size(); i++) {
            Optional<String> slot = participants.get(i).slot();
            if (slot.isPresent() && !known.contains(slot.get())) {
                throw entries.get(i)
                        .complaint(
                                "slot",
                                "the lead has no slot '" + slot.get() + "'",
                                known.isEmpty()
                                        ? "describe the lead's \"slots\""
                                        : "use one of " + String.join(", ", known));
            }
        }
    }

    private Participant participant(JsonFields entry) throws UnusableInputException {
        String id = entry.text("id").orElse("");
        if (!id.matches("[\\p{L}\\p{N}._ -]{1,64}") || id.startsWith(".")) {
            throw entry.complaint(
                    "id",
                    id.isEmpty() ? "a participant without an id" : "'" + id + "' can't be an id",
                    "use letters, digits, '-', '_' or '.', not starting with '.'");
        }
        List<LogRef> logs = new ArrayList<>();
        for (JsonFields log : entry.objects("logs")) {
            logs.add(log(log));
        }
        Participant participant =
                new Participant(
                        id,
                        role(entry),
                        logs,
                        slots(entry),
                        entry.text("slot"),
                        leverArm(entry, "antenna"),
                        entry.positive("mass", Dimension.MASS));
        entry.sayUnknown();
        return participant;
    }

    private static Role role(JsonFields entry) throws UnusableInputException {
        String role = entry.text("role").orElse("");
        for (Role r : Role.values()) {
            if (r.key().equals(role)) {
                return r;
            }
        }
        throw entry.complaint(
                "role",
                role.isEmpty() ? "a participant without a role" : "unknown role '" + role + "'",
                "use one of "
                        + Arrays.stream(Role.values())
                                .map(Role::key)
                                .collect(Collectors.joining(", ")));
    }

    private LogRef log(JsonFields log) throws UnusableInputException {
        String name = log.text("file").orElse("");
        if (name.isEmpty()) {
            throw log.complaint("file", "a log without a file", "name it: {\"file\": \"…\"}");
        }
        Optional<String> columns = log.text("columns");
        Path columnsPath = columns.isPresent() ? inside(log, "columns", columns.get()) : folder;
        Optional<JsonFields> clock = log.object("clock");
        LogRef ref =
                new LogRef(
                        name,
                        inside(log, "file", name),
                        columns.isPresent() ? Optional.of(columnsPath) : Optional.empty(),
                        clock.isPresent() ? mark(clock.get()) : ClockMark.NONE);
        log.sayUnknown();
        return ref;
    }

    /** A file of the attempt's folder; a manifest has no business elsewhere. */
    private Path inside(JsonFields at, String field, String name) throws UnusableInputException {
        try {
            Path path = folder.resolve(name).normalize();
            if (!Path.of(name).isAbsolute() && path.startsWith(folder.normalize())) {
                return path;
            }
        } catch (InvalidPathException e) {
            throw at.complaint(field, "'" + name + "' names no file", "name one of the folder");
        }
        throw at.complaint(
                field,
                "'" + name + "' lies outside the attempt's folder",
                "copy the file into the folder and name it there");
    }

    private static ClockMark mark(JsonFields clock) throws UnusableInputException {
        Optional<String> zero = clock.text("zero");
        ClockMark mark =
                new ClockMark(
                        clock.number("offset", Dimension.TIME),
                        zero.isPresent()
                                ? Optional.of(instant(clock, zero.get()))
                                : Optional.empty());
        clock.sayUnknown();
        return mark;
    }

    private static Instant instant(JsonFields at, String text) throws UnusableInputException {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException e) {
            throw at.complaint(
                    "zero", "'" + text + "' is no instant", "write it as 2031-05-14T15:02:11.350Z");
        }
    }

    private static Map<String, LeverArm> slots(JsonFields entry) throws UnusableInputException {
        Map<String, LeverArm> slots = new TreeMap<>();
        Optional<JsonFields> named = entry.object("slots");
        if (named.isPresent()) {
            for (String name : named.get().names()) {
                Optional<LeverArm> arm = leverArm(named.get(), name);
                arm.ifPresent(a -> slots.put(name, a));
            }
        }
        return slots;
    }

    private static Optional<LeverArm> leverArm(JsonFields at, String name)
            throws UnusableInputException {
        Optional<JsonFields> arm = at.object(name);
        if (arm.isEmpty()) {
            return Optional.empty();
        }
        JsonFields a = arm.get();
        LeverArm read =
                new LeverArm(
                        a.number("ahead_m", Dimension.LENGTH).orElse(0),
                        a.number("right_m", Dimension.LENGTH).orElse(0),
                        a.number("above_m", Dimension.LENGTH).orElse(0));
        a.sayUnknown();
        return Optional.of(read);
    }

    private static Optional<Target> target(JsonFields root) throws UnusableInputException {
        Optional<JsonFields> at = root.object("target");
        if (at.isEmpty()) {
            return Optional.empty();
        }
        JsonFields t = at.get();
        OptionalDouble airspeed = t.positive("airspeed", Dimension.SPEED);
        OptionalDouble sink = t.positive("sink", Dimension.SPEED);
        if (airspeed.isEmpty() || sink.isEmpty()) {
            throw root.complaint(
                    "target",
                    "a target without airspeed or sink",
                    "give both, as \"85 mph\" and \"3500 ft/min\"");
        }
        Target target =
                new Target(
                        airspeed.getAsDouble(),
                        kind(t),
                        sink.getAsDouble(),
                        t.positive("airspeedTolerance", Dimension.SPEED).orElse(1.5),
                        t.positive("sinkTolerance", Dimension.SPEED).orElse(1.0),
                        t.positive("hold", Dimension.TIME).orElse(10));
        t.sayUnknown();
        return Optional.of(target);
    }

    private static AirspeedKind kind(JsonFields target) throws UnusableInputException {
        String kind = target.text("airspeedKind").orElse(AirspeedKind.CALIBRATED.key());
        for (AirspeedKind k : AirspeedKind.values()) {
            if (k.key().equals(kind)) {
                return k;
            }
        }
        throw target.complaint(
                "airspeedKind",
                "unknown kind of airspeed '" + kind + "'",
                "use calibrated or true");
    }

    private static MatchedSettings matched(JsonFields m) throws UnusableInputException {
        MatchedSettings d = MatchedSettings.DEFAULT;
        MatchedSettings read =
                new MatchedSettings(
                        m.positive("horizontal", Dimension.SPEED).orElse(d.horizontal_mps()),
                        m.positive("vertical", Dimension.SPEED).orElse(d.vertical_mps()),
                        m.positive("dwell", Dimension.TIME).orElse(d.dwell_s()));
        m.sayUnknown();
        return read;
    }

    private static Limits limits(JsonFields root) throws UnusableInputException {
        Optional<JsonFields> at = root.object("limits");
        if (at.isEmpty()) {
            return Limits.NONE;
        }
        JsonFields l = at.get();
        Optional<JsonFields> closure = l.object("closure");
        Limits limits =
                new Limits(
                        breakOff(l),
                        l.positive("maximumAirspeed", Dimension.SPEED),
                        closure.isPresent() ? closure(closure.get()) : ClosureSettings.DEFAULT,
                        l.positive("minimumSeparation", Dimension.LENGTH));
        l.sayUnknown();
        return limits;
    }

    private static Optional<BreakOff> breakOff(JsonFields l) throws UnusableInputException {
        OptionalDouble height_m = l.number("breakOffHeight", Dimension.LENGTH);
        String datum = l.text("breakOffDatum").orElse("msl");
        OptionalDouble field_m = l.number("field", Dimension.LENGTH);
        BreakOff.Datum read;
        switch (datum) {
            case "msl" -> read = BreakOff.Datum.MSL;
            case "agl" -> read = BreakOff.Datum.AGL;
            case "ellipsoid" -> read = BreakOff.Datum.ELLIPSOID;
            default ->
                    throw l.complaint(
                            "breakOffDatum",
                            "unknown datum '" + datum + "'",
                            "use msl, agl or ellipsoid");
        }
        if (height_m.isEmpty()) {
            return Optional.empty();
        }
        if (read == BreakOff.Datum.AGL && field_m.isEmpty()) {
            throw l.complaint(
                    "breakOffDatum",
                    "a height above ground without the field's elevation",
                    "add \"field\": \"1200 ft\"");
        }
        return Optional.of(new BreakOff(height_m.getAsDouble(), read, field_m.orElse(0)));
    }

    private static ClosureSettings closure(JsonFields c) throws UnusableInputException {
        ClosureSettings d = ClosureSettings.DEFAULT;
        ClosureSettings read =
                new ClosureSettings(
                        c.positive("braking_mps2").orElse(d.braking_mps2()),
                        c.notNegative("reaction", Dimension.TIME).orElse(d.reaction_s()),
                        c.positive("contact", Dimension.SPEED).orElse(d.contact_mps()),
                        c.notNegative("margin", Dimension.LENGTH).orElse(d.margin_m()));
        c.sayUnknown();
        return read;
    }

    private static AirSettings air(JsonFields root) throws UnusableInputException {
        Optional<JsonFields> at = root.object("air");
        if (at.isEmpty()) {
            return AirSettings.NONE;
        }
        JsonFields a = at.get();
        List<AirSettings.WindAloft> winds = new ArrayList<>();
        for (JsonFields w : a.objects("wind")) {
            winds.add(wind(w));
        }
        winds.sort((x, y) -> Double.compare(x.height_m(), y.height_m()));
        AirSettings read =
                new AirSettings(
                        a.positive("qnh", Dimension.PRESSURE),
                        a.difference("temperatureDeviation", Dimension.TEMPERATURE),
                        winds);
        a.sayUnknown();
        return read;
    }

    private static AirSettings.WindAloft wind(JsonFields w) throws UnusableInputException {
        OptionalDouble height_m = w.number("height", Dimension.LENGTH);
        OptionalDouble from_deg = w.number("from_deg", Dimension.ANGLE);
        OptionalDouble speed_mps = w.notNegative("speed", Dimension.SPEED);
        if (height_m.isEmpty() || from_deg.isEmpty() || speed_mps.isEmpty()) {
            throw w.complaint(
                    "height",
                    "a wind without height, from_deg or speed",
                    "give all three: {\"height\": \"1000 m\", \"from_deg\": 270, \"speed\": \"12 kt\"}");
        }
        w.sayUnknown();
        return new AirSettings.WindAloft(
                height_m.getAsDouble(), from_deg.getAsDouble(), speed_mps.getAsDouble());
    }
}
