package pairdown.panel;

import java.util.List;
import java.util.Optional;
import pairdown.attempt.Role;
import pairdown.season.Envelope;
import pairdown.season.Envelope.Corner;
import pairdown.season.Envelope.Machine;
import pairdown.season.SteadySegment;
import pairdown.theme.Palette;
import pairdown.words.Measure;

/**
 * Where lead and flyers have flown steadily, in calibrated airspeed and sink: a marker for each
 * steady segment, the hull round each machine and configuration, what a lead's and a flyer's hulls
 * share, and the target.
 */
final class EnvelopePlot implements Row.Picture {
    private static final float HEIGHT_MM = 56;
    private static final double MARGIN = 0.06;

    /** A polygon of more corners than this is not expected of hulls and is cut. */
    private static final int MOST_CORNERS = 400;

    private final Envelope envelope;
    private final List<Machine> machines;
    private final List<Integer> numbers;
    private final Optional<Corner> target;
    private final double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    private final double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    private final float[] corners = new float[2 * MOST_CORNERS];

    /**
     * @param machines those of lead and flyers
     * @param numbers for each of them, the participant it looks like
     */
    EnvelopePlot(Envelope envelope, List<Machine> machines, List<Integer> numbers) {
        this.envelope = envelope;
        this.machines = List.copyOf(machines);
        this.numbers = List.copyOf(numbers);
        this.target =
                envelope.target()
                        .filter(t -> t.calibratedAirspeed_mps().isPresent())
                        .map(
                                t ->
                                        new Corner(
                                                t.calibratedAirspeed_mps().getAsDouble(),
                                                t.set().sink_mps()));
        for (Machine machine : machines) {
            for (SteadySegment s : machine.segments()) {
                take(s.calibratedAirspeed_mps(), s.sink_mps());
            }
        }
        target.ifPresent(t -> take(t.calibratedAirspeed_mps(), t.sink_mps()));
    }

    static boolean isShown(Machine machine) {
        return machine.role().equals(Role.LEAD.key()) || machine.role().equals(Role.FLYER.key());
    }

    private void take(double airspeed_mps, double sink_mps) {
        low[0] = Math.min(low[0], airspeed_mps);
        high[0] = Math.max(high[0], airspeed_mps);
        low[1] = Math.min(low[1], sink_mps);
        high[1] = Math.max(high[1], sink_mps);
    }

    /** Whether there is a stretch to draw. */
    boolean hasSegments() {
        return high[0] > low[0] && high[1] > low[1];
    }

    @Override
    public float height_mm() {
        return HEIGHT_MM;
    }

    @Override
    public void paint(Sheet sheet, Rect area) {
        PanelPlot plot = new PanelPlot(sheet, area);
        Rect field = plot.field();
        plot.ground(sheet.words().get("season.sink", sheet.figures().symbol(Measure.SINK)));
        plot.level(sheet.words().get("season.airspeed", sheet.figures().symbol(Measure.AIRSPEED)));
        ticks(sheet, plot);
        sheet.canvas().clip(field.x(), field.y(), field.width(), field.height());
        for (Envelope.Overlap overlap : envelope.overlaps()) {
            for (List<Corner> polygon : overlap.polygons()) {
                int count = put(field, polygon);
                int shared = Palette.withOpacity(sheet.palette().matched(), 0x60);
                sheet.canvas().polygon(corners, count, shared);
            }
        }
        for (int i = 0; i < machines.size(); i++) {
            machine(sheet, field, machines.get(i), numbers.get(i));
        }
        target.ifPresent(t -> target(sheet, field, t));
        sheet.canvas().unclip();
    }

    private void ticks(Sheet sheet, PanelPlot plot) {
        Rect field = plot.field();
        for (double v : rounds(sheet, Measure.AIRSPEED, 0)) {
            plot.down(x(field, sheet.figures().fromShown(Measure.AIRSPEED, v)), v);
        }
        for (double v : rounds(sheet, Measure.SINK, 1)) {
            plot.across(y(field, sheet.figures().fromShown(Measure.SINK, v)), v);
        }
    }

    /** The round numbers of the unit shown inside the field. */
    private double[] rounds(Sheet sheet, Measure measure, int axis) {
        double from = sheet.figures().shown(measure, low[axis]);
        double to = sheet.figures().shown(measure, high[axis]);
        double step = PanelPlot.step(to - from, 4);
        double first = Math.ceil(from / step) * step;
        int count = Math.max(0, (int) Math.floor((to - first) / step + 1e-9) + 1);
        double[] rounds = new double[count];
        for (int i = 0; i < count; i++) {
            rounds[i] = first + i * step;
        }
        return rounds;
    }

    private void machine(Sheet sheet, Rect field, Machine machine, int number) {
        int rgba = sheet.palette().participant(number);
        int count = put(field, machine.hull());
        if (count > 1 && count < MOST_CORNERS) {
            corners[2 * count] = corners[0];
            corners[2 * count + 1] = corners[1];
            sheet.canvas().polyline(corners, count + 1, sheet.sizes().curve(), rgba);
        }
        for (SteadySegment s : machine.segments()) {
            sheet.marker(
                    number,
                    x(field, s.calibratedAirspeed_mps()),
                    y(field, s.sink_mps()),
                    0.6f * sheet.sizes().marker());
        }
    }

    private int put(Rect field, List<Corner> round) {
        int count = Math.min(MOST_CORNERS, round.size());
        for (int i = 0; i < count; i++) {
            corners[2 * i] = x(field, round.get(i).calibratedAirspeed_mps());
            corners[2 * i + 1] = y(field, round.get(i).sink_mps());
        }
        return count;
    }

    private void target(Sheet sheet, Rect field, Corner at) {
        float r = sheet.sizes().mm(2.2);
        float px = x(field, at.calibratedAirspeed_mps());
        float py = y(field, at.sink_mps());
        int ink = sheet.palette().ink();
        sheet.canvas().line(px - r, py, px + r, py, sheet.sizes().curve(), ink);
        sheet.canvas().line(px, py - r, px, py + r, sheet.sizes().curve(), ink);
        sheet.canvas().outline(px - r, py - r, 2 * r, 2 * r, r, sheet.sizes().hair(), ink);
    }

    private float x(Rect field, double airspeed_mps) {
        return field.x() + (float) share(airspeed_mps, 0) * field.width();
    }

    /** Sinking faster is further down, as in flight. */
    private float y(Rect field, double sink_mps) {
        return field.y() + (float) share(sink_mps, 1) * field.height();
    }

    private double share(double value, int axis) {
        double margin = MARGIN * (high[axis] - low[axis]);
        return (value - low[axis] + margin) / (high[axis] - low[axis] + 2 * margin);
    }
}
