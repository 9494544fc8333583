package pairdown.settings;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import pairdown.attempt.WholeFile;
import pairdown.units.Dimension;
import pairdown.units.Unit;
import pairdown.words.Units;

/**
 * Where the {@link ViewerSettings} lie. A damaged file never stops anything: what can't be read is
 * taken from the defaults, and the file is kept aside so that nothing is lost.
 */
public final class SettingsFile {
    /** Names the folder instead of the person's configuration folder. */
    public static final String FOLDER_PROPERTY = "pairdown.settings";

    private static final String NAME = "viewer.json";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final Path file;

    private SettingsFile(Path folder) {
        this.file = folder.resolve(NAME);
    }

    public static SettingsFile in(Path folder) {
        return new SettingsFile(folder);
    }

    /** In the folder named by {@link #FOLDER_PROPERTY}, else where the system keeps such files. */
    public static SettingsFile ofPerson() {
        String named = System.getProperty(FOLDER_PROPERTY, "");
        return new SettingsFile(named.isEmpty() ? usualFolder() : Path.of(named));
    }

    private static Path usualFolder() {
        String home = System.getProperty("user.home", ".");
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return folder(System.getenv("APPDATA"), Path.of(home, "AppData", "Roaming"));
        }
        if (system.startsWith("mac")) {
            return Path.of(home, "Library", "Application Support", "pairdown");
        }
        return folder(System.getenv("XDG_CONFIG_HOME"), Path.of(home, ".config"));
    }

    private static Path folder(@Nullable String named, Path otherwise) {
        return (named == null || named.isEmpty() ? otherwise : Path.of(named)).resolve("pairdown");
    }

    public Path path() {
        return file;
    }

    /**
     * What was read.
     *
     * @param problem what could not be, in words; empty if all was well
     */
    public record Read(ViewerSettings settings, Optional<String> problem) {}

    /** The settings; the defaults where there are none yet or they are damaged. */
    public Read read() {
        if (!Files.exists(file)) {
            return new Read(ViewerSettings.DEFAULT, Optional.empty());
        }
        try {
            JsonNode root = MAPPER.readTree(file.toFile());
            return new Read(settings(root), Optional.empty());
        } catch (JacksonException e) {
            return new Read(ViewerSettings.DEFAULT, Optional.of(keptAside(e.getOriginalMessage())));
        } catch (IOException e) {
            return new Read(
                    ViewerSettings.DEFAULT,
                    Optional.of(file + ": can't be read (" + e.getMessage() + ")"));
        }
    }

    private String keptAside(String why) {
        Path aside = file.resolveSibling(NAME + ".damaged");
        try {
            Files.move(file, aside, StandardCopyOption.REPLACE_EXISTING);
            return file + ": damaged (" + why + "); kept as " + aside.getFileName();
        } catch (IOException e) {
            return file + ": damaged (" + why + ")";
        }
    }

    /** Field by field: one that makes no sense is the default and takes no other with it. */
    private static ViewerSettings settings(JsonNode root) {
        ViewerSettings d = ViewerSettings.DEFAULT;
        return new ViewerSettings(
                root.path("dark").asBoolean(d.isDark()),
                units(root.path("units"), d.units()),
                number(root.path("zoom"), d.zoom()),
                root.path("bigFigures").asBoolean(d.hasBigFigures()),
                named(PanelKind.values(), PanelKind::key, root.path("panel").asText())
                        .orElse(d.panel()),
                strips(root.path("strips"), d),
                number(root.path("stripsShare"), d.stripsShare()),
                texts(root.path("recent")),
                window(root.path("window"), d.window()));
    }

    private static WindowSize window(JsonNode node, WindowSize otherwise) {
        int width = node.path("width").asInt();
        int height = node.path("height").asInt();
        return WindowSize.isPossible(width, height) ? new WindowSize(width, height) : otherwise;
    }

    private static double number(JsonNode node, double otherwise) {
        double value = node.asDouble(otherwise);
        return Double.isFinite(value) ? value : otherwise;
    }

    private static Units units(JsonNode node, Units d) {
        return new Units(
                unit(node.path("airspeed"), Dimension.SPEED, d.airspeed()),
                unit(node.path("sink"), Dimension.SPEED, d.sink()),
                unit(node.path("height"), Dimension.LENGTH, d.height()),
                unit(node.path("distance"), Dimension.LENGTH, d.distance()),
                unit(node.path("closure"), Dimension.SPEED, d.closure()));
    }

    private static Unit unit(JsonNode node, Dimension dimension, Unit otherwise) {
        return Unit.ofSymbol(node.asText())
                .filter(u -> u.dimension() == dimension)
                .orElse(otherwise);
    }

    private static Set<StripKind> strips(JsonNode node, ViewerSettings d) {
        if (!node.isArray()) {
            return d.strips();
        }
        EnumSet<StripKind> strips = EnumSet.noneOf(StripKind.class);
        texts(node)
                .forEach(t -> named(StripKind.values(), StripKind::key, t).ifPresent(strips::add));
        return strips;
    }

    private static List<String> texts(JsonNode node) {
        List<String> texts = new ArrayList<>();
        node.forEach(
                n -> {
                    if (n.isTextual()) {
                        texts.add(n.asText());
                    }
                });
        return texts;
    }

    private static <E> Optional<E> named(E[] values, Function<E, String> key, String name) {
        return Arrays.stream(values).filter(v -> key.apply(v).equals(name)).findFirst();
    }

    /**
     * Keeps the settings: written beside, then moved.
     *
     * @throws IOException if the folder can't be written
     */
    public void write(ViewerSettings settings) throws IOException {
        WholeFile.write(
                file,
                beside ->
                        MAPPER.writerWithDefaultPrettyPrinter()
                                .writeValue(beside.toFile(), json(settings)));
    }

    private static ObjectNode json(ViewerSettings s) {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("dark", s.isDark()).put("zoom", s.zoom()).put("bigFigures", s.hasBigFigures());
        root.putObject("units")
                .put("airspeed", s.units().airspeed().symbol())
                .put("sink", s.units().sink().symbol())
                .put("height", s.units().height().symbol())
                .put("distance", s.units().distance().symbol())
                .put("closure", s.units().closure().symbol());
        root.put("panel", s.panel().key()).put("stripsShare", s.stripsShare());
        ArrayNode strips = root.putArray("strips");
        s.strips().stream().sorted().forEach(strip -> strips.add(strip.key()));
        ArrayNode recent = root.putArray("recent");
        s.recent().forEach(recent::add);
        root.putObject("window")
                .put("width", s.window().width())
                .put("height", s.window().height());
        return root;
    }
}
