package pairdown.format.geojson;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.util.Optional;
import pairdown.format.source.LossyList;
import pairdown.format.source.Notes;
import pairdown.format.source.Numbers;
import pairdown.format.source.PointNames;
import pairdown.format.source.Rows;
import pairdown.track.Channel;

/**
 * Reads features that are no longer JSON. Whole positions and times are taken in, and where
 * anything but what parts two of them stands between, something is lost there: how much can't be
 * told. What comes before the first loss is paired from the beginning of the lists, what comes
 * after the last one from their end. A further array that is not whole is not used.
 */
final class FeatureFragments {
    private static final double MOST_DEGREES = 360;

    private enum Kind {
        NONE,
        POSITIONS,
        TIMES,
        VALUES
    }

    private final JsonScraps scraps;
    private final Rows rows;
    private final Notes notes;
    private Feature feature;
    private LossyList positions = new LossyList();
    private LossyList times = new LossyList();
    private boolean positionsSeen;
    private boolean timesSeen;

    /** The list that is read, and the one that ended last, until it is sure that it did. */
    private Kind kind = Kind.NONE;

    private Kind ended = Kind.NONE;
    private Optional<Channel> channel = Optional.empty();
    private int depth;

    /** The depth that items stand at, once one was found: brackets may be lost too. */
    private int itemDepth;

    private int commas;
    private boolean itemsSeen;
    private boolean bad;
    private final double[] numbers = new double[3];
    private int given;
    private boolean inPosition;

    FeatureFragments(Reader in, Rows rows, Notes notes) {
        this.scraps = new JsonScraps(new BufferedReader(in, 1 << 16));
        this.rows = rows;
        this.notes = notes;
        this.feature = new Feature(rows, notes);
    }

    /** Reads from a place, counted in letters, to the end. */
    void read(long begin) throws IOException {
        scraps.skip(begin);
        for (JsonScraps.Kind scrap = scraps.next();
                scrap != JsonScraps.Kind.END;
                scrap = scraps.next()) {
            judgeEnd(scrap);
            switch (scrap) {
                case KEY -> key(scraps.text());
                case STRING -> string(scraps.text());
                case NUMBER -> number(scraps.number());
                case MARK -> mark(scraps.mark());
                default -> spoil();
            }
        }
        endList();
        emit();
    }

    /** A list that ends is followed by a name or by the end of an object, or has not ended. */
    private void judgeEnd(JsonScraps.Kind scrap) {
        boolean brace = scrap == JsonScraps.Kind.MARK && scraps.mark() == '}';
        boolean comma = scrap == JsonScraps.Kind.MARK && scraps.mark() == ',';
        if (scrap == JsonScraps.Kind.KEY || brace) {
            ended = Kind.NONE;
        } else if (!comma && ended != Kind.NONE) {
            kind = ended;
            ended = Kind.NONE;
            lose();
        }
    }

    private void key(String name) {
        endList();
        if (name.equals("coordinates")) {
            if (positionsSeen) {
                emit();
            }
            positionsSeen = true;
            begin(Kind.POSITIONS);
        } else if (FeatureReader.TIMES.contains(name)) {
            if (timesSeen) {
                emit();
            }
            timesSeen = true;
            begin(Kind.TIMES);
        } else {
            channel = PointNames.channel(name);
            begin(channel.isPresent() ? Kind.VALUES : Kind.NONE);
        }
    }

    private void begin(Kind next) {
        kind = next;
        depth = 0;
        itemDepth = 0;
        commas = 0;
        itemsSeen = false;
        bad = false;
        inPosition = false;
    }

    /** Ends the list that is read, because something else begins; whole lists have ended before. */
    private void endList() {
        if (kind != Kind.NONE) {
            lose();
        }
        begin(Kind.NONE);
    }

    private void lose() {
        lose(kind);
        depth = itemDepth > 0 ? itemDepth : depth;
    }

    private void lose(Kind list) {
        switch (list) {
            case POSITIONS -> positions.lose();
            case TIMES -> times.lose();
            case VALUES -> channel.ifPresent(feature::drop);
            default -> {}
        }
        bad = false;
    }

    private void string(String text) {
        if (kind == Kind.TIMES) {
            item();
            feature.time(text);
            times.add();
        } else if (kind == Kind.VALUES) {
            value(Numbers.parse(text));
        } else if (kind == Kind.POSITIONS) {
            spoil();
        } else if (text.equals("Feature") && (positionsSeen || timesSeen)) {
            emit();
        }
    }

    private void number(double number) {
        if (kind == Kind.TIMES && Math.abs(number) <= MOST_DEGREES) {
            // Of a position: the end of the times is lost.
            spoil();
        } else if (kind == Kind.TIMES) {
            item();
            feature.time(number);
            times.add();
        } else if (kind == Kind.VALUES) {
            value(number);
        } else if (kind == Kind.POSITIONS) {
            if (!inPosition || commas != (given == 0 ? 0 : 1)) {
                spoil();
            }
            commas = 0;
            depth = inPosition && itemDepth > 0 ? itemDepth : depth;
            if (given < numbers.length) {
                numbers[given] = number;
            }
            given++;
        }
    }

    /** What stands where it should not may have been the rest of the item before it. */
    private void spoil() {
        bad = true;
        if (kind == Kind.POSITIONS && itemsSeen && !inPosition) {
            feature.spoilPosition();
        } else if (kind == Kind.TIMES && itemsSeen) {
            feature.spoilTime();
        }
    }

    private void value(double value) {
        item();
        channel.ifPresent(c -> feature.array(c).add(value));
    }

    /** Before an item: whether it stands where one should, behind the one before. */
    private void item() {
        if (itemsSeen && commas == 0) {
            spoil();
        }
        if (bad || commas != (itemsSeen ? 1 : 0)) {
            lose();
        }
        itemsSeen = true;
        itemDepth = depth;
        commas = 0;
        if (depth == 0) {
            // One value, no list.
            end();
        }
    }

    private void mark(char c) {
        switch (c) {
            case '[' -> open();
            case ']' -> close();
            case ',' -> commas++;
            default -> spoil();
        }
    }

    private void open() {
        depth++;
        if (kind == Kind.POSITIONS) {
            if (inPosition) {
                bad |= given > 0;
            } else if (bad || commas != (itemsSeen ? 1 : 0)) {
                bad = false;
                positions.lose();
            }
            inPosition = true;
            commas = 0;
            given = 0;
        }
    }

    private void close() {
        depth--;
        if (kind == Kind.POSITIONS && inPosition) {
            position();
        }
        if (kind != Kind.NONE && depth <= 0) {
            if (bad || commas > 0) {
                lose(kind);
            }
            end();
        }
    }

    private void end() {
        ended = kind;
        kind = Kind.NONE;
    }

    private void position() {
        if (bad || given < 2 || commas > 0) {
            positions.lose();
            bad = false;
        } else {
            feature.position(numbers, given, scraps.line());
            positions.add();
            itemDepth = depth + 1;
        }
        itemsSeen = true;
        commas = 0;
        inPosition = false;
    }

    /** Makes rows of the feature; what can't be paired is counted. */
    private void emit() {
        if (positions.isWhole() && times.isWhole() && positionsSeen && timesSeen) {
            feature.emit();
        } else {
            feature.emit(positions, times);
        }
        feature = new Feature(rows, notes);
        positions = new LossyList();
        times = new LossyList();
        positionsSeen = false;
        timesSeen = false;
    }
}
