package pairdown.report;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pairdown.words.Words;

/** Fills a page's template with its model. */
final class PageTemplate {
    private static final Configuration TEMPLATES = templates();

    private PageTemplate() {}

    private static Configuration templates() {
        Configuration c = new Configuration(Configuration.VERSION_2_3_33);
        c.setClassLoaderForTemplateLoading(PageTemplate.class.getClassLoader(), "pairdown/report");
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
     * @param root what the template calls the model
     */
    static String fill(String template, String root, Object model, Words words) {
        StringWriter out = new StringWriter();
        try {
            Template page = TEMPLATES.getTemplate(template, Locale.ROOT);
            page.process(Map.of(root, model, "w", textOf(words)), out);
        } catch (TemplateException e) {
            throw new IllegalStateException(template + " and its model disagree", e);
        } catch (IOException e) {
            throw new IllegalStateException("the program's own " + template + " can't be read", e);
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
