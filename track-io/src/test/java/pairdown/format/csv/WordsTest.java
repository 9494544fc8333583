package pairdown.format.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.track.Channel;

class WordsTest {
    @ParameterizedTest
    @EnumSource(Channel.class)
    void everyChannelIsKnownByItsOwnName(Channel channel) {
        assertEquals(channel, Words.meaning(Heading.of(channel.key())).orElseThrow().channel());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lat|LATITUDE",
                "Latitude (deg)|LATITUDE",
                "lat_deg|LATITUDE",
                "GPS Latitude|LATITUDE",
                "lng|LONGITUDE",
                "Long|LONGITUDE",
                "longitude [°]|LONGITUDE",
                "alt|HEIGHT",
                "Altitude MSL (ft)|HEIGHT",
                "elevation_m|HEIGHT",
                "Height above mean sea level (m)|HEIGHT",
                "hMSL|HEIGHT",
                "Height above ellipsoid [m]|HEIGHT",
                "altitude_hae_m|HEIGHT",
                "Pressure altitude (ft)|PRESSURE_ALTITUDE",
                "Baro Alt (m)|PRESSURE_ALTITUDE",
                "Baro (hPa)|STATIC_PRESSURE",
                "Static pressure (mbar)|STATIC_PRESSURE",
                "speed|GROUND_SPEED",
                "Ground Speed (km/h)|GROUND_SPEED",
                "Speed over ground (kt)|GROUND_SPEED",
                "horizontal speed m/s|GROUND_SPEED",
                "Course over ground (deg)|TRACK",
                "track_true|TRACK",
                "Velocity North (m/s)|VELOCITY_NORTH",
                "vel_e|VELOCITY_EAST",
                "velD|VELOCITY_DOWN",
                "Vertical speed (ft/min)|VELOCITY_DOWN",
                "climb rate m/s|VELOCITY_DOWN",
                "Sink rate (m/s)|VELOCITY_DOWN",
                "Horizontal accuracy (m)|HORIZONTAL_ACCURACY",
                "hAcc|HORIZONTAL_ACCURACY",
                "vertical_accuracy_m|VERTICAL_ACCURACY",
                "Speed accuracy (m/s)|SPEED_ACCURACY",
                "Number of satellites|SATELLITES",
                "sats|SATELLITES",
                "Fix type|FIX_TYPE",
                "IAS (kt)|INDICATED_AIRSPEED",
                "Indicated Airspeed [mph]|INDICATED_AIRSPEED",
                "True airspeed (kt)|TRUE_AIRSPEED",
                "TAS (km/h)|TRUE_AIRSPEED",
                "OAT (°C)|OUTSIDE_AIR_TEMPERATURE",
                "Outside air temp (F)|OUTSIDE_AIR_TEMPERATURE",
                "Heading (deg)|HEADING",
                "Pitch attitude (deg)|PITCH",
                "Bank angle (deg)|ROLL",
                "Pitch rate (deg/s)|PITCH_RATE",
                "roll_rate_dps|ROLL_RATE",
                "Yaw rate (rad/s)|YAW_RATE",
                "Normal acceleration (g)|NORMAL_LOAD",
                "Load factor|NORMAL_LOAD",
                "Longitudinal accel (m/s2)|LONGITUDINAL_LOAD",
                "Lateral acceleration (g)|LATERAL_LOAD",
                "Power lever (%)|POWER_LEVER",
                "Power lever angle|POWER_LEVER",
                "Blade angle (deg)|BLADE_ANGLE",
                "Torque (%)|TORQUE",
                "Prop RPM|PROPELLER_SPEED",
                "Propeller speed (rpm)|PROPELLER_SPEED",
                "Flaps (deg)|FLAP",
                "Elevator position (%)|ELEVATOR",
                "Rudder (%)|RUDDER",
                "Aileron [%]|AILERON"
            })
    void plainWordsNameTheirChannel(String heading, Channel channel) {
        assertEquals(channel, Words.meaning(Heading.of(heading)).orElseThrow().channel());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Altitude AGL (m)",
                "Speed (m)",
                "Elevator (deg)",
                "Battery (V)",
                "Torque (Nm2)x y",
                "heart rate",
                "comment",
                "Heading accuracy (deg)",
                "Magnetic variation"
            })
    void whatIsNoChannelOrInAUnitOfSomethingElseIsLeftAlone(String heading) {
        assertTrue(Words.meaning(Heading.of(heading)).isEmpty(), heading);
    }

    @ParameterizedTest
    @CsvSource({
        "Altitude MSL (ft),MSL",
        "Height above ellipsoid,ELLIPSOID",
        "wgs84 height (m),ELLIPSOID",
        "heightEllipsoid_m,ELLIPSOID",
        "heightMsl_m,MSL",
        "altitude,NONE"
    })
    void aHeightSaysWhatItIsMeasuredFrom(String heading, Words.Datum datum) {
        assertEquals(datum, Words.meaning(Heading.of(heading)).orElseThrow().datum());
    }
}
