package pairdown.report;

import java.util.ArrayList;
import java.util.List;
import pairdown.words.Words;

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
