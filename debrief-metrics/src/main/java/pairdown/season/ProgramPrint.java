package pairdown.season;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import pairdown.track.Track;

/**
 * Tells one build of the program from another by its code, so that results of another build are not
 * taken for this one's. Two copies of one build agree, whatever their files' names and times.
 */
public final class ProgramPrint {
    private static final String OURS = "pairdown/";
    private static final String CODE = ".class";

    private ProgramPrint() {}

    /**
     * The print of the program that runs: of the jar, or of the folders of this module's classes
     * and of those it rests on.
     */
    public static String ofThisProgram() {
        try {
            Set<String> prints = new TreeSet<>();
            for (Class<?> one : List.of(ProgramPrint.class, Track.class)) {
                Optional<CodeSource> source =
                        Optional.ofNullable(one.getProtectionDomain().getCodeSource());
                if (source.isEmpty()) {
                    return "of unknown origin";
                }
                prints.add(of(Path.of(source.get().getLocation().toURI())));
            }
            return shortened(String.join(" ", prints));
        } catch (URISyntaxException | IOException e) {
            return "unreadable: " + e.getMessage();
        }
    }

    /** The print of a jar or a folder of classes. */
    static String of(Path code) throws IOException {
        Map<String, Long> sums = Files.isDirectory(code) ? sumsOfFolder(code) : sumsOfJar(code);
        return shortened(sums.toString());
    }

    private static String shortened(String text) {
        return FileStamp.hash(text).substring(0, 16);
    }

    /** A jar keeps its entries' checksums in its directory: nothing needs to be unpacked. */
    private static Map<String, Long> sumsOfJar(Path jar) throws IOException {
        Map<String, Long> sums = new TreeMap<>();
        try (ZipFile zip = new ZipFile(jar.toFile(), StandardCharsets.UTF_8)) {
            for (ZipEntry e : (Iterable<ZipEntry>) zip.stream().<ZipEntry>map(z -> z)::iterator) {
                if (e.getName().startsWith(OURS) && e.getName().endsWith(CODE)) {
                    sums.put(e.getName(), e.getCrc());
                }
            }
        }
        return sums;
    }

    private static Map<String, Long> sumsOfFolder(Path folder) throws IOException {
        Map<String, Long> sums = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (name.startsWith(OURS) && name.endsWith(CODE)) {
                    CRC32 sum = new CRC32();
                    sum.update(Files.readAllBytes(file));
                    sums.put(name, sum.getValue());
                }
            }
        }
        return sums;
    }
}
