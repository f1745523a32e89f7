package dev.injectorplanner.app.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** What can be pressed on a page: its links, and its forms with each of their buttons, filled in as they stand. */
final class PressedPage {
    private static final Pattern TAG = Pattern.compile("<(/?)(a|form|input|button|select|option|textarea)\\b([^>]*)>");
    private static final Pattern ATTRIBUTE = Pattern.compile("([a-zA-Z-]+)(?:=\"([^\"]*)\")?");

    private final List<String> links = new ArrayList<>();
    private final List<Form> forms = new ArrayList<>();
    private @Nullable Form open;
    private @Nullable String select;

    /**
     * A form with one of its buttons pressed.
     *
     * @param fields as they stand: what is typed, ticked and chosen
     */
    record Form(String method, String action, boolean files, Map<String, String> fields, List<Button> buttons) {}

    /** A button of a form. */
    record Button(String name, String value, @Nullable String action) {}

    PressedPage(String html) {
        Matcher tag = TAG.matcher(html);
        while (tag.find()) {
            Map<String, String> attributes = attributes(tag.group(3));
            if (tag.group(1).isEmpty()) {
                opened(tag.group(2), attributes);
            } else if (tag.group(2).equals("form")) {
                open = null;
            }
        }
    }

    private static Map<String, String> attributes(String text) {
        Map<String, String> attributes = new LinkedHashMap<>();
        Matcher attribute = ATTRIBUTE.matcher(text);
        while (attribute.find()) {
            String value = attribute.group(2);
            attributes.put(attribute.group(1), value == null ? "" : value.replace("&amp;", "&"));
        }
        return attributes;
    }

    private void opened(String tag, Map<String, String> of) {
        String name = of.getOrDefault("name", "");
        switch (tag) {
            case "a" -> links.add(of.getOrDefault("href", ""));
            case "form" -> {
                open = new Form(
                        of.getOrDefault("method", "get"),
                        of.getOrDefault("action", ""),
                        of.getOrDefault("enctype", "").startsWith("multipart"),
                        new LinkedHashMap<>(),
                        new ArrayList<>());
                forms.add(open);
            }
            case "input" -> input(name, of);
            case "button" -> button(name, of);
            case "select" -> select = name;
            case "option" -> {
                if (open != null
                        && select != null
                        && (!open.fields().containsKey(select) || of.containsKey("selected"))) {
                    open.fields().put(select, of.getOrDefault("value", ""));
                }
            }
            default -> {
                if (open != null && !name.isEmpty()) {
                    open.fields().put(name, "");
                }
            }
        }
    }

    private void input(String name, Map<String, String> of) {
        String type = of.getOrDefault("type", "text");
        boolean box = type.equals("checkbox") || type.equals("radio");
        if (open == null || name.isEmpty() || type.equals("file") || box && !of.containsKey("checked")) {
            return;
        }
        open.fields().put(name, of.getOrDefault("value", box ? "on" : ""));
    }

    private void button(String name, Map<String, String> of) {
        Form form = open;
        if (form != null && of.getOrDefault("type", "submit").equals("submit")) {
            form.buttons().add(new Button(name, of.getOrDefault("value", ""), of.get("formaction")));
        }
    }

    List<String> links() {
        return links;
    }

    List<Form> forms() {
        return forms;
    }
}
