package pairdown.format.csv;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pairdown.track.Channel;
import pairdown.units.LoggedUnit;
import pairdown.units.LoggedUnit.Measure;

/**
 * The plain English and trade words that name a channel. A heading's words are brought to one
 * spelling each, words that say nothing are dropped, and what is left, in any order, is looked up.
 */
final class Words {
    /** What a heading says its column is. */
    record Meaning(Channel channel, Datum datum, double sign, boolean signStated) {}

    /** What a height column says it is measured from. */
    enum Datum {
        NONE,
        MSL,
        ELLIPSOID
    }

    private static final Map<String, String> SPELLING = new HashMap<>();
    private static final Set<String> SAYS_NOTHING =
            Set.of(
                    "gps",
                    "gnss",
                    "data",
                    "value",
                    "measured",
                    "actual",
                    "current",
                    "sensor",
                    "the",
                    "of",
                    "in",
                    "raw",
                    "logged",
                    "position",
                    "angle",
                    "deflection",
                    "true",
                    "decimal",
                    "degrees",
                    "deg",
                    "estimated",
                    "est",
                    "number",
                    "num",
                    "count",
                    "used",
                    "no",
                    "over",
                    "rate",
                    "type",
                    "attitude",
                    "mean",
                    "level",
                    "left",
                    "engine",
                    "aircraft",
                    "by",
                    "to",
                    "ins",
                    "imu",
                    "ahrs",
                    "adc",
                    "quality",
                    "status");
    private static final Map<String, Meaning> MEANING = new HashMap<>();

