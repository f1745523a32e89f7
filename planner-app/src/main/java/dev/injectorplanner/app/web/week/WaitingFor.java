package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.parts.ShortLine;
import java.util.List;
import java.util.Locale;

/** What a week's visits wait for. */
final class WaitingFor {
    private WaitingFor() {}

    static List<WeekView.Waiting> of(DepotPlan plan, IsoWeek week) {
        return plan.shortList().stream()
                .filter(line -> line.week().equals(week) && !plan.isDone(line.truck(), line.week()))
                .map(line -> new WeekView.Waiting(
                        line.truck(),
                        line.depot(),
                        starts(plan, line),
                        DisplayFormat.pieces(line.missing()) + " " + named(plan, line.part())
                                + (line.chance() < 1 ? ", with " + DisplayFormat.chance(line.chance()) : ""),
                        "if ordered today: " + DisplayFormat.day(line.usualArrival())
                                + (line.latestArrival().equals(line.usualArrival())
                                        ? ""
                                        : ", at the latest " + DisplayFormat.day(line.latestArrival())),
                        otherwise(line)))
                .toList();
    }

    private static String starts(DepotPlan plan, ShortLine line) {
        return plan.days().laid().stream()
                .filter(laid -> laid.truck().equals(line.truck()) && !laid.diagnosis())
                .findFirst()
                .map(laid -> DisplayFormat.day(laid.start().toLocalDate()))
                .orElse(DisplayFormat.week(line.week()));
    }

    /** A part with its description. */
    static String named(DepotPlan plan, String part) {
        String description =
                plan.fleet().findPart(part).map(Part::description).orElse("").toLowerCase(Locale.ROOT);
        return description.isEmpty() ? part : part + " (" + description + ")";
    }

    private static String otherwise(ShortLine line) {
        String express = "express, " + DisplayFormat.money(line.expeditePrice().doubleValue());
        String moved = "move to " + DisplayFormat.week(line.moveTo()) + ", "
                + DisplayFormat.money(line.postponementCost().doubleValue());
        return switch (line.advice()) {
            case EXPEDITE -> express + "; or " + moved;
            case TRANSFER ->
                "transfer from " + line.fromDepot() + ", "
                        + DisplayFormat.money(line.expeditePrice().doubleValue()) + "; or " + moved;
            case MOVE -> moved + "; or " + express;
            case ORDER_TODAY -> "order today; if it is late, " + moved;
            case GO_AHEAD -> "go ahead; if one breaks, " + moved;
        };
    }
}
