package pairdown.demo.logfile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import pairdown.format.source.Decimal;
import pairdown.format.source.Segments;
import pairdown.time.GpsTime;
import pairdown.track.Track;

/** How a table tells its times. */
public sealed interface TimeForm {
    /** What stands above the column. */
    String heading();

    /** A row's time. */
    String text(Track track, int row);

    /** Says what the column is, in a column map. */
    void describe(ObjectNode time);

    /** ISO 8601 with a Z, whether or not that is true of the logger's clock. */
    record Iso(String heading) implements TimeForm {
        @Override
        public String text(Track track, int row) {
            return Segments.instant(track, row).toString();
        }

        @Override
        public void describe(ObjectNode time) {
            time.put("column", heading).put("as", "iso");
        }
    }

    /** Date and time on the wall clock of a zone. */
    record Local(String heading, ZoneId zone) implements TimeForm {
        private static final DateTimeFormatter WALL =
                DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss.SSS", Locale.ROOT);

        @Override
        public String text(Track track, int row) {
            Instant rounded = Segments.instant(track, row).plusNanos(500_000);
            return WALL.format(rounded.atZone(zone));
        }

        @Override
        public void describe(ObjectNode time) {
            time.put("column", heading).put("as", "local").put("zone", zone.getId());
        }
    }

    /** Seconds of the GPS week. */
    record GpsSeconds(String heading, int week) implements TimeForm {
        @Override
        public String text(Track track, int row) {
            GpsTime gps = GpsTime.at(Segments.instant(track, row));
            return Decimal.of(gps.secondsOfWeek() + (gps.week() - week) * GpsTime.WEEK_S, 3);
        }

        @Override
        public void describe(ObjectNode time) {
            time.put("column", heading).put("as", "gps-seconds-of-week").put("week", week);
        }
    }

    /** Milliseconds since 1970. */
    record UnixMillis(String heading) implements TimeForm {
        @Override
        public String text(Track track, int row) {
            return Long.toString(Segments.instant(track, row).plusNanos(500_000).toEpochMilli());
        }

        @Override
        public void describe(ObjectNode time) {
            time.put("column", heading).put("as", "unix-millis");
        }
    }

    /** Seconds from the logger's own zero. */
    record Elapsed(String heading) implements TimeForm {
        @Override
        public String text(Track track, int row) {
            return Decimal.of(track.time_s(row), 3);
        }

        @Override
        public void describe(ObjectNode time) {
            time.put("column", heading).put("as", "seconds");
        }
    }
}
