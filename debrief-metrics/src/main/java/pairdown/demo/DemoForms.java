package pairdown.demo;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import pairdown.demo.logfile.LogForm;
import pairdown.demo.logfile.OpenForm;
import pairdown.demo.logfile.TableForm;
import pairdown.demo.logfile.TableForm.Heading;
import pairdown.demo.logfile.TimeForm;
import pairdown.track.Channel;
import pairdown.units.Unit;

/** The forms that the demo season's loggers write, all invented. */
final class DemoForms {
    /** The field's clock: UTC + 8 h 45 min, so that no whole hour explains a shift. */
    static final ZoneId FIELD_ZONE = ZoneId.of("+08:45");

    static final LogForm NMEA = OpenForm.plain("nmea");
    static final LogForm GPX = OpenForm.plain("gpx");
    static final LogForm KML = OpenForm.plain("kml");
    static final LogForm IGC = OpenForm.of("igc");

    private static final List<Channel> PLACE_AND_VELOCITY =
            List.of(
                    Channel.LATITUDE,
                    Channel.LONGITUDE,
                    Channel.HEIGHT,
                    Channel.VELOCITY_NORTH,
                    Channel.VELOCITY_EAST,
                    Channel.VELOCITY_DOWN,
                    Channel.SATELLITES);

    /** Heights above the ellipsoid, what the receiver thinks of itself. */
    static final LogForm CSV =
            named(
                    "heightEllipsoid_m",
                    Channel.HORIZONTAL_ACCURACY,
                    Channel.VERTICAL_ACCURACY,
                    Channel.SPEED_ACCURACY);

    /** Heights above the ellipsoid, no accuracies. */
    static final LogForm BRIEF_CSV = named("heightEllipsoid_m");

    /** Heights above sea level and the receiver's geoid, no accuracies. */
    static final LogForm MSL_CSV = named("heightMsl_m", Channel.GEOID_SEPARATION);

    private static final List<Heading> WORDS =
            List.of(
                    Heading.of(Channel.LATITUDE, "Latitude (deg)"),
                    Heading.of(Channel.LONGITUDE, "Longitude (deg)"),
                    Heading.in(Unit.FOOT, Channel.HEIGHT, "Height MSL (ft)"),
                    Heading.in(Unit.KNOT, Channel.VELOCITY_NORTH, "Speed north (kt)"),
                    Heading.in(Unit.KNOT, Channel.VELOCITY_EAST, "Speed east (kt)"),
                    Heading.in(Unit.KILOMETRE_PER_HOUR, Channel.VELOCITY_DOWN, "Speed down (km/h)"),
                    Heading.of(Channel.HORIZONTAL_ACCURACY, "Level accuracy (m)"),
                    Heading.of(Channel.SATELLITES, "Satellites"));

    /** Trade words with units, milliseconds since 1970. */
    static final LogForm MILLIS =
            new TableForm(List.of(), false, new TimeForm.UnixMillis("time_ms"), WORDS, false);

    /** Heights that say nothing of what they are from. */
    static final LogForm UNLABELLED =
            new TableForm(
                    List.of(),
                    false,
                    new TimeForm.Iso("time"),
                    List.of(
                            Heading.of(Channel.LATITUDE, "latitude"),
                            Heading.of(Channel.LONGITUDE, "longitude"),
                            Heading.of(Channel.HEIGHT, "height (m)"),
                            Heading.of(Channel.VELOCITY_NORTH, "speed north (m/s)"),
                            Heading.of(Channel.VELOCITY_EAST, "speed east (m/s)"),
                            Heading.of(Channel.VELOCITY_DOWN, "speed down (m/s)"),
                            Heading.of(Channel.HORIZONTAL_ACCURACY, "level accuracy (m)"),
                            Heading.of(Channel.SATELLITES, "satellites")),
                    false);

    /** The field's wall clock, decimal commas, a map to understand it. */
    static final LogForm WALL_CLOCK =
            new TableForm(
                    List.of("logger 7; sheet 2"),
                    true,
                    new TimeForm.Local("Clock", FIELD_ZONE),
                    List.of(
                            Heading.of(Channel.LATITUDE, "Y"),
                            Heading.of(Channel.LONGITUDE, "X"),
                            Heading.of(Channel.HEIGHT, "Z"),
                            Heading.in(Unit.KILOMETRE_PER_HOUR, Channel.VELOCITY_NORTH, "UN"),
                            Heading.in(Unit.KILOMETRE_PER_HOUR, Channel.VELOCITY_EAST, "UE"),
                            Heading.in(Unit.KILOMETRE_PER_HOUR, Channel.VELOCITY_DOWN, "UD")),
                    true);

    private static final List<Heading> SYSTEMS =
            List.of(
                    Heading.in(Unit.KNOT, Channel.INDICATED_AIRSPEED, "IAS"),
                    Heading.in(Unit.FOOT, Channel.PRESSURE_ALTITUDE, "PALT"),
                    Heading.of(Channel.OUTSIDE_AIR_TEMPERATURE, "OAT"),
                    Heading.of(Channel.HEADING, "HDG"),
                    Heading.of(Channel.PITCH, "PIT"),
                    Heading.of(Channel.ROLL, "ROL"),
                    Heading.of(Channel.PITCH_RATE, "Q"),
                    Heading.of(Channel.ROLL_RATE, "P"),
                    Heading.of(Channel.YAW_RATE, "R"),
                    Heading.of(Channel.NORMAL_LOAD, "NZ"),
                    Heading.of(Channel.LONGITUDINAL_LOAD, "NX"),
                    Heading.of(Channel.LATERAL_LOAD, "NY"),
                    Heading.of(Channel.POWER_LEVER, "PLA"),
                    Heading.of(Channel.BLADE_ANGLE, "BETA"),
                    Heading.of(Channel.TORQUE, "TQ"),
                    Heading.of(Channel.PROPELLER_SPEED, "NP"),
                    Heading.of(Channel.FLAP, "FLP"),
                    Heading.of(Channel.ELEVATOR, "ELEV"),
                    Heading.of(Channel.RUDDER, "RUD"),
                    Heading.of(Channel.AILERON, "AIL"));

    /** The recorder's short names, seconds from its own zero, a map to understand it. */
    static final LogForm RECORDER =
            new TableForm(
                    List.of("systems recorder 3"), false, new TimeForm.Elapsed("T"), SYSTEMS, true);

    /** The same with a clock that somebody set. */
    static final LogForm SET_RECORDER =
            new TableForm(
                    List.of("systems recorder 3"), false, new TimeForm.Iso("UTC"), SYSTEMS, true);

    private DemoForms() {}

    private static LogForm named(String height, Channel... more) {
        List<Heading> headings = new ArrayList<>();
        for (Channel c : PLACE_AND_VELOCITY) {
            headings.add(Heading.of(c, c == Channel.HEIGHT ? height : c.key()));
        }
        for (Channel c : more) {
            headings.add(Heading.of(c, c.key()));
        }
        return new TableForm(List.of(), false, new TimeForm.Iso("time"), headings, false);
    }
}
