package dev.injectorplanner.app.diagnosis;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;

/**
 * A form of a diagnosis as it was sent: a phone without network sends it later, and perhaps twice.
 *
 * @param key names the form; empty where the sender gives none, and then nothing is held against it
 * @param end how it ends the diagnosis, such as {@code repair}; empty where it only notes steps
 */
public record LookForm(String key, String end) {
    private static final int LONGEST_KEY = 100;

    public LookForm {
        key = key.length() > LONGEST_KEY ? key.substring(0, LONGEST_KEY) : key;
    }

    boolean ends() {
        return !end.isEmpty();
    }

    Optional<String> did(Connection connection) throws SQLException {
        return StoreSql.list(
                        connection,
                        "select did from bay_look_form where form_key = ?",
                        row -> Optional.ofNullable(row.getString("did")).orElse(""),
                        key)
                .stream()
                .findFirst();
    }

    void arrived(Connection connection, String truck, DiagnosisKind kind, Instant at) throws SQLException {
        if (!key.isEmpty()) {
            StoreSql.update(
                    connection,
                    "insert into bay_look_form (form_key, truck, kind, did, sent_at) values (?, ?, ?, ?, ?)",
                    key,
                    truck,
                    kind.name(),
                    end,
                    at);
        }
    }
}
