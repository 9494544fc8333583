package pairdown.demo.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import pairdown.atmosphere.Atmosphere;
import pairdown.demo.truth.TrueBody;
import pairdown.demo.truth.TrueEpisode;
import pairdown.demo.truth.TrueTail;
import pairdown.demo.truth.Truth;
import pairdown.track.Channel;
import pairdown.units.Unit;
import pairdown.vector.Vec3;

/** The lead's dive as flown, against the balance of forces and the plan. */
class LeadDiveTest {
    private static final double G = Atmosphere.GRAVITY_MPS2;

    /** Means over the steady dive. */
    private record Steady(
            double airspeed_mps,
            double sink_mps,
            double normal_g,
            double retarding,
            double modelled,
            double coefficient,
            double elevator) {}

    private static double[] rows(TrueBody body, Channel channel) {
        return Objects.requireNonNull(body.systems().get(channel));
    }

    private static double msl_m(Truth truth, Vec3 p) {
        return truth.frame().toGeodetic(p).height_m() - truth.air().undulation_m();
    }

    private static Vec3 through_mps(Truth truth, int row) {
        TrueBody lead = truth.body("lead");
        double msl_m = msl_m(truth, lead.motion().position_m(row));
        return lead.motion().velocity_mps(row).minus(truth.air().meanWind_mps().apply(msl_m));
    }

    /**
     * Sums over the steady dive. The retarding force over weight is taken twice: from the motion,
     * sin γ − V̇/g, and from the model, D + T_rev over W with T_rev = Tc′·q·A.
     */
    private static Steady steady(Truth truth, double flap) {
        TrueBody lead = truth.body("lead");
        TrueTail tail = truth.tail().orElseThrow();
        int[] dive = Flights.steadyDive(truth);
        double step_s = lead.motion().step_s();
        double[] sum = new double[7];
        int n = 0;
        for (int i = dive[0]; i < dive[1] - 1; i++) {
            Vec3 air = through_mps(truth, i);
            Vec3 felt =
                    lead.motion()
                            .velocity_mps(i + 1)
                            .minus(lead.motion().velocity_mps(i - 1))
                            .times(0.5 / step_s)
                            .plus(new Vec3(0, 0, G));
            double along = felt.dot(air.unit());
            double across = felt.minus(air.unit().times(along)).norm();
            double density =
                    truth.air()
                            .atmosphere()
                            .density_kgpm3(msl_m(truth, lead.motion().position_m(i)));
            double logged_mps = rows(lead, Channel.TRUE_AIRSPEED)[i];
            double q_Pa = 0.5 * density * logged_mps * logged_mps;
            double lift_N = across * lead.mass_kg();
            double back_N =
                    Airframe.drag_N(flap, lift_N, q_Pa)
                            + tail.coefficient()[i] * q_Pa * Propeller.DISC_M2;
            double[] values = {
                logged_mps,
                -air.z(),
                across / G,
                -along / G,
                back_N / (lead.mass_kg() * G),
                tail.coefficient()[i],
                tail.elevator()[i]
            };
            for (int k = 0; k < values.length; k++) {
                sum[k] += values[k];
            }
            n++;
        }
        return new Steady(
                sum[0] / n, sum[1] / n, sum[2] / n, sum[3] / n, sum[4] / n, sum[5] / n, sum[6] / n);
    }

    @Test
    void theTargetIsHeldWithinItsTolerances() {
        Steady s = steady(Flights.of(Flights.PRACTICE), 1);
        assertEquals(37.998, s.airspeed_mps(), 1.5);
        assertEquals(17.78, s.sink_mps(), 1.0);
    }

    @Test
    void retardingForcesBalanceTheWeightsShareAlongThePath() {
        for (Scenario scenario : List.of(Flights.PRACTICE, Flights.IDLE)) {
            Steady s = steady(Flights.of(scenario), 1);
            assertEquals(s.modelled(), s.retarding(), 0.002 * s.modelled(), s::toString);
        }
    }

    @Test
    void theStrapsFeelNearlyNineTenthsOfTheWeightAcrossThePath() {
        // cos 27.9° = 0.884.
        assertEquals(0.884, steady(Flights.of(Flights.PRACTICE), 1).normal_g(), 0.015);
    }

