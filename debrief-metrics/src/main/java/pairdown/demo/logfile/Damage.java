package pairdown.demo.logfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What happened to a file on its way home. Places are shares of the file's lines. */
public sealed interface Damage {
    /** The lines, with their ends, after it. */
    List<String> done(List<String> lines);

    /** In words, for the truth. */
    String words();

    /** The text after all of these. */
    static String all(String text, List<Damage> damage) {
        List<String> lines = List.of(text.split("(?<=\n)"));
        for (Damage d : damage) {
            lines = d.done(lines);
        }
        return String.join("", lines);
    }

    private static int line(List<String> lines, double share) {
        return (int) (share * lines.size());
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    /** The power went in the middle of the last record. */
    record CutEnd() implements Damage {
        @Override
        public List<String> done(List<String> lines) {
            List<String> out = new ArrayList<>(lines);
            String last = out.remove(out.size() - 1);
            out.add(last.substring(0, last.length() * 2 / 5));
            return out;
        }

        @Override
        public String words() {
            return "cut in the middle of the last record";
        }
    }

    /** Some records were written twice. */
    record Repeated(double at, int count) implements Damage {
        @Override
        public List<String> done(List<String> lines) {
            int from = line(lines, at);
            List<String> out = new ArrayList<>(lines);
            out.addAll(from + count, lines.subList(from, from + count));
            return out;
        }

        @Override
        public String words() {
            return count + " records written twice at " + percent(at);
        }
    }

    /** A record stands some places too late. */
    record OutOfOrder(double at, int places) implements Damage {
        @Override
        public List<String> done(List<String> lines) {
            int from = line(lines, at);
            List<String> out = new ArrayList<>(lines);
            out.add(from + places, out.remove(from));
            return out;
        }

        @Override
        public String words() {
            return "a record " + places + " places late at " + percent(at);
        }
    }

    /** A line that is no record. */
    record Rubbish(double at, String text) implements Damage {
        @Override
        public List<String> done(List<String> lines) {
            List<String> out = new ArrayList<>(lines);
            out.add(line(lines, at), text + "\n");
            return out;
        }

        @Override
        public String words() {
            return "a line of rubbish at " + percent(at);
        }
    }

    /** The first records have the date a receiver starts with before it knows better. */
    record ColdDate(String date, String cold, int records) implements Damage {
        @Override
        public List<String> done(List<String> lines) {
            List<String> out = new ArrayList<>(lines);
            int left = records;
            for (int i = 0; i < out.size() && left > 0; i++) {
                if (out.get(i).contains(date)) {
                    out.set(i, out.get(i).replace(date, cold));
                    left--;
                }
            }
            return out;
        }

        @Override
        public String words() {
            return "the first " + records + " records are dated " + cold;
        }
    }
}
