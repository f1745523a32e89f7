package dev.injectorplanner.core.coolant;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Coolant of a depot in a week, in litres and in whole containers.
 *
 * @param depot the depot
 * @param week the ISO week
 * @param visits visits that drain
 * @param drainedLitres what comes out of the engines
 * @param concentrateLitres concentrate to draw
 * @param waterLitres water to draw
 * @param wasteLitres old coolant to collect
 * @param wasteKg the same at 20 C
 * @param concentrateContainers containers of concentrate to have there
 * @param waterContainers containers of water to have there
 * @param wasteContainers waste containers to have there, empty
 */
public record CoolantWeek(
        String depot,
        IsoWeek week,
        int visits,
        double drainedLitres,
        double concentrateLitres,
        double waterLitres,
        double wasteLitres,
        double wasteKg,
        int concentrateContainers,
        int waterContainers,
        int wasteContainers) {
    private static final double ROUNDING = 1e-9;

    private record Key(String depot, IsoWeek week) implements Comparable<Key> {
        @Override
        public int compareTo(Key other) {
            return Comparator.comparing(Key::depot).thenComparing(Key::week).compare(this, other);
        }
    }

    /** Sums of needs by depot and week. */
    public static List<CoolantWeek> of(List<CoolantNeed> needs, CoolantRules rules) {
        Map<Key, List<CoolantNeed>> byWeek = needs.stream()
                .collect(Collectors.groupingBy(
                        need -> new Key(need.depot(), need.week()), TreeMap::new, Collectors.toList()));
        return byWeek.entrySet().stream()
                .map(entry -> week(entry.getKey(), entry.getValue(), rules))
                .toList();
    }

    private static CoolantWeek week(Key key, List<CoolantNeed> needs, CoolantRules rules) {
        double concentrate = sum(needs, CoolantNeed::concentrateLitres);
        double water = sum(needs, CoolantNeed::waterLitres);
        double waste = sum(needs, CoolantNeed::wasteLitres);
        return new CoolantWeek(
                key.depot,
                key.week,
                needs.size(),
                sum(needs, CoolantNeed::drainedLitres),
                concentrate,
                water,
                waste,
                sum(needs, CoolantNeed::wasteKg),
                containers(concentrate, rules.concentrateContainerLitres()),
                containers(water, rules.waterContainerLitres()),
                containers(waste, rules.wasteContainerLitres()));
    }

    private static double sum(List<CoolantNeed> needs, ToDoubleFunction<CoolantNeed> litres) {
        return needs.stream().mapToDouble(litres).sum();
    }

    private static int containers(double litres, double each) {
        return (int) Math.ceil(litres / each - ROUNDING);
    }
}
