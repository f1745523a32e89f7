package dev.injectorplanner.core.replay.keeper;

import dev.injectorplanner.core.replay.run.Keeper;
import dev.injectorplanner.core.replay.run.OracleView;
import dev.injectorplanner.core.replay.run.WorkOrder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A rule of thumb: replaces by age and by what faults and tests show, and knows nothing else of the fleet. */
public final class AgesAndSigns implements Keeper {
    /** A truck that leaves within this number of days gets nothing for its age. */
    private static final int SALE_DAYS = 120;

    private final List<RuleFigures> families;

    private record Wanted(WorkOrder order, double urgency) {}

    /** @param families figures of each family, in the scenario's order */
    public AgesAndSigns(List<RuleFigures> families) {
        this.families = List.copyOf(families);
    }

    @Override
    public List<WorkOrder> decide(OracleView fleet, int monday) {
        List<Wanted> wanted = new ArrayList<>();
        for (int truck = 0; truck < fleet.trucks(); truck++) {
            if (fleet.inService(truck, monday)) {
                decide(wanted, fleet, truck, monday);
            }
        }
        wanted.sort(Comparator.comparingDouble(Wanted::urgency).reversed());
        return wanted.stream().map(Wanted::order).toList();
    }

    private void decide(List<Wanted> wanted, OracleView fleet, int truck, int monday) {
        RuleFigures figures = families.get(fleet.family(truck));
        boolean leaving = fleet.leaves(truck, monday) - monday < SALE_DAYS;
        int due = 0;
        double urgency = 0;
        for (int cylinder = 0; cylinder < fleet.cylinders(truck); cylinder++) {
            double age = fleet.ageKm(truck, cylinder, monday);
            boolean old = !leaving && age >= figures.triggerKm();
            boolean shows = shows(figures, fleet, truck, cylinder, monday);
            due |= old || shows ? 1 << cylinder : 0;
            urgency = Math.max(urgency, shows ? 2 : old ? age / figures.triggerKm() - 1 : 0);
        }
        boolean test = fleet.kmSinceTest(truck, monday) >= figures.testEveryKm();
        if (due != 0) {
            int along = leaving ? 0 : older(fleet, truck, monday, figures.alongKm());
            wanted.add(new Wanted(new WorkOrder(truck, due | along, test), urgency));
        } else if (test) {
            wanted.add(new Wanted(new WorkOrder(truck, 0, true), -1));
        }
    }

    private static boolean shows(RuleFigures figures, OracleView fleet, int truck, int cylinder, int monday) {
        if (figures.faultDays() > 0
                && fleet.faultDays(truck, cylinder, monday - figures.faultWindow(), monday - 1)
                        >= figures.faultDays()) {
            return true;
        }
        if (figures.testEveryKm() == RuleFigures.NEVER) {
            return false;
        }
        int over = fleet.testsOver(truck, cylinder);
        return figures.secondLook() ? over >= 2 || fleet.bothOver(truck, cylinder) : over >= 1;
    }

    private static int older(OracleView fleet, int truck, int day, double km) {
        int mask = 0;
        for (int cylinder = 0; cylinder < fleet.cylinders(truck); cylinder++) {
            mask |= fleet.ageKm(truck, cylinder, day) >= km ? 1 << cylinder : 0;
        }
        return mask;
    }

    @Override
    public int whileOpen(OracleView fleet, int truck, int day, int failed) {
        boolean leaving = fleet.leaves(truck, day) - day < SALE_DAYS;
        double from = families.get(fleet.family(truck)).failureAlongKm();
        return failed | (leaving ? 0 : older(fleet, truck, day, from));
    }
}
