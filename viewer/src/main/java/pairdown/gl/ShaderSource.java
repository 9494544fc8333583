package pairdown.gl;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of one shader with its includes put in. {@code #line} directives keep the compiler's
 * complaints at the line and, by number, the file they are about.
 *
 * @param files the files by the number the compiler knows them by
 */
record ShaderSource(String text, List<String> files) {
    private static final Pattern INCLUDE = Pattern.compile("\\s*#include\\s+\"([\\w./-]+)\"\\s*");

    /** Where a compiler says a complaint belongs: {@code 1:23(4)}, {@code 1(23)}, {@code 1:23:}. */
    private static final Pattern PLACE = Pattern.compile("(?m)^(ERROR: )?(\\d+)[:(](\\d+)");

    ShaderSource {
        files = List.copyOf(files);
    }

    /**
     * Reads a file and all it includes.
     *
     * @param disk the folder to read from; empty for the jar
     */
    static ShaderSource read(String file, Optional<Path> disk) throws IOException {
        List<String> files = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        append(file, disk, files, text);
        return new ShaderSource(text.toString(), files);
    }

    private static void append(
            String file, Optional<Path> disk, List<String> files, StringBuilder text)
            throws IOException {
        int number = files.size();
        files.add(file);
        int line = 0;
        for (String row : textOf(file, disk).split("\n", -1)) {
            line++;
            Matcher include = INCLUDE.matcher(row);
            if (include.matches()) {
                text.append("#line 1 ").append(files.size()).append('\n');
                append(include.group(1), disk, files, text);
                text.append("#line ").append(line + 1).append(' ').append(number).append('\n');
            } else {
                text.append(row).append('\n');
            }
        }
    }

    private static String textOf(String file, Optional<Path> disk) throws IOException {
        if (disk.isPresent()) {
            return Files.readString(disk.get().resolve(file));
        }
        try (InputStream in = ShaderSource.class.getResourceAsStream("/shaders/" + file)) {
            if (in == null) {
                throw new IOException("shaders/" + file + " is not in the jar");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** A compiler's log with files by name: {@code shaders/trails.vert:23}. */
    String named(String log) {
        return PLACE.matcher(log)
                .replaceAll(
                        place -> {
                            int file = Integer.parseInt(place.group(2));
                            String name = file < files.size() ? files.get(file) : place.group(2);
                            return Matcher.quoteReplacement(
                                    "shaders/" + name + ":" + place.group(3));
                        });
    }

    /** The newest change of any of these files; 0 for the jar. */
    static long changed(List<String> files, Path disk) {
        long newest = 0;
        for (String file : files) {
            try {
                newest = Math.max(newest, Files.getLastModifiedTime(disk.resolve(file)).toMillis());
            } catch (IOException e) {
                // An editor that writes beside and then moves leaves no file for a moment.
                return 0;
            }
        }
        return newest;
    }

    /** The same for a source that must be there: the jar's own. */
    static ShaderSource own(String file, Optional<Path> disk) {
        try {
            return read(file, disk);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
