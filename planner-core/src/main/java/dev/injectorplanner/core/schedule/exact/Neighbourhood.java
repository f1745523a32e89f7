package dev.injectorplanner.core.schedule.exact;

import dev.injectorplanner.core.schedule.WeekCapacity;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;

/**
 * Picks cells to plan again: weeks in a row of one depot, weeks of one depot anywhere, or, where several depots share a
 * duty group, weeks of two.
 */
final class Neighbourhood {
    private final List<List<Integer>> depots = new ArrayList<>();
    private final int cells;

    Neighbourhood(Problem problem) {
        this.cells = problem.cells.length;
        TreeMap<String, List<Integer>> byDepot = new TreeMap<>();
        for (int cell = 0; cell < cells; cell++) {
            WeekCapacity capacity = problem.cells[cell].capacity();
            if (problem.ofCell[cell].length > 0) {
                byDepot.computeIfAbsent(capacity.depot(), none -> new ArrayList<>())
                        .add(cell);
            }
        }
        depots.addAll(byDepot.values());
    }

    boolean isEmpty() {
        return depots.isEmpty();
    }

    boolean[] pick(int size, Random random) {
        boolean[] open = new boolean[cells];
        List<Integer> here = depots.get(random.nextInt(depots.size()));
        int kind = random.nextInt(depots.size() > 1 ? 5 : 4);
        if (kind < 2) {
            int from = random.nextInt(Math.max(1, here.size() - size + 1));
            here.subList(from, Math.min(here.size(), from + size)).forEach(cell -> open[cell] = true);
            return open;
        }
        List<Integer> among = new ArrayList<>(here);
        if (kind == 4) {
            among.addAll(depots.get(random.nextInt(depots.size())));
        }
        for (int i = 0; i < Math.min(size, among.size()); i++) {
            int other = i + random.nextInt(among.size() - i);
            int cell = among.get(other);
            among.set(other, among.get(i));
            open[cell] = true;
        }
        return open;
    }
}
