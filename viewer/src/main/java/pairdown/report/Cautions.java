package pairdown.report;

import pairdown.words.Words;

import java.util.ArrayList;
import java.util.List;

/** The cautions that stand before everything on a page. */
final class Cautions {
    private Cautions() {}

    static List<String> of(Words words) {
        List<String> cautions = new ArrayList<>();
        int count = Integer.parseInt(words.get("caution.count"));
        for (int i = 1; i <= count; i++) {
            cautions.add(words.get("caution." + i));
        }
        return cautions;
    }
}