    static {
        spell("latitude", "lat");
        spell("longitude", "lon", "long", "lng");
        spell("height", "alt", "altitude", "ele", "elev", "elevation", "hgt", "ht");
        spell("msl", "amsl", "asl", "sea", "orthometric");
        spell("ellipsoid", "ellipsoidal", "hae", "wgs84", "wgs", "ellip");
        spell("pressure", "baro", "barometric", "press", "barometer");
        spell("speed", "velocity", "vel", "spd");
        spell("ground", "gnd", "horizontal", "horiz", "hor");
        spell("vertical", "vert");
        spell("north", "n", "northward", "northing");
        spell("east", "e", "eastward", "easting");
        spell("down", "d", "downward", "downwards");
        spell("up", "u", "upward", "upwards");
        spell("climb", "roc", "vario", "variometer", "ascent");
        spell("sink", "rod", "descent", "fall", "descend");
        spell("track", "course", "cog", "crs", "bearing", "trk");
        spell(
                "accuracy",
                "acc",
                "error",
                "err",
                "sigma",
                "std",
                "stddev",
                "uncertainty",
                "precision");
        spell("satellites", "sat", "sats", "satellite", "nsat", "nsats", "sv", "svs");
        spell("airspeed", "ias", "cas", "kias", "kcas");
        spell("trueairspeed", "tas", "ktas");
        spell("temperature", "temp", "tmp");
        spell("heading", "hdg", "yaw");
        spell("roll", "bank");
        spell("load", "accel", "acceleration", "acc_g", "gload", "g", "factor");
        spell("longitudinal", "longit", "forward", "fwd", "fore");
        spell("lateral", "sideways", "side");
        spell("propeller", "prop");
        spell("torque", "tq", "trq");
        spell("flap", "flaps");
        spell("power", "pwr");
        spell("rudder", "rud");
        spell("aileron", "ail", "ailerons");

        means(Channel.LATITUDE, "latitude");
        means(Channel.LONGITUDE, "longitude");
        height(Channel.HEIGHT, Datum.NONE, "height");
        height(Channel.HEIGHT, Datum.MSL, "height msl", "h msl", "above geoid height", "msl");
        height(Channel.HEIGHT, Datum.MSL, "above height msl");
        height(Channel.HEIGHT, Datum.ELLIPSOID, "ellipsoid height", "ellipsoid h", "ellipsoid");
        height(Channel.HEIGHT, Datum.ELLIPSOID, "above ellipsoid height", "84 ellipsoid height");
        means(Channel.GEOID_SEPARATION, "geoid separation", "geoid undulation", "geoid height");
        means(Channel.GEOID_SEPARATION, "undulation", "geoidal separation", "geoid");
        means(Channel.VELOCITY_NORTH, "north speed", "north v");
        means(Channel.VELOCITY_EAST, "east speed", "east v");
        means(Channel.VELOCITY_DOWN, "down speed", "down v", "sink", "sink speed");
        means(Channel.VELOCITY_DOWN, "down speed vertical", "sink vertical", "down vertical");
        signed(-1, true, "speed up", "climb", "climb speed", "speed up vertical", "up v");
        signed(-1, true, "climb vertical", "up vertical");
        signed(-1, false, "speed vertical", "vs", "v s", "vspeed", "vertical", "vsi", "vvi");
        means(Channel.GROUND_SPEED, "ground speed", "speed", "gs", "sog", "groundspeed", "gspeed");
        means(Channel.GROUND_SPEED, "2d speed");
        means(Channel.TRACK, "track", "ground track", "heading motion", "ground heading");
        means(Channel.HORIZONTAL_ACCURACY, "accuracy ground", "accuracy h", "accuracy", "epe");
        means(Channel.HORIZONTAL_ACCURACY, "eph", "accuracy pos", "hacc");
        means(Channel.VERTICAL_ACCURACY, "accuracy vertical", "accuracy v", "accuracy height");
        means(Channel.VERTICAL_ACCURACY, "epv", "vacc");
        means(Channel.SPEED_ACCURACY, "accuracy speed", "accuracy s", "sacc");
        means(Channel.SATELLITES, "satellites", "n satellites", "north satellites");
        means(Channel.FIX_TYPE, "fix", "fixtype", "3d fix");
        means(Channel.INDICATED_AIRSPEED, "airspeed", "airspeed indicated", "airspeed calibrated");
        means(
                Channel.INDICATED_AIRSPEED,
                "air indicated speed",
                "air calibrated speed",
                "air speed");
        means(Channel.INDICATED_AIRSPEED, "indicated speed");
        means(Channel.TRUE_AIRSPEED, "trueairspeed");
        means(Channel.PRESSURE_ALTITUDE, "height pressure", "height qne", "height std");
        means(Channel.PRESSURE_ALTITUDE, "height standard", "height pressure standard");
        means(Channel.STATIC_PRESSURE, "pressure", "pressure static", "ambient pressure");
        means(Channel.STATIC_PRESSURE, "air pressure", "atmospheric pressure");
        means(Channel.OUTSIDE_AIR_TEMPERATURE, "oat", "air outside temperature", "temperature");
        means(Channel.OUTSIDE_AIR_TEMPERATURE, "air temperature", "outside temperature");
        means(Channel.OUTSIDE_AIR_TEMPERATURE, "ambient temperature", "air static temperature");
        means(Channel.HEADING, "heading", "heading magnetic", "heading mag");
        means(Channel.PITCH, "pitch");
        means(Channel.ROLL, "roll");
        means(Channel.NORMAL_LOAD, "load normal", "load", "nz", "load vertical", "load z");
        means(Channel.LONGITUDINAL_LOAD, "load longitudinal", "nx", "load x");
        means(Channel.LATERAL_LOAD, "lateral load", "ny", "load y");
        means(Channel.POWER_LEVER, "lever power", "lever", "throttle", "pla", "lever throttle");
        means(Channel.BLADE_ANGLE, "blade", "beta", "blade propeller", "pitch propeller");
        means(Channel.BLADE_ANGLE, "blade pitch", "blade pitch propeller");
        means(Channel.TORQUE, "torque");
        means(Channel.PROPELLER_SPEED, "propeller speed", "np", "propeller rpm", "rpm");
        means(Channel.PROPELLER_SPEED, "propeller");
        means(Channel.FLAP, "flap");
        means(Channel.ELEVATOR, "elevator");
        means(Channel.RUDDER, "rudder");
        means(Channel.AILERON, "aileron");
    }

    private Words() {}

    private static void spell(String one, String... others) {
        for (String other : others) {
            SPELLING.put(other, one);
        }
    }

    private static void means(Channel channel, String... keys) {
        height(channel, Datum.NONE, keys);
    }

    private static void height(Channel channel, Datum datum, String... keys) {
        for (String key : keys) {
            MEANING.put(sorted(key), new Meaning(channel, datum, 1, true));
        }
    }

    private static void signed(double sign, boolean stated, String... keys) {
        for (String key : keys) {
            MEANING.put(sorted(key), new Meaning(Channel.VELOCITY_DOWN, Datum.NONE, sign, stated));
        }
    }

    private static String sorted(String key) {
        return String.join(" ", new TreeSet<>(List.of(key.split(" ", -1))));
    }

