package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.site.SiteRow;
import dev.injectorplanner.app.site.SiteRows;
import dev.injectorplanner.app.site.SiteTable;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.OwnWords;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.units.SiteUnits;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Families, access steps, rules and depots: listed, added, changed, removed. */
@Controller
public class RowsPage {
    private static final String TABLE = "/settings/{table:families|access|rules|depots}";
    private static final int NOT_KEPT = 422;

    private final SiteRows rows;
    private final Office office;
    private final OutdatedPlans before;

    RowsPage(SiteRows rows, Office office, OutdatedPlans before) {
        this.rows = rows;
        this.office = office;
        this.before = before;
    }

    @GetMapping(TABLE)
    String list(@ModelAttribute("viewer") Viewer viewer, @PathVariable("table") String name, Model model) {
        SiteTable table = table(name);
        common(viewer, name, table, model);
        OwnWords.keep(model, "done");
        model.addAttribute("list", new RowList(table, office.units()).of(seen(viewer, table)));
        return "rows";
    }

    @GetMapping(TABLE + "/row")
    String form(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("table") String name,
            @RequestParam(name = "key", defaultValue = "") String key,
            Model model) {
        SiteTable table = table(name);
        SiteRow row = key.isEmpty() ? null : row(viewer, table, key);
        return form(viewer, name, row, Map.of(), Map.of(), office.units(), model);
    }

    @PostMapping(TABLE + "/save")
    String save(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("table") String name,
            @RequestParam Map<String, String> sent,
            HttpServletResponse response,
            RedirectAttributes next,
            Model model) {
        SiteTable table = table(name);
        allow(viewer, table);
        String key = sent.getOrDefault("key", "");
        SiteRow row = key.isEmpty() ? null : row(viewer, table, key);
        SiteUnits units = FormUnits.of(sent.getOrDefault("units", ""), office.units());
        Map<String, String> wrong = saved(table, row, sent, units, viewer);
        if (wrong.isEmpty()) {
            office.changed();
            next.addFlashAttribute("done", row == null ? "Added." : "Saved: " + key + ".");
            return "redirect:/settings/" + name;
        }
        response.setStatus(NOT_KEPT);
        return form(viewer, name, row, sent, wrong, units, model);
    }

    private Map<String, String> saved(
            SiteTable table, @Nullable SiteRow row, Map<String, String> sent, SiteUnits units, Viewer viewer) {
        try {
            RowForm form = new RowForm(table, units, List.of());
            Map<String, String> cells = form.cells(sent, row);
            String seen = sent.getOrDefault("seen", "");
            Map<String, String> wrong = rows.save(table, cells, row == null ? null : row.key(), seen, viewer.name());
            return form.asTyped(wrong, sent, row);
        } catch (InvalidValueException e) {
            return Map.of(e.field(), String.valueOf(e.getMessage()));
        }
    }

    @PostMapping(TABLE + "/remove")
    String remove(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("table") String name,
            @RequestParam("key") String key,
            @RequestParam("seen") String seen,
            HttpServletResponse response,
            RedirectAttributes next,
            Model model) {
        SiteTable table = table(name);
        allow(viewer, table);
        String against = rows.remove(table, key, seen, viewer.name()).orElse("");
        if (against.isEmpty()) {
            office.changed();
            next.addFlashAttribute("done", "Removed: " + key + ".");
            return "redirect:/settings/" + name;
        }
        response.setStatus(NOT_KEPT);
        SiteRow row = row(viewer, table, key);
        return form(viewer, name, row, Map.of(), Map.of(SiteRows.WHOLE_ROW, against), office.units(), model);
    }

    private String form(
            Viewer viewer,
            String name,
            @Nullable SiteRow row,
            Map<String, String> sent,
            Map<String, String> wrong,
            SiteUnits units,
            Model model) {
        SiteTable table = table(name);
        common(viewer, name, table, model);
        List<String> families =
                rows.list(SiteTable.FAMILIES).stream().map(SiteRow::key).toList();
        model.addAttribute("fields", new RowForm(table, units, families).fields(row, sent, wrong));
        model.addAttribute("key", row == null ? "" : row.key());
        model.addAttribute("seen", seen(row, sent, wrong));
        model.addAttribute("units", FormUnits.text(units));
        model.addAttribute("wrong", wrong.getOrDefault(SiteRows.WHOLE_ROW, ""));
        return "row";
    }

    /** The row that the person has seen: the one he sent, until a sentence on the whole row has told the current value. */
    private static String seen(@Nullable SiteRow row, Map<String, String> sent, Map<String, String> wrong) {
        boolean told = sent.isEmpty() || wrong.containsKey(SiteRows.WHOLE_ROW);
        return !told ? sent.getOrDefault("seen", "") : row == null ? "" : row.mark();
    }

    private void common(Viewer viewer, String name, SiteTable table, Model model) {
        model.addAttribute("path", "/settings/" + name);
        model.addAttribute("current", name);
        model.addAttribute("title", table.title());
        model.addAttribute(
                "may", viewer.depot() == null && table.changers().stream().anyMatch(role -> viewer.is(role)));
        model.addAttribute("before", before.depots(viewer));
    }

    private static void allow(Viewer viewer, SiteTable table) {
        Permissions.require(viewer, table.changers().toArray(Role[]::new));
        Permissions.requireAllDepots(viewer, "Settings");
    }

    private static SiteTable table(String name) {
        return SiteTable.valueOf(name.toUpperCase(Locale.ROOT));
    }

    /** Of depots, the person's own where there is one. */
    private List<SiteRow> seen(Viewer viewer, SiteTable table) {
        return rows.list(table).stream()
                .filter(row -> table != SiteTable.DEPOTS || viewer.sees(row.key()))
                .toList();
    }

    private SiteRow row(Viewer viewer, SiteTable table, String key) {
        return seen(viewer, table).stream()
                .filter(row -> row.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new NotHereException("There is no “" + key + "” under " + table.title()
                        + ". Fix: it may have been removed; look at the list."));
    }
}
