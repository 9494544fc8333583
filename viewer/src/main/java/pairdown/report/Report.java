package pairdown.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;

import pairdown.attempt.Mark;
import pairdown.debrief.Debrief;
import pairdown.words.Figures;
import pairdown.words.Units;
import pairdown.words.Words;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The report of one attempt as a self-contained page: valid both as HTML and as XML, for the PDF.
 */
public final class Report {
    private static final Configuration TEMPLATES = templates();

    private Report() {}

    private static Configuration templates() {
        Configuration c = new Configuration(Configuration.VERSION_2_3_33);
        c.setClassLoaderForTemplateLoading(Report.class.getClassLoader(), "pairdown/report");
        c.setDefaultEncoding(StandardCharsets.UTF_8.name());
        c.setOutputFormat(HTMLOutputFormat.INSTANCE);
        c.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        c.setLogTemplateExceptions(false);
        c.setWrapUncheckedExceptions(true);
        return c;
    }

    /**
     * The page.
     *
     * @param marks moments that people marked; their notes go on the board
     * @param units what figures are shown in
     * @param words its texts; numbers are in their locale
     * @throws IOException if the template can't be read
     */
    public static String html(
            Debrief debrief, List<Mark> marks, Units units, Words words, Pictures pictures)
            throws IOException {
        Figures figures = new Figures(units, words.locale());
        ReportModel model = new ReportBuilder(debrief, marks, words, figures, pictures).build();
        Template template = TEMPLATES.getTemplate("report.ftlh", Locale.ROOT);
        StringWriter out = new StringWriter();
        try {
            template.process(Map.of("report", model, "w", textOf(words)), out);
        } catch (TemplateException e) {
            throw new IllegalStateException("the report's template and its model disagree", e);
        }
        return out.toString();
    }

    private static TemplateMethodModelEx textOf(Words words) {
        return arguments -> {
            List<?> given = arguments;
            String key = String.valueOf(given.get(0));
            String[] values = given.stream().skip(1).map(String::valueOf).toArray(String[]::new);
            return values.length == 0 ? words.get(key) : words.get(key, values);
        };
    }
}