    @Test
    void theTargetLiesWhereTheTailHasLostMostOfItsAir() {
        // 1.11 at 10,000 ft, by the balance; less in the denser air below.
        Truth truth = Flights.of(Flights.PRACTICE);
        int[] dive = Flights.steadyDive(truth);
        TrueTail tail = truth.tail().orElseThrow();
        double sum = 0;
        int n = 0;
        for (int i = dive[0]; i < dive[1]; i++) {
            double off_m = msl_m(truth, truth.body("lead").motion().position_m(i)) - 3048;
            if (Math.abs(off_m) < 150) {
                sum += tail.coefficient()[i];
                n++;
            }
        }
        assertEquals(1.11, sum / n, 0.03);
        assertEquals(0.4, steady(truth, 1).elevator(), 0.02);
    }

    @Test
    void anIdleDiveAtTheTargetsAirspeedSinksHalfAsFast() {
        // 1,500 to 1,660 ft/min at 85 mph with full flap, 10,000 ft, between no thrust and idle
        // drag; lower down the same glide is a little steeper through denser air.
        Steady s = steady(Flights.of(Flights.IDLE), 1);
        assertEquals(37.998, s.airspeed_mps(), 0.7);
        assertEquals(1600, Unit.FOOT_PER_MINUTE.fromBase(s.sink_mps()), 120);
    }

    @Test
    void energyGoesIntoDragAndBraking() {
        Truth truth = Flights.of(Flights.PRACTICE);
        TrueBody lead = truth.body("lead");
        int[] dive = Flights.steadyDive(truth);
        double lost_J = energy_J(truth, dive[0]) - energy_J(truth, dive[1]);
        Steady s = steady(truth, 1);
        double flown_s = (dive[1] - dive[0]) * lead.motion().step_s();
        double weight_N = lead.mass_kg() * G;
        // Means of products differ from products of means by the dive's small wobbles.
        double braked_J = s.modelled() * weight_N * s.airspeed_mps() * flown_s;
        assertEquals(braked_J, lost_J, 0.01 * braked_J);
    }

    /** Height's and airspeed's energy: winds change slowly with height. */
    private static double energy_J(Truth truth, int row) {
        TrueBody lead = truth.body("lead");
        double v = through_mps(truth, row).norm();
        return lead.mass_kg() * (v * v / 2 + G * lead.motion().position_m(row).z());
    }

    @Test
    void aPlainDiveHasNoEpisode() {
        assertEquals(List.of(), Flights.of(Flights.PRACTICE).episodes());
        assertEquals(List.of(), Flights.of(Flights.IDLE).episodes());
    }

    @Test
    void tooMuchReverseIsOneEpisodeThatForwardPowerEnds() {
        Truth truth = Flights.of(Flights.TOO_MUCH);
        List<TrueEpisode> episodes = truth.episodes();
        assertEquals(1, episodes.size(), episodes::toString);
        TrueEpisode e = episodes.get(0);
        assertTrue(e.precededBy().isPresent(), episodes::toString);
        assertTrue(e.precededBy().get().to_pct() < e.precededBy().get().from_pct());
        assertEquals(e.start_s(), e.precededBy().get().time_s(), 4);
        assertTrue(e.endedAfter().isPresent(), episodes::toString);
        assertTrue(e.endedAfter().get().to_pct() > e.endedAfter().get().from_pct());
        TrueTail tail = truth.tail().orElseThrow();
        int row = (int) ((e.start_s() + e.end_s()) / 2 / truth.body("lead").motion().step_s());
        assertTrue(tail.elevator()[row] < 0.6 * 0.4, "the wake is shut");
    }

    @Test
    void powerTakenOffAndPutBackIsNoEpisode() {
        Truth truth = Flights.of(Flights.HARMLESS);
        assertEquals(List.of(), truth.episodes());
        long toReverse =
                truth.powerChanges().stream().filter(c -> c.from_pct() - c.to_pct() >= 40).count();
        assertTrue(toReverse >= 1, truth.powerChanges()::toString);
    }
}
