package dev.injectorplanner.imports.lives;

import dev.injectorplanner.core.life.EffectRecords;
import dev.injectorplanner.core.life.LifeRecords;
import dev.injectorplanner.core.life.RepeatHistory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * CSV files of the {@code life} commands (RFC 4180, UTF-8): headings by name in any order, case and spaces ignored.
 * Numbers are plain, with a decimal point. All ages of a file are in one unit, km or hours.
 */
public final class LivesCsv {
    private LivesCsv() {}

    /**
     * Lives: columns entry (optional), exit, event (1 failed, 0 not), count (optional).
     *
     * @throws LivesRefusedException if the file cannot be read or a cell is wrong
     */
    public static ReadLives<LifeRecords> lives(Path file) throws LivesRefusedException {
        CsvTable table = CsvTable.open(file, List.of("exit", "event"), List.of("entry", "count"), false);
        NumberColumn entries = new NumberColumn();
        NumberColumn exits = new NumberColumn();
        NumberColumn events = new NumberColumn();
        NumberColumn counts = new NumberColumn();
        table.forEachRow(row -> {
            double entry = row.has("entry") ? row.notNegative("entry") : 0;
            double exit = row.positive("exit");
            if (row.has("entry") && entry >= exit) {
                row.complain("entry", "is not below the exit " + row.text("exit"), "correct entry or exit");
            }
            entries.add(entry);
            exits.add(exit);
            events.add(row.flag("event"));
            counts.add(row.has("count") ? row.count("count") : 1);
        });
        return new ReadLives<>(
                LifeRecords.of(
                        table.has("entry") ? entries.toArray() : null,
                        exits.toArray(),
                        events.toFlags(),
                        table.has("count") ? counts.toCounts() : null),
                table.remarks());
    }

    /**
     * Repeat failures: columns unit, age, what (event or end); each unit has one end, when it was last seen.
     *
     * @throws LivesRefusedException if the file cannot be read or a cell is wrong
     */
    public static ReadLives<List<RepeatHistory>> repeats(Path file) throws LivesRefusedException {
        CsvTable table = CsvTable.open(file, List.of("unit", "age", "what"), List.of(), false);
        RepeatRows rows = new RepeatRows();
        table.forEachRow(rows::add);
        return new ReadLives<>(rows.histories(table), table.remarks());
    }

    /**
     * Stretches with covariates: columns start (optional), stop, event, id (optional), and every other column a number.
     *
     * @throws LivesRefusedException if the file cannot be read or a cell is wrong
     */
    public static ReadLives<EffectRecords> effects(Path file) throws LivesRefusedException {
        CsvTable table = CsvTable.open(file, List.of("stop", "event"), List.of("start", "id"), true);
        List<String> names = table.otherColumns();
        NumberColumn starts = new NumberColumn();
        NumberColumn stops = new NumberColumn();
        NumberColumn events = new NumberColumn();
        List<String> ids = new ArrayList<>();
        List<NumberColumn> covariates = new ArrayList<>();
        names.forEach(name -> covariates.add(new NumberColumn()));
        table.forEachRow(row -> {
            double start = row.has("start") ? row.notNegative("start") : 0;
            double stop = row.positive("stop");
            if (row.has("start") && start >= stop) {
                row.complain("stop", "is not above the start " + row.text("start"), "correct start or stop");
            }
            starts.add(start);
            stops.add(stop);
            events.add(row.flag("event"));
            if (row.has("id")) {
                ids.add(row.filled("id"));
            }
            for (int j = 0; j < names.size(); j++) {
                covariates.get(j).add(row.number(names.get(j)));
            }
        });
        double[][] columns = covariates.stream().map(NumberColumn::toArray).toArray(double[][]::new);
        return new ReadLives<>(
                EffectRecords.of(
                        table.has("start") ? starts.toArray() : null,
                        stops.toArray(),
                        events.toFlags(),
                        table.has("id") ? ids.toArray(new String[0]) : null,
                        names,
                        columns),
                table.remarks());
    }
}
