package dev.injectorplanner.core.schedule.exact;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which option each truck has, and what that takes of every limit. Holds all limits at any time. */
final class Assignment {
    static final int NONE = -1;
    private static final double ROUNDING = 1e-9;

    private final Problem problem;
    private final int[] choice;
    private final int[] units;
    private final double[] bayDays;
    private final double[] groupDays;

    Assignment(Problem problem) {
        this.problem = problem;
        this.choice = new int[problem.truckCount()];
        Arrays.fill(choice, NONE);
        this.units = new int[problem.cells.length];
        this.bayDays = new double[problem.cells.length];
        this.groupDays = new double[problem.groupDays.length];
    }

    private Assignment(Assignment other) {
        this.problem = other.problem;
        this.choice = other.choice.clone();
        this.units = other.units.clone();
        this.bayDays = other.bayDays.clone();
        this.groupDays = other.groupDays.clone();
    }

    Assignment copy() {
        return new Assignment(this);
    }

    int choice(int truck) {
        return choice[truck];
    }

    int[] choices() {
        return choice.clone();
    }

    int units(int cell) {
        return units[cell];
    }

    int[] units() {
        return units.clone();
    }

    double bayDays(int cell) {
        return bayDays[cell];
    }

    double groupDays(int group) {
        return groupDays[group];
    }

    /** Whether the option's truck has none yet and there is room for it. */
    boolean fits(int option) {
        return choice[problem.truckOf[option]] == NONE && inTheWay(option) == null;
    }

    /** The first limit that leaves no room for an option, or null. */
    @Nullable
    Limit inTheWay(int option) {
        int cell = problem.cellOf[option];
        int group = problem.groupOf[option];
        double days = problem.days[option];
        if (units[cell] + problem.high[option] > problem.cells[cell].units()) {
            return problem.ofBays[cell] ? Limit.BAYS : Limit.LABOUR_HOURS;
        }
        if (bayDays[cell] + days > problem.cells[cell].capacity().bayDays() + ROUNDING) {
            return Limit.BAYS;
        }
        boolean groupHasRoom = group < 0 || groupDays[group] + days <= problem.groupDays[group] + ROUNDING;
        return groupHasRoom ? null : Limit.DUTY_GROUP;
    }

    /** Takes an option that {@link #fits}. */
    void take(int option) {
        choice[problem.truckOf[option]] = option;
        book(option, 1);
    }

    /** Leaves a truck without an option. */
    void drop(int truck) {
        if (choice[truck] != NONE) {
            book(choice[truck], -1);
            choice[truck] = NONE;
        }
    }

    private void book(int option, int sign) {
        units[problem.cellOf[option]] += sign * problem.high[option];
        bayDays[problem.cellOf[option]] += sign * problem.days[option];
        if (problem.groupOf[option] >= 0) {
            groupDays[problem.groupOf[option]] += sign * problem.days[option];
        }
    }

    /** What an option adds to the cost, overtime included. */
    double gain(int option) {
        int cell = problem.cellOf[option];
        return problem.cost[option]
                + problem.cells[cell].overtimeCost(units[cell] + problem.high[option])
                - problem.cells[cell].overtimeCost(units[cell]);
    }

    /** Sum of chosen costs and overtime. */
    double cost() {
        double sum = 0;
        for (int option : choice) {
            sum += option == NONE ? 0 : problem.cost[option];
        }
        for (int cell = 0; cell < units.length; cell++) {
            sum += problem.cells[cell].overtimeCost(units[cell]);
        }
        return sum;
    }

    /** Places trucks that have none where they gain most, as long as that pays. */
    void fill() {
        int best = bestFit();
        while (best != NONE) {
            take(best);
            best = bestFit();
        }
    }

    private int bestFit() {
        int best = NONE;
        double least = -1e-9;
        for (int truck = 0; truck < choice.length; truck++) {
            if (choice[truck] != NONE) {
                continue;
            }
            for (int option = problem.first[truck]; option < problem.first[truck + 1]; option++) {
                if (fits(option) && gain(option) < least) {
                    least = gain(option);
                    best = option;
                }
            }
        }
        return best;
    }

    /** The options chosen in these cells. */
    List<Integer> chosenIn(boolean[] cells) {
        List<Integer> chosen = new ArrayList<>();
        for (int option : choice) {
            if (option != NONE && cells[problem.cellOf[option]]) {
                chosen.add(option);
            }
        }
        return chosen;
    }

    /** This one with what another changed against their common start, as far as it fits. */
    Assignment with(Assignment start, Assignment changed) {
        Assignment both = copy();
        for (int truck = 0; truck < choice.length; truck++) {
            if (changed.choice[truck] != start.choice[truck]) {
                both.drop(truck);
            }
        }
        for (int truck = 0; truck < choice.length; truck++) {
            int option = changed.choice[truck];
            if (option != start.choice[truck] && option != NONE && both.fits(option)) {
                both.take(option);
            }
        }
        both.fill();
        return both;
    }
}
