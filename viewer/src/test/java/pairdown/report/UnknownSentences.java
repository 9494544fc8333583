package pairdown.report;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import pairdown.attempt.AttemptFolder;
import pairdown.debrief.Debrief;
import pairdown.debrief.Debriefer;
import pairdown.words.Translation;

/**
 * Prints each sentence of the results of the attempts below a folder that the bundle does not know,
 * and so no translation can tell: {@code UnknownSentences FOLDER}.
 */
public final class UnknownSentences {
    private UnknownSentences() {}

    public static void main(String[] args) throws Exception {
        Set<String> unknown = new TreeSet<>();
        int attempts = 0;
        try (Stream<Path> folders = Files.walk(Path.of(args[0]))) {
            for (Path folder : folders.filter(AttemptFolder::hasManifest).sorted().toList()) {
                Debrief debrief = Debriefer.debrief(AttemptFolder.open(folder), step -> {});
                SaidSentences.of(debrief).stream()
                        .filter(s -> !Translation.knows(s))
                        .forEach(unknown::add);
                attempts++;
            }
        }
        unknown.forEach(System.out::println);
        System.out.println(unknown.size() + " unknown in " + attempts + " attempts");
    }
}
