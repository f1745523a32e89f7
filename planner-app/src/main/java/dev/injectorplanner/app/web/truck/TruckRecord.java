package dev.injectorplanner.app.web.truck;

import de.siegmar.fastcsv.writer.CsvWriter;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.truck.TruckFile.Row;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.Truck;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The record an audit asks for: identification, nature and due date of inspection and maintenance, inspections and work
 * done with their dates. Source: 49 CFR 396.3(b) (1) to (3), from memory; it covers injectors and ride-along tasks only.
 */
public final class TruckRecord {
    private final DepotPlan plan;
    private final Truck truck;

    TruckRecord(DepotPlan plan, Truck truck) {
        this.plan = plan;
        this.truck = truck;
    }

    public String truck() {
        return truck.truck();
    }

    /** What identifies it. */
    public List<TruckFile.Pair> identification() {
        return List.of(
                new TruckFile.Pair("Truck", truck.truck()),
                new TruckFile.Pair("VIN", truck.vinText()),
                new TruckFile.Pair("Depot", plan.depot()),
                new TruckFile.Pair("Engine family", truck.family()),
                new TruckFile.Pair("In service since", DisplayFormat.shortDate(truck.inServiceOn())),
                new TruckFile.Pair("As of", DisplayFormat.shortDate(plan.today())));
    }

    /** What is due, with its nature and date, the earliest first. */
    public List<Row> due() {
        return plan.dueItems().stream()
                .filter(item -> item.truck().equals(truck.truck()))
                .sorted(Comparator.comparing(DueItem::by))
                .map(item -> new Row(item.by(), DisplayFormat.shortDate(item.by()), nature(item), item.evidence()))
                .toList();
    }

    private static String nature(DueItem item) {
        Integer cylinder = item.cylinder();
        String at = cylinder == null ? "" : ", cylinder " + cylinder;
        return switch (item.action()) {
            case REPLACE -> "replace injector" + at;
            case INSPECT -> "test injectors" + at;
            case SERVICE -> String.valueOf(item.task());
        };
    }

    /** Inspections and work done, the newest first. */
    public List<Row> done() {
        TruckTimeLine history = new TruckTimeLine(plan, truck);
        List<Row> rows = new ArrayList<>(history.work());
        rows.addAll(history.tests());
        rows.sort(Comparator.comparing(Row::day).reversed());
        return rows;
    }

    /** The same as a table; text that a spreadsheet program would take for a formula is led in by an apostrophe. */
    byte[] csv() {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            csv.writeRecord("truck", "vin", "kind", "date", "nature", "detail");
            due().forEach(row -> write(csv, "due", row));
            done().forEach(row -> write(csv, "done", row));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private void write(CsvWriter csv, String kind, Row row) {
        csv.writeRecord(
                plain(truck.truck()),
                plain(truck.vinText()),
                kind,
                row.day().toString(),
                plain(row.what()),
                plain(row.detail()));
    }

    static String plain(String text) {
        String spaced = text.replace('\u00a0', ' ');
        return spaced.matches("(?s)[=+\\-@\\t\\r].*") ? "'" + spaced : spaced;
    }
}
