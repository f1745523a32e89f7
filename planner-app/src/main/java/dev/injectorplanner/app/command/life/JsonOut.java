package dev.injectorplanner.app.command.life;

import java.io.StringWriter;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** One JSON object, written as it goes. Numbers that are not finite (no limit, not defined) become null. */
final class JsonOut {
    private final StringWriter text = new StringWriter();
    private final JsonGenerator json = JsonFactory.builder().build().createGenerator(ObjectWriteContext.empty(), text);

    JsonOut() {
        json.writeStartObject();
    }

    JsonOut number(String name, double value) {
        json.writeName(name);
        number(value);
        return this;
    }

    JsonOut number(String name, long value) {
        json.writeName(name);
        json.writeNumber(value);
        return this;
    }

    JsonOut text(String name, String value) {
        json.writeName(name);
        json.writeString(value);
        return this;
    }

    JsonOut pair(String name, double low, double high) {
        json.writeName(name);
        json.writeStartArray();
        number(low);
        number(high);
        json.writeEndArray();
        return this;
    }

    private void number(double value) {
        if (Double.isFinite(value)) {
            json.writeNumber(value);
        } else {
            json.writeNull();
        }
    }

    JsonOut open(String name) {
        json.writeName(name);
        json.writeStartObject();
        return this;
    }

    JsonOut close() {
        json.writeEndObject();
        return this;
    }

    /** An array of objects, one for each item. */
    <T> JsonOut list(String name, Iterable<T> items, Consumer<T> writer) {
        json.writeName(name);
        json.writeStartArray();
        for (T item : items) {
            json.writeStartObject();
            writer.accept(item);
            json.writeEndObject();
        }
        json.writeEndArray();
        return this;
    }

    /** The whole object; nothing can be added after. */
    String finished() {
        json.writeEndObject();
        json.close();
        return text.toString();
    }
}
