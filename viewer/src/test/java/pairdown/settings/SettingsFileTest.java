package pairdown.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.words.Units;

class SettingsFileTest {
    private final Path folder;
    private final SettingsFile file;

    SettingsFileTest(@TempDir Path folder) {
        this.folder = folder;
        this.file = SettingsFile.in(folder);
    }

    @Test
    void whatWasChosenIsFoundAgain() throws IOException {
        ViewerSettings chosen =
                ViewerSettings.DEFAULT
                        .withOtherTheme()
                        .with(Units.METRIC)
                        .larger()
                        .withToggled(PanelKind.EVENTS)
                        .withToggled(StripKind.RUDDER)
                        .withStripsShare(0.7)
                        .withOpened("/hangar/2031/05-14-03")
                        .withWindow(new WindowSize(1000, 650));
        file.write(chosen);
        assertEquals(new SettingsFile.Read(chosen, Optional.empty()), file.read());
    }

    @Test
    void theFirstStartHasDefaultsAndNoComplaint() {
        assertEquals(new SettingsFile.Read(ViewerSettings.DEFAULT, Optional.empty()), file.read());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "no settings at all", "{\"dark\": tru", "\u0000\u0000"})
    void aDamagedFileGivesDefaultsWordsAndIsKeptAside(String text) throws IOException {
        Files.writeString(file.path(), text);
        SettingsFile.Read read = file.read();
        assertEquals(ViewerSettings.DEFAULT, read.settings());
        if (!text.isEmpty()) {
            assertTrue(read.problem().orElse("").contains("damaged"), read.problem()::toString);
            assertTrue(Files.exists(folder.resolve("viewer.json.damaged")));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "7",
                "null",
                "{\"zoom\": 1e99, \"panel\": \"nowhere\", \"strips\": 3, \"units\": []}",
                "{\"zoom\": \"wide\", \"stripsShare\": -4, \"recent\": [1, 2]}",
                "{\"window\": {\"width\": 3, \"height\": 1e12}}",
                "{\"window\": \"large\"}",
                "{\"units\": {\"airspeed\": \"kg\", \"height\": \"parsec\"}}"
            })
    void aFieldThatMakesNoSenseIsTheDefaultOrTheNearestThatDoes(String text) throws IOException {
        Files.writeString(file.path(), text);
        ViewerSettings read = file.read().settings();
        assertTrue(
                read.zoom() >= ViewerSettings.LEAST_ZOOM
                        && read.zoom() <= ViewerSettings.MOST_ZOOM);
        assertEquals(ViewerSettings.DEFAULT.panel(), read.panel());
        assertEquals(ViewerSettings.DEFAULT.units(), read.units());
        assertEquals(WindowSize.DEFAULT, read.window());
    }

    @Test
    void oneBadFieldTakesNoOtherWithIt() throws IOException {
        Files.writeString(file.path(), "{\"dark\": true, \"panel\": 12}");
        assertTrue(file.read().settings().isDark());
    }
}
