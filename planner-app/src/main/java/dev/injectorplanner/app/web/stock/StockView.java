package dev.injectorplanner.app.web.stock;

import dev.injectorplanner.app.stock.StockMovement;
import dev.injectorplanner.app.stock.Stocktakes;
import dev.injectorplanner.app.web.chart.Chart;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Part;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Stock of the depots chosen.
 *
 * @param value of what is on hand
 * @param onOrder value of what is on order
 * @param shortParts parts short in the plan's weeks
 * @param rows parts, those that run short first on top
 */
public record StockView(String value, String onOrder, int shortParts, List<Row> rows) {

    /** A part. */
    public record Row(
            String part,
            String description,
            String onHand,
            String allocated,
            String free,
            String onOrder,
            String shortage,
            String mark,
            String value) {}

    /** One part in detail. */
    public record OnePart(
            Row row,
            Chart.Both picture,
            List<WeekRow> weeks,
            List<Row> depots,
            List<Moved> movements,
            String adds,
            String safety) {}

    /** A week of a part. */
    public record WeekRow(String week, String start, String arriving, String required, String end, boolean isShort) {}

    /** A movement. */
    public record Moved(
            String when, String depot, String what, String document, String by, String pieces, String onHand) {}

    /** A stocktake that was posted. */
    public record Taken(String number, String depot, String day, String by, int counted, String differing) {}

    /** A part to count. */
    public record CountRow(
            String part, String description, String expected, String unit, String counted, String reason) {}

    static StockView of(ChosenDepots chosen) {
        Map<String, Part> parts = parts(chosen.plans());
        List<Shelf> shelves = new ArrayList<>(Shelf.of(chosen.plans()).values());
        shelves.sort(Comparator.comparing((Shelf shelf) ->
                        shelf.shortage().map(week -> week.week().toString()).orElse("~"))
                .thenComparing(Shelf::part));
        double value = 0;
        double ordered = 0;
        int shorts = 0;
        for (Shelf shelf : shelves) {
            double price = price(parts.get(shelf.part()));
            value += price * shelf.onHand();
            ordered += price * (shelf.onOrder() + shelf.overdue());
            shorts += shelf.shortage().isPresent() ? 1 : 0;
        }
        return new StockView(
                DisplayFormat.money(value),
                DisplayFormat.money(ordered),
                shorts,
                shelves.stream()
                        .map(shelf -> row(shelf.part(), shelf, parts.get(shelf.part())))
                        .toList());
    }

    private static Map<String, Part> parts(List<DepotPlan> plans) {
        Map<String, Part> parts = new HashMap<>();
        plans.forEach(plan -> plan.fleet().fleet().parts().forEach(part -> parts.putIfAbsent(part.part(), part)));
        return parts;
    }

    private static double price(@Nullable Part part) {
        return part == null ? 0 : part.price().doubleValue();
    }

    private static Row row(String name, Shelf shelf, @Nullable Part part) {
        Optional<Shelf.Week> shortage = shelf.shortage();
        return new Row(
                name,
                part == null ? "" : part.description(),
                DisplayFormat.pieces(shelf.onHand()),
                DisplayFormat.pieces(shelf.allocated()),
                DisplayFormat.pieces(shelf.free()).replace('-', '−'),
                DisplayFormat.pieces(shelf.onOrder())
                        + (shelf.nextOn() == null ? "" : ", next " + DisplayFormat.day(shelf.nextOn()))
                        + (shelf.overdue() > 0 ? "; " + DisplayFormat.pieces(shelf.overdue()) + " overdue" : ""),
                shortage.map(week ->
                                DisplayFormat.week(week.week()) + ", " + DisplayFormat.pieces(-week.end()) + " short")
                        .orElse("none"),
                shortage.isPresent() ? "decide" : "done",
                DisplayFormat.cents(BigDecimal.valueOf(price(part) * shelf.onHand())));
    }

