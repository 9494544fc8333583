package pairdown.export;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.attempt.Attempt;
import pairdown.attempt.AttemptFolder;

class WholeAttemptTest {
    @TempDir private Path folder;

    @Test
    void unpackedItIsTheAttemptItWas() throws Exception {
        Path home = Files.createDirectories(folder.resolve("home"));
        write(
                home,
                "attempt.json",
                "{\"participants\": [{\"id\": \"blue\", \"role\": \"flyer\","
                        + " \"logs\": [{\"file\": \"logs/blue.csv\", \"columns\": \"map.json\"}]}]}");
        write(home, "logs/blue.csv", "time,lat,lon\n2031-05-14T15:02:12Z,-24.5,15.5\n");
        write(home, "map.json", "{}");
        write(
                home,
                "marks.json",
                "{\"format\": \"pairdown-marks\", \"version\": 1, \"marks\": []}");
        write(home, "diary.txt", "private");
        write(home, "debrief/debrief.json", "{}");
        write(home, "debrief/pairs/lead-blue.csv", "time\n");
        write(home, "debrief/mine.txt", "private");
        Attempt attempt = AttemptFolder.open(home);
        Path zip = home.resolve("debrief").resolve("all.zip");
        WholeAttempt.write(attempt, home.resolve("debrief"), zip);

        Path back = folder.resolve("back");
        unpack(zip, back);
        assertEquals(
                Set.of(
                        "attempt.json",
                        "logs/blue.csv",
                        "map.json",
                        "marks.json",
                        "debrief/debrief.json",
                        "debrief/pairs/lead-blue.csv"),
                names(back.resolve(attempt.id())));
        assertArrayEquals(
                Files.readAllBytes(home.resolve("logs/blue.csv")),
                Files.readAllBytes(back.resolve(attempt.id()).resolve("logs/blue.csv")));
        assertEquals(
                attempt.participants().get(0).id(),
                AttemptFolder.open(back.resolve(attempt.id())).participants().get(0).id());
        assertFalse(Files.exists(home.resolve("debrief/.writing")));
    }

    private static void write(Path home, String name, String text) throws Exception {
        Path file = home.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static void unpack(Path zip, Path to) throws Exception {
        try (ZipFile file = new ZipFile(zip.toFile())) {
            for (ZipEntry entry : file.stream().map(e -> (ZipEntry) e).toList()) {
                Path place = to.resolve(entry.getName()).normalize();
                assertTrue(place.startsWith(to), entry.getName());
                Files.createDirectories(place.getParent());
                Files.copy(file.getInputStream(entry), place);
            }
        }
    }

    private static Set<String> names(Path home) throws Exception {
        Set<String> names = new TreeSet<>();
        try (var files = Files.walk(home)) {
            files.filter(Files::isRegularFile)
                    .forEach(f -> names.add(home.relativize(f).toString().replace('\\', '/')));
        }
        return names;
    }
}
