package pairdown.app;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import pairdown.gl.VirtualDisplay;

/**
 * A random hand at a window with an attempt on it: {@code SECONDS SEED ATTEMPT}. Prints how much it
 * did; ends with an exception where the window failed, the card complained or something was said on
 * the error stream. The attempt is a copy's: marks are made in it.
 */
final class RandomHandStudy {
    private RandomHandStudy() {}

    public static void main(String[] args) throws Exception {
        if (VirtualDisplay.name().isEmpty()) {
            throw new IllegalStateException("no display");
        }
        double length_s = Double.parseDouble(args[0]);
        long seed = Long.parseLong(args[1]);
        Path settings = Files.createTempDirectory("random-hand");
        PrintStream before = System.err;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int acts = 0;
        try (WindowRig rig = WindowRig.empty(settings)) {
            System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
            VirtualDisplay.drop(List.of(Path.of(args[2]).toAbsolutePath()));
            rig.until("the attempt", () -> rig.loop.shown().isPresent());
            RandomHand hand = new RandomHand(rig, seed);
            long end_ns = System.nanoTime() + (long) (length_s * 1e9);
            while (System.nanoTime() < end_ns) {
                hand.act();
                acts++;
                int complaint = VirtualDisplay.complaint();
                if (complaint != 0) {
                    throw new IllegalStateException("OpenGL error " + complaint);
                }
            }
        } finally {
            System.setErr(before);
        }
        if (said.size() > 0) {
            throw new IllegalStateException(said.toString(StandardCharsets.UTF_8));
        }
        System.out.println(acts + " acts of 20 keys, a press, a drag and a wheel; nothing failed");
    }
}