    /** What a heading means, if it is plain enough and its unit fits. */
    static Optional<Meaning> meaning(Heading heading) {
        if (heading.words().isEmpty()) {
            return Optional.empty();
        }
        Optional<Channel> exact = exactKey(heading.text());
        if (exact.isPresent()) {
            return Optional.of(new Meaning(exact.get(), Datum.NONE, 1, true));
        }
        return rate(heading)
                .or(() -> trueAirspeed(heading))
                .or(() -> elevator(heading))
                .or(() -> Optional.ofNullable(MEANING.get(key(heading.words()))))
                .or(() -> Optional.ofNullable(MEANING.get(key(withoutUnitWords(heading.words())))))
                .map(m -> refinedByUnit(m, heading))
                .filter(m -> heading.unit().map(u -> fits(m.channel(), u)).orElse(true));
    }

    /** "Elev" in percent is the elevator, whatever it is elsewhere. */
    private static Optional<Meaning> elevator(Heading heading) {
        boolean share = heading.unit().map(u -> u.measure() == Measure.SHARE).orElse(false);
        return share && heading.words().equals(List.of("elev"))
                ? Optional.of(new Meaning(Channel.ELEVATOR, Datum.NONE, 1, true))
                : Optional.empty();
    }

    private static Optional<Channel> exactKey(String text) {
        return Channel.ofKey(text.strip());
    }

    /** "rate" and "speed" with an axis are turning rates; elsewhere "rate" says nothing. */
    private static Optional<Meaning> rate(Heading heading) {
        List<String> words = heading.words();
        boolean turning =
                words.contains("rate")
                        || heading.unit()
                                .map(u -> u.measure() == Measure.ANGULAR_RATE)
                                .orElse(false);
        if (!turning) {
            return Optional.empty();
        }
        Optional<Channel> channel = Optional.empty();
        if (words.contains("pitch")) {
            channel = Optional.of(Channel.PITCH_RATE);
        } else if (words.contains("roll")) {
            channel = Optional.of(Channel.ROLL_RATE);
        } else if (words.contains("yaw")) {
            channel = Optional.of(Channel.YAW_RATE);
        }
        return channel.map(c -> new Meaning(c, Datum.NONE, 1, true));
    }

    /** "true" says nothing of a heading and all of an airspeed. */
    private static Optional<Meaning> trueAirspeed(Heading heading) {
        List<String> words = heading.words();
        boolean so =
                words.contains("true")
                        && (words.contains("airspeed")
                                || (words.contains("air") && words.contains("speed")));
        return so
                ? Optional.of(new Meaning(Channel.TRUE_AIRSPEED, Datum.NONE, 1, true))
                : Optional.empty();
    }

    private static Meaning refinedByUnit(Meaning meaning, Heading heading) {
        Optional<Measure> measure = heading.unit().map(LoggedUnit::measure);
        boolean inLength = measure.map(m -> m == Measure.LENGTH).orElse(false);
        if (meaning.channel() == Channel.STATIC_PRESSURE && inLength) {
            return new Meaning(Channel.PRESSURE_ALTITUDE, Datum.NONE, 1, true);
        }
        boolean inSpeed = measure.map(m -> m == Measure.SPEED).orElse(false);
        if (meaning.channel() == Channel.HORIZONTAL_ACCURACY && inSpeed) {
            return new Meaning(Channel.SPEED_ACCURACY, Datum.NONE, 1, true);
        }
        return meaning;
    }

    private static String key(List<String> words) {
        Set<String> kept = new TreeSet<>();
        for (String word : words) {
            String spelt = SPELLING.getOrDefault(word, word);
            if (!SAYS_NOTHING.contains(word) && !SAYS_NOTHING.contains(spelt)) {
                kept.add(spelt);
            }
        }
        if (kept.contains("accuracy")
                && (kept.contains("x") || kept.contains("y") || kept.contains("z"))) {
            kept.remove("accuracy");
            kept.add("load");
        }
        if (kept.contains("longitude") && kept.contains("load")) {
            kept.remove("longitude");
            kept.add("longitudinal");
        }
        return String.join(" ", kept);
    }

    private static List<String> withoutUnitWords(List<String> words) {
        return words.stream().filter(w -> w.length() > 1 || LoggedUnit.of(w).isEmpty()).toList();
    }

    /** Whether a unit measures what the channel does. */
    static boolean fits(Channel channel, LoggedUnit unit) {
        Measure measure = unit.measure();
        return switch (channel) {
            case PITCH_RATE, ROLL_RATE, YAW_RATE -> measure == Measure.ANGULAR_RATE;
            case NORMAL_LOAD, LONGITUDINAL_LOAD, LATERAL_LOAD -> measure == Measure.LOAD;
            case PROPELLER_SPEED -> measure == Measure.ROTATION;
            case SATELLITES, FIX_TYPE -> false;
            default -> channel.dimension().map(d -> d.name().equals(measure.name())).orElse(false);
        };
    }
}
