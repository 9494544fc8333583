package pairdown.pair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import pairdown.pair.Touch.Evidence;
import pairdown.pair.Touch.Grade;
import pairdown.time.Span;

/**
 * Gathers what speaks for a touch, each line by itself, and grades it. No one line makes more than
 * {@code possible}; only a person's mark makes more than {@code likely}.
 *
 * <p>A touch lasts as long as the velocity lock: the relative velocity stays within the noise
 * expected of two bodies moving as one. A lock that the position contradicts is a match, not a
 * touch. Rough air rolls an aircraft as a touch does, so a step of the roll rate alone makes a
 * touch likely only where it stands out and no logged control could answer it; a weight on a wing
 * tip the pilot has to hold.
 */
final class TouchFinder {
    /** Locks and positions interrupted for no longer than this are one (s). */
    private static final double JOIN_S = 0.5;

    private final PairInput input;
    private final PairRows rows;
    private final PairSettings.Contact settings;
    private final AircraftResponse response;
    private final FlyerResponse flyer;
    private final boolean locksShow;
    private final boolean graded;

    /**
     * @param graded whether the data may be asked at all; if not, only a person's marks are listed
     */
    TouchFinder(PairInput input, PairRows rows, PairSettings.Contact settings, boolean graded) {
        this.graded = graded;
        this.input = input;
        this.rows = rows;
        this.settings = settings;
        this.response =
                new AircraftResponse(
                        input.lead().systems(), input.slotArm().orElseThrow(), settings);
        this.flyer = new FlyerResponse(input.flyer().systems(), settings);
        this.locksShow =
                Math.min(input.lead().grade().rate_Hz(), input.flyer().grade().rate_Hz())
                        >= settings.lock_Hz();
    }

    List<Touch> find() {
        List<Span> locks = graded && locksShow ? locks() : List.of();
        List<Touch> touches = new ArrayList<>();
        List<Span> positions = graded ? positions() : List.of();
        for (Span lock : locks) {
            touches.add(ofLock(lock, positions));
        }
        for (Span position : positions) {
            if (locks.stream().noneMatch(position::overlaps)) {
                touches.add(graded(position, EnumSet.of(Evidence.POSITION), false));
            }
        }
        for (Span mark : input.touchMarks()) {
            if (touches.stream().noneMatch(t -> t.span().overlaps(mark))) {
                touches.add(graded(mark, EnumSet.noneOf(Evidence.class), false));
            }
        }
        touches.sort(Comparator.comparingDouble(t -> t.span().start_s()));
        return touches;
    }

    private Touch ofLock(Span lock, List<Span> positions) {
        Set<Evidence> evidence = EnumSet.of(Evidence.VELOCITY_LOCK);
        if (positions.stream().anyMatch(lock::overlaps)) {
            evidence.add(Evidence.POSITION);
        }
        boolean blown = flyer.blowIn(lock);
        boolean trimmed = response.trimShiftIn(lock);
        if (blown || response.joltIn(lock)) {
            evidence.add(Evidence.JOLT);
        }
        if (trimmed) {
            evidence.add(Evidence.TRIM);
        }
        return graded(lock, evidence, trimmed || blown || response.joltAloneIn(lock));
    }

    private Touch graded(Span span, Set<Evidence> evidence, boolean answered) {
        if (input.touchMarks().stream().anyMatch(span::overlaps)) {
            evidence.add(Evidence.MARK);
            return new Touch(span, Grade.MARKED, List.copyOf(evidence));
        }
        Grade grade = answered ? Grade.LIKELY : Grade.POSSIBLE;
        return new Touch(span, grade, List.copyOf(evidence));
    }

    /** Where the position is consistent with the slot for long enough. */
    private List<Span> positions() {
        double[] margin = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            margin[i] = settings.consistent() - rows.slotSigmas2[i];
        }
        return Stretches.lasting(
                Stretches.joined(Stretches.of(rows, margin), JOIN_S), settings.positionFor_s());
    }

    /**
     * Where the mean square of the relative velocity over the window comes under that of the noise,
     * for as long as it stays near it; each stretch is as long as the windows in it reach.
     */
    private List<Span> locks() {
        List<Span> sure = windowsUnder(settings.lockFactor());
        return windowsUnder(settings.releaseFactor()).stream()
                .filter(s -> sure.stream().anyMatch(s::overlaps))
                .toList();
    }

    private List<Span> windowsUnder(double factor) {
        int half = (int) Math.round(settings.lockWindow_s() / 2 / rows.step_s);
        double[] margin = new double[rows.size];
        for (int i = 0; i < rows.size; i++) {
            margin[i] = lockMargin(i, half, factor);
        }
        List<Span> reach = new ArrayList<>();
        for (Span centres : Stretches.of(rows, margin)) {
            reach.add(
                    new Span(
                            centres.start_s() - half * rows.step_s,
                            centres.end_s() + half * rows.step_s));
        }
        return Stretches.joined(reach, JOIN_S);
    }

    private double lockMargin(int i, int half, double factor) {
        if (i - half < 0
                || i + half >= rows.size
                || !(rows.slotSigmas2[i] < settings.contradicted())) {
            return Double.NaN;
        }
        double moved = 0;
        double noise = 0;
        for (int k = i - half; k <= i + half; k++) {
            for (double[] axis : rows.rate_mps) {
                moved += axis[k] * axis[k];
            }
            noise += rows.rateNoise2[k];
        }
        return (factor * factor * noise - moved) / (2 * half + 1);
    }
}
