package dev.injectorplanner.app.command;

import dev.injectorplanner.app.plans.PlanJson;
import dev.injectorplanner.core.calendar.IsoWeek;
import java.io.PrintWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.ToStringSerializer;

/** One JSON object on standard output and nothing else. Days and weeks are written as ISO 8601 has them. */
final class Json {
    private static final JsonMapper MAPPER = PlanJson.named(JsonMapper.builder())
            .addModule(new SimpleModule().addSerializer(IsoWeek.class, ToStringSerializer.instance))
            .build();

    private Json() {}

    static void print(PrintWriter out, Object value) {
        out.println(MAPPER.writeValueAsString(value));
        out.flush();
    }
}
