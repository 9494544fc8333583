package pairdown.motion;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One axis forward and backward: milliseconds a log. A million fix-axes a second is 1 ms for every
 * thousand fixes; growth is linear if each row takes ten times the one before. Run with {@code -prof
 * gc}: allocation must not grow faster than the result's own 96 bytes a fix.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx8g")
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
public class SmootherBenchmark {
    private static final AxisModel MODEL = new AxisModel(0.8, 45, 0);

    @Param({"10000", "100000", "1000000", "10000000"})
    int fixes;

    private double[] time_s;
    private double[] position;
    private double[] velocity;
    private float[] positionVariance;
    private float[] velocityVariance;
    private double[] saved;

    @Setup
    public void measure() {
        Random random = new Random(1);
        time_s = new double[fixes];
        position = new double[fixes];
        velocity = new double[fixes];
        positionVariance = new float[fixes];
        velocityVariance = new float[fixes];
        saved = new double[fixes * AxisFilter.SAVED];
        for (int i = 0; i < fixes; i++) {
            time_s[i] = 0.2 * i;
            position[i] = 300 * Math.sin(0.1 * time_s[i]) + 0.2 * random.nextGaussian();
            velocity[i] = 30 * Math.cos(0.1 * time_s[i]) + 0.1 * random.nextGaussian();
            positionVariance[i] = 0.04f;
            velocityVariance[i] = 0.01f;
        }
    }

    /** The inner loop alone: nothing may be allocated. */
    @Benchmark
    public double forward() {
        AxisFilter filter = MODEL.filter();
        filter.start(position[0], 1000, 0, 100, 20);
        for (int i = 0; i < fixes; i++) {
            filter.predict(i == 0 ? 0 : time_s[i] - time_s[i - 1], 5);
            filter.updatePosition(position[i], positionVariance[i]);
            filter.updateVelocity(velocity[i], velocityVariance[i]);
            filter.save(saved, i * AxisFilter.SAVED);
        }
        return filter.p;
    }

    /** Forward and backward, with the result that is kept. */
    @Benchmark
    public AxisTrack smooth() {
        forward();
        return AxisTrack.smooth(
                time_s, saved, position, positionVariance, velocity, velocityVariance, MODEL);
    }
}
