package pairdown.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.debrief.Debrief;
import pairdown.geodesy.LocalFrame;
import pairdown.pair.PairDebrief;
import pairdown.track.Channel;
import pairdown.track.Series;

/**
 * All that is drawn at an instant, as plain data. One is made for a replay and filled anew in every
 * frame by {@link #fill}, so that a frame allocates nothing: read it, keep nothing of it.
 */
public final class Moment {
    private final Recording recording;
    private final List<Body> bodies = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final Optional<Body> subject;
    private Optional<Ghost> ghost;
    private double t_s;
    private double leadHeading_rad;

    public Moment(Recording recording) {
        this(recording, Optional.empty());
    }

    /**
     * @param ghost a second attempt laid over the first
     */
    public Moment(Recording recording, Optional<Ghost> ghost) {
        this.recording = recording;
        this.ghost = ghost;
        recording.participants().forEach(p -> bodies.add(new Body(p)));
        int number = recording.subject();
        this.subject = number < 0 ? Optional.empty() : Optional.of(bodies.get(number));
        for (PairDebrief pair : recording.debrief().pairs()) {
            Optional<Integer> lead = recording.indexOf(pair.lead());
            Optional<Integer> flyer = recording.indexOf(pair.flyer());
            if (lead.isPresent() && flyer.isPresent()) {
                links.add(new Link(pair, lead.get(), flyer.get()));
            }
        }
    }

    /**
     * A second attempt's moment beside the first's.
     *
     * @param moment of the other recording
     * @param alignment how its time lies against the first's
     */
    public record Ghost(Moment moment, Alignment alignment) {}

    /** Makes this the moment {@code t_s} on the attempt's axis. */
    public void fill(double t_s) {
        this.t_s = t_s;
        for (int i = 0; i < bodies.size(); i++) {
            bodies.get(i).fill(recording, i, t_s);
        }
        for (int i = 0; i < links.size(); i++) {
            links.get(i).fill(t_s);
        }
        recording.takeAhead(t_s);
        if (recording.axes().isPresent()) {
            leadHeading_rad = recording.axes().get().heading_rad(t_s);
        }
        if (ghost.isPresent()) {
            ghost.get().moment().fill(ghost.get().alignment().toOther_s(t_s));
        }
    }

    public double t_s() {
        return t_s;
    }

    public Recording recording() {
        return recording;
    }

    public Debrief debrief() {
        return recording.debrief();
    }

    /** In the order of the recording's participants. */
    public List<Body> bodies() {
        return bodies;
    }

    public Body body(int number) {
        return bodies.get(number);
    }

    /** The one the lead-fixed view follows; empty where nobody moves. */
    public Optional<Body> subject() {
        return subject;
    }

    public List<Link> links() {
        return links;
    }

    /** The second attempt, if one is laid over. */
    public Optional<Ghost> ghost() {
        return ghost;
    }

    /** Lays the second attempt's time against the first's in another way. */
    public void align(Alignment other) {
        ghost = ghost.map(g -> new Ghost(g.moment(), other));
    }

    /** Direction of the lead through the air, clockwise from true north (rad). */
    public double leadHeading_rad() {
        return leadHeading_rad;
    }

    /** A channel a participant's systems logged, at this moment; NaN where there is none. */
    public double system(Body body, Channel channel) {
        Series series = body.participant().systems().get(channel);
        return series == null ? Double.NaN : series.at(t_s);
    }

    public LocalFrame frame() {
        return recording.debrief().frame();
    }
}
