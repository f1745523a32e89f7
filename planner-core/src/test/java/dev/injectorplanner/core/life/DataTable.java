package dev.injectorplanner.core.life;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table of the test resources, published or computed with another program, by column name. Empty cells are NaN. */
public final class DataTable {
    private final List<String> names;
    private final List<String[]> rows = new ArrayList<>();

    private DataTable(List<String> lines) {
        names = Arrays.asList(lines.get(0).split(","));
        for (String line : lines.subList(1, lines.size())) {
            rows.add(line.split(",", -1));
        }
    }

    public static DataTable table(String name) {
        String folder =
                DataTable.class.getResource("/published/" + name + ".csv") != null ? "/published/" : "/computed/";
        try (InputStream in = DataTable.class.getResourceAsStream(folder + name + ".csv")) {
            return new DataTable(new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public int size() {
        return rows.size();
    }

    public double[] column(String name) {
        int at = names.indexOf(name);
        return rows.stream()
                .mapToDouble(row -> row[at].isEmpty() ? Double.NaN : Double.parseDouble(row[at]))
                .toArray();
    }

    public boolean[] flags(String name) {
        double[] values = column(name);
        boolean[] flags = new boolean[values.length];
        for (int i = 0; i < flags.length; i++) {
            flags[i] = values[i] == 1;
        }
        return flags;
    }

    public String[] texts(String name) {
        int at = names.indexOf(name);
        return rows.stream().map(row -> row[at]).toArray(String[]::new);
    }

    public boolean has(String name) {
        return names.contains(name);
    }

    /** The table as life records: entry (optional), exit, event. */
    public LifeRecords lives() {
        return LifeRecords.of(has("entry") ? column("entry") : null, column("exit"), flags("event"), null);
    }
}
