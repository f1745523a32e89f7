package dev.injectorplanner.app.testkit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.StringEscapeUtils;

/** Fields of a page's form, as a browser would send them untouched. */
public final class SentForm {
    private static final Pattern INPUT = Pattern.compile("<(?:input|select)[^>]*>");

    private SentForm() {}

    /** The first form of a page that posts to a path. */
    public static Map<String, String> of(String html, String path) {
        Matcher form = Pattern.compile("(?s)<form[^>]*action=\"" + Pattern.quote(path) + "\"[^>]*>.*?</form>")
                .matcher(html);
        if (!form.find()) {
            throw new IllegalStateException("no form for " + path + " in " + html);
        }
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher input = INPUT.matcher(form.group());
        while (input.find()) {
            String tag = input.group();
            String name = attribute(tag, "name");
            if (!name.isEmpty()) {
                String value = tag.startsWith("<select")
                        ? chosen(form.group().substring(input.end()))
                        : attribute(tag, "value");
                fields.put(name, value);
            }
        }
        return fields;
    }

    private static String chosen(String after) {
        String options = after.substring(0, after.indexOf("</select>"));
        Matcher option = Pattern.compile("<option[^>]*selected[^>]*>").matcher(options);
        return option.find() ? attribute(option.group(), "value") : "";
    }

    private static String attribute(String tag, String name) {
        Matcher found = Pattern.compile("\\s" + name + "=\"([^\"]*)\"").matcher(tag);
        return found.find() ? StringEscapeUtils.unescapeHtml4(found.group(1)) : "";
    }
}