    static OnePart part(
            ChosenDepots chosen, String name, Function<DepotPlan, List<StockMovement>> movements, int most) {
        Shelf shelf = Shelf.of(chosen.plans()).get(name);
        Part part = parts(chosen.plans()).get(name);
        if (part == null) {
            throw new NotHereException("There is no part \"" + name + "\". Fix: open the stock and choose one.");
        }
        if (shelf == null) {
            shelf = new Shelf(name, 0, 0, 0, 0, null, 0, List.of());
        }
        List<Row> depots = new ArrayList<>();
        List<StockMovement> all = new ArrayList<>();
        Map<String, java.time.ZoneId> zones = new HashMap<>();
        for (DepotPlan plan : chosen.plans()) {
            Shelf one = Shelf.of(List.of(plan)).get(name);
            if (one != null) {
                depots.add(row(plan.depot(), one, part));
            }
            zones.put(plan.depot(), plan.site().timeZone());
            all.addAll(movements.apply(plan));
        }
        all.sort(Comparator.comparing(StockMovement::id).reversed());
        List<StockMovement> shown = all.subList(0, Math.min(most, all.size()));
        return new OnePart(
                row(name, shelf, part),
                StockChart.of(shelf),
                shelf.weeks().stream()
                        .filter(StockView::moves)
                        .map(StockView::week)
                        .toList(),
                depots,
                shown.stream()
                        .map(each -> moved(each, zones.getOrDefault(each.depot(), java.time.ZoneOffset.UTC)))
                        .toList(),
                adds(shelf.onHand(), shown),
                DisplayFormat.pieces(shelf.safety()));
    }

    private static String adds(double onHand, List<StockMovement> shown) {
        double in =
                shown.stream().mapToDouble(each -> Math.max(0, each.pieces())).sum();
        double out =
                shown.stream().mapToDouble(each -> Math.max(0, -each.pieces())).sum();
        return "Opening " + DisplayFormat.pieces(onHand - in + out) + ", in " + DisplayFormat.pieces(in) + ", out "
                + DisplayFormat.pieces(out) + ", on hand " + DisplayFormat.pieces(onHand) + ".";
    }

    /** Weeks in which nothing comes, goes or is missing are left out of the table; the picture has them all. */
    private static boolean moves(Shelf.Week week) {
        return week.arriving() > 0 || week.required() > 0 || week.end() < -1e-9;
    }

    private static WeekRow week(Shelf.Week week) {
        return new WeekRow(
                DisplayFormat.week(week.week()),
                DisplayFormat.pieces(week.start()).replace('-', '−'),
                DisplayFormat.pieces(week.arriving()),
                DisplayFormat.pieces(week.required()),
                DisplayFormat.pieces(week.end()).replace('-', '−'),
                week.end() < -1e-9);
    }

    private static Moved moved(StockMovement each, java.time.ZoneId zone) {
        return new Moved(
                DisplayFormat.moment(each.cause().at(), zone),
                each.depot(),
                DisplayFormat.sentence(each.cause().kind().words())
                        + (each.cause().why().isEmpty()
                                ? ""
                                : ": " + each.cause().why()),
                each.cause().document(),
                each.cause().by(),
                (each.pieces() > 0 ? "+" : "−") + DisplayFormat.pieces(Math.abs(each.pieces())),
                DisplayFormat.pieces(each.onHand()));
    }

    static Taken taken(String depot, Stocktakes.Posted posted) {
        List<String> differing = posted.counts().stream()
                .filter(count -> count.counted() != count.expected())
                .map(count -> count.part() + " " + DisplayFormat.moreTenth(count.counted() - count.expected()) + ", "
                        + count.reason())
                .toList();
        return new Taken(
                posted.number(),
                depot,
                DisplayFormat.shortDate(posted.day()),
                posted.by(),
                posted.counts().size(),
                differing.isEmpty() ? "nothing" : String.join("; ", differing));
    }

    static List<CountRow> countRows(DepotPlan plan) {
        return countRows(plan, Map.of());
    }

    /** A row as it was typed. */
    record Typed(String expected, String counted, String reason) {}

    static List<CountRow> countRows(DepotPlan plan, Map<String, Typed> typed) {
        Map<String, Part> parts = parts(List.of(plan));
        return Shelf.of(List.of(plan)).values().stream()
                .map(shelf -> {
                    Typed row = typed.getOrDefault(shelf.part(), new Typed("", "", ""));
                    Part part = parts.get(shelf.part());
                    return new CountRow(
                            shelf.part(),
                            part == null ? "" : part.description(),
                            Require.plain(shelf.onHand()),
                            DisplayFormat.pieces(shelf.onHand()),
                            row.counted(),
                            row.reason());
                })
                .toList();
    }
}
