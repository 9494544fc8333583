package pairdown.gl;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The programs of a context by the names of their files. Read from the jar, or while developing
 * from a folder whose changes are taken up at once.
 */
public final class Shaders implements AutoCloseable {
    private final Optional<Path> disk;
    private final Map<String, Shader> loaded = new LinkedHashMap<>();

    /**
     * @param disk the folder to read from instead of the jar
     */
    public Shaders(Optional<Path> disk) {
        this.disk = disk;
    }

    /** The jar's own. */
    public static Shaders ofJar() {
        return new Shaders(Optional.empty());
    }

    /**
     * The program of {@code name.vert} and {@code name.frag}.
     *
     * @throws IllegalStateException if it does not compile, with file and line
     */
    public Shader load(String name) {
        return loaded.computeIfAbsent(name, n -> new Shader(n, disk));
    }

    /** Takes up changed files; what is wrong with them comes back, a line for each. */
    public List<String> reloadChanged() {
        if (disk.isEmpty()) {
            return List.of();
        }
        return loaded.values().stream()
                .map(Shader::reloadIfChanged)
                .flatMap(Optional::stream)
                .toList();
    }

    @Override
    public void close() {
        loaded.values().forEach(Shader::close);
        loaded.clear();
    }
}
