package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.bay.BaySheet;
import dev.injectorplanner.reports.bay.CodedInjector;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
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

    /** A part that may have been used. */
    public record PartField(String part, String description, String remark) {}

    /** A form for what the plan wants done, all cylinders as fitted. */
    static FormState blank(TruckInBay at) {
        FormState typed = new FormState();
        typed.put("formKey", UUID.randomUUID());
        typed.put(DISTANCE, at.units().distance());
        typed.put("week", at.visit() == null ? null : at.visit().week());
        typed.put("doneOn", at.day());
        for (int cylinder : at.family().allCylinders()) {
            typed.put("c" + cylinder + ".fate", at.planned().contains(cylinder) ? "fitted" : "stays");
        }
        BaySheet sheet = at.sheet();
        if (sheet != null) {
            sheet.along().forEach(task -> typed.put("task", task));
            sheet.kit().stream()
                    .filter(pick -> pick.remark().isEmpty())
                    .forEach(pick -> typed.put("used." + pick.part(), pick.pieces()));
        }
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
        typed.put("labourHours", Require.plain(kept.labourHours()));
        typed.put("odometer", odometer(kept, at.units()));
        typed.put("engineHours", kept.engineHours() == null ? null : Require.plain(kept.engineHours()));
        typed.put("meterReplaced", kept.meterReplaced() ? "yes" : null);
        typed.put("extras", kept.extras());
        typed.put("recheckOn", kept.recheckOn());
        kept.tasks().forEach(task -> typed.put("task", task));
        kept.used().stream()
                .filter(used -> !isInjector(at, used.part()))
                .forEach(used -> typed.put("used." + used.part(), Require.plain(used.used())));
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
        typed.put(field + "programmed", done.programmed() ? "yes" : null);
        typed.put(field + "compared", done.readBack() == CloseOut.ReadBack.NONE ? null : "yes");
        typed.put(field + "reason", done.reason());
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
        return "in since " + row.fittedOn() + (row.serial() == null ? "" : ", serial " + row.serial());
    }

    private static String grouped(String code) {
        return CodedInjector.grouped(code);
    }

    /** Parts of the kit without injectors: those are counted by what was fitted. */
    static List<PartField> parts(TruckInBay at, FormState typed) {
        List<PartField> fields = new ArrayList<>();
        BaySheet sheet = at.sheet();
        Set<String> seen = new LinkedHashSet<>();
        if (sheet != null) {
            for (BaySheet.Pick pick : sheet.kit()) {
                if (!isInjector(at, pick.part()) && seen.add(pick.part())) {
                    fields.add(new PartField(pick.part(), pick.description(), pick.remark()));
                }
            }
        }
        at.fleet().jobPartsOf(at.family().family()).forEach(job -> {
            if (!isInjector(at, job.part()) && seen.add(job.part())) {
                String name =
                        at.fleet().findPart(job.part()).map(Part::description).orElse("");
                fields.add(new PartField(job.part(), name, ""));
            }
        });
        return fields;
    }

    private static boolean isInjector(TruckInBay at, String part) {
        return at.fleet()
                .findPart(part)
                .filter(row -> row.kind() == PartKind.INJECTOR)
                .isPresent();
    }
}
