package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.parts.StandardParts;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.bay.BaySheet;
import dev.injectorplanner.reports.bay.CodedInjector;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The form of a close-out, as it is first shown, and the fields it has. */
final class CloseOutForm {
    /** The field that says in which unit the form asks for the odometer. */
    static final String DISTANCE = "distance";

    private CloseOutForm() {}

    /** The units of a form: those that it names, else the site's. */
    static SiteUnits unitsOf(FormState typed, SiteUnits site) {
        return Stream.of(SiteUnits.Distance.values())
                .filter(each -> each.name().equals(typed.text(DISTANCE)))
                .findFirst()
                .map(each -> new SiteUnits(each, site.volume(), site.temperature()))
                .orElse(site);
    }

    /**
     * Fields of a cylinder.
     *
     * @param planned whether the visit is for it
     * @param out what is in it now, in words
     * @param picked serial and code of its kit, in words, or empty
     */
    public record CylinderField(int cylinder, boolean planned, String out, String picked) {}

    /**
     * A part that may have been used.
     *
     * @param rule what it is counted by, for the page's script: {@code 1*each;2*any 1 3 5;1*task fuel filter}
     */
    public record PartField(String part, String description, String remark, String rule) {}

    /** A form for what the plan wants done, all cylinders as fitted. */
    static FormState blank(TruckInBay at) {
        FormState typed = new FormState();
        typed.put("formKey", UUID.randomUUID());
        typed.put(DISTANCE, at.units().distance());
        typed.put("week", at.week());
        typed.put("job", at.job() == null ? null : at.job().id());
        typed.put("doneOn", at.finished().day());
        typed.put("finishedAt", at.finished().hour());
        for (int cylinder : at.family().allCylinders()) {
            typed.put("c" + cylinder + ".fate", at.planned().contains(cylinder) ? "fitted" : "stays");
        }
        BaySheet sheet = at.sheet();
        if (sheet != null) {
            sheet.along().forEach(task -> typed.put("task", task));
        }
        standard(typed, at, at.planned(), typed.all("task"), Map.of());
        typed.put("engineState", "warm idle");
        return typed;
    }

    /** A form with what was kept, for its correction. */
    static FormState of(TruckInBay at, CloseOut kept) {
        FormState typed = new FormState();
        typed.put("formKey", UUID.randomUUID());
        typed.put(DISTANCE, at.units().distance());
        typed.put("week", kept.week());
        typed.put("doneOn", kept.doneOn());
        typed.put(
                "finishedAt",
                LocalTime.ofInstant(kept.finishedAt(), at.depot().timeZone()).truncatedTo(ChronoUnit.MINUTES));
        typed.put("labourHours", Require.plain(kept.labourHours()));
        typed.put("odometer", odometer(kept, at.units()));
        typed.put("engineHours", kept.engineHours() == null ? null : Require.plain(kept.engineHours()));
        typed.put("meterReplaced", kept.meterReplaced() ? "yes" : null);
        typed.put("extras", kept.extras());
        typed.put("recheckOn", kept.recheckOn());
        kept.tasks().forEach(task -> typed.put("task", task));
        Map<String, Double> used = new TreeMap<>();
        kept.used().stream()
                .filter(each -> !isInjector(at, each.part()))
                .forEach(each -> used.put(each.part(), each.used()));
        standard(typed, at, kept.fitted(), kept.tasks(), used);
        for (CloseOutEntry.Test test : kept.tests()) {
            typed.put("t" + test.cylinder() + "." + test.test(), Require.plain(test.value()));
        }
        typed.put(
                "engineState",
                kept.tests().isEmpty() ? "warm idle" : kept.tests().get(0).engineState());
        for (int cylinder : at.family().allCylinders()) {
            kept.cylinders().stream()
                    .filter(done -> done.cylinder() == cylinder)
                    .findFirst()
                    .ifPresentOrElse(done -> put(typed, done), () -> typed.put("c" + cylinder + ".fate", "stays"));
        }
        return typed;
    }

