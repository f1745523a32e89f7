package dev.injectorplanner.core.allocation;

import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.StockLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Whether an allocation can happen: every piece once, none before it can be there, every kit complete before its visit
 * starts. Adds up the finished allocation against the tables and shares no code with what made it.
 */
public final class AllocationChecker {
    private static final double ROUNDING = 1e-4;

    private final FleetSnapshot fleet;
    private final LocalDate today;
    private final int expressDays;
    private final List<String> wrong = new ArrayList<>();

    private AllocationChecker(FleetSnapshot fleet, LocalDate today, int expressDays) {
        this.fleet = fleet;
        this.today = today;
        this.expressDays = expressDays;
    }

    /**
     * Checks.
     *
     * @param needs kits that the plan's visits must have
     * @param starts first day of each visit that has one, by truck and week as {@code "T1 2026-W10"}
     * @return what is wrong, in words; empty where all holds
     */
    public static List<String> listViolations(
            FleetSnapshot fleet,
            LocalDate today,
            int expressDays,
            List<KitNeed> needs,
            Allocation allocation,
            Map<String, LocalDate> starts) {
        AllocationChecker checker = new AllocationChecker(fleet, today, expressDays);
        checker.pieces(allocation.pieces());
        checker.days(allocation.pieces());
        checker.kits(needs, allocation, starts);
        return checker.wrong;
    }

    private void pieces(List<AllocatedPieces> pieces) {
        Map<String, Double> there = new HashMap<>();
        for (StockLine line : fleet.stock()) {
            there.merge("stock of " + line.part() + " at " + line.depot(), line.onHand(), Double::sum);
        }
        for (StockLine line : fleet.spares()) {
            there.merge("stock of " + line.part() + " at " + line.depot(), line.onHand(), Double::sum);
        }
        for (PurchaseLine line : fleet.purchaseLines()) {
            if (line.receivedOn() == null && !line.expectedOn().isBefore(today)) {
                there.merge(
                        lineOf(line.order(), line.part(), line.depot()),
                        line.quantity() - line.received(),
                        Double::sum);
            }
        }
        Map<String, Double> used = new TreeMap<>();
        for (AllocatedPieces each : pieces) {
            String depot = each.fromDepot() == null ? each.depot() : each.fromDepot();
            if (each.order() != null) {
                used.merge(lineOf(each.order(), each.part(), depot), each.quantity(), Double::sum);
            } else if (each.source() == PieceSource.SHELF || each.source() == PieceSource.TRANSFER) {
                used.merge("stock of " + each.part() + " at " + depot, each.quantity(), Double::sum);
            } else if (each.source() == PieceSource.ORDER) {
                wrong.add("truck " + each.truck() + ", part " + each.part() + ": comes with no order");
            }
        }
        used.forEach((place, count) -> {
            double most = there.getOrDefault(place, 0.0);
            if (!(count <= most + ROUNDING)) {
                wrong.add(place + ": " + count + " pieces used, " + most + " there");
            }
        });
    }

    private static String lineOf(String order, String part, String depot) {
        return "order " + order + ", " + part + " for " + depot;
    }

    private void days(List<AllocatedPieces> pieces) {
        Map<String, Integer> leadDays = new HashMap<>();
        for (Part part : fleet.parts()) {
            leadDays.put(part.part(), part.leadDaysMax());
        }
        Map<String, LocalDate> expected = new HashMap<>();
        for (PurchaseLine line : fleet.purchaseLines()) {
            expected.put(lineOf(line.order(), line.part(), line.depot()), line.expectedOn());
        }
        for (AllocatedPieces each : pieces) {
            String depot = each.fromDepot() == null ? each.depot() : each.fromDepot();
            LocalDate first = today;
            if (each.source() == PieceSource.EXPRESS) {
                first = today.plusDays(expressDays);
            } else if (each.source() == PieceSource.ORDINARY_ORDER) {
                first = today.plusDays(leadDays.getOrDefault(each.part(), 0));
            } else if (each.order() != null) {
                first = expected.getOrDefault(lineOf(each.order(), each.part(), depot), LocalDate.MAX);
            }
            if (each.readyOn().isBefore(first)) {
                wrong.add("truck " + each.truck() + ", part " + each.part() + ": ready on " + each.readyOn()
                        + ", but not there before " + first);
            }
        }
    }

    private void kits(List<KitNeed> needs, Allocation allocation, Map<String, LocalDate> starts) {
        Map<String, Double> given = new HashMap<>();
        Map<String, LocalDate> ready = new HashMap<>();
        for (AllocatedPieces each : allocation.pieces()) {
            String visit = each.truck() + " " + each.week();
            given.merge(visit + " " + each.part(), each.quantity(), Double::sum);
            ready.merge(visit, each.readyOn(), (one, other) -> one.isAfter(other) ? one : other);
        }
        for (KitNeed need : needs) {
            String visit = need.truck() + " " + need.week();
            need.pieces().forEach((part, count) -> {
                double has = given.getOrDefault(visit + " " + part, 0.0);
                if (!(has >= count - ROUNDING)) {
                    wrong.add("truck " + need.truck() + ", " + need.week() + ": its kit has " + has + " of " + count
                            + " " + part);
                }
            });
            LocalDate complete = ready.getOrDefault(visit, today);
            LocalDate start = starts.getOrDefault(visit, need.by());
            if (start.isBefore(complete)) {
                wrong.add("truck " + need.truck() + ", " + need.week() + ": starts on " + start
                        + ", before its kit is complete on " + complete);
            }
        }
    }
}
