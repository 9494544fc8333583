package pairdown.track;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pairdown.units.Dimension;

/**
 * What a column of a log measures. {@link #key()} is its spelling in files, which ends in the unit
 * the values are kept in; {@link #dimension()} says which typed units convert to it, where any do.
 *
 * <p>Signs: north, east, down, right and nose-up positive; power lever 0 idle, +100 full forward,
 * −100 full reverse; elevator + nose up, rudder and aileron + right, ±100 the stops.
 */
public enum Channel {
    LATITUDE("latitude_deg", Dimension.ANGLE, true),
    LONGITUDE("longitude_deg", Dimension.ANGLE, true),
    HEIGHT("height_m", Dimension.LENGTH),
    /** Height of the geoid above the ellipsoid as the receiver itself states it. */
    GEOID_SEPARATION("geoidSeparation_m", Dimension.LENGTH),
    VELOCITY_NORTH("velocityNorth_mps", Dimension.SPEED),
    VELOCITY_EAST("velocityEast_mps", Dimension.SPEED),
    VELOCITY_DOWN("velocityDown_mps", Dimension.SPEED),
    GROUND_SPEED("groundSpeed_mps", Dimension.SPEED),
    TRACK("track_deg", Dimension.ANGLE),
    /** One standard deviation per level axis, as the receiver states it. */
    HORIZONTAL_ACCURACY("horizontalAccuracy_m", Dimension.LENGTH),
    VERTICAL_ACCURACY("verticalAccuracy_m", Dimension.LENGTH),
    SPEED_ACCURACY("speedAccuracy_mps", Dimension.SPEED),
    SATELLITES("satellites"),
    /**
     * How the receiver made the fix: 0 none, 2 without height, 3 with height, 4 differentially
     * corrected, 5 carrier phase with float, 6 with fixed ambiguities.
     */
    FIX_TYPE("fixType"),
    INDICATED_AIRSPEED("indicatedAirspeed_mps", Dimension.SPEED),
    TRUE_AIRSPEED("trueAirspeed_mps", Dimension.SPEED),
    PRESSURE_ALTITUDE("pressureAltitude_m", Dimension.LENGTH),
    STATIC_PRESSURE("staticPressure_hPa", Dimension.PRESSURE),
    OUTSIDE_AIR_TEMPERATURE("outsideAirTemperature_C", Dimension.TEMPERATURE),
    HEADING("heading_deg", Dimension.ANGLE),
    PITCH("pitch_deg", Dimension.ANGLE),
    ROLL("roll_deg", Dimension.ANGLE),
    PITCH_RATE("pitchRate_dps"),
    ROLL_RATE("rollRate_dps"),
    YAW_RATE("yawRate_dps"),
    NORMAL_LOAD("normalLoad_g"),
    LONGITUDINAL_LOAD("longitudinalLoad_g"),
    LATERAL_LOAD("lateralLoad_g"),
    POWER_LEVER("powerLever_pct", Dimension.SHARE),
    BLADE_ANGLE("bladeAngle_deg", Dimension.ANGLE),
    TORQUE("torque_pct", Dimension.SHARE),
    PROPELLER_SPEED("propellerSpeed_rpm"),
    FLAP("flap_deg", Dimension.ANGLE),
    ELEVATOR("elevator_pct", Dimension.SHARE),
    RUDDER("rudder_pct", Dimension.SHARE),
    AILERON("aileron_pct", Dimension.SHARE);

    private static final Map<String, Channel> BY_KEY =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Channel::key, c -> c));

    private final String key;
    private final Optional<Dimension> dimension;
    private final boolean needsDouble;

    Channel(String key) {
        this(key, Optional.empty(), false);
    }

    Channel(String key, Dimension dimension) {
        this(key, Optional.of(dimension), false);
    }

    Channel(String key, Dimension dimension, boolean needsDouble) {
        this(key, Optional.of(dimension), needsDouble);
    }

    Channel(String key, Optional<Dimension> dimension, boolean needsDouble) {
        this.key = key;
        this.dimension = dimension;
        this.needsDouble = needsDouble;
    }

    /** The channel's name in files: {@code "velocityDown_mps"}. */
    public String key() {
        return key;
    }

    public Optional<Dimension> dimension() {
        return dimension;
    }

    /**
     * Whether single precision would lose what a receiver says (degrees of arc, to the millimetre).
     */
    boolean needsDouble() {
        return needsDouble;
    }

    /** Whether values are directions that wrap at a full turn. */
    public boolean isCircular() {
        return this == TRACK || this == HEADING;
    }

    public static Optional<Channel> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }
}
