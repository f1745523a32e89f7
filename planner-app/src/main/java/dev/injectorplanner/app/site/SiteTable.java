package dev.injectorplanner.app.site;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Small tables whose rows are changed one by one. */
public enum SiteTable {
    FAMILIES(Tables.ENGINE_FAMILIES, "Engine families", "engine_family", "family"),
    ACCESS(Tables.ACCESS, "Access steps", "access_step", "family", "step"),
    RULES(Tables.RULES, "The site’s rules", "due_rule", "family_key", "rule_kind"),
    DEPOTS(Tables.DEPOTS, "Depots", "depot", "depot");

    private final Table<?> table;
    private final String title;
    private final String stored;
    private final String[] keys;

    SiteTable(Table<?> table, String title, String stored, String... keys) {
        this.table = table;
        this.title = title;
        this.stored = stored;
        this.keys = keys;
    }

    public Table<?> table() {
        return table;
    }

    public String title() {
        return title;
    }

    /** Who changes it: families and access steps are part of setting up, which an administrator does too. */
    public Set<Role> changers() {
        return this == FAMILIES || this == ACCESS ? Set.of(Role.MANAGER, Role.ADMINISTRATOR) : Set.of(Role.MANAGER);
    }

    String deletion() {
        return "delete from " + stored + " where " + String.join(" = ? and ", keys) + " = ?";
    }

    /** What may refer to a row, in words, with the question that counts it by the row's key. */
    Map<String, String> referrers() {
        Map<String, String> questions = new LinkedHashMap<>();
        switch (this) {
            case FAMILIES -> {
                questions.put("trucks", "select count(*) from truck where family = ?");
                questions.put("access steps", "select count(*) from access_step where family = ?");
                questions.put("parts of its jobs", "select count(*) from job_part where family = ?");
                questions.put("scheduled services", "select count(*) from interval_task where family = ?");
                questions.put("rules", "select count(*) from due_rule where family = ?");
            }
            case ACCESS ->
                questions.put("parts of its jobs", "select count(*) from job_part where family = ? and step = ?");
            case DEPOTS -> {
                questions.put("trucks", "select count(*) from truck where depot = ?");
                questions.put("days of capacity", "select count(*) from capacity where depot = ?");
                questions.put("lines of stock", "select count(*) from stock where depot = ?");
                questions.put("purchase lines", "select count(*) from purchase_line where depot = ?");
                questions.put("people", "select count(*) from person where depot = ?");
                questions.put("plans", "select count(*) from plan_run where depot = ?");
            }
            case RULES -> {}
        }
        return questions;
    }
}
