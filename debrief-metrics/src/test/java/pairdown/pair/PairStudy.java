package pairdown.pair;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.function.LongFunction;
import pairdown.track.UnusableInputException;

/** Pair figures against made-up truth over many seeds: {@code PairStudy [SEEDS]}. */
public final class PairStudy {
    private PairStudy() {}

    public static void main(String[] args) throws UnusableInputException {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        for (double rate_Hz : new double[] {1, 5, 10}) {
            String at = " at " + rate_Hz + " Hz: ";
            out.println("touch" + at + run(seeds, s -> MadePair.touching(s, rate_Hz)).words());
            out.println(
                    "hover 1.5 m"
                            + at
                            + run(seeds, s -> MadePair.hovering(s, rate_Hz, 1.5)).words());
        }
    }

    static PairErrors run(int seeds, LongFunction<MadePair> made) throws UnusableInputException {
        PairErrors errors = new PairErrors();
        for (int seed = 1; seed <= seeds; seed++) {
            errors.add(made.apply(seed));
        }
        return errors;
    }
}
