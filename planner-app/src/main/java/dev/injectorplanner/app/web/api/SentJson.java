package dev.injectorplanner.app.web.api;

import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** JSON that was sent, read as a tree whose texts and numbers can be stored; else refused with the place. */
final class SentJson {
    private static final int LONGEST_SHOWN = 60;

    private SentJson() {}

    /**
     * Reads a body.
     *
     * @param fix what to send instead of something that is not JSON
     */
    static JsonNode read(JsonMapper mapper, String body, String fix) {
        JsonNode tree;
        try {
            tree = mapper.readTree(body);
        } catch (JacksonException e) {
            throw ApiRefusal.badRequest("The body is not JSON. Fix: " + fix + ".");
        }
        check(tree, "");
        return tree;
    }

    private static void check(JsonNode node, String place) {
        if (node.isString() && !isWhole(node.stringValue())) {
            throw ApiRefusal.badRequest(
                    place + " holds half a character (a lone surrogate, RFC 8259 section 8.2). Fix: send"
                            + " whole characters.");
        }
        if (node.isNumber() && !isFinite(node)) {
            throw ApiRefusal.badRequest(place + " is a number that is too large. Fix: send one that can be measured.");
        }
        node.properties().forEach(field -> {
            String there = place + "/" + shown(field.getKey());
            if (!isWhole(field.getKey())) {
                throw ApiRefusal.badRequest(
                        place + " has a name with half a character in it. Fix: send whole characters.");
            }
            check(field.getValue(), there);
        });
        if (node.isArray()) {
            for (int i = 0; i < node.size(); i++) {
                check(node.get(i), place + "/" + i);
            }
        }
    }

    private static String shown(String name) {
        return name.length() <= LONGEST_SHOWN ? name : name.substring(0, LONGEST_SHOWN - 3) + "...";
    }

    private static boolean isFinite(JsonNode number) {
        try {
            return Double.isFinite(number.doubleValue());
        } catch (JacksonException | ArithmeticException e) {
            return false;
        }
    }

    private static boolean isWhole(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))) {
                i++;
            } else if (Character.isSurrogate(c)) {
                return false;
            }
        }
        return true;
    }
}
