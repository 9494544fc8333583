package pairdown.gl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShaderSourceTest {
    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit fills it
    Path folder;

    private static final String VERTEX =
            "#version 330 core\nvoid main() { gl_Position = vec4(0.0); }\n";

    @Test
    void anIncludeIsPutInWithItsOwnLineNumbers() throws IOException {
        Files.writeString(folder.resolve("a.vert"), "one\n#include \"b.glsl\"\nthree\n");
        Files.writeString(folder.resolve("b.glsl"), "two");
        ShaderSource source = ShaderSource.read("a.vert", Optional.of(folder));
        assertEquals("one\n#line 1 1\ntwo\n#line 3 0\nthree\n\n", source.text());
        assertEquals(List.of("a.vert", "b.glsl"), source.files());
    }

    @Test
    void aComplaintNamesFileAndLine() {
        ShaderSource source = new ShaderSource("", List.of("a.vert", "include/b.glsl"));
        assertEquals("shaders/include/b.glsl:7(3): oops", source.named("1:7(3): oops"));
        assertEquals("shaders/a.vert:12) : oops", source.named("0(12) : oops"));
    }

    @Test
    @NeedsGl
    void aMistakeIsReportedWithFileAndLineAndTheLastGoodProgramStays()
            throws IOException, NoGraphicsException {
        Files.writeString(folder.resolve("x.vert"), VERTEX);
        Path fragment = folder.resolve("x.frag");
        Files.writeString(
                fragment, "#version 330 core\nout vec4 c;\nvoid main() { c = vec4(1.0); }\n");
        try (OffscreenContext context = OffscreenContext.open(2, 2);
                Shaders shaders = new Shaders(Optional.of(folder))) {
            Shader shader = shaders.load("x");
            assertTrue(shaders.reloadChanged().isEmpty(), context.renderer());
            Files.writeString(
                    fragment, "#version 330 core\nout vec4 c;\nvoid main() { c = oops; }\n");
            Files.setLastModifiedTime(fragment, FileTime.from(Instant.now().plusSeconds(10)));
            List<String> wrong = shaders.reloadChanged();
            assertEquals(1, wrong.size());
            assertTrue(wrong.get(0).contains("shaders/x.frag:3"), wrong.get(0));
            shader.use();
            assertTrue(shaders.reloadChanged().isEmpty());
        }
    }

    @Test
    @NeedsGl
    void everyShaderOfTheJarCompiles() throws NoGraphicsException {
        try (OffscreenContext context = OffscreenContext.open(2, 2);
                Shaders shaders = Shaders.ofJar()) {
            for (String name :
                    List.of("bodies", "discs", "globes", "ground", "planes", "strokes", "trails")) {
                shaders.load(name);
            }
            assertThrows(java.io.UncheckedIOException.class, () -> shaders.load("nothing"));
            assertTrue(context.width_px() == 2);
        }
    }
}
