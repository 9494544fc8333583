package pairdown.clock;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pairdown.attempt.Role;
import pairdown.clock.SyntheticRide.Logger;
import pairdown.height.AlignedLog;
import pairdown.height.HeightReconciler;

/** Time from a cold machine for a dozen long logs; prints it. */
public final class ClockTiming {
    private ClockTiming() {}

    public static void main(String[] args) {
        SyntheticRide ship = SyntheticRide.ship(3, 1500, s -> s > 80);
        List<LoadedLog> logs = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            Role role = i == 0 ? Role.LEAD : i == 1 ? Role.JUMPSHIP : Role.FLYER;
            SyntheticRide own =
                    i == 0
                            ? SyntheticRide.ship(99, 1500, s -> s % 200 > 80)
                            : i == 1 ? ship : ship.passenger(i * 0.3 - 2, 1200 + 3 * i, 1350 + i);
            logs.add(
                    SyntheticRide.loaded(
                            "p" + i, role, own.log(Logger.csv(10, i == 5 ? 7200 : i * 0.02, i))));
        }
        for (int round = 0; round < 4; round++) {
            long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            long start = System.nanoTime();
            ClockSolution s = CommonClock.align(logs, ClockSettings.DEFAULTS);
            long middle = System.nanoTime();
            List<AlignedLog> aligned = HeightReconciler.reconcile(logs, s);
            long end = System.nanoTime();
            double cpu_s =
                    (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) * 1e-9;
            System.out.printf(
                    Locale.ROOT,
                    "clock %.3f s, heights %.3f s, both %.3f s of processor, %d rides%n",
                    (middle - start) * 1e-9,
                    (end - middle) * 1e-9,
                    cpu_s,
                    s.rides().size());
            if (round == 0) {
                s.results()
                        .forEach(
                                r ->
                                        System.out.println(
                                                r.participant()
                                                        + " "
                                                        + r.method()
                                                        + " "
                                                        + r.map().offset_s()
                                                        + " "
                                                        + r.measured()
                                                        + " "
                                                        + r.warnings()));
                aligned.forEach(
                        a ->
                                System.out.println(
                                        a.participant().id()
                                                + " "
                                                + a.height().bias_m()
                                                + " "
                                                + a.height().biasSigma_m()));
            }
        }
    }
}
