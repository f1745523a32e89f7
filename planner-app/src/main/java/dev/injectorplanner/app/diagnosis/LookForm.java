package dev.injectorplanner.app.diagnosis;

import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.Optional;

/**
 * A form of a diagnosis as it was sent: a phone without network sends it later, and perhaps twice. It ends a diagnosis once; what
 * it notes is noted once, and again where its sender has changed it since.
 *
 * @param key names the form; empty where the sender gives none, and then nothing is held against it
 * @param end how it ends the diagnosis, such as {@code repair}; empty where it only notes steps
 * @param content all that it says
 */
public record LookForm(String key, String end, String content) {
    private static final int LONGEST_KEY = 80;

    public LookForm {
        key = key.length() > LONGEST_KEY ? key.substring(0, LONGEST_KEY) : key;
    }

    boolean ends() {
        return !end.isEmpty();
    }

    /** Other notes of the same form have another key: a digest of both, since the column is short and notes are long. */
    private String noteKey() {
        try {
            byte[] both = (key.length() + ":" + key + content).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(both));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 is part of every Java", e);
        }
    }

    /** What it did when it arrived before: how it ended the diagnosis, or empty text where it noted the same. */
    Optional<String> did(Connection connection) throws SQLException {
        return StoreSql.list(
                        connection,
                        "select did from bay_look_form where form_key in (?, ?) order by form_key",
                        row -> Optional.ofNullable(row.getString("did")).orElse(""),
                        key,
                        ends() ? key : noteKey())
                .stream()
                .findFirst();
    }

    void arrived(Connection connection, String truck, DiagnosisKind kind, Instant at) throws SQLException {
        if (!key.isEmpty()) {
            StoreSql.update(
                    connection,
                    "insert into bay_look_form (form_key, truck, kind, did, sent_at) values (?, ?, ?, ?, ?)",
                    ends() ? key : noteKey(),
                    truck,
                    kind.name(),
                    end,
                    at);
        }
    }
}
