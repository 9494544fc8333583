package pairdown.motion;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pairdown.attempt.ClockMark;
import pairdown.attempt.LogRef;
import pairdown.attempt.Participant;
import pairdown.attempt.Role;
import pairdown.clock.ClockDoubt;
import pairdown.clock.ClockMap;
import pairdown.clock.ClockMethod;
import pairdown.clock.ClockResult;
import pairdown.geodesy.Geodetic;
import pairdown.geodesy.LocalFrame;
import pairdown.height.AlignedLog;
import pairdown.height.HeightResult;
import pairdown.time.TimeAxis;
import pairdown.track.Channel;
import pairdown.track.HeightDatum;
import pairdown.track.LogReport;
import pairdown.track.Track;
import pairdown.units.Estimate;
import pairdown.vector.Vec3;

/** Makes aligned logs from measurements in a local frame. */
public final class LogFixture {
    public static final LocalFrame FRAME = LocalFrame.at(new Geodetic(-24.5, 15.5, 2000));
    private static final Instant EPOCH = Instant.parse("2031-05-14T15:00:00Z");

    private final Track.Builder rows = new Track.Builder();
    private final List<Float> heights = new ArrayList<>();
    private double clockSigma_s;
    private Optional<ClockDoubt> clock = Optional.empty();
    private double heightSigma_m;
    private Optional<Estimate> latency_s = Optional.empty();
    private Role role = Role.FLYER;
    private String format = "csv";

    /** A row with a position in the frame. */
    public LogFixture fix(double t_s, Vec3 enu_m) {
        Geodetic g = FRAME.toGeodetic(enu_m);
        rows.row(t_s)
                .set(Channel.LATITUDE, g.latitude_deg())
                .set(Channel.LONGITUDE, g.longitude_deg())
                .set(Channel.HEIGHT, g.height_m());
        heights.add((float) g.height_m());
        return this;
    }

    /** A row with a position but no height. */
    public LogFixture fixWithoutHeight(double t_s, Vec3 enu_m) {
        Geodetic g = FRAME.toGeodetic(enu_m);
        rows.row(t_s)
                .set(Channel.LATITUDE, g.latitude_deg())
                .set(Channel.LONGITUDE, g.longitude_deg());
        heights.add(Float.NaN);
        return this;
    }

    /** The last row's velocity, given in the frame's axes. */
    public LogFixture velocity(Vec3 enu_mps) {
        int row = rows.size() - 1;
        Geodetic here =
                new Geodetic(
                        rows.get(Channel.LATITUDE, row), rows.get(Channel.LONGITUDE, row), 2000);
        Vec3 v = FRAME.rotationTo(LocalFrame.at(here)).times(enu_mps);
        return set(Channel.VELOCITY_EAST, v.x())
                .set(Channel.VELOCITY_NORTH, v.y())
                .set(Channel.VELOCITY_DOWN, -v.z());
    }

    public LogFixture set(Channel channel, double value) {
        rows.set(channel, value);
        return this;
    }

    public LogFixture role(Role other) {
        role = other;
        return this;
    }

    public LogFixture format(String other) {
        format = other;
        return this;
    }

    public LogFixture clockSigma(double sigma_s) {
        clockSigma_s = sigma_s;
        return this;
    }

    public LogFixture clock(ClockDoubt doubt) {
        clock = Optional.of(doubt);
        return this;
    }

    public LogFixture heightSigma(double sigma_m) {
        heightSigma_m = sigma_m;
        return this;
    }

    public LogFixture latency(double value_s, double sigma_s) {
        latency_s = Optional.of(new Estimate(value_s, sigma_s));
        return this;
    }

    public AlignedLog build() {
        LogRef ref = new LogRef("a.csv", Path.of("a.csv"), Optional.empty(), ClockMark.NONE);
        Participant who =
                new Participant(
                        "blue",
                        role,
                        List.of(ref),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty());
        Track track =
                rows.build(
                        Optional.of(EPOCH),
                        HeightDatum.ELLIPSOID,
                        LogReport.whole("a.csv", format));
        float[] h = new float[heights.size()];
        for (int i = 0; i < h.length; i++) {
            h[i] = heights.get(i);
        }
        ClockResult result =
                new ClockResult(
                        "blue",
                        "a.csv",
                        ClockMap.IDENTITY,
                        clockSigma_s,
                        clock.orElse(ClockDoubt.own(clockSigma_s)),
                        ClockMethod.GNSS_TIME,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        latency_s,
                        Optional.empty(),
                        List.of());
        HeightResult height =
                new HeightResult(
                        "blue",
                        "a.csv",
                        HeightDatum.ELLIPSOID,
                        0,
                        Optional.empty(),
                        heightSigma_m,
                        List.of());
        return new AlignedLog(who, ref, track, new TimeAxis(EPOCH), result, height, h);
    }
}
