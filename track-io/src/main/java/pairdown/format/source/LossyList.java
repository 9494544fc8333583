package pairdown.format.source;

/**
 * How many items were found of a list of which something may be lost, and where. Two lists whose
 * items belong together one by one can still be paired: from the beginning up to the first loss in
 * either, and from the end back to the last.
 */
public final class LossyList {
    private int size;
    private int whole = -1;
    private int lastLoss;

    /** A pair of items, by their numbers. */
    @FunctionalInterface
    public interface Pair {
        void make(int a, int b);
    }

    /** How many pairs there were at the beginning and at the end. */
    public record Paired(int front, int tail) {}

    /** One more item was found. */
    public void add() {
        size++;
    }

    /** Something is lost behind the items found so far. */
    public void lose() {
        whole = whole < 0 ? size : whole;
        lastLoss = size;
    }

    public int size() {
        return size;
    }

    public boolean isWhole() {
        return whole < 0;
    }

    private int front() {
        return whole < 0 ? size : whole;
    }

    private int tail() {
        return whole < 0 ? size : size - lastLoss;
    }

    /** Pairs the items of two lists as far as can be known. */
    public static Paired pair(LossyList a, LossyList b, Pair pair) {
        int front = Math.min(a.front(), b.front());
        int tail = Math.min(a.tail(), b.tail());
        if (front + tail > Math.min(a.size, b.size)) {
            // The lists contradict each other: the ends can't both be right.
            tail = 0;
        }
        for (int i = 0; i < front; i++) {
            pair.make(i, i);
        }
        for (int i = tail; i > 0; i--) {
            pair.make(a.size - i, b.size - i);
        }
        return new Paired(front, tail);
    }
}
