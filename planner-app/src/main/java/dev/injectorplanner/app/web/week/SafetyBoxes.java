package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.visit.Visit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Trucks with an open safety fault: before every question, since nothing weighs against them. */
final class SafetyBoxes {
    private SafetyBoxes() {}

    /**
     * A truck to bring in.
     *
     * @param title truck and depot
     * @param evidence what was seen, and by when
     * @param when its diagnosis visit, in words
     * @param hours labour of it
     * @param link where the fault is closed or held off
     */
    public record Box(String truck, String title, String evidence, String when, String hours, String link) {}

    static List<Box> of(List<DepotPlan> plans) {
        List<Box> boxes = new ArrayList<>();
        for (DepotPlan plan : plans) {
            Map<String, List<DueItem>> trucks = new LinkedHashMap<>();
            plan.dueItems().stream()
                    .filter(item -> item.kind() == DueKind.SAFETY && !plan.isDone(item.truck()))
                    .forEach(item -> trucks.computeIfAbsent(item.truck(), truck -> new ArrayList<>())
                            .add(item));
            trucks.values().forEach(items -> boxes.add(box(plan, items)));
        }
        return boxes;
    }

    private static Box box(DepotPlan plan, List<DueItem> items) {
        DueItem item = items.get(0);
        Optional<Visit> diagnosis = plan.visits().stream()
                .filter(visit -> visit.truck().equals(item.truck()) && visit.diagnosis())
                .findFirst();
        return new Box(
                item.truck(),
                item.truck() + ", " + item.depot() + ": safety, bring in now",
                DisplayFormat.sentence(items.stream().map(DueItem::evidence).collect(Collectors.joining("; ")))
                        + ". Due " + DisplayFormat.day(item.by()) + ".",
                diagnosis
                        .map(visit -> "find the cause "
                                + DepotDays.find(plan.plan().days(), visit)
                                        .map(laid -> DisplayFormat.dayAndTime(laid.start()) + ", bay " + laid.bay())
                                        .orElse("in " + visit.week()))
                        .orElse("bring it in now: the plan has no diagnosis for it"),
                diagnosis.map(visit -> DisplayFormat.tenth(visit.labourHours())).orElse(""),
                Address.safety(item.truck()));
    }
}
