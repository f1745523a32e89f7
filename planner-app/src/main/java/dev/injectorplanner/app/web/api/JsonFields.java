package dev.injectorplanner.app.web.api;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * The fields of an object that was sent. A field that is not known, or holds something else than it should, is refused
 * with its place.
 */
final class JsonFields {
    private static final int LONGEST_SHOWN = 60;

    private final JsonNode object;
    private final String place;

    /**
     * @param place the object's own place as a JSON pointer (RFC 6901), empty for the whole body
     * @param known the names there are
     */
    JsonFields(JsonNode object, String place, Set<String> known) {
        if (!object.isObject()) {
            throw refused(place.isEmpty() ? "The body" : place, "is not a JSON object", "send {...} there");
        }
        this.object = object;
        this.place = place;
        object.propertyNames().stream()
                .filter(name -> !known.contains(name))
                .findFirst()
                .ifPresent(name -> {
                    throw refused(
                            place + "/" + shortened(name),
                            "is not known",
                            "use " + known.stream().sorted().collect(Collectors.joining(", ")));
                });
    }

    private static ApiRefusal refused(String place, String what, String fix) {
        return ApiRefusal.badRequest(place + " " + what + ". Fix: " + fix + ".");
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 3) + "...";
    }

    private @Nullable JsonNode find(String name) {
        JsonNode value = object.path(name);
        return value.isMissingNode() || value.isNull() ? null : value;
    }

    private ApiRefusal wrong(String name, String what, String fix) {
        return refused(place + "/" + name, what, fix);
    }

    /** Text; empty where there is none. */
    String text(String name) {
        JsonNode value = find(name);
        if (value == null) {
            return "";
        }
        if (!value.isString()) {
            throw wrong(name, "is not text", "send it in quotes");
        }
        return value.stringValue();
    }

    /** Text that has to be there. */
    String required(String name) {
        String text = text(name);
        if (text.isBlank()) {
            throw wrong(name, "is missing", "send it");
        }
        return text.strip();
    }

    @Nullable
    Double number(String name) {
        JsonNode value = find(name);
        if (value != null && !value.isNumber()) {
            throw wrong(name, "is not a number", "send one such as 6.5, without quotes");
        }
        return value == null ? null : Double.valueOf(value.doubleValue());
    }

    /** A whole number, or null. */
    @Nullable
    Long whole(String name) {
        JsonNode value = find(name);
        if (value != null && !(value.isIntegralNumber() && value.canConvertToLong())) {
            throw wrong(name, "is not a whole number", "send one such as 3, without quotes");
        }
        return value == null ? null : Long.valueOf(value.longValue());
    }

    /** The number of a cylinder, which has to be there. */
    int cylinder(String name) {
        Long number = whole(name);
        if (number == null || number < 1 || number > Byte.MAX_VALUE) {
            throw wrong(name, "is not a cylinder", "send its number, as the engine maker counts");
        }
        return number.intValue();
    }

    /** True or false; false where there is none. */
    boolean yes(String name) {
        JsonNode value = find(name);
        if (value != null && !value.isBoolean()) {
            throw wrong(name, "is neither true nor false", "send one of them, without quotes");
        }
        return value != null && value.booleanValue();
    }

    @Nullable
    LocalDate day(String name) {
        String text = text(name).strip();
        try {
            return text.isEmpty() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw wrong(name, "is not a date", "write it as 2026-03-02");
        }
    }

    /** A value of a list of words, written in small letters; null where there is none. */
    <E extends Enum<E>> @Nullable E constant(Class<E> type, String name) {
        String text = text(name).strip();
        if (text.isEmpty()) {
            return null;
        }
        return Stream.of(type.getEnumConstants())
                .filter(each -> word(each).equals(text))
                .findFirst()
                .orElseThrow(() -> wrong(
                        name,
                        "is not an allowed value",
                        "choose from "
                                + Stream.of(type.getEnumConstants())
                                        .map(JsonFields::word)
                                        .collect(Collectors.joining(", "))));
    }

    /** The same the other way round. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** Texts of a list. */
    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        for (JsonNode each : array(name)) {
            if (!each.isString()) {
                throw wrong(name + "/" + texts.size(), "is not text", "send it in quotes");
            }
            texts.add(each.stringValue());
        }
        return texts;
    }

    /** Objects of a list. */
    List<JsonFields> objects(String name, Set<String> known) {
        List<JsonFields> objects = new ArrayList<>();
        for (JsonNode each : array(name)) {
            objects.add(new JsonFields(each, place + "/" + name + "/" + objects.size(), known));
        }
        return objects;
    }

    private Iterable<JsonNode> array(String name) {
        JsonNode value = find(name);
        if (value != null && !value.isArray()) {
            throw wrong(name, "is not a list", "send [...] there");
        }
        return value == null ? List.of() : value;
    }
}
