package pairdown.clock;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Decides what UTC is for a group of logs whose offsets are known among themselves:
 * satellite-native formats first, then the majority.
 */
final class Reference {
    private Reference() {}

    /**
     * The decision.
     *
     * @param constant_s to be added to each offset
     * @param by the logs whose times agree, in the mean
     * @param doubt why it might be wrong
     */
    record Choice(double constant_s, List<Mover> by, Optional<String> doubt) {}

    /**
     * The constant of a group, or empty where no log in it has absolute time.
     *
     * @param group its movers
     * @param offset_s by mover's index, up to the constant
     * @param others movers outside the group, whose times may break a tie
     * @param tolerance_s clocks nearer than this agree
     */
    static Optional<Choice> of(
            List<Mover> group, double[] offset_s, List<Mover> others, double tolerance_s) {
        List<Mover> voters = voters(group);
        if (voters.isEmpty()) {
            return Optional.empty();
        }
        List<Mover> most = List.of();
        boolean tied = false;
        for (Mover v : voters) {
            List<Mover> agreeing = agreeing(voters, v, offset_s, tolerance_s);
            if (agreeing.equals(most)) {
                continue;
            }
            int better = compare(agreeing, most, others);
            boolean apart = agreeing.stream().noneMatch(most::contains);
            tied = (better == 0 && apart) || (tied && better <= 0);
            if (better > 0) {
                most = agreeing;
            }
        }
        double constant_s = constant_s(most, offset_s);
        return Optional.of(
                new Choice(constant_s, most, tied ? Optional.of(doubt(most)) : Optional.empty()));
    }

    private static List<Mover> voters(List<Mover> group) {
        List<Mover> absolute = group.stream().filter(Mover::isAbsolute).toList();
        List<Mover> natives = absolute.stream().filter(Mover::isNative).toList();
        return natives.isEmpty() ? absolute : natives;
    }

    private static List<Mover> agreeing(
            List<Mover> voters, Mover with, double[] offset_s, double tolerance_s) {
        List<Mover> out = new ArrayList<>();
        for (Mover v : voters) {
            double apart_s =
                    offset_s[v.index()]
                            - v.hypothesis_s()
                            - (offset_s[with.index()] - with.hypothesis_s());
            if (Math.abs(apart_s) <= tolerance_s) {
                out.add(v);
            }
        }
        return out;
    }

    /** By number, then by marks, then by how many other logs ran at the same time. */
    private static int compare(List<Mover> a, List<Mover> b, List<Mover> others) {
        int bySize = Integer.compare(a.size(), b.size());
        int byMark = Long.compare(marked(a), marked(b));
        if (bySize != 0 || b.isEmpty()) {
            return b.isEmpty() ? 1 : bySize;
        }
        if (byMark != 0) {
            return byMark;
        }
        return Long.compare(beside(a.get(0), others), beside(b.get(0), others));
    }

    private static long marked(List<Mover> movers) {
        return movers.stream().filter(m -> m.log().ref().clock().offset_s().isPresent()).count();
    }

    private static long beside(Mover m, List<Mover> others) {
        return others.stream()
                .filter(Mover::isAbsolute)
                .filter(o -> o.start_s() <= m.end_s() && o.end_s() >= m.start_s())
                .count();
    }

    private static double constant_s(List<Mover> agreeing, double[] offset_s) {
        return agreeing.stream()
                .mapToDouble(m -> m.hypothesis_s() - offset_s[m.index()])
                .average()
                .orElse(0);
    }

    private static String doubt(List<Mover> most) {
        return "the logs that rode together disagree about the time and nothing tells which is"
                + " right; that of "
                + most.get(0).name()
                + " was taken";
    }
}
