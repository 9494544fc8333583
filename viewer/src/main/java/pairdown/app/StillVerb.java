package pairdown.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javax.imageio.ImageIO;
import pairdown.attempt.WholeFile;
import pairdown.camera.Vantage;
import pairdown.film.Studio;
import pairdown.gl.Pixels;
import pairdown.theme.Theme;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes one picture of the replay, with no display needed. */
@Command(
        name = "still",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = "Makes one picture of the replay, with no display needed.")
final class StillVerb implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "ATTEMPT", description = "the attempt's folder")
    private Path attempt = Path.of("");

    @Option(names = "--at", required = true, paramLabel = "TIME", description = InstantOption.HELP)
    private String at = "";

    @Option(
            names = "--camera",
            paramLabel = "NAME",
            description = "whence (default: ${DEFAULT-VALUE}): " + ViewOptions.CAMERAS,
            defaultValue = "square-on")
    private String camera = "square-on";

    @Mixin private ViewOptions look = new ViewOptions();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE.png",
            description = "where the picture goes")
    private Path out = Path.of("");

    @Override
    public Integer call() throws Exception {
        Loaded loaded = Loaded.from(attempt, spec);
        double t_s = InstantOption.parse(at, loaded.debrief(), spec.commandLine());
        Vantage vantage =
                ViewOptions.vantages(List.of(camera), loaded.debrief(), spec.commandLine()).get(0);
        try (Studio studio =
                Studio.open(
                        loaded.debrief(),
                        look.size().width_px(),
                        look.size().height_px(),
                        loaded.relief(),
                        Optional.empty())) {
            look.apply(studio.diorama(), spec.commandLine());
            Theme theme = look.theme(studio.diorama());
            write(studio.still(t_s, vantage, theme, look.figures(), look.hasWords()));
        }
        spec.commandLine().getOut().println(out);
        return ExitStatus.DONE;
    }

    private void write(Pixels pixels) throws OutputException {
        try {
            WholeFile.write(
                    out,
                    to -> {
                        if (!ImageIO.write(pixels.toImage(), "png", to.toFile())) {
                            throw new IOException("no PNG writer");
                        }
                    });
        } catch (IOException e) {
            throw new OutputException(out, e);
        }
    }
}
