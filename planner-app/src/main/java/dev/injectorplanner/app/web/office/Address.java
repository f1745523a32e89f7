package dev.injectorplanner.app.web.office;

import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.visit.Visit;
import java.nio.charset.StandardCharsets;
import org.springframework.web.util.UriUtils;

/** Addresses of pages, with names escaped. */
public final class Address {
    private Address() {}

    public static String escaped(String name) {
        return UriUtils.encode(name, StandardCharsets.UTF_8);
    }

    /** The file of a truck. */
    public static String truck(String truck) {
        return "/trucks/" + escaped(truck);
    }

    /** Where a truck's safety faults are closed by a repair, or held off. */
    public static String safety(String truck) {
        return "/safety/" + escaped(truck);
    }

    /** The plan of a depot, or of all for an empty name. */
    public static String plan(String depot) {
        return "/plan?depot=" + escaped(depot);
    }

    /** The visits of a depot and week in the plan. */
    public static String week(String depot, IsoWeek week) {
        return "/plan?depot=" + escaped(depot) + "&week=" + week + "#sec-b";
    }

    /** A visit, opened to be changed. */
    public static String change(Visit visit) {
        return "/plan?depot=" + escaped(visit.depot()) + "&week=" + visit.week() + "&truck=" + escaped(visit.truck())
                + "#change";
    }

    /** What moving a truck's visit to a week would do. */
    public static String tryMove(DepotPlan plan, String truck, IsoWeek to) {
        String from =
                plan.findVisit(truck).map(visit -> "&week=" + visit.week()).orElse("");
        return "/plan?depot=" + escaped(plan.depot()) + from + "&truck=" + escaped(truck) + "&do=move&to=" + to
                + "#change";
    }

    /** A depot's order list. */
    public static String order(String depot) {
        return "/order?depot=" + escaped(depot);
    }

    /** The months ahead of a depot, or of all for an empty name. */
    public static String outlook(String depot, int months) {
        return "/outlook?depot=" + escaped(depot) + "&months=" + months;
    }
}
