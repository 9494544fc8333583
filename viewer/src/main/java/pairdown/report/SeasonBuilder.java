package pairdown.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pairdown.report.ReportModel.Threshold;
import pairdown.report.SeasonModel.CriterionRow;
import pairdown.report.SeasonModel.Link;
import pairdown.report.SeasonModel.UnusableRow;
import pairdown.season.AttemptSummary;
import pairdown.season.Criterion;
import pairdown.season.Season;
import pairdown.season.SeasonSettings;
import pairdown.time.TimeAxis;
import pairdown.words.Figures;
import pairdown.words.Measure;
import pairdown.words.Translation;
import pairdown.words.Words;

/** Makes the season page's model: what is said, with which figures, in which order. */
final class SeasonBuilder {
    private final Season season;
    private final Words words;
    private final Translation told;
    private final Figures figures;
    private final SeasonReport.ReportLinks links;
    private final Facts facts;

    /** Places of usable attempts, from 1, by folder: what charts and tables call them. */
    private final Map<String, Integer> numbers = new HashMap<>();

    SeasonBuilder(Season season, Words words, Figures figures, SeasonReport.ReportLinks links) {
        this.season = season;
        this.words = words;
        this.told = new Translation(words);
        this.figures = figures;
        this.links = links;
        this.facts = new Facts(new TimeAxis(Instant.EPOCH), words, figures);
        for (AttemptSummary a : season.attempts()) {
            if (a.usable()) {
                numbers.put(a.folder(), numbers.size() + 1);
            }
        }
    }

    Words words() {
        return words;
    }

    /** What results say in English, in the reader's language. */
    String told(String english) {
        return told.of(english);
    }

    Figures figures() {
        return figures;
    }

    Facts facts() {
        return facts;
    }

    Season season() {
        return season;
    }

    int number(String folder) {
        return numbers.getOrDefault(folder, 0);
    }

    /** The attempt's name, with its day unless the name begins with it. */
    Link link(AttemptSummary a) {
        String day = a.start().substring(0, 10);
        return new Link(a.attempt(), links.of(a.folder()), a.attempt().startsWith(day) ? "" : day);
    }

    SeasonModel build() {
        SeasonLadder ladder = new SeasonLadder(this);
        SeasonDives dives = new SeasonDives(this);
        SeasonEnvelope envelope = new SeasonEnvelope(this);
        List<String> glance = new ArrayList<>();
        glance.addAll(ladder.says());
        glance.addAll(dives.glance());
        glance.add(envelope.glance());
        if (!unusable().isEmpty()) {
            glance.add(words.get("seasonPage.unusable.count", String.valueOf(unusable().size())));
        }
        return new SeasonModel(
                words.language(),
                season.title().orElse(words.get("seasonPage.title")),
                meta(),
                Cautions.of(words),
                glance,
                criteria(),
                ladder.model(),
                dives.model(),
                new SeasonTails(this).model(),
                envelope.model(),
                unusable(),
                told.of(season.notes()),
                thresholds());
    }

    private String meta() {
        List<String> days =
                season.attempts().stream()
                        .filter(AttemptSummary::usable)
                        .map(a -> a.start().substring(0, 10))
                        .toList();
        return days.isEmpty()
                ? words.get("seasonPage.meta.none")
                : words.get(
                        "seasonPage.meta",
                        String.valueOf(days.size()),
                        days.get(0),
                        days.get(days.size() - 1));
    }

    private List<CriterionRow> criteria() {
        List<CriterionRow> rows = new ArrayList<>();
        for (int i = 0; i < season.criteria().size(); i++) {
            Criterion c = season.criteria().get(i);
            String key = c.met() ? "met" : "not-met";
            rows.add(
                    new CriterionRow(
                            told.of(c.name()),
                            facts.word("seasonPage.criterion.", key, "/criteria/" + i + "/met"),
                            key,
                            told.of(c.evidence())));
        }
        return rows;
    }

    private List<UnusableRow> unusable() {
        return season.attempts().stream()
                .filter(a -> !a.usable())
                .map(a -> new UnusableRow(a.folder(), told.of(a.reason().orElse(""))))
                .toList();
    }

    private List<Threshold> thresholds() {
        SeasonSettings s = season.settings();
        return List.of(
                threshold("segment", figures.text(Measure.DURATION, s.segment_s())),
                threshold("airspeedSd", figures.text(Measure.AIRSPEED, s.airspeedSd_mps())),
                threshold("sinkSd", figures.text(Measure.SINK, s.sinkSd_mps())),
                threshold("acceleration", number("%.1f m/s²", s.acceleration_mps2())),
                threshold("bank", figures.text(Measure.ANGLE, s.bank_deg())),
                threshold("pathRate", figures.text(Measure.TURN_RATE, s.pathRate_dps())),
                threshold("stable", figures.text(Measure.DURATION, s.stable_s())),
                threshold("steepPath", figures.text(Measure.ANGLE, s.steepPath_deg())),
                threshold("near", figures.text(Measure.AIRSPEED, s.nearTarget_mps())),
                threshold(
                        "force",
                        words.get(
                                "seasonPage.threshold.forceIs",
                                number("%.0f %%", 100 * s.massShare()),
                                figures.text(Measure.SINK, s.sinkSigma_mps()),
                                figures.text(Measure.AIRSPEED, s.airspeedSigma_mps()))),
                threshold("confidence", number("%.0f %%", 100 * s.confidence())));
    }

    private Threshold threshold(String key, String value) {
        return new Threshold(words.get("seasonPage.threshold." + key), Prose.words(value));
    }

    /** A number in the reader's spelling. */
    String number(String format, double value) {
        return String.format(words.locale(), format, value);
    }
}
