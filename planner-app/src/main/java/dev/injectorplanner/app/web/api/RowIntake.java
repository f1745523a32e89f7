package dev.injectorplanner.app.web.api;

import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.TableCount;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.imports.Complaint;
import dev.injectorplanner.imports.Remark;
import dev.injectorplanner.imports.file.GivenRows;
import dev.injectorplanner.imports.table.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Rows that another program sends, through the intake of files: the same rules, all rows or none. */
public final class RowIntake {
    private static final String REFUSED = "Rows were refused";

    private final Intake intake;
    private final Store store;

    public RowIntake(Intake intake, Store store) {
        this.intake = intake;
        this.store = store;
    }

    /**
     * Takes rows in.
     *
     * @param depot the one depot whose trucks may be named, or null for all
     * @return counts of rows added, changed and unchanged, and remarks
     * @throws ApiRefusal where any row is refused; then none is stored
     */
    public Map<String, Object> take(Table<?> table, String body, @Nullable String depot) {
        SentRows sent = SentRows.of(table, body);
        requireDepot(sent, depot);
        FileReport report = intake.loadRows(table, new GivenRows(table.name(), sent.headings(), sent.rows()));
        if (report.refusal() != null) {
            throw new ApiRefusal(422, REFUSED, report.refusal(), List.of());
        }
        if (report.anyRefused()) {
            throw new ApiRefusal(
                    422,
                    REFUSED,
                    report.refusedCount() + " of " + sent.rows().size()
                            + " rows were refused, so none was stored. Fix: see problems, correct them and send all rows again.",
                    report.complaints().stream().map(RowIntake::problem).toList());
        }
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("read", sum(report, TableCount::read));
        answer.put("added", sum(report, TableCount::added));
        answer.put("changed", sum(report, TableCount::changed));
        answer.put("unchanged", sum(report, TableCount::unchanged));
        answer.put("remarks", report.remarks().stream().map(Remark::text).toList());
        return answer;
    }

    private static long sum(FileReport report, java.util.function.ToLongFunction<TableCount> count) {
        return report.tables().stream().mapToLong(count).sum();
    }

    /** A truck of another depot is answered like one that is not there: who may not see it learns nothing. */
    private void requireDepot(SentRows sent, @Nullable String depot) {
        int at = sent.headings().indexOf("truck");
        if (depot == null || at < 0) {
            return;
        }
        Set<String> trucks = store.inTransaction(session -> Set.copyOf(
                session.createSelectionQuery("select t.truck from TruckRow t where t.depot = :depot", String.class)
                        .setParameter("depot", depot)
                        .getResultList()));
        List<Map<String, Object>> problems = new ArrayList<>();
        for (int i = 0; i < sent.rows().size(); i++) {
            String truck = sent.rows().get(i).get(at).strip();
            if (!trucks.contains(truck)) {
                problems.add(problem(
                        i + 1, "truck", truck, "is not a truck of depot " + depot, "use a token for that depot"));
            }
        }
        if (!problems.isEmpty()) {
            throw new ApiRefusal(
                    422,
                    REFUSED,
                    problems.size() + " rows name trucks outside this token's depot; none was stored.",
                    problems);
        }
    }

    private static Map<String, Object> problem(Complaint complaint) {
        return problem(
                complaint.line() - 1, complaint.column(), complaint.value(), complaint.reason(), complaint.fix());
    }

    private static Map<String, Object> problem(long row, String field, String value, String reason, String fix) {
        Map<String, Object> problem = new LinkedHashMap<>();
        problem.put("row", row);
        problem.put("field", field);
        problem.put("value", value);
        problem.put("reason", reason);
        problem.put("fix", fix);
        problem.put("mend", fix); // the name of the first version
        return problem;
    }
}
