package pairdown.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.time.TimeAxis;

class TypedTimeTest {
    private static final TimeAxis AXIS = new TimeAxis(Instant.parse("2031-05-14T15:00:00Z"));

    @ParameterizedTest
    @CsvSource({
        "15:02:11.35, 131.35",
        "15:02, 120",
        "14:59:50, -10",
        "+12.5, 72.5",
        "-3, 57",
        "2031-05-14T15:00:01Z, 1",
    })
    void aTimeIsFoundAsItIsSpoken(String typed, double t_s) {
        Optional<Double> found = TypedTime.parse(typed, AXIS, 60);
        assertEquals(t_s, found.orElse(Double.NaN), 1e-9);
    }

    @Test
    void aTimePastMidnightIsTheNextDays() {
        TimeAxis late = new TimeAxis(Instant.parse("2031-05-14T23:59:00Z"));
        assertEquals(90, TypedTime.parse("0:00:30", late, 0).orElse(Double.NaN), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "noon", "25:00", "15:02:99", "12", "T"})
    void whatIsNoTimeIsRefused(String typed) {
        assertTrue(TypedTime.parse(typed, AXIS, 60).isEmpty());
    }

    @Test
    void aNoteMayNameItsVideo() {
        assertEquals(
                new NoteText("hand on the tip", Optional.of("helmet.mp4 frame 5120")),
                NoteText.of("hand on the tip video: helmet.mp4 frame 5120"));
        assertEquals(new NoteText("nothing", Optional.empty()), NoteText.of(" nothing "));
    }
}
