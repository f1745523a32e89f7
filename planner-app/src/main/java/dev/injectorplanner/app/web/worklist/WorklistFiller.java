package dev.injectorplanner.app.web.worklist;

import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Fills the worklist's page. */
final class WorklistFiller {
    /** At 60 px a row the table stays below 4,000 px. */
    static final int A_PAGE = 40;

    private static final int BAR = 64;
    private static final double WIDEST_CHANCE = 0.4;

    private static final Map<String, String> VIEWS = viewsInOrder();

    private final SiteUnits units;
    private final WorklistQuery query;

    WorklistFiller(SiteUnits units, WorklistQuery query) {
        this.units = units;
        this.query = query;
    }

    private static Map<String, String> viewsInOrder() {
        Map<String, String> views = new java.util.LinkedHashMap<>();
        views.put("All trucks", "");
        views.put("Safety", "state=safety");
        views.put("Due, no visit", "state=no-visit");
        views.put("Overdue", "overdue=on");
        views.put("Over the risk limit", "over=on");
        views.put("Waiting for parts", "state=waits");
        views.put("In the bay", "state=in-bay");
        views.put("Open faults", "faults=on&sort=faults");
        return views;
    }

    /** @param found trucks that hold what was typed */
    WorklistView of(List<WorkTruck> trucks, Set<String> found, List<SavedViews.SavedView> saved) {
        List<WorkTruck> shown = query.of(trucks, found, units);
        int pages = Math.max(1, (shown.size() + A_PAGE - 1) / A_PAGE);
        int page = Math.min(Math.max(1, query.page()), pages);
        int from = (page - 1) * A_PAGE;
        int to = Math.min(shown.size(), from + A_PAGE);
        return new WorklistView(
                heads(),
                shown.subList(from, to).stream().map(this::row).toList(),
                views(trucks, found),
                saved.stream()
                        .map(view -> view(view.name(), WorklistQuery.parse(view.address()), trucks, found))
                        .toList(),
                sorts(),
                pages,
                page,
                shown.isEmpty() ? 0 : from + 1,
                to,
                shown.size(),
                trucks.size(),
                limit(trucks),
                tally(trucks));
    }

    private List<WorklistView.View> views(List<WorkTruck> trucks, Set<String> found) {
        List<WorklistView.View> views = new ArrayList<>();
        VIEWS.forEach((name, address) -> {
            WorklistView.View view = view(name, WorklistQuery.parse(address), trucks, found);
            if (address.isEmpty() || view.count() > 0) {
                views.add(view);
            }
        });
        return views;
    }

    private WorklistView.View view(String name, WorklistQuery asked, List<WorkTruck> trucks, Set<String> found) {
        WorklistQuery whole =
                query.get("depot").isEmpty() || !asked.get("depot").isEmpty()
                        ? asked
                        : asked.with("depot", query.get("depot"));
        boolean current = WorklistQuery.FILTERS.stream()
                .allMatch(filter -> whole.get(filter).equals(query.get(filter)));
        int count = asked.get("find").isEmpty()
                ? whole.of(trucks, found, units).size()
                : -1; // another search than the one that was made
        return new WorklistView.View(name, whole.link(), count, current);
    }

    private static String limit(List<WorkTruck> trucks) {
        for (WorkTruck truck : trucks) {
            WorkTruck.Risk risk = truck.risk();
            Double limit = risk == null ? null : risk.limit();
            if (limit != null) {
                return DisplayFormat.chance(limit);
            }
        }
        return "";
    }

    private static WorklistView.Tally tally(List<WorkTruck> trucks) {
        return new WorklistView.Tally(
                count(trucks, Standing.SAFETY),
                (int) trucks.stream()
                        .filter(truck -> truck.risk() != null && truck.risk().overLimit())
                        .count(),
                (int) trucks.stream().filter(WorkTruck::overdue).count(),
                count(trucks, Standing.NO_VISIT),
                count(trucks, Standing.IN_BAY));
    }

    private static int count(List<WorkTruck> trucks, Standing standing) {
        return (int)
                trucks.stream().filter(truck -> truck.standing() == standing).count();
    }

    private List<WorklistView.Head> heads() {
        String unit = units.distanceUnit();
        return List.of(
                head("Truck", Sort.TRUCK, false),
                head("12-week chance", Sort.CHANCE, false),
                head("Open faults", Sort.FAULTS, true),
                head("Since fitting, " + unit, Sort.SINCE, true),
                head("Odometer, " + unit, Sort.ODOMETER, true),
                head("Engine hours", Sort.HOURS, true),
                head(DisplayFormat.sentence(unit) + " a week", Sort.WEEKLY, true),
                head("Next visit", Sort.VISIT, false),
                head("State", Sort.STATE, false),
                head("Depot", Sort.DEPOT, false),
                head("Family", Sort.FAMILY, false));
    }

    private WorklistView.Head head(String name, Sort sort, boolean figure) {
        boolean on = query.sort() == sort;
        boolean back = on && !query.reversed();
        boolean descending = sort.downward() != query.reversed();
        return new WorklistView.Head(
                name,
                query.with("sort", (back ? "-" : "") + sort.key()).link(),
                on ? descending ? "descending" : "ascending" : "",
                figure);
    }

    private List<WorklistView.Choice> sorts() {
        List<WorklistView.Choice> choices = new ArrayList<>();
        for (Sort sort : Sort.values()) {
            choices.add(new WorklistView.Choice(
                    sort.key(), DisplayFormat.sentence(sort.words()), sort == query.sort() && !query.reversed()));
        }
        return choices;
    }

    private WorklistView.Row row(WorkTruck truck) {
        WorkTruck.Risk risk = truck.risk();
        WorkTruck.Next next = truck.next();
        Double limit = risk == null ? null : risk.limit();
        return new WorklistView.Row(
                truck.truck(),
                risk == null ? "not known" : DisplayFormat.chance(risk.chance()),
                risk == null ? "" : "cyl\u00a0" + risk.cylinder(),
                risk == null ? 0 : place(risk.chance()),
                limit == null ? -1 : place(limit),
                truck.faults(),
                distance(truck.meters().sinceKm()),
                distance(truck.meters().odometerKm()),
                figure(truck.meters().hours()),
                distance(truck.meters().kmPerWeek()),
                next == null
                        ? "none"
                        : next.day() == null ? DisplayFormat.week(next.week()) : DisplayFormat.day(next.day()),
                next == null ? "" : next.work() + ", " + DisplayFormat.tenth(next.hours()) + "\u00a0h",
                truck.standing().mark(),
                truck.standing().words(),
                truck.standing().strong(),
                truck.depot(),
                truck.group(),
                truck.family());
    }

    private static double place(double chance) {
        return Math.rint(Math.min(1, chance / WIDEST_CHANCE) * BAR * 10) / 10;
    }

    private String distance(@Nullable Double km) {
        return figure(km == null ? null : Double.valueOf(units.ofKm(km)));
    }

    private static String figure(@Nullable Double value) {
        return value == null ? "" : Figures.whole(value);
    }
}
