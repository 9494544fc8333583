package pairdown.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import pairdown.gl.VirtualDisplay;
import pairdown.input.Action;
import pairdown.input.HitAreas;

/**
 * Pictures of the real window, to look at: {@code FOLDER STEP…}, each step one of {@code
 * open=PATH}, {@code drop=PATH}, {@code size=WxH}, {@code at=SECONDS}, {@code key=NAME} (as xdotool
 * spells it), {@code type=TEXT} and {@code picture=NAME}.
 */
final class WindowPictures {
    private WindowPictures() {}

    public static void main(String[] args) throws Exception {
        if (VirtualDisplay.name().isEmpty()) {
            throw new IllegalStateException("no display");
        }
        Path folder = Files.createDirectories(Path.of(args[0]));
        Path settings = Files.createTempDirectory("pictures");
        try (WindowRig rig = WindowRig.empty(settings)) {
            for (int i = 1; i < args.length; i++) {
                step(rig, folder, args[i]);
            }
        }
    }

    private static void step(WindowRig rig, Path folder, String step) throws Exception {
        String what = step.substring(0, step.indexOf('='));
        String value = step.substring(step.indexOf('=') + 1);
        switch (what) {
            case "open" -> {
                VirtualDisplay.drop(List.of(Path.of(value).toAbsolutePath().normalize()));
                rig.until("the attempt", () -> rig.loop.shown().isPresent());
            }
            case "drop" -> VirtualDisplay.drop(List.of(Path.of(value).toAbsolutePath()));
            case "size" -> {
                int w = Integer.parseInt(value.split("x", -1)[0]);
                int h = Integer.parseInt(value.split("x", -1)[1]);
                rig.window.resize(w, h);
                rig.until("the size", () -> rig.window.width_px() == w);
            }
            case "at" -> rig.time().seek(Double.parseDouble(value));
            case "ghost" ->
                    rig.until("the other", () -> rig.diorama().moment().ghost().isPresent());
            case "press" -> press(rig, value.split(":", -1));
            case "notice" -> rig.until("words", () -> rig.state().notice().isPresent());
            case "progress" -> rig.until("progress", () -> rig.state().progress().isPresent());
            case "key" -> rig.key(value.split(",", -1));
            case "type" -> rig.type(value);
            case "picture" -> {
                settle(rig);
                ImageIO.write(
                        rig.picture().toImage(), "png", folder.resolve(value + ".png").toFile());
            }
            default -> throw new IllegalArgumentException(step);
        }
        rig.loop.round(rig.window);
    }

    private static void press(WindowRig rig, String[] what) {
        Action action = Action.valueOf(what[0]);
        HitAreas areas = rig.areas();
        for (int a : areas.all()) {
            boolean isWall = areas.kind(a) == HitAreas.Kind.WALL;
            if (!isWall
                    && areas.action(a) == action
                    && (what.length < 2 || areas.value(a, 0) == Double.parseDouble(what[1]))) {
                rig.click(areas.x(a) + areas.width(a) / 2, areas.y(a) + areas.height(a) / 2);
                return;
            }
        }
        throw new IllegalArgumentException("nothing to press for " + String.join(":", what));
    }

    private static void settle(WindowRig rig) {
        for (int i = 0; i < 3; i++) {
            rig.loop.round(rig.window);
        }
        rig.until("still cameras", () -> rig.loop.shown().map(d -> !d.isMoving()).orElse(true));
        rig.loop.round(rig.window);
    }
}
