package pairdown.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.kept.KeptDebriefs;
import pairdown.panel.Opening;
import pairdown.track.UnusableInputException;
import pairdown.words.Translation;
import pairdown.words.Words;

/** What keeps a folder from being opened is told in the reader's language. */
class ComplaintWordsTest {
    private final Path folder;

    ComplaintWordsTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private AttemptLoader loader(Words words) {
        return new AttemptLoader(words, KeptDebriefs.in(folder.resolve("kept")));
    }

    private String complaint(Path path) {
        Opening.Wish wish = new Opening.Wish(Opening.Purpose.SHOW, List.of(path), 1);
        AttemptLoader loader = loader(Words.of(Locale.ENGLISH));
        UnusableInputException e =
                assertThrows(UnusableInputException.class, () -> loader.load(wish, progress -> {}));
        return String.valueOf(e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "[]",
                "{}",
                "{'participants': 3}",
                "{'participants': []}",
                "{'participants': [3]}",
                "{'participants': [{'id': 'lead'}]}",
                "{'participants': [{'role': 'lead'}]}",
                "{'participants': [{'id': 'lead', 'role': 'king'}]}",
                "{'participants': [{'id': '../x', 'role': 'lead'}]}",
                "{'participants': [{'id': 'a', 'role': 'lead'}, {'id': 'a', 'role': 'flyer'}]}",
                "{'participants': [{'id': 'a', 'role': 'lead'}, {'id': 'b', 'role': 'lead'}]}",
                "{'participants': [{'id': 'a', 'role': 'lead', 'logs': 'a.csv'}]}",
                "{'participants': [{'id': 'a', 'role': 'lead', 'logs': [{}]}]}",
                "{'participants': [{'id': 'a', 'role': 'lead', 'logs': [{'file': '../a'}]}]}",
                "{'participants': [{'id': 'a', 'role': 'lead', 'logs': [{'file': 'none.csv'}]}]}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'gate': '30 parsecs'}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'gate': true}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'gate': '-3 m'}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'target': {'sink': '5 m/s'}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'air': {'wind': [{}]}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'limits': {'breakOffHeight':"
                        + " '900 m', 'breakOffDatum': 'agl'}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'limits': {'breakOffHeight':"
                        + " '900 m', 'breakOffDatum': 'sky'}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'settings': {'x': 1}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'settings': {'tail': {'x': 1}}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'settings': {'tail': {'force': {'discDiameter_m': '2 m'}}}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'settings': {'tail': {'force': {'discDiameter_m': 2800}}}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'settings': {'smoother': {'tuningPasses': 1.5}}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'settings': {'pairs': {'hole_s': 2}}}",
                "{'participants': [{'id': 'a', 'role': 'lead'}], 'settings': {'tail': {'review': {'bootstrap': {'resamples': 90}}}}}"
            })
    void whatAnAttemptsFileLacksIsAKnownText(String json) throws Exception {
        Files.writeString(folder.resolve("attempt.json"), json.replace('\'', '"'));
        String told = complaint(folder);
        assertTrue(Translation.knows(told), told);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\0\0\0\0",
                "words",
                "$GPVTG,0,T,,M,0,N,0,K*4E\r\n",
                "<gpx version=\"1.1\"><wpt lat=\"1\" lon=\"2\"/></gpx>",
                "<gpx version=\"1.1\"><trk><trkseg><trkpt lat=\"1\" lon=\"2\"/></trkseg></trk></gpx>",
                "<kml><Placemark><LineString><coordinates>1,2,3</coordinates></LineString>"
                        + "</Placemark></kml>",
                "{\"type\": \"FeatureCollection\", \"features\": []}",
                "time,latitude_deg,longitude_deg\n"
            })
    void whatALogLacksIsAKnownText(String text) throws Exception {
        Files.write(folder.resolve("lead.csv"), text.getBytes(StandardCharsets.UTF_8));
        Files.writeString(
                folder.resolve("attempt.json"),
                """
                {"participants": [{"id": "lead", "role": "lead", "logs": [{"file": "lead.csv"}]}]}
                """);
        String told = complaint(folder);
        assertTrue(Translation.knows(told), told);
    }

    @Test
    void aFolderWithoutALogIsToldInTheReadersLanguage() {
        String english = complaint(folder);
        Map<String, String> texts = new HashMap<>();
        Words known = Words.of(Locale.ENGLISH);
        known.keys().forEach(key -> texts.put(key, known.get(key)));
        texts.put("said.complaint.noFiles", "{0} : aucun fichier");
        texts.put("said.mend.putLogs", "placez-y les enregistrements");
        String told = loader(Words.of(Locale.FRENCH, texts)).told(english);
        assertEquals(folder + " : aucun fichier; placez-y les enregistrements", told);
    }
}