    /** Fills in what work on these cylinders takes; beside it what was typed, which goes before. */
    private static void standard(
            FormState typed, TruckInBay at, List<Integer> cylinders, List<String> tasks, Map<String, Double> used) {
        Map<String, Double> standard = StandardParts.of(at.fleet(), at.family()).pieces(cylinders, tasks);
        Set<String> parts = new TreeSet<>(standard.keySet());
        parts.addAll(used.keySet());
        for (String part : parts) {
            String pieces = standard.containsKey(part) ? Require.plain(standard.get(part)) : "";
            Double typedIn = used.get(part);
            typed.put("auto." + part, pieces);
            typed.put("used." + part, used.isEmpty() ? pieces : typedIn == null ? "" : Require.plain(typedIn));
        }
    }

    /** The odometer as it is shown, or null where none was read. */
    static @Nullable String odometer(CloseOut kept, SiteUnits units) {
        Double odometer = kept.odometerKm();
        return odometer == null ? null : SiteUnits.asTyped(units.ofKm(odometer));
    }

    private static void put(FormState typed, CloseOut.Done done) {
        String field = "c" + done.cylinder() + ".";
        typed.put(field + "fate", done.fitted() ? "fitted" : "left");
        typed.put(field + "found", done.found());
        typed.put(field + "serial", done.serial());
        typed.put(field + "code", done.code());
        typed.put(field + "origin", done.origin());
        typed.put(field + "coded", done.programmed() && done.readBack() != CloseOut.ReadBack.NONE ? "yes" : null);
        typed.put(field + "reason", done.reason());
        typed.put(field + "failedFirst", done.failedFirst());
    }

    /** Planned cylinders first, front to rear, then the others. */
    static List<CylinderField> cylinders(TruckInBay at) {
        Set<Integer> order = new LinkedHashSet<>();
        BaySheet sheet = at.sheet();
        if (sheet != null) {
            sheet.cylinders().forEach(work -> order.add(work.cylinder()));
        }
        order.addAll(at.planned());
        order.addAll(at.family().allCylinders());
        List<CylinderField> fields = new ArrayList<>();
        for (int cylinder : order) {
            StockInjector picked = at.kit().get(cylinder);
            fields.add(new CylinderField(
                    cylinder,
                    at.planned().contains(cylinder),
                    at.fittedIn(cylinder).map(CloseOutForm::words).orElse("no record of the fitted injector"),
                    picked == null
                            ? ""
                            : picked.serial() + (picked.code().isEmpty() ? "" : ", code " + grouped(picked.code()))));
        }
        return fields;
    }

    private static String words(FittedInjector row) {
        return "in since " + row.fittedWords() + (row.serial() == null ? "" : ", serial " + row.serial());
    }

    private static String grouped(String code) {
        return CodedInjector.grouped(code);
    }

    /** Parts of the kit without injectors: those are counted by what was fitted. */
    static List<PartField> parts(TruckInBay at, FormState typed) {
        List<PartField> fields = new ArrayList<>();
        BaySheet sheet = at.sheet();
        Set<String> seen = new LinkedHashSet<>();
        StandardParts standard = StandardParts.of(at.fleet(), at.family());
        if (sheet != null) {
            for (BaySheet.Pick pick : sheet.kit()) {
                if (!isInjector(at, pick.part()) && seen.add(pick.part())) {
                    fields.add(
                            new PartField(pick.part(), pick.description(), pick.remark(), rule(standard, pick.part())));
                }
            }
        }
        at.fleet().jobPartsOf(at.family().family()).forEach(job -> {
            if (!isInjector(at, job.part()) && seen.add(job.part())) {
                String name =
                        at.fleet().findPart(job.part()).map(Part::description).orElse("");
                fields.add(new PartField(job.part(), name, "", rule(standard, job.part())));
            }
        });
        return fields;
    }

    private static String rule(StandardParts standard, String part) {
        return standard.lines().stream()
                .filter(line -> line.part().equals(part))
                .map(line -> Require.plain(line.quantity())
                        + (line.each()
                                ? "*each"
                                : line.task() != null
                                        ? "*task " + line.task()
                                        : "*any "
                                                + line.anyOf().stream()
                                                        .map(String::valueOf)
                                                        .collect(Collectors.joining(" "))))
                .collect(Collectors.joining(";"));
    }

    private static boolean isInjector(TruckInBay at, String part) {
        return at.fleet()
                .findPart(part)
                .filter(row -> row.kind() == PartKind.INJECTOR)
                .isPresent();
    }
}
