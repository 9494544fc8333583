package pairdown.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import pairdown.time.Span;
import pairdown.track.UnusableInputException;

/**
 * A few seeds of made-up truth; {@link PairStudy} runs many. The bounds leave room for so few: a
 * pair's slow error is one or two draws.
 */
class MadePairTest {
    private static final int SEEDS = 4;

    private static PairErrors touching;
    private static PairErrors hovering;

    @BeforeAll
    static void analyseAFewPairs() throws UnusableInputException {
        touching = PairStudy.run(SEEDS, s -> MadePair.touching(s, 5));
        hovering = PairStudy.run(SEEDS, s -> MadePair.hovering(s, 5, 1.5));
    }

    @Test
    void closureIsGoodToAFifthOfAMetreASecond() {
        assertTrue(touching.closureRms_mps() < 0.2, touching.words());
        assertTrue(hovering.closureRms_mps() < 0.2, hovering.words());
    }

    @Test
    void separationErrorsLieWithinTheirSigmas() {
        assertTrue(touching.within95_pct() > 80, touching.words());
        assertTrue(touching.within68_pct() > 40, touching.words());
    }

    @Test
    void aContactWithAJoltIsLikely() {
        // Over forty seeds one is missed: noise alone broke its lock.
        assertTrue(touching.likely() >= SEEDS - 1, touching.words());
        assertEquals(0, touching.likelyElsewhere(), touching.words());
    }

    @Test
    void aHoverBesideTheSlotIsNeverLikely() {
        assertEquals(0, hovering.likely() + hovering.likelyElsewhere(), hovering.words());
    }

    @Test
    void anAnchoredSeparationIsGoodToAMetreAroundTheTouch() {
        assertTrue(touching.anchoredRms_m() < 1, touching.words());
    }

    @Test
    void atOneFixASecondATouchCannotBeTold() throws UnusableInputException {
        PairErrors slow = PairStudy.run(2, s -> MadePair.touching(s, 1));
        assertEquals(0, slow.likely());
        assertEquals(2, slow.refused());
    }

    @Test
    void aMarkThatTheLogsContradictCorrectsNothingAndSaysSo() throws UnusableInputException {
        PairInput in =
                MadePair.hovering(3, 5, 60).logged().withTouchMarks(List.of(new Span(71, 73)));
        PairDebrief pair = PairAnalysis.analyse(in);
        assertEquals(Touch.Grade.MARKED, pair.touch().get(0).grade());
        assertTrue(pair.anchoredMotion().isEmpty());
        assertTrue(pair.refusals().stream().anyMatch(r -> r.contains("contradict")));
    }

    @Test
    void fixesThatAreRefusedEndNoMatch() throws UnusableInputException {
        Span astray = new Span(74, 76.5);
        MadePair made = MadePair.touching(2, 5).astray(astray);
        PairDebrief pair = PairAnalysis.analyse(made.logged());
        for (PairDebrief p : List.of(pair, PairAnalysis.analyse(made.truly()))) {
            MatchedWindow over =
                    p.matched().windows().stream()
                            .filter(w -> w.span().overlaps(astray))
                            .findFirst()
                            .orElseThrow();
            assertTrue(over.span().contains(astray.start_s()), over::toString);
            assertTrue(over.span().contains(astray.end_s()), over::toString);
        }
        assertTrue(pair.refusals().stream().noneMatch(r -> r.contains("have no fix")));
    }
}
