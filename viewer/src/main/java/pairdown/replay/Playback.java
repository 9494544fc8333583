package pairdown.replay;

import java.util.List;
import java.util.Optional;
import pairdown.time.Span;

/**
 * Where in time the replay is and how fast it runs. Mutable: it is the one clock of the viewer, and
 * changes in every frame while playing.
 */
public final class Playback {
    /** Speeds a key steps through. */
    private static final List<Double> RATES = List.of(0.1, 0.25, 0.5, 1.0, 2.0, 4.0, 8.0, 16.0);

    /**
     * A step back to the previous moment skips one this near: else two presses in a row stay where
     * the first went while playing.
     */
    private static final double STEP_BACK_GRACE_S = 0.5;

    private final Span span;
    private double t_s;
    private double rate = 1;
    private boolean playing;
    private boolean backward;
    private Optional<Span> loop = Optional.empty();
    private Optional<Double> loopStart_s = Optional.empty();

    /** At the start of a span, standing still. */
    public Playback(Span span) {
        this.span = span;
        this.t_s = span.start_s();
    }

    public Span span() {
        return span;
    }

    /** The instant shown, on the attempt's axis. */
    public double t_s() {
        return t_s;
    }

    /** Speed against real time, always positive; the direction is apart. */
    public double rate() {
        return rate;
    }

    public boolean isPlaying() {
        return playing;
    }

    public boolean isBackward() {
        return backward;
    }

    /** The stretch played over and over, if any. */
    public Optional<Span> loop() {
        return loop;
    }

    /** The first end of a loop set while its second is not. */
    public Optional<Double> loopStart_s() {
        return loopStart_s;
    }

    /** Starts or stops; at the end it starts again from the beginning. */
    public void toggle() {
        playing = !playing;
        if (playing && !backward && t_s >= span.end_s()) {
            t_s = span.start_s();
        } else if (playing && backward && t_s <= span.start_s()) {
            t_s = span.end_s();
        }
    }

    public void stop() {
        playing = false;
    }

    /** Plays in this direction. */
    public void play(boolean backwards) {
        backward = backwards;
        playing = true;
    }

    /** Turns the direction of play. */
    public void turn() {
        backward = !backward;
    }

    public void faster() {
        rate = RATES.stream().filter(r -> r > rate * 1.001).findFirst().orElse(rate);
    }

    public void slower() {
        rate = RATES.stream().filter(r -> r < rate * 0.999).reduce((a, b) -> b).orElse(rate);
    }

    /**
     * @throws IllegalArgumentException outside 0.1 to 16
     */
    public void atRate(double wanted) {
        if (!(wanted >= 0.1 && wanted <= 16)) {
            throw new IllegalArgumentException("rate " + wanted + " is outside 0.1 to 16");
        }
        rate = wanted;
    }

    /** Goes to an instant, or the nearest end of the span. */
    public void seek(double to_s) {
        if (!Double.isNaN(to_s)) {
            t_s = Math.max(span.start_s(), Math.min(span.end_s(), to_s));
        }
    }

    /** Stops and moves by a little. */
    public void step(double by_s) {
        playing = false;
        seek(t_s + by_s);
    }

    /** Goes to the next of these instants (rising); stays where there is none. */
    public void toNext(double[] moments_s) {
        for (double moment_s : moments_s) {
            if (moment_s > t_s + 1e-6) {
                seek(moment_s);
                return;
            }
        }
    }

    /** Goes to the previous of these instants (rising); stays where there is none. */
    public void toPrevious(double[] moments_s) {
        double grace_s = playing ? STEP_BACK_GRACE_S * rate : 1e-6;
        for (int i = moments_s.length - 1; i >= 0; i--) {
            if (moments_s[i] < t_s - grace_s) {
                seek(moments_s[i]);
                return;
            }
        }
    }

    /** Sets one end of a loop, then the other, then takes it away. */
    public void markLoop() {
        if (loop.isPresent()) {
            loop = Optional.empty();
        } else if (loopStart_s.isPresent()) {
            double other_s = loopStart_s.get();
            loop = Optional.of(new Span(Math.min(other_s, t_s), Math.max(other_s, t_s)));
            loopStart_s = Optional.empty();
        } else {
            loopStart_s = Optional.of(t_s);
        }
    }

    /** Plays this stretch over and over. */
    public void loop(Span stretch) {
        loop = Optional.of(stretch);
        loopStart_s = Optional.empty();
        seek(stretch.start_s());
    }

    /** Lets real time pass: moves on while playing, round a loop, and stops at an end. */
    public void advance(double elapsed_s) {
        if (!playing) {
            return;
        }
        double next_s = t_s + (backward ? -elapsed_s : elapsed_s) * rate;
        if (loop.isPresent() && loop.get().duration_s() > 0) {
            Span round = loop.get();
            if (next_s > round.end_s() || next_s < round.start_s()) {
                next_s = backward ? round.end_s() : round.start_s();
            }
        }
        seek(next_s);
        if (t_s != next_s) {
            playing = false;
        }
    }
}
