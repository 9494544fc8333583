package pairdown.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pairdown.attempt.AirSettings;
import pairdown.attempt.Role;
import pairdown.geodesy.LocalFrame;
import pairdown.motion.Trajectory;
import pairdown.phase.Phase;
import pairdown.phase.PhaseSpan;
import pairdown.time.Span;

/**
 * Finds the wind by height layer from turns flown at a steady airspeed, from logged airspeed and
 * heading, and from winds typed in, all in one least-squares fit ({@link WindFit}) whose covariance
 * is the reported sigma. Refuses in words where nothing serves.
 */
public final class WindFinder {
    private final LocalFrame frame;
    private final DayAir air;
    private final WindSettings settings;
    private final List<String> notes = new ArrayList<>();
    private final Set<String> methods = new TreeSet<>();

    private WindFinder(LocalFrame frame, DayAir air, WindSettings settings) {
        this.frame = frame;
        this.air = air;
        this.settings = settings;
    }

    /** With default settings. */
    public static Wind find(
            List<WindSource> sources, AirSettings typed, DayAir air, LocalFrame frame) {
        return find(sources, typed, air, frame, WindSettings.DEFAULT);
    }

    /**
     * The wind over the heights flown.
     *
     * @param frame the attempt's, in which trajectories are given
     */
    public static Wind find(
            List<WindSource> sources,
            AirSettings typed,
            DayAir air,
            LocalFrame frame,
            WindSettings settings) {
        return new WindFinder(frame, air, settings).find(sources, typed);
    }

    private Wind find(List<WindSource> sources, AirSettings typed) {
        List<WindArc> arcs = new ArrayList<>();
        List<HeadingRun> runs = new ArrayList<>();
        for (WindSource source : sources) {
            turningSpans(source, sources).forEach(s -> addArcs(source, s, arcs));
            HeadingRun.of(source, frame, air).ifPresent(runs::add);
        }
        if (!runs.isEmpty()) {
            methods.add("airspeed-heading");
        }
        if (!typed.wind().isEmpty()) {
            methods.add("winds-aloft");
        }
        if (methods.isEmpty()) {
            notes.add(
                    "no wind: no turn of "
                            + Math.round(settings.refuseUnder_deg())
                            + "° or more at a steady airspeed, no logged airspeed with heading, no"
                            + " wind typed in; figures through the air are left out");
            return Wind.none(notes);
        }
        WindFit fit = new WindFit(arcs, runs, typed.wind(), air.undulation_m(), settings);
        List<Wind.Layer> layers = fit.layers();
        if (layers.isEmpty()) {
            notes.add("no wind: what there is leaves every layer too uncertain");
            return Wind.none(notes);
        }
        return new Wind(String.join("+", methods), layers, notes);
    }

    /** The stretches in which a participant may circle at a steady airspeed. */
    private List<Stretch> turningSpans(WindSource source, List<WindSource> all) {
        Role role = source.participant().role();
        boolean shipLogged = all.stream().anyMatch(s -> s.participant().role() == Role.JUMPSHIP);
        List<Stretch> spans = new ArrayList<>();
        for (PhaseSpan phase : source.phases()) {
            boolean climb =
                    phase.phase() == Phase.CLIMB || (phase.phase() == Phase.ABOARD && !shipLogged);
            if (climb && (role.isAircraft() || phase.phase() == Phase.ABOARD)) {
                Span flown = TakeOff.after(source.trajectory(), phase.span(), frame);
                spans.add(new Stretch(flown, "climb-headings"));
            }
            if (phase.phase() == Phase.CANOPY) {
                spans.add(new Stretch(phase.span(), "canopy-headings"));
            }
        }
        return spans;
    }

    private record Stretch(Span span, String method) {}

    private void addArcs(WindSource source, Stretch stretch, List<WindArc> arcs) {
        Trajectory trajectory = source.trajectory();
        double widest_deg = 0;
        boolean used = false;
        for (WindArc arc : WindArc.cut(trajectory, stretch.span(), frame, settings)) {
            widest_deg = Math.max(widest_deg, arc.heading_deg());
            if (arc.heading_deg() >= settings.refuseUnder_deg()) {
                arcs.add(arc);
                used = true;
            }
        }
        if (used) {
            methods.add(stretch.method());
        }
        note(source.participant().id(), stretch, widest_deg).ifPresent(notes::add);
    }

    private Optional<String> note(String id, Stretch stretch, double widest_deg) {
        String what = stretch.method().equals("climb-headings") ? "climb" : "canopy flight";
        if (widest_deg < settings.refuseUnder_deg()) {
            return Optional.of(
                    String.format(
                            Locale.ROOT,
                            "the %s of %s turns through %.0f° at most: too little for a wind",
                            what,
                            id,
                            widest_deg));
        }
        return widest_deg < settings.warnUnder_deg()
                ? Optional.of(
                        String.format(
                                Locale.ROOT,
                                "the %s of %s turns through %.0f° at most: its wind is rough",
                                what,
                                id,
                                widest_deg))
                : Optional.empty();
    }
}
