package pairdown.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pairdown.debrief.Debrief;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.RenderContext;
import pairdown.gl.Shaders;
import pairdown.gl.Window;
import pairdown.replay.Alignment;
import pairdown.replay.Moment;
import pairdown.replay.Recording;
import pairdown.scene.Diorama;
import pairdown.track.UnusableInputException;
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

    @Parameters(paramLabel = "ATTEMPT", arity = "1..*", description = "attempts' folders")
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
            description = "size of the window in pixels (default: 1280x720)")
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
        Loaded loaded = Loaded.from(attempts.get(0), spec);
        Optional<Moment.Ghost> ghost = ghost(loaded.debrief());
        try (RenderContext context = open()) {
            run(context, loaded, ghost);
        }
        return ExitStatus.DONE;
    }

    private RenderContext open() throws NoGraphicsException {
        return offScreen && frames != null
                ? OffscreenContext.open(size.width_px(), size.height_px())
                : Window.open("Pairdown", size.width_px(), size.height_px());
    }

    private void run(RenderContext context, Loaded loaded, Optional<Moment.Ghost> ghost) {
        Shaders shaders = new Shaders(Optional.ofNullable(shaderFolder));
        Diorama diorama = new Diorama(shaders, loaded.debrief(), loaded.relief(), ghost);
        try (ReplayLoop loop = new ReplayLoop(context, shaders, diorama, units.units())) {
            loop.start();
            if (frames != null) {
                String place = context instanceof Window ? "a window" : "memory";
                spec.commandLine().getOut().println(loop.time(frames, place));
            } else if (context instanceof Window window) {
                window.setTitle("Pairdown: " + loaded.debrief().attempt().id());
                loop.run(window);
            }
        }
    }

    private Optional<Moment.Ghost> ghost(Debrief first) throws UnusableInputException {
        if (attempts.size() < 2) {
            return Optional.empty();
        }
        Path folder = attempts.get(1);
        Debrief other = Loaded.from(folder, spec).debrief();
        Alignment alignment =
                alignment(first, other)
                        .orElseThrow(
                                () ->
                                        new UnusableInputException(
                                                "the two attempts share no moment '" + align + "'",
                                                folder.toString(),
                                                "choose another with --align"));
        return Optional.of(new Moment.Ghost(new Moment(Recording.of(other)), alignment));
    }

    private Optional<Alignment> alignment(Debrief first, Debrief other) {
        for (Alignment.On on : Alignment.On.values()) {
            if (on != Alignment.On.GAP && on.key().equals(align)) {
                return Alignment.of(first, other, on, 0);
            }
        }
        try {
            return Alignment.of(first, other, Alignment.On.GAP, Double.parseDouble(align));
        } catch (NumberFormatException e) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--align '"
                            + align
                            + "' is none of closest, exit, first-match or a number of metres",
                    e);
        }
    }
}
