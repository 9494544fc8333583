package pairdown.demo.logfile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pairdown.format.source.Decimal;
import pairdown.track.Channel;
import pairdown.track.Track;
import pairdown.units.Unit;

/**
 * A table with a logger's own headings and units.
 *
 * @param preamble lines before the headings
 * @param decimalComma whether decimals are set off by a comma; the delimiter is a semicolon then
 * @param time what the first column is
 * @param mapped whether a reader needs a column map to understand it; its heights are above mean
 *     sea level then
 */
public record TableForm(
        List<String> preamble,
        boolean decimalComma,
        TimeForm time,
        List<Heading> headings,
        boolean mapped)
        implements LogForm {
    private static final JsonMapper JSON = new JsonMapper();

    public TableForm {
        preamble = List.copyOf(preamble);
        headings = List.copyOf(headings);
    }

    /**
     * One column.
     *
     * @param text what stands above it
     * @param unit what it is logged in, if not the channel's own
     */
    public record Heading(Channel channel, String text, Optional<Unit> unit) {
        public static Heading of(Channel channel, String text) {
            return new Heading(channel, text, Optional.empty());
        }

        public static Heading in(Unit unit, Channel channel, String text) {
            return new Heading(channel, text, Optional.of(unit));
        }
    }

    @Override
    public String text(Track track) {
        String delimiter = decimalComma ? ";" : ",";
        StringBuilder out = new StringBuilder();
        preamble.forEach(line -> out.append(line).append('\n'));
        List<String> heads = new ArrayList<>();
        heads.add(time.heading());
        headings.forEach(h -> heads.add(h.text()));
        out.append(String.join(delimiter, heads)).append('\n');
        for (int row = 0; row < track.size(); row++) {
            out.append(time.text(track, row));
            for (Heading h : headings) {
                out.append(delimiter).append(cell(h, track.value(h.channel(), row)));
            }
            out.append('\n');
        }
        return out.toString();
    }

    private String cell(Heading h, double value) {
        if (Double.isNaN(value)) {
            return "";
        }
        double shown = h.unit().map(u -> u.fromBase(value)).orElse(value);
        String text = Decimal.of(shown, Resolution.decimals(h.channel()));
        return decimalComma ? text.replace('.', ',') : text;
    }

    @Override
    public Optional<String> columnMap() {
        return mapped ? Optional.of(mapJson()) : Optional.empty();
    }

    private String mapJson() {
        ObjectNode root = JSON.createObjectNode();
        root.put("skipRows", preamble.size());
        root.put("delimiter", decimalComma ? ";" : ",");
        root.put("decimal", decimalComma ? "," : ".");
        time.describe(root.putObject("time"));
        ObjectNode channels = root.putObject("channels");
        for (Heading h : headings) {
            ObjectNode channel = channels.putObject(key(h.channel()));
            channel.put("column", h.text());
            h.unit().ifPresent(u -> channel.put("unit", u.symbol()));
            if (h.channel() == Channel.PRESSURE_ALTITUDE) {
                channel.put("datum", "pressure");
            } else if (h.channel() == Channel.HEIGHT) {
                channel.put("datum", "msl");
            }
        }
        try {
            return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A pressure height is asked for as a height from that datum. */
    private static String key(Channel channel) {
        return channel == Channel.PRESSURE_ALTITUDE ? Channel.HEIGHT.key() : channel.key();
    }
}
