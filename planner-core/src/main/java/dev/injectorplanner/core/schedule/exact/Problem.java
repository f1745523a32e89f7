package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.GroupCapacity;
import dev.injectorplanner.core.schedule.TruckOptions;
import dev.injectorplanner.core.schedule.VisitOption;
import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A request in arrays: trucks in the order of their names, each with those options that fit on their own and are not
 * beaten by another of the same week. Hours are whole units: a bound counts them rounded down ({@code low}), a schedule
 * rounded up ({@code high}); the two are equal wherever all hours are whole hundredths.
 */
final class Problem {
    private static final double ROUNDING = 1e-9;

    final List<TruckOptions> trucks;
    final HourUnits units;
    final Cell[] cells;
    /** Cells whose hours are bay-days counted as hours, since bays run out first. */
    final boolean[] ofBays;

    final double[] groupDays;
    /** Options of truck t are {@code first[t]} to {@code first[t + 1]}, that one not included. */
    final int[] first;

    final VisitOption[] options;
    final int[] truckOf;
    final int[] cellOf;
    /** Duty group and week of an option, or -1. */
    final int[] groupOf;

    final int[] low;
    final int[] high;
    final double[] cost;
    final double[] days;
    /** Options of each cell, by truck. */
    final int[][] ofCell;
    /** Trucks of which one option must be chosen. */
    final boolean[] must;

    /**
     * @param trucks trucks by name, each with only the options it may have
     * @param must which of them must be placed
     */
    Problem(List<TruckOptions> trucks, boolean[] must, List<WeekCapacity> depots, List<GroupCapacity> groups) {
        this.trucks = List.copyOf(trucks);
        this.must = must.clone();
        BayCells bays = new BayCells(trucks, depots);
        this.units = HourUnits.of(trucks, bays);
        this.cells = depots.stream()
                .map(row -> Cell.of(bays.counted(row), units.hoursPerUnit()))
                .toArray(Cell[]::new);
        this.ofBays = new boolean[cells.length];
        for (int i = 0; i < cells.length; i++) {
            ofBays[i] = bays.isOfBays(depots.get(i));
        }
        this.groupDays = groups.stream().mapToDouble(GroupCapacity::truckDays).toArray();
        Map<String, Integer> cellAt = new TreeMap<>();
        for (int i = 0; i < depots.size(); i++) {
            cellAt.put(depots.get(i).depot() + "\n" + depots.get(i).week(), i);
        }
        Map<String, Integer> groupAt = new TreeMap<>();
        for (int i = 0; i < groups.size(); i++) {
            groupAt.put(groups.get(i).dutyGroup() + "\n" + groups.get(i).week(), i);
        }
        List<Offer> offers = new ArrayList<>();
        this.first = new int[trucks.size() + 1];
        for (int t = 0; t < trucks.size(); t++) {
            offers.addAll(offers(t, cellAt, groupAt));
            first[t + 1] = offers.size();
        }
        this.options = offers.stream().map(Offer::option).toArray(VisitOption[]::new);
        this.truckOf = offers.stream().mapToInt(Offer::truck).toArray();
        this.cellOf = offers.stream().mapToInt(Offer::cell).toArray();
        this.groupOf = offers.stream().mapToInt(Offer::group).toArray();
        double[] weights = offers.stream()
                .mapToDouble(offer -> bays.weight(trucks.get(offer.truck()).depot(), offer.option()))
                .toArray();
        this.low = Arrays.stream(weights).mapToInt(units::down).toArray();
        this.high = Arrays.stream(weights).mapToInt(units::up).toArray();
        this.cost = Arrays.stream(options).mapToDouble(VisitOption::cost).toArray();
        this.days = Arrays.stream(options).mapToDouble(VisitOption::truckDays).toArray();
        this.ofCell = byCell();
    }

    private record Offer(int truck, int cell, int group, VisitOption option) {
        boolean beats(Offer other) {
            return cell == other.cell
                    && option.cost() <= other.option.cost()
                    && option.labourHours() <= other.option.labourHours()
                    && option.truckDays() <= other.option.truckDays();
        }
    }

    private List<Offer> offers(int t, Map<String, Integer> cellAt, Map<String, Integer> groupAt) {
        TruckOptions truck = trucks.get(t);
        List<Offer> kept = new ArrayList<>();
        for (VisitOption option : truck.options()) {
            Integer cell = cellAt.get(truck.depot() + "\n" + option.week());
            Integer group = truck.dutyGroup() == null
                    ? Integer.valueOf(-1)
                    : groupAt.get(truck.dutyGroup() + "\n" + option.week());
            if (cell == null || group == null || !fitsAlone(option, cells[cell], group)) {
                continue;
            }
            Offer offer = new Offer(t, cell, group, option);
            boolean worthIt = must[t] || option.cost() < 0;
            if (worthIt && kept.stream().noneMatch(other -> other.beats(offer))) {
                kept.removeIf(offer::beats);
                kept.add(offer);
            }
        }
        return kept;
    }

    private boolean fitsAlone(VisitOption option, Cell cell, int group) {
        return option.labourHours()
                        <= cell.capacity().labourHours() + cell.capacity().overtimeHours() + ROUNDING
                && option.truckDays() <= cell.capacity().bayDays() + ROUNDING
                && (group < 0 || option.truckDays() <= groupDays[group] + ROUNDING);
    }

    private int[][] byCell() {
        List<List<Integer>> lists = new ArrayList<>();
        for (int c = 0; c < cells.length; c++) {
            lists.add(new ArrayList<>());
        }
        for (int o = 0; o < options.length; o++) {
            lists.get(cellOf[o]).add(o);
        }
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    int truckCount() {
        return trucks.size();
    }
}
