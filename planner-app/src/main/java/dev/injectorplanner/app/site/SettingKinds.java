package dev.injectorplanner.app.site;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteForm.DateForm;
import dev.injectorplanner.core.units.SiteForm.PaperSize;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.imports.vehicle.LogNameRule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Everything a site may set, in the order of the page. */
public final class SettingKinds {
    /** What the site calls itself. */
    public static final String SITE_NAME = "site-name";

    /** What moving a confirmed visit costs. */
    static final String RESCHEDULING_COST = "rescheduling-cost";

    /** Its name in the first version: rows of the store keep it, and commands take it. */
    static final String NUISANCE = "nuisance";

    /** How the file name of a vehicle log tells its truck. */
    static final String LOG_NAMES = "log-names";

    static final String DISTANCE = "distance";
    static final String VOLUME = "volume";
    static final String TEMPERATURE = "temperature";

    static final String CURRENCY = "currency";
    static final String DATES = "dates";
    static final String PAPER = "paper";

    /** When plans are made again by themselves. */
    static final String REPLAN = "replan-after-changes";

    static final String REPLAN_OFF = "off";

    public static final List<SettingKind> ALL = all();

    private SettingKinds() {}

    /** @throws InvalidValueException where there is no such setting, with the names there are */
    public static SettingKind get(String name) {
        return ALL.stream()
                .filter(kind -> kind.name().equals(name) || kind.storedName().equals(name))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "setting",
                        name,
                        "no such setting",
                        "name one of " + ALL.stream().map(SettingKind::name).collect(Collectors.joining(", "))));
    }

    /** The name of today for a stored one. */
    static String currentName(String stored) {
        return stored.equals(NUISANCE) ? RESCHEDULING_COST : stored;
    }

    private static List<SettingKind> all() {
        List<SettingKind> kinds = new ArrayList<>();
        kinds.addAll(VisitSettings.LIST);
        kinds.addAll(ConditionSettings.LIST);
        kinds.addAll(SupplySettings.LIST);
        kinds.addAll(PlanningFigureSettings.LIST);
        kinds.addAll(words());
        kinds.addAll(forms());
        return List.copyOf(kinds);
    }

    /** What a site says in words of its own. */
    private static List<SettingKind> words() {
        return List.of(
                text(
                        SITE_NAME,
                        "Name of the site",
                        "shown at the top of every page",
                        SettingKind.NONE,
                        (policy, kept) -> policy),
                text(
                        LOG_NAMES,
                        "Names of vehicle logs",
                        "which truck a vehicle log belongs to by its file name: {truck} or {vin} stands for it, * for"
                                + " anything",
                        LogNameRule.STANDARD,
                        (policy, kept) -> {
                            new LogNameRule(kept);
                            return policy;
                        }),
                text(
                        CURRENCY,
                        "Currency",
                        "sign or code that headings of amounts bear on sheets, mails and pages, such as EUR or $",
                        SettingKind.NONE,
                        (policy, kept) -> {
                            new SiteForm(SiteUnits.METRIC, kept, DateForm.WORDS, PaperSize.A4);
                            return policy;
                        }));
    }

    private static SettingKind text(
            String name, String title, String meaning, String standard, SettingKind.Effect effect) {
        return new SettingKind(name, SettingArea.SITE, title, meaning, Measure.TEXT, 0, 0, List.of(), standard, effect);
    }

    /** How a site reads figures, dates and papers. */
    private static List<SettingKind> forms() {
        List<SettingKind> kinds = new ArrayList<>();
        kinds.add(unit(
                DISTANCE, "Distances", "odometers and distances on pages and bay sheets", SiteUnits.Distance.values()));
        kinds.add(unit(VOLUME, "Volumes", "coolant on pages and bay sheets", SiteUnits.Volume.values()));
        kinds.add(unit(
                DATES,
                "Dates",
                "dates on sheets and mails; pages and bay sheets always name the month: 2 Mar 2026",
                DateForm.values()));
        kinds.add(unit(PAPER, "Paper", "bay sheets, labels, orders, return notes and workbooks", PaperSize.values()));
        kinds.add(choice(
                REPLAN,
                "Replan after changes",
                "plans are made again by themselves after close-outs and loads, once there was no further change for so"
                        + " long; not while a change is being previewed",
                List.of("after 5 minutes", "after 1 minute", "after 15 minutes", "after 60 minutes", REPLAN_OFF)));
        kinds.add(unit(TEMPERATURE, "Temperatures", "freezing points of coolant", SiteUnits.Temperature.values()));
        return kinds;
    }

    private static SettingKind unit(String name, String title, String meaning, Enum<?>... units) {
        return choice(
                name,
                title,
                meaning,
                List.of(units).stream().map(SettingKinds::words).toList());
    }

    private static SettingKind choice(String name, String title, String meaning, List<String> words) {
        return new SettingKind(
                name,
                SettingArea.SITE,
                title,
                meaning,
                Measure.CHOICE,
                0,
                0,
                words,
                words.get(0),
                (policy, kept) -> policy);
    }

    /** {@code US gallons}. */
    static String words(Enum<?> unit) {
        String words = unit.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        if (words.equals("a4") || words.equals("iso")) {
            return unit.name();
        }
        return words.startsWith("us ") ? "US " + words.substring(3) : words;
    }

    static SettingKind figure(
            String name,
            SettingArea area,
            String title,
            String meaning,
            Measure measure,
            double least,
            double most,
            double standard,
            SettingKind.Effect effect) {
        return new SettingKind(
                name, area, title, meaning, measure, least, most, List.of(), Require.plain(standard), effect);
    }

    static SettingKind yesOrNo(
            String name, SettingArea area, String title, String meaning, boolean standard, SettingKind.Effect effect) {
        return new SettingKind(
                name,
                area,
                title,
                meaning,
                Measure.CHOICE,
                0,
                0,
                List.of(SettingKind.YES, "no"),
                standard ? SettingKind.YES : "no",
                effect);
    }
}
