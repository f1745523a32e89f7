package dev.injectorplanner.app.plans;

import dev.injectorplanner.core.plan.Plan;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** A plan as it lies in the store: JSON, compressed. What a later version adds is left out when an earlier plan is read. */
final class PlanDocument {
    private static final JsonMapper MAPPER = PlanJson.named(JsonMapper.builder())
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();

    private PlanDocument() {}

    static byte[] write(Plan plan) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (OutputStream zipped = new GZIPOutputStream(bytes)) {
            MAPPER.writeValue(zipped, plan);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    static Plan read(byte[] document) {
        try (InputStream unzipped = new GZIPInputStream(new ByteArrayInputStream(document))) {
            return MAPPER.readValue(unzipped, Plan.class);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
