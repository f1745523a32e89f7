package dev.injectorplanner.reports.bay;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What putting back is called, of a step that is named by what it takes off: {@code charge pipes and intake off} becomes
 * {@code Charge pipes and intake on}. A name with no such word is put as {@code Refit: name}.
 */
final class RefitWords {
    static final String BATTERIES = "Batteries connected, earth last";

    private static final Map<Pattern, String> BACK = new LinkedHashMap<>();

    static {
        put("batteries off", BATTERIES);
        put("drained\\b.*|(?<=coolant )(down|out|off)$", "refilled");
        put("disconnected\\b", "connected");
        put("unplugged\\b", "plugged in");
        put("removed\\b", "refitted");
        put("tilted\\b", "lowered and locked");
        put("lowered\\b", "raised and bolted");
        put("opened\\b|\\bopen$", "closed");
        put("loosened\\b|\\bslackened\\b", "tightened");
        put("\\boff$", "on");
        put("\\bout$", "in");
        put("\\bdown$", "up, bolts tightened");
    }

    private RefitWords() {}

    private static void put(String sign, String back) {
        BACK.put(Pattern.compile("(?i)" + sign), back);
    }

    static String of(String step) {
        for (Map.Entry<Pattern, String> each : BACK.entrySet()) {
            Matcher sign = each.getKey().matcher(step.strip());
            if (sign.find()) {
                return capital(sign.replaceFirst(Matcher.quoteReplacement(each.getValue())));
            }
        }
        return "Refit: " + step;
    }

    /** Whether a step lets coolant out by its name. */
    static boolean drains(String step) {
        return of(step).endsWith("refilled");
    }

    static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
