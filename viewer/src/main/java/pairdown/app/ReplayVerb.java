package pairdown.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pairdown.attempt.AttemptFolder;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.RenderContext;
import pairdown.gl.Shaders;
import pairdown.gl.Window;
import pairdown.kept.KeptDebriefs;
import pairdown.settings.SettingsFile;
import pairdown.settings.ViewerSettings;
import pairdown.words.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The replay in a window. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "The 3D replay. A second attempt is laid over the first as each was seen from its lead.",
            "F1 in the window lists the keys."
        })
final class ReplayVerb implements Callable<Integer> {
    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "ATTEMPT",
            arity = "0..2",
            description = "attempts' folders; without one the window opens with what to do first")
    private List<Path> attempts = List.of();

    @Option(
            names = "--align",
            paramLabel = "MOMENT",
            description =
                    "what two attempts share: closest, exit, first-match, or a gap like 30"
                            + " (metres) first reached (default: ${DEFAULT-VALUE})",
            defaultValue = "closest")
    private String align = "closest";

    @Option(
            names = "--size",
            paramLabel = "WxH",
            converter = PictureSize.Converter.class,
            description = "size of the window in pixels (default: as it was last)")
    private PictureSize size = PictureSize.DEFAULT;

    @Option(
            names = "--frames",
            paramLabel = "N",
            description = "times N frames, prints a table and ends")
    private @Nullable Integer frames;

    @Option(names = "--off-screen", description = "with --frames: times without a window")
    private boolean offScreen;

    @Option(
            names = "--shaders",
            paramLabel = "DIR",
            description = "reads shaders from a folder and takes up changes: for developing them")
    private @Nullable Path shaderFolder;

    @Mixin private UnitsOption units = new UnitsOption();

    @Override
    public Integer call() throws Exception {
        if (frames != null && frames < 1) {
            throw new ParameterException(spec.commandLine(), "--frames needs at least 1");
        }
        if (frames != null && attempts.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--frames needs an ATTEMPT");
        }
        GhostChoice choice =
                GhostChoice.parse(align)
                        .orElseThrow(
                                () ->
                                        new ParameterException(
                                                spec.commandLine(),
                                                "--align '"
                                                        + align
                                                        + "' is none of closest, exit, first-match"
                                                        + " or a number of metres"));
        // What can be said at once is said before a window opens; the logs are read behind it.
        for (Path attempt : attempts) {
            AttemptFolder.open(attempt);
        }
        if (frames != null) {
            time(frames, choice);
        } else {
            replay(choice);
        }
        return ExitStatus.DONE;
    }

    private void time(int count, GhostChoice choice) throws Exception {
        Loaded loaded = Loaded.from(attempts.get(0), spec);
        ViewerSettings settings = ViewerSettings.DEFAULT.with(units.units());
        try (RenderContext context =
                        offScreen
                                ? OffscreenContext.open(size.width_px(), size.height_px())
                                : Window.open("Pairdown", size.width_px(), size.height_px());
                ReplayDesk desk = desk(settings, choice, () -> {});
                ReplayLoop loop = new ReplayLoop(context, shaders(), desk)) {
            loop.show(Found.Ready.of(loaded, Words.of(Locale.getDefault())));
            String place = context instanceof Window ? "a window" : "memory";
            spec.commandLine().getOut().println(loop.time(count, place));
        }
    }

    private void replay(GhostChoice choice) throws NoGraphicsException {
        SettingsFile.Read read = SettingsFile.ofPerson().read();
        ViewerSettings settings = read.settings();
        if (isGiven("--units")) {
            settings = settings.with(units.units());
        }
        // Reading begins first: opening a window takes as long as reading a kept debrief.
        try (ReplayDesk desk = desk(settings, choice, Window::wake)) {
            desk.begin(attempts, read.problem());
            boolean sized = isGiven("--size");
            int width = sized ? size.width_px() : settings.window().width();
            int height = sized ? size.height_px() : settings.window().height();
            try (Window window = Window.open("Pairdown", width, height);
                    ReplayLoop loop = new ReplayLoop(window, shaders(), desk)) {
                loop.run(window);
            }
        }
    }

    private boolean isGiven(String option) {
        return spec.commandLine().getParseResult().hasMatchedOption(option);
    }

    private Shaders shaders() {
        return new Shaders(Optional.ofNullable(shaderFolder));
    }

    private static ReplayDesk desk(ViewerSettings settings, GhostChoice choice, Runnable wake) {
        return new ReplayDesk(
                SettingsFile.ofPerson(), settings, KeptDebriefs.ofUser(), choice, wake);
    }
}
