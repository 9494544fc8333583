package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairdown.camera.Vantage;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.Shaders;
import pairdown.replay.SyntheticDebrief;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Units;

/** Shaders edited while the scene is on show. */
@NeedsGl
class ShaderReloadTest {
    private static final Path SOURCE = Path.of("..", "shaders");

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit fills it
    Path folder;

    private int edits;

    private void copy() throws IOException {
        Files.createDirectory(folder.resolve("include"));
        try (Stream<Path> files = Files.walk(SOURCE)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(SOURCE.relativize(file).toString()));
            }
        }
    }

    private void edit(String name, String from, String to) throws IOException {
        Path file = folder.resolve(name);
        String text = Files.readString(file);
        assertTrue(text.contains(from), text);
        Files.writeString(file, text.replace(from, to));
        // Later than anything written before, however coarse the clock of files is.
        Instant later = Instant.now().plusSeconds(10L * ++edits);
        Files.setLastModifiedTime(file, FileTime.from(later));
    }

    @Test
    void anEditIsSeenInTheNextPictureAndAMistakeKeepsTheLast()
            throws IOException, NoGraphicsException {
        copy();
        try (OffscreenContext context = OffscreenContext.open(60, 40);
                Shaders shaders = new Shaders(Optional.of(folder));
                Diorama diorama =
                        new Diorama(
                                shaders,
                                new SyntheticDebrief().build(),
                                Optional.empty(),
                                Optional.empty())) {
            diorama.view().look(Vantage.of(Vantage.Kind.PLAN));
            int before = corner(context, diorama);
            String last = "colour = vec4(mix(base, sky.rgb, haze), 1.0);";
            edit("ground.frag", last, "colour = vec4(1.0, 0.0, 0.0, 1.0);");
            assertEquals(List.of(), shaders.reloadChanged());
            assertNotEquals(before, corner(context, diorama));
            assertEquals(0xff0000, corner(context, diorama));
            edit("ground.frag", "colour = vec4(1.0", "colour = vec5(1.0");
            List<String> wrong = shaders.reloadChanged();
            assertEquals(1, wrong.size());
            assertTrue(wrong.get(0).contains("shaders/ground.frag:"), wrong.get(0));
            assertEquals(0xff0000, corner(context, diorama));
            edit("include/line.glsl", "EDGE_PX = 0.5", "EDGE_PX = 5.0");
            assertEquals(List.of(), shaders.reloadChanged());
        }
    }

    private static int corner(OffscreenContext context, Diorama diorama) {
        context.beginScene();
        diorama.draw(
                new Theme(Palette.LIGHT, Sizes.atPercent(50)),
                new Figures(Units.METRIC, Locale.ROOT),
                0,
                0,
                60,
                40,
                1);
        context.endScene();
        context.present();
        return context.read().rgb(1, 38);
    }
}
