package pairdown.clock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pairdown.attempt.Role;
import pairdown.clock.SyntheticRide.Logger;
import pairdown.geodesy.Geoid;
import pairdown.height.AlignedLog;
import pairdown.height.HeightReconciler;
import pairdown.track.HeightDatum;

/** Beside the made-up rides it needs; heights are reconciled on rides that the clock finds. */
class HeightReconcilerTest {
    private static final double UNDULATION_M = Geoid.egm96().undulation_m(-21.6, 15.1);
    private static final SyntheticRide SHIP = SyntheticRide.ship(11, 420, s -> s > 80);
    private static final SyntheticRide BLUE = SHIP.passenger(0.4, 350, 400);
    private static final Logger ELLIPSOID = Logger.csv(5, 0, 1).as("igc");

    @Test
    void aReceiversOwnGeoidIsMeasuredOnTheRideAndTakenOff() {
        Logger own = Logger.csv(5, 0, 2).heights(HeightDatum.MSL, UNDULATION_M - 4);
        AlignedLog blue = second(own);
        assertEquals(4, blue.height().bias_m().orElseThrow().value(), 2.5);
        assertEquals(1, blue.height().biasSigma_m(), 0.6);
        assertEquals(UNDULATION_M, blue.height().undulation_m(), 0.5);
        assertEquals(SHIP.position[2][4000] + 400, heightAt(blue, 200), 4);
    }

    @Test
    void heightsAboveTheEllipsoidCalledMslAreFoundOut() {
        Logger wrong = Logger.csv(5, 0, 2).as("gpx").heights(HeightDatum.MSL, 0);
        AlignedLog blue = second(wrong);
        assertEquals(HeightDatum.ELLIPSOID, blue.height().datumRead());
        assertEquals(0, blue.height().undulation_m());
        assertTrue(blue.height().warnings().toString().contains("undulation"));
        assertEquals(SHIP.position[2][4000] + 400, heightAt(blue, 200), 4);
    }

    @Test
    void anOpenDatumIsSaidToBeAssumed() {
        Logger open = Logger.csv(5, 0, 2).heights(HeightDatum.UNKNOWN, UNDULATION_M);
        AlignedLog blue = second(open);
        assertEquals(HeightDatum.MSL, blue.height().datumRead());
        assertTrue(blue.height().warnings().toString().contains("assumed"));
    }

    @Test
    void withoutARideTheModelsThreeMetresStay() {
        SyntheticRide elsewhere = SyntheticRide.ship(77, 420, s -> s > 80);
        Logger msl = Logger.csv(5, 0, 2).heights(HeightDatum.MSL, UNDULATION_M);
        List<LoadedLog> logs =
                List.of(
                        SyntheticRide.loaded("ship", Role.JUMPSHIP, SHIP.log(ELLIPSOID)),
                        SyntheticRide.loaded("lead", Role.LEAD, elsewhere.log(msl)));
        AlignedLog lead = reconcile(logs).get(1);
        assertTrue(lead.height().bias_m().isEmpty());
        assertEquals(3, lead.height().biasSigma_m());
    }

    private static AlignedLog second(Logger how) {
        return reconcile(
                        List.of(
                                SyntheticRide.loaded("ship", Role.JUMPSHIP, SHIP.log(ELLIPSOID)),
                                SyntheticRide.loaded("blue", Role.FLYER, BLUE.log(how))))
                .get(1);
    }

    private static List<AlignedLog> reconcile(List<LoadedLog> logs) {
        return HeightReconciler.reconcile(logs, CommonClock.align(logs, ClockSettings.DEFAULTS));
    }

    private static double heightAt(AlignedLog log, double log_s) {
        int row = log.track().rowAtOrBefore(log_s);
        return log.position(row).height_m();
    }
}
