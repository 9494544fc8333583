package pairdown.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joml.Vector3f;
import pairdown.attempt.LeverArm;
import pairdown.pair.PairSeries.Figure;
import pairdown.replay.Body;
import pairdown.replay.Link;
import pairdown.replay.Moment;

/**
 * A place on the lead that one flyer or several join on: its slot, or the lead itself where none is
 * planned. Found anew in every frame.
 */
final class SlotPlace {
    private final int lead;
    private final Optional<LeverArm> arm;
    private final List<Link> links = new ArrayList<>();
    private final Vector3f offset = new Vector3f();
    private double east_m;
    private double north_m;
    private double up_m;

    private SlotPlace(int lead, Optional<LeverArm> arm) {
        this.lead = lead;
        this.arm = arm;
    }

    private record Key(int lead, Optional<LeverArm> arm) {}

    /** The places of a moment's pairs, each once. */
    static List<SlotPlace> of(Moment moment) {
        Map<Key, SlotPlace> found = new LinkedHashMap<>();
        for (Link link : moment.links()) {
            Key key = new Key(link.lead(), link.pair().slotArm());
            found.computeIfAbsent(key, k -> new SlotPlace(k.lead(), k.arm())).links.add(link);
        }
        return List.copyOf(found.values());
    }

    /** Finds the place at the moment; false while the lead has none. */
    boolean find(Moment moment) {
        Body body = moment.body(lead);
        LeverArm a = arm.orElse(LeverArm.NONE);
        offset.set((float) a.right_m(), (float) a.ahead_m(), (float) a.above_m());
        body.bodyToEnu().transform(offset);
        east_m = body.east_m() + offset.x;
        north_m = body.north_m() + offset.y;
        up_m = body.up_m() + offset.z;
        return body.isPresent();
    }

    /** The pairs that meet here. */
    List<Link> links() {
        return links;
    }

    /** Whether the lead has a slot here. */
    boolean isSlot() {
        return arm.isPresent();
    }

    double east_m() {
        return east_m;
    }

    double north_m() {
        return north_m;
    }

    double up_m() {
        return up_m;
    }

    /** Whether any of its flyers is between exit and opening. */
    boolean isInUse() {
        for (int i = 0; i < links.size(); i++) {
            if (links.get(i).isPresent()) {
                return true;
            }
        }
        return false;
    }

    /** Whether any of its flyers is as near as a gate. */
    boolean isReached(double gate_m) {
        for (int i = 0; i < links.size(); i++) {
            if (links.get(i).figure(Figure.GAP) <= gate_m) {
                return true;
            }
        }
        return false;
    }

    boolean isMatched() {
        for (int i = 0; i < links.size(); i++) {
            if (links.get(i).isPresent() && links.get(i).isMatched()) {
                return true;
            }
        }
        return false;
    }

    /** Its flyer's colour; where several share it, none of theirs. */
    int colour(Stage stage) {
        return links.size() == 1 ? stage.colour(links.get(0).flyer()) : stage.palette().inkSoft();
    }
}
