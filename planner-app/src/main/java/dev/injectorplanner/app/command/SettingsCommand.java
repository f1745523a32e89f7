package dev.injectorplanner.app.command;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.site.KeptSetting;
import dev.injectorplanner.app.site.SettingKind;
import dev.injectorplanner.app.site.SettingKinds;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.table.TextTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the site has set for itself. */
@Command(
        name = "settings",
        mixinStandardHelpOptions = true,
        description = "The site's settings: planning figures, units, its name. New plans use them.")
final class SettingsCommand {
    @Spec
    private CommandSpec spec;

    @Mixin
    private StoreOptions before;

    @Command(
            name = "list",
            mixinStandardHelpOptions = true,
            description = "Lists all settings and where each value comes from.")
    int list(
            @Mixin StoreOptions store,
            @Option(names = "--json", description = "Prints one JSON object.") boolean json) {
        List<Listed> listed;
        SiteUnits units;
        try (Application application = Application.open(store.settings())) {
            SiteSettings settings = application.settings();
            Map<String, KeptSetting> kept = settings.kept();
            listed = SettingKinds.ALL.stream()
                    .map(kind -> new Listed(kind, kept.get(kind.name()), settings.calibrated(kind)))
                    .toList();
            units = settings.units();
        }
        var out = spec.commandLine().getOut();
        if (json) {
            List<Map<String, Object>> rows = new ArrayList<>();
            listed.forEach(each -> rows.add(row(each, units)));
            Json.print(out, Map.of("settings", rows));
            return 0;
        }
        TextTable table = new TextTable("Setting", "Is", "Planner default", "Set by", "What it is");
        for (Listed each : listed) {
            SettingKind kind = each.kind();
            KeptSetting set = each.set();
            table.row(
                    kind.name(),
                    each.value().isEmpty() ? "none" : kind.words(each.value(), units),
                    kind.standardWords(units),
                    set == null
                            ? each.calibrated().isPresent() ? "last calibration" : ""
                            : set.changedBy() + " " + set.changedAt().toString().substring(0, 10),
                    kind.title() + ": " + kind.meaning());
        }
        table.print(out);
        out.flush();
        return 0;
    }

    private record Listed(SettingKind kind, @Nullable KeptSetting set, Optional<String> calibrated) {
        /** The value in force, as kept. */
        String value() {
            return set != null ? set.value() : calibrated.orElse(kind.standard());
        }
    }

    private static Map<String, Object> row(Listed each, SiteUnits units) {
        SettingKind kind = each.kind();
        KeptSetting set = each.set();
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("name", kind.name());
        row.put("value", kind.shown(each.value(), units));
        row.put("unit", kind.unit(units));
        row.put("plannerDefault", kind.shown(kind.standard(), units));
        row.put("range", kind.range(units));
        row.put("whose", set != null ? "site" : each.calibrated().isPresent() ? "last calibration" : "planner default");
        if (set != null) {
            row.put("setBy", set.changedBy());
            row.put("setAt", set.changedAt().toString());
        }
        return row;
    }

    @Command(name = "set", mixinStandardHelpOptions = true, description = "Sets a value, in the site's units.")
    int set(
            @Mixin StoreOptions store,
            @Parameters(paramLabel = "NAME", description = "Name as shown by settings list.") String name,
            @Parameters(paramLabel = "VALUE", description = "A number, yes or no, or a text.") String value) {
        return change(store, SettingKinds.get(name), value);
    }

    @Command(name = "clear", mixinStandardHelpOptions = true, description = "Back to the planner default.")
    int clear(
            @Mixin StoreOptions store,
            @Parameters(paramLabel = "NAME", description = "Name as shown by settings list.") String name) {
        return change(store, SettingKinds.get(name), null);
    }

    private int change(StoreOptions store, SettingKind kind, @Nullable String typed) {
        try (Application application = Application.open(store.settings())) {
            SiteSettings settings = application.settings();
            if (typed == null) {
                settings.clear(kind, Person.here());
            } else {
                settings.set(kind, typed, Person.here());
            }
            KeptSetting set = settings.kept().get(kind.name());
            spec.commandLine()
                    .getOut()
                    .println(kind.title() + ": "
                            + settings.words(kind, set == null ? "" : set.value(), settings.units()));
            spec.commandLine().getOut().flush();
        }
        return 0;
    }
}
