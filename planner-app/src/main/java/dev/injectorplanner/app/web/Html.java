package dev.injectorplanner.app.web;

import java.util.List;
import org.springframework.web.util.HtmlUtils;

/** A plain page; every text that goes in is escaped. */
final class Html {
    private final StringBuilder page = new StringBuilder();

    Html(String title) {
        page.append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\"")
                .append(" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(escaped(title))
                .append(
                        " · Injector Planner</title>\n<link rel=\"stylesheet\" href=\"/plain.css\">\n</head>\n<body>\n<main>\n<h1>")
                .append(escaped(title))
                .append("</h1>\n");
    }

    static String escaped(String text) {
        return HtmlUtils.htmlEscape(text, "UTF-8");
    }

    Html say(String sentence) {
        page.append("<p>").append(escaped(sentence)).append("</p>\n");
        return this;
    }

    Html section(String letter, String title) {
        page.append("<h2><span>")
                .append(letter)
                .append("</span> ")
                .append(escaped(title))
                .append("</h2>\n");
        return this;
    }

    Html head(String caption, String... columns) {
        page.append("<table>\n<caption>").append(escaped(caption)).append("</caption>\n<thead><tr>");
        for (String column : columns) {
            page.append("<th scope=\"col\">").append(escaped(column)).append("</th>");
        }
        page.append("</tr></thead>\n<tbody>\n");
        return this;
    }

    /** A row of texts, and one cell that is HTML already; empty for none. */
    Html row(List<String> texts, String ready) {
        page.append("<tr>");
        texts.forEach(text -> page.append("<td>").append(escaped(text)).append("</td>"));
        page.append(ready.isEmpty() ? "" : "<td>" + ready + "</td>").append("</tr>\n");
        return this;
    }

    Html endTable() {
        page.append("</tbody>\n</table>\n");
        return this;
    }

    String whole() {
        return page + "</main>\n</body>\n</html>\n";
    }
}
