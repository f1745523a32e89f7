package dev.injectorplanner.app.store;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One table from one database into another, and what its rows add up to, the same on every database. */
final class TableCopy {
    private static final int BATCH = 1_000;
    private static final int FETCH = 1_000;
    private static final BigInteger MODULUS = BigInteger.ONE.shiftLeft(256);

    private TableCopy() {}

    /** How many rows, and the sum of their SHA-256 digests, whatever their order. */
    record Sum(long rows, BigInteger digest) {
        @Override
        public String toString() {
            return rows + " rows, checksum " + digest.toString(16);
        }
    }

    private record Column(String name, int type) {}

    private static final class Adder {
        private final MessageDigest sha = sha();
        private BigInteger digest = BigInteger.ZERO;
        private long rows;

        void add(List<Column> columns, List<@Nullable Object> values) {
            for (int i = 0; i < values.size(); i++) {
                sha.update((columns.get(i).name + "=" + canonical(values.get(i)) + "\u0000")
                        .getBytes(StandardCharsets.UTF_8));
            }
            digest = digest.add(new BigInteger(1, sha.digest())).mod(MODULUS);
            rows++;
        }

        Sum sum() {
            return new Sum(rows, digest);
        }
    }

    /** Copies all rows; those of a table with an id in the order of their ids, since a row may refer to an earlier one. */
    static Sum copy(Connection source, Connection target, String table) throws SQLException {
        Adder adder = new Adder();
        try (Statement statement = source.createStatement()) {
            statement.setFetchSize(FETCH);
            List<Column> columns = columns(source, table);
            boolean byId = columns.stream().anyMatch(column -> column.name.equals("id"));
            String names = columns.stream().map(Column::name).collect(Collectors.joining(", "));
            String marks = columns.stream().map(column -> "?").collect(Collectors.joining(", "));
            try (ResultSet rows = statement.executeQuery(
                            "select " + names + " from " + table + (byId ? " order by id" : ""));
                    PreparedStatement insert = target.prepareStatement(
                            "insert into " + table + " (" + names + ") values (" + marks + ")")) {
                int waiting = 0;
                while (rows.next()) {
                    List<@Nullable Object> values = values(rows, columns);
                    adder.add(columns, values);
                    for (int i = 0; i < values.size(); i++) {
                        set(insert, i + 1, values.get(i), columns.get(i).type);
                    }
                    insert.addBatch();
                    if (++waiting == BATCH) {
                        insert.executeBatch();
                        waiting = 0;
                    }
                }
                if (waiting > 0) {
                    insert.executeBatch();
                }
            }
        }
        return adder.sum();
    }

    /** What the rows of a table add up to. */
    static Sum sum(Connection connection, String table) throws SQLException {
        Adder adder = new Adder();
        List<Column> columns = columns(connection, table);
        String names = columns.stream().map(Column::name).collect(Collectors.joining(", "));
        try (Statement statement = connection.createStatement()) {
            statement.setFetchSize(FETCH);
            try (ResultSet rows = statement.executeQuery("select " + names + " from " + table)) {
                while (rows.next()) {
                    adder.add(columns, values(rows, columns));
                }
            }
        }
        return adder.sum();
    }

    /** By name, so that both databases are read in one order. */
    private static List<Column> columns(Connection connection, String table) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet none = statement.executeQuery("select * from " + table + " where 1 = 0")) {
            ResultSetMetaData meta = none.getMetaData();
            List<Column> columns = new ArrayList<>();
            for (int i = 1; i <= meta.getColumnCount(); i++) {
                columns.add(new Column(meta.getColumnName(i).toLowerCase(Locale.ROOT), meta.getColumnType(i)));
            }
            columns.sort(java.util.Comparator.comparing(Column::name));
            return columns;
        }
    }

    private static List<@Nullable Object> values(ResultSet rows, List<Column> columns) throws SQLException {
        List<@Nullable Object> values = new ArrayList<>(columns.size());
        for (int i = 0; i < columns.size(); i++) {
            values.add(value(rows, i + 1, columns.get(i).type));
        }
        return values;
    }

    private static @Nullable Object value(ResultSet rows, int at, int type) throws SQLException {
        return switch (type) {
            case Types.TIMESTAMP, Types.TIMESTAMP_WITH_TIMEZONE -> rows.getObject(at, OffsetDateTime.class);
            case Types.DATE -> rows.getObject(at, LocalDate.class);
            case Types.TIME -> rows.getObject(at, LocalTime.class);
            case Types.BINARY, Types.VARBINARY, Types.LONGVARBINARY, Types.BLOB -> rows.getBytes(at);
            case Types.BIT, Types.BOOLEAN -> {
                boolean yes = rows.getBoolean(at);
                if (rows.wasNull()) {
                    yield null;
                }
                yield yes;
            }
            case Types.CLOB -> rows.getString(at);
            default -> rows.getObject(at);
        };
    }

    private static void set(PreparedStatement insert, int at, @Nullable Object value, int type) throws SQLException {
        if (value instanceof byte[] bytes) {
            insert.setBytes(at, bytes);
        } else if (value == null) {
            insert.setNull(at, nullType(type));
        } else {
            insert.setObject(at, value);
        }
    }

    private static int nullType(int type) {
        return switch (type) {
            case Types.BLOB, Types.LONGVARBINARY -> Types.VARBINARY;
            case Types.CLOB -> Types.VARCHAR;
            case Types.TIMESTAMP -> Types.TIMESTAMP_WITH_TIMEZONE;
            case Types.BIT -> Types.BOOLEAN;
            default -> type;
        };
    }

    /** The same text for the same value, whatever class a driver gives it. */
    private static String canonical(@Nullable Object value) {
        if (value == null) {
            return "-";
        }
        if (value instanceof OffsetDateTime at) {
            return at.toInstant().toString();
        }
        if (value instanceof byte[] bytes) {
            return HexFormat.of().formatHex(bytes);
        }
        if (value instanceof Number number) {
            BigDecimal plain = new BigDecimal(number.toString());
            return plain.signum() == 0 ? "0" : plain.stripTrailingZeros().toPlainString();
        }
        return "=" + value;
    }

    private static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
