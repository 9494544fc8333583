package pairdown.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.DoubleConsumer;
import pairdown.attempt.WholeFile;
import pairdown.film.Clip;
import pairdown.film.FilmWriter;
import pairdown.film.Studio;
import pairdown.gl.NoGraphicsException;
import pairdown.time.Span;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a film of the replay, with no display needed. */
@Command(
        name = "clip",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Makes a film of the replay, with no display needed: MP4, by ffmpeg where it is on the",
            "path, else by the built-in encoder. Stopping it leaves no file behind."
        })
final class ClipVerb implements Callable<Integer> {
    /** How long the process waits, when told to stop, for the half-made film to be removed. */
    private static final int TIDY_UP_S = 10;

    @Spec private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "ATTEMPT", description = "the attempt's folder")
    private Path attempt = Path.of("");

    @Option(
            names = "--from",
            required = true,
            paramLabel = "TIME",
            description = InstantOption.HELP)
    private String from = "";

    @Option(names = "--to", required = true, paramLabel = "TIME", description = "likewise")
    private String to = "";

    @Option(
            names = "--camera",
            paramLabel = "NAME",
            split = ",",
            description =
                    "whence (default: square-on); several, with commas between, share the film"
                            + " equally: "
                            + ViewOptions.CAMERAS)
    private List<String> cameras = List.of("square-on");

    @Option(
            names = "--speed",
            paramLabel = "X",
            description = "0.1 for slow motion to 16 (default: 1)")
    private double speed = 1;

    @Option(
            names = "--fps",
            paramLabel = "N",
            description = "pictures a second, 1 to 120 (default: 30)")
    private int rate_Hz = 30;

    @Mixin private ViewOptions look = new ViewOptions();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE.mp4",
            description = "where the film goes")
    private Path out = Path.of("");

    @Override
    public Integer call() throws Exception {
        check();
        Loaded loaded = Loaded.from(attempt, spec);
        double from_s = InstantOption.parse(from, loaded.debrief(), spec.commandLine());
        double to_s = InstantOption.parse(to, loaded.debrief(), spec.commandLine());
        if (!(from_s < to_s)) {
            throw usage("--to must be later than --from");
        }
        Clip clip =
                new Clip(
                        new Span(from_s, to_s),
                        ViewOptions.vantages(cameras, loaded.debrief(), spec.commandLine()),
                        speed,
                        rate_Hz,
                        look.hasWords());
        return shootUnlessStopped(clip, loaded);
    }

    private void check() {
        if (!(speed >= 0.1 && speed <= 16)) {
            throw usage("--speed " + speed + " is outside 0.1 to 16");
        }
        if (rate_Hz < 1 || rate_Hz > 120) {
            throw usage("--fps " + rate_Hz + " is outside 1 to 120");
        }
        if (look.size().width_px() % 2 != 0 || look.size().height_px() % 2 != 0) {
            throw usage("a film needs an even width and height");
        }
    }

    private ParameterException usage(String what) {
        return new ParameterException(spec.commandLine(), what);
    }

    /**
     * Makes the film; an interrupt from the keyboard ends it between two pictures, and the process
     * waits until the half-made file is gone.
     */
    private int shootUnlessStopped(Clip clip, Loaded loaded)
            throws OutputException, NoGraphicsException {
        AtomicBoolean stopped = new AtomicBoolean();
        CountDownLatch tidy = new CountDownLatch(1);
        Thread hook =
                new Thread(
                        () -> {
                            stopped.set(true);
                            waitFor(tidy);
                        });
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            WholeFile.write(out, file -> shoot(clip, loaded, file, stopped));
        } catch (Stopped e) {
            return ExitStatus.OUTPUT;
        } catch (NoPicture e) {
            throw e.why;
        } catch (IOException e) {
            throw new OutputException(out, e);
        } finally {
            tidy.countDown();
            if (!stopped.get()) {
                Runtime.getRuntime().removeShutdownHook(hook);
            }
        }
        spec.commandLine().getOut().println(out);
        return ExitStatus.DONE;
    }

    private static void waitFor(CountDownLatch tidy) {
        try {
            if (!tidy.await(TIDY_UP_S, TimeUnit.SECONDS)) {
                Thread.currentThread().interrupt();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void shoot(Clip clip, Loaded loaded, Path file, AtomicBoolean stopped)
            throws IOException {
        try (Studio studio =
                        Studio.open(
                                loaded.debrief(),
                                look.size().width_px(),
                                look.size().height_px(),
                                loaded.relief(),
                                Optional.empty());
                FilmWriter writer =
                        FilmWriter.open(
                                file, look.size().width_px(), look.size().height_px(), rate_Hz)) {
            look.apply(studio.diorama(), spec.commandLine());
            spec.commandLine().getErr().println("encoded by " + writer.encoder());
            boolean whole =
                    clip.shoot(
                            studio,
                            writer,
                            look.theme(studio.diorama()),
                            look.figures(),
                            progress(),
                            stopped::get);
            if (!whole) {
                throw new Stopped();
            }
        } catch (NoGraphicsException e) {
            throw new NoPicture(e);
        }
    }

    /** A share done, on a terminal only. */
    private DoubleConsumer progress() {
        if (!Terminal.isTerminal()) {
            return share -> {};
        }
        int[] last = {-1};
        return share -> {
            int percent = (int) (100 * share);
            if (percent != last[0]) {
                last[0] = percent;
                spec.commandLine().getErr().print("\r" + percent + " %");
                spec.commandLine().getErr().print(percent == 100 ? "\n" : "");
                spec.commandLine().getErr().flush();
            }
        };
    }

    /** Given up because the process was told to stop. */
    private static final class Stopped extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** Carries the reason out of the writing of a file, which only knows trouble with files. */
    private static final class NoPicture extends IOException {
        private static final long serialVersionUID = 1L;
        private final NoGraphicsException why;

        NoPicture(NoGraphicsException why) {
            super(why);
            this.why = why;
        }
    }
}
