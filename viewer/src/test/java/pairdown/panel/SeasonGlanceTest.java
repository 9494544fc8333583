package pairdown.panel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pairdown.input.Action;
import pairdown.input.HitAreas;
import pairdown.input.Keymap;
import pairdown.replay.Desk;
import pairdown.replay.Recording;
import pairdown.replay.SyntheticDebrief;
import pairdown.report.SyntheticSeason;
import pairdown.season.AttemptSummary;
import pairdown.season.Envelope.Machine;
import pairdown.season.Season;
import pairdown.settings.ViewerSettings;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.words.Figures;
import pairdown.words.Translation;
import pairdown.words.Units;
import pairdown.words.Words;

class SeasonGlanceTest {
    private static final Recording RECORDING = Recording.of(new SyntheticDebrief().build());
    private static final Season SEASON = SyntheticSeason.season();
    private static final Palette LOOKS = Palette.LIGHT;

    private final RecordingCanvas canvas = new RecordingCanvas();
    private final Words words = Words.of(Locale.ENGLISH);
    private final Desk desk = new Desk(ViewerSettings.DEFAULT);
    private final Sheet sheet =
            new Sheet(
                    canvas,
                    new Theme(LOOKS, Sizes.atPercent(100)),
                    new HitAreas(1),
                    words,
                    new Figures(Units.METRIC, Locale.ENGLISH),
                    Keymap.standard());

    SeasonGlanceTest() {
        List<Desk.SeasonLine> lines = new ArrayList<>();
        for (AttemptSummary a : SEASON.attempts()) {
            lines.add(new Desk.SeasonLine(a, Path.of("season").resolve(a.folder())));
        }
        desk.season(lines, Optional.of(SEASON));
    }

    private List<Row> rows() {
        Translation told = new Translation(words);
        return new SeasonRows(words, told, sheet.figures(), Keymap.standard())
                .rows(desk, RECORDING);
    }

    @Test
    void whatTheSeasonSaysStandsBeforeItsAttempts() {
        List<String> heads = rows().stream().map(Row::left).filter(l -> !l.isEmpty()).toList();
        int list = heads.indexOf("Attempts, the latest first");
        for (String head :
                List.of(
                        "Step-down",
                        "Does the descent repeat?",
                        "Power and tail of lead",
                        "Can the machines match?")) {
            int at = heads.indexOf(head);
            assertTrue(at >= 0 && at < list, head + " at " + at);
        }
        String held = SEASON.repeatability().held().successes() + " of ";
        assertTrue(
                rows().stream().flatMap(r -> r.lines().stream()).anyMatch(l -> l.contains(held)));
    }

    /** 28 attempts with two moves toward reverse each; three of them with an episode. */
    @Test
    void movesOfPowerAreCountedWithWhatFollowed() {
        String moves =
                "Moves toward reverse in the dives: 56, of which an episode of faded control";
        assertTrue(
                rows().stream()
                        .flatMap(r -> r.lines().stream())
                        .anyMatch(l -> l.contains(moves + " followed 3")));
    }

    @Test
    void onePressLeadsToTheList() {
        Row first = rows().get(0);
        assertEquals(Action.PANEL_DOWN, first.command().orElseThrow().action());
        Row reached = rows().get((int) first.command().orElseThrow().value());
        assertEquals("Attempts, the latest first", reached.left());
    }

    @Test
    void equalFactorsAreEqualStepsDown() {
        Rect area = new Rect(0, 0, 400, 200);
        ladder().paint(sheet, area);
        double[] gates_m = {150, 60, 60, 30, 30, 15, 15, 8};
        List<Float> y = levels(LOOKS.limit());
        // Each flyer's rungs draw the gate; one flyer's come first.
        assertTrue(y.size() >= gates_m.length, y.size() + " gates");
        double perFactor = (y.get(1) - y.get(0)) / Math.log(gates_m[0] / gates_m[1]);
        assertTrue(perFactor > 0, "nearer is not further down");
        for (int i = 1; i < gates_m.length; i++) {
            double expected = perFactor * Math.log(gates_m[i - 1] / gates_m[i]);
            assertEquals(expected, y.get(i) - y.get(i - 1), 0.5, "step " + i);
        }
    }

    @Test
    void attemptsAreNumberedAsTheSeasonsPageNumbersThem() {
        ladder().paint(sheet, new Rect(0, 0, 400, 200));
        assertTrue(canvas.says("21"));
    }

    private LadderPlot ladder() {
        return new LadderPlot(
                SEASON.ladder(),
                SEASON.ladder().flyers().stream().map(f -> 1).toList(),
                Map.of(SEASON.ladder().flyers().get(0).rungs().get(0).folder(), 21),
                "");
    }

    private List<Float> levels(int rgba) {
        return canvas.lines.stream()
                .filter(s -> s.rgba() == rgba && s.y0() == s.y1())
                .map(RecordingCanvas.Straight::y0)
                .toList();
    }

    @Test
    void everySteadySegmentIsInsideItsMachinesHull() {
        List<Machine> machines =
                SEASON.envelope().machines().stream().filter(EnvelopePlot::isShown).toList();
        EnvelopePlot plot =
                new EnvelopePlot(
                        SEASON.envelope(), machines, machines.stream().map(m -> 0).toList());
        assertTrue(plot.hasSegments());
        plot.paint(sheet, new Rect(0, 0, 400, 220));
        // Looking like participant 0 all are discs.
        assertEquals(
                machines.stream().mapToInt(m -> m.segments().size()).sum(), canvas.discs.size());
        List<Area> hulls = canvas.rounds.stream().map(SeasonGlanceTest::grown).toList();
        for (float[] disc : canvas.discs) {
            assertTrue(
                    hulls.stream().anyMatch(h -> h.contains(disc[0], disc[1])),
                    disc[0] + ", " + disc[1] + " is in no hull");
        }
    }

    /** A closed line's inside with two pixels round it. */
    private static Area grown(float[] xy) {
        Path2D.Float path = new Path2D.Float();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        Area area = new Area(path);
        area.add(new Area(new BasicStroke(4).createStrokedShape(path)));
        return area;
    }
}
