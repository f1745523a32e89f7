package dev.injectorplanner.app.command;

import com.fasterxml.jackson.annotation.JsonProperty;
import dev.injectorplanner.app.plans.PlanJson;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.imports.Complaint;
import java.io.PrintWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.ToStringSerializer;

/** One JSON object on standard output and nothing else. Days and weeks are written as ISO 8601 has them. */
final class Json {
    private static final JsonMapper MAPPER = PlanJson.named(JsonMapper.builder())
            .addModule(new SimpleModule().addSerializer(IsoWeek.class, ToStringSerializer.instance))
            .addMixIn(Complaint.class, EarlierNames.class)
            .build();

    /** Names of the first version that stand beside those of today. */
    private interface EarlierNames {
        @JsonProperty("mend")
        String mend();
    }

    private Json() {}

    static void print(PrintWriter out, Object value) {
        out.println(MAPPER.writeValueAsString(value));
        out.flush();
    }
}
