package pairdown.replay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import pairdown.time.Span;

class PlaybackTest {
    private static final Span SPAN = new Span(10, 110);
    private static final double[] MOMENTS_S = {20, 30, 90};

    private final Playback playback = new Playback(SPAN);

    @Test
    void timePassesAtItsRateForwardAndBack() {
        playback.seek(50);
        playback.atRate(4);
        playback.play(false);
        playback.advance(0.5);
        assertEquals(52, playback.t_s(), 1e-12);
        playback.turn();
        playback.advance(1);
        assertEquals(48, playback.t_s(), 1e-12);
        playback.stop();
        playback.advance(1);
        assertEquals(48, playback.t_s(), 1e-12);
    }

    @Test
    void ratesGoFromATenthToSixteenTimes() {
        for (int i = 0; i < 20; i++) {
            playback.faster();
        }
        assertEquals(16, playback.rate());
        for (int i = 0; i < 20; i++) {
            playback.slower();
        }
        assertEquals(0.1, playback.rate());
        assertThrows(IllegalArgumentException.class, () -> playback.atRate(17));
        assertThrows(IllegalArgumentException.class, () -> playback.atRate(0.05));
    }

    @Test
    void atAnEndItStopsAndFromThereBeginsAnew() {
        playback.seek(109.9);
        playback.play(false);
        playback.advance(1);
        assertEquals(110, playback.t_s());
        assertFalse(playback.isPlaying());
        playback.toggle();
        assertEquals(10, playback.t_s());
        assertTrue(playback.isPlaying());
    }

    @Test
    void aStepStopsAndStaysInside() {
        playback.play(false);
        playback.step(0.1);
        assertFalse(playback.isPlaying());
        assertEquals(10.1, playback.t_s(), 1e-12);
        playback.step(-5);
        assertEquals(10, playback.t_s());
    }

    @Test
    void betweenTwoMarksItPlaysOverAndOver() {
        playback.seek(60);
        playback.markLoop();
        assertEquals(60, playback.loopStart_s().orElseThrow());
        playback.seek(40);
        playback.markLoop();
        assertEquals(new Span(40, 60), playback.loop().orElseThrow());
        playback.seek(59.9);
        playback.play(false);
        playback.advance(0.2);
        assertEquals(40, playback.t_s());
        playback.turn();
        playback.advance(0.2);
        assertEquals(60, playback.t_s());
        playback.markLoop();
        playback.advance(30);
        assertEquals(30, playback.t_s(), 1e-12);
    }

    @Test
    void theMomentsAreGoneThroughBothWays() {
        playback.toNext(MOMENTS_S);
        playback.toNext(MOMENTS_S);
        assertEquals(30, playback.t_s());
        playback.toNext(MOMENTS_S);
        playback.toNext(MOMENTS_S);
        assertEquals(90, playback.t_s());
        playback.toPrevious(MOMENTS_S);
        assertEquals(30, playback.t_s());
    }

    /** Playing on between two presses, the second must not lead back to the same moment. */
    @Test
    void whilePlayingAMomentJustPassedIsSkipped() {
        playback.seek(30.3);
        playback.play(false);
        playback.toPrevious(MOMENTS_S);
        assertEquals(20, playback.t_s());
    }

    @Property(tries = 200, seed = "1")
    void nothingLeadsOutOfTheSpan(
            @ForAll @DoubleRange(min = -1e4, max = 1e4) double to_s,
            @ForAll @DoubleRange(min = 0.1, max = 16) double rate,
            @ForAll boolean backward) {
        Playback any = new Playback(SPAN);
        any.seek(to_s);
        any.atRate(rate);
        any.play(backward);
        any.advance(0.25);
        assertTrue(SPAN.contains(any.t_s()), () -> "at " + any.t_s());
        any.seek(Double.NaN);
        assertTrue(SPAN.contains(any.t_s()));
    }
}
