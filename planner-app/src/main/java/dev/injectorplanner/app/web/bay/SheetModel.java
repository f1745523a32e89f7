package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.parts.OrderRules;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.bay.BaySheet;
import dev.injectorplanner.reports.bay.BaySheetMaker;
import dev.injectorplanner.reports.bay.Cautions;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.springframework.ui.Model;

/** What the pages of a bay sheet and of its correction have in common. */
final class SheetModel {
    private static final int RECENT_DAYS = 30;

    private SheetModel() {}

    static void fill(TruckInBay at, FormState typed, Model model) {
        BaySheet sheet = at.sheet();
        SiteUnits units = CloseOutForm.unitsOf(typed, at.units());
        List<CloseOutForm.CylinderField> cylinders = CloseOutForm.cylinders(at);
        model.addAttribute("at", at);
        model.addAttribute("sheet", sheet);
        model.addAttribute("form", typed);
        model.addAttribute("cylinders", cylinders);
        model.addAttribute(
                "othersTouched",
                cylinders.stream()
                        .filter(each -> !each.planned())
                        .anyMatch(each -> !typed.has("c" + each.cylinder() + ".fate", "stays")
                                || typed.wrongWithin("c" + each.cylinder() + ".")));
        model.addAttribute("distanceUnit", units.distanceUnit());
        model.addAttribute("temperatureUnit", units.temperatureUnit());
        model.addAttribute("parts", CloseOutForm.parts(at, typed));
        model.addAttribute("readings", readings(at));
        model.addAttribute("testedCylinders", tested(at));
        model.addAttribute("ends", sheet == null ? Cautions.end(true, false, false) : sheet.end());
        model.addAttribute(
                "endWrong",
                typed.allWrong().keySet().stream().anyMatch(field -> !field.matches("[ct]\\d+\\..*|freezing")));
        model.addAttribute("swaps", Swaps.of(at, typed));
        model.addAttribute("looks", looks(at));
        model.addAttribute("said", null);
        model.addAttribute("paper", null);
    }

    private static List<BaySheet.Reading> readings(TruckInBay at) {
        BaySheet sheet = at.sheet();
        return sheet != null && !sheet.readings().isEmpty()
                ? sheet.readings()
                : new BaySheetMaker(at.fleet(), at.today(), OrderRules.standard(), at.units())
                        .readings(at.family().family());
    }

    private static List<Integer> tested(TruckInBay at) {
        BaySheet sheet = at.sheet();
        return sheet != null && !sheet.tested().isEmpty()
                ? sheet.tested()
                : at.family().allCylinders();
    }

    /** Diagnoses that the truck's open faults ask for. */
    static Set<DiagnosisKind> looks(TruckInBay at) {
        Set<DiagnosisKind> kinds = EnumSet.noneOf(DiagnosisKind.class);
        for (DueItem item : at.due()) {
            String code = item.faultCode();
            if (code != null) {
                DiagnosisKind.of(new FaultCode(code)).ifPresent(kinds::add);
            }
        }
        LocalDate since = at.today().minusDays(RECENT_DAYS);
        for (Fault fault : at.openFaults()) {
            boolean recent =
                    fault.until().atZone(at.depot().timeZone()).toLocalDate().isAfter(since);
            if (recent && fault.code().electrical()) {
                kinds.add(DiagnosisKind.CIRCUIT);
            }
        }
        return kinds;
    }
}
