package pairdown.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SizesTest {
    /** CSS Values and Units 3: 96 px are one inch, 25.4 mm. */
    @Test
    void atHundredPercentATargetIsFifteenMillimetres() {
        assertEquals(15, Sizes.atPercent(100).target() / 96 * 25.4, 1e-4);
    }

    @Test
    void aDisplayThatTellsItsPixelsGetsTrueMillimetres() {
        Sizes sizes = Sizes.of(3840, 2160, 1, 0.155, 1);
        assertEquals(15, sizes.target() * 0.155, 1e-3);
    }

    @Test
    void aProjectorsPixelsAreNotBelieved() {
        assertEquals(Sizes.AT_100_PERCENT, Sizes.of(1920, 1080, 1, 1.1, 1).perMm(), 1e-6);
    }

    @Test
    void aSmallWindowShrinksEverythingUntilItFits() {
        Sizes sizes = Sizes.of(640, 360, 1, 0, 1);
        assertTrue(sizes.perMm() < Sizes.AT_100_PERCENT);
    }

    /** 20 minutes of arc at 2 m are 11.6 mm; capitals are 0.73 of the size in both faces. */
    @Test
    void bigFiguresReadAtTwoMetres() {
        double capital_mm = 0.73 * Sizes.atPercent(100).bigFigure() / Sizes.AT_100_PERCENT;
        double arc_min = Math.toDegrees(Math.atan(capital_mm / 2000)) * 60;
        assertTrue(arc_min >= 20, "only " + arc_min);
    }
}
