package pairdown.debrief;

import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import pairdown.pair.PairDebrief;

/** Writes the files of a debrief other than the report: {@code debrief.json} and the series. */
public final class DebriefFiles {
    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private DebriefFiles() {}

    /** Writes all of them into a folder. */
    public static void write(Debrief debrief, ResultFolder folder) throws IOException {
        SeriesCsv csv = new SeriesCsv(debrief);
        for (PairDebrief pair : debrief.pairs()) {
            folder.text(PairJson.seriesFile(pair), out -> csv.write(pair, out));
        }
        for (ParticipantDebrief p : debrief.participants()) {
            folder.text("participants/" + p.id() + ".csv", out -> csv.write(p, out));
        }
        folder.text(
                "debrief.json",
                out -> out.append(MAPPER.writeValueAsString(DebriefJson.of(debrief))).append('\n'));
    }
}
