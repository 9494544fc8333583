package pairdown.settings;

import java.util.Locale;

/** The strips, from top to bottom. */
public enum StripKind {
    /** Gap to the slot with the gate, or separation where a flyer has no slot. */
    GAP,
    /** Closure rate with the closing limit. */
    CLOSURE,
    /** Rates in the lead's axes with the matched tolerances; of the chosen flyer. */
    RATES,
    /** Airspeed of both against the target. */
    AIRSPEED,
    /** Sink of both against the target. */
    SINK,
    /** Height with the break-off height. */
    HEIGHT,
    /** Power lever and torque. */
    POWER,
    ELEVATOR,
    RUDDER,
    /** Pitch and yaw rate, as logged. */
    TURNING,
    /** Tail effectiveness against the forward-thrust baseline. */
    EFFECTIVENESS,
    /** Retarding coefficient of the propeller disc. */
    RETARDING,
    /** Data and their uncertainty, a bar for each participant. */
    TRUST;

    /** Its name in texts and files. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
