package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOutEntry;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.due.DueAction;
import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueItems;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.due.RuleBook;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.usage.FleetUsage;
import dev.injectorplanner.core.visit.Visit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Says what readings over their limits mean for the plan, before they are saved: by the plan's own rules, not by others. */
final class ReadingsJudge {
    private final TruckInBay at;
    private final int usageWindowDays;

    ReadingsJudge(TruckInBay at, int usageWindowDays) {
        this.at = at;
        this.usageWindowDays = usageWindowDays;
    }

    /** A sentence for each cylinder with a reading over its limit. */
    Map<String, String> of(List<CloseOutEntry.Test> readings, Instant now) {
        String truck = at.truck().truck();
        LocalDate today = at.today();
        FleetIndex index = new FleetIndex(withReadings(readings, now));
        FleetUsage usage = new FleetUsage(index, usageWindowDays, today);
        List<DueItem> due = new DueItems(index, new RuleBook(index.fleet()), usage)
                .find(
                        usage.injectorAges().stream()
                                .filter(age -> age.truck().equals(truck))
                                .toList(),
                        today,
                        today);
        Map<String, String> says = new TreeMap<>();
        for (DueItem item : due) {
            boolean tested = item.kind() == DueKind.BALANCE || item.kind() == DueKind.RETURN_FLOW;
            Integer cylinder = item.cylinder();
            if (tested && cylinder != null && item.truck().equals(truck) && wasRead(readings, cylinder)) {
                says.merge(String.valueOf(cylinder), words(item, cylinder), (one, other) -> one + " " + other);
            }
        }
        return says;
    }

    private static boolean wasRead(List<CloseOutEntry.Test> readings, int cylinder) {
        return readings.stream().anyMatch(test -> test.cylinder() == cylinder);
    }

    private String words(DueItem item, int cylinder) {
        String over = "Cylinder " + cylinder + ": " + item.evidence() + ", limit " + item.limit() + ", "
                + item.limitSource() + ".";
        if (item.action() != DueAction.REPLACE) {
            return over + " The plan keeps the injector and asks for one more test. Read it again now.";
        }
        Visit visit = at.visit();
        boolean planned = visit != null && visit.cylinders().contains(cylinder);
        return over + " Due for replacement: "
                + (planned
                        ? "this visit replaces it already."
                        : "the next plan brings the truck in for cylinder " + cylinder + ", due since "
                                + DisplayFormat.day(item.by()) + ".");
    }

    private FleetSnapshot withReadings(List<CloseOutEntry.Test> readings, Instant now) {
        FleetSnapshot fleet = at.fleet().fleet();
        List<CylinderTest> tests = new ArrayList<>(fleet.cylinderTests());
        for (CloseOutEntry.Test test : readings) {
            tests.add(new CylinderTest(
                    at.truck().truck(),
                    test.cylinder(),
                    now,
                    test.test(),
                    test.value(),
                    test.unit(),
                    test.engineState()));
        }
        return new FleetSnapshot(
                fleet.depots(),
                fleet.capacity(),
                fleet.engineFamilies(),
                fleet.access(),
                fleet.dutyGroups(),
                fleet.trucks(),
                fleet.injectors(),
                fleet.readings(),
                fleet.faults(),
                tests,
                fleet.parts(),
                fleet.jobParts(),
                fleet.stock(),
                fleet.purchaseLines(),
                fleet.away(),
                fleet.intervals(),
                fleet.rules(),
                fleet.shop());
    }
}
