package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.app.stock.GoodsIn;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.stock.StockInjector;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.schedule.days.DayPlan;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.bay.BaySheetMaker;
import dev.injectorplanner.reports.bay.CodedInjector;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A depot's store as its page shows it.
 *
 * @param depot the depot
 * @param parts injector parts there are
 * @param visits visits of the coming weeks that need injectors, by week and truck
 * @param shelf what is in stock
 * @param orders open orders of injectors, the earliest expected first
 */
record StoreView(String depot, List<Part> parts, List<KitLine> visits, List<ShelfLine> shelf, List<OpenOrder> orders) {
    /** Injectors that one entry takes: a full set of the largest engine. */
    static final int LINES = 16;

    private static final int WEEKS = 3;

    /**
     * A visit's kit.
     *
     * @param day the day it is needed, or its week where the plan has laid out no days yet
     * @param start when the truck comes in, or the Monday of its week
     * @param cylinders each planned cylinder with the serial meant for it, or empty
     * @param picks the other parts, {@code 8 KX-1001 injector seal kit}
     */
    record KitLine(
            String truck,
            String day,
            LocalDateTime start,
            String part,
            Map<Integer, String> cylinders,
            List<String> picks) {
        /** Whether any cylinder lacks its injector. */
        public boolean lacking() {
            return cylinders.containsValue("");
        }

        /** Whether any cylinder has its injector. */
        public boolean any() {
            return cylinders.values().stream().anyMatch(serial -> !serial.isEmpty());
        }
    }

    /** An injector in stock. */
    record ShelfLine(StockInjector injector, String code, String place, List<Free> fits) {}

    /** An open order line of injectors. */
    record OpenOrder(String order, String words) {}

    /** A cylinder that still lacks an injector. */
    record Free(String truck, int cylinder) {}

    static Optional<StoreView> of(BayDesk desk, SerialisedStock shelf, String depot) {
        Optional<FleetIndex> fleet = desk.findFleet(depot);
        return fleet.map(index -> {
            List<StockInjector> there = shelf.list(depot);
            List<KitLine> kits = desk.findPlan(depot)
                    .map(plan -> kits(index, plan, depot, there, desk.done(depot, plan)))
                    .orElse(List.of());
            List<Part> parts = index.fleet().parts().stream()
                    .filter(part -> part.kind() == PartKind.INJECTOR)
                    .toList();
            return new StoreView(
                    depot,
                    parts,
                    kits,
                    there.stream().map(row -> line(row, kits)).toList(),
                    orders(index, depot, parts));
        });
    }

    private static List<OpenOrder> orders(FleetIndex index, String depot, List<Part> parts) {
        Set<String> names = parts.stream().map(Part::part).collect(Collectors.toSet());
        return index.fleet().purchaseLines().stream()
                .filter(line -> line.depot().equals(depot) && line.openQuantity() > 0 && names.contains(line.part()))
                .sorted(Comparator.comparing(PurchaseLine::expectedOn).thenComparing(PurchaseLine::order))
                .map(line -> new OpenOrder(
                        line.order(),
                        line.order() + ": " + Require.plain(line.openQuantity()) + " " + line.part()
                                + " open, expected " + DisplayFormat.day(line.expectedOn())))
                .toList();
    }

    private static List<KitLine> kits(
            FleetIndex index, KeptPlan plan, String depot, List<StockInjector> shelf, Map<String, CloseOut> done) {
        IsoWeek last = IsoWeek.of(plan.plan().today()).plus(WEEKS - 1);
        List<KitLine> kits = new ArrayList<>();
        BaySheetMaker sheets = new BaySheetMaker(index, plan.plan(), SiteUnits.METRIC);
        for (Visit visit : plan.plan().visits()) {
            boolean shown = visit.depot().equals(depot)
                    && !visit.cylinders().isEmpty()
                    && visit.week().compareTo(last) <= 0
                    && !done.containsKey(visit.truck());
            if (shown) {
                Map<Integer, String> cylinders = new java.util.TreeMap<>();
                visit.cylinders().forEach(cylinder -> cylinders.put(cylinder, ""));
                shelf.stream()
                        .filter(row -> visit.truck().equals(row.truck()) && row.cylinder() != null)
                        .forEach(row -> cylinders.put(row.cylinder(), row.serial()));
                String injector = index.family(visit.family()).injectorPart();
                Optional<DayPlan.Laid> laid = DepotDays.find(plan.plan().days(), visit);
                kits.add(new KitLine(
                        visit.truck(),
                        laid.map(each -> DisplayFormat.dayAndTime(each.start()) + ", bay " + each.bay())
                                .orElse("week " + visit.week()),
                        laid.map(DayPlan.Laid::start)
                                .orElse(visit.week().monday().plusDays(6).atStartOfDay()),
                        injector,
                        cylinders,
                        picks(sheets, visit, injector)));
            }
        }
        kits.sort(Comparator.comparing(KitLine::start).thenComparing(KitLine::truck));
        return kits;
    }

    private static List<String> picks(BaySheetMaker sheets, Visit visit, String injector) {
        return sheets.of(visit, Map.of()).kit().stream()
                .filter(pick -> !pick.part().equals(injector))
                .map(pick -> pick.pieces() + " " + pick.part() + " " + pick.description())
                .toList();
    }

    private static ShelfLine line(StockInjector row, List<KitLine> kits) {
        List<Free> fits = new ArrayList<>();
        if (row.truck() == null) {
            kits.stream()
                    .filter(kit -> kit.part().equals(row.part()))
                    .forEach(kit -> kit.cylinders().forEach((cylinder, serial) -> {
                        if (serial.isEmpty()) {
                            fits.add(new Free(kit.truck(), cylinder));
                        }
                    }));
        }
        return new ShelfLine(row, CodedInjector.grouped(row.code()), row.place().orElse(""), fits);
    }

    /** Units as typed, without blank lines. */
    static List<GoodsIn.Unit> units(FormState typed) {
        List<GoodsIn.Unit> units = new ArrayList<>();
        for (int i = 0; i < LINES; i++) {
            GoodsIn.Unit unit = new GoodsIn.Unit(typed.text("u" + i + ".serial"), typed.text("u" + i + ".code"));
            if (!unit.serial().isBlank() || !unit.code().isBlank()) {
                units.add(unit);
            }
        }
        return units;
    }

    /** The same form with its lines moved up, so that the sentences' numbers are those of the lines. */
    static FormState withoutBlankLines(FormState typed) {
        Map<String, List<String>> values = new HashMap<>();
        for (String name : Set.of("depot", "part", "origin", "order", "counted")) {
            values.put(name, typed.all(name));
        }
        List<GoodsIn.Unit> units = units(typed);
        for (int i = 0; i < units.size(); i++) {
            values.put("u" + i + ".serial", List.of(units.get(i).serial()));
            values.put("u" + i + ".code", List.of(units.get(i).code()));
        }
        return new FormState(values);
    }

    /** A number of a hidden field; 0 where it was tampered with, which nothing has. */
    static long number(String text) {
        return text.matches("\\d{1,18}") ? Long.parseLong(text) : 0;
    }
}
