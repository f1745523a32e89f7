package dev.injectorplanner.app.intake;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.LogSource;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.Replacement;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;
import org.jspecify.annotations.Nullable;

/** Whether what a row refers to is there. */
final class ReferenceCheck {
    private static final int NEAR = 3;
    private static final int MOST_FIXES = 1_000;

    private final References known;
    private final Map<String, String> truckOfVin = new HashMap<>();
    private final Map<String, String> fixes = new HashMap<>(); // of one unknown name in many rows

    ReferenceCheck(References known) {
        this.known = known;
    }

    /** @throws InvalidValueException saying what is missing and what is near */
    void check(Object row) {
        if (row instanceof CapacityOverride capacity) {
            depot(capacity.depot());
        } else if (row instanceof DepotShift shift) {
            depot(shift.depot());
        } else if (row instanceof EngineFamily family) {
            familyRow(family);
        } else if (row instanceof AccessStep step) {
            EngineFamily family = family(step.family());
            step.cylinders().forEach(cylinder -> cylinder("cylinders", cylinder, family));
        } else if (row instanceof Truck truck) {
            truckRow(truck);
        } else if (row instanceof JobPart jobPart) {
            jobPart(jobPart);
        } else if (row instanceof IntervalTask task) {
            family(task.family());
        } else if (row instanceof Rule rule) {
            ofRule(rule.family());
        } else if (row instanceof StockLine line) {
            depot(line.depot());
            part("part", line.part());
        } else if (row instanceof PurchaseLine line) {
            depot(line.depot());
            part("part", line.part());
        } else if (row instanceof Transfer transfer) {
            depot("from", transfer.from());
            depot("to", transfer.to());
        } else {
            ofTruck(row);
        }
    }

    private void ofTruck(Object row) {
        if (row instanceof FittedInjector injector) {
            cylinder("cylinder", injector.cylinder(), familyOf(truck(injector.truck())));
            code(injector, part("part", injector.part()));
        } else if (row instanceof Replacement replacement) {
            replacement(replacement);
        } else if (row instanceof Reading reading) {
            truck(reading.truck());
        } else if (row instanceof Fault fault) {
            EngineFamily family = familyOf(truck(fault.truck()));
            if (fault.cylinder() != null) {
                cylinder("cylinder", fault.cylinder(), family);
            }
        } else if (row instanceof CylinderTest test) {
            cylinder("cylinder", test.cylinder(), familyOf(truck(test.truck())));
        } else if (row instanceof AwayWindow window) {
            truck(window.truck());
        } else if (row instanceof LogSource source) {
            ofLog(source);
        } else if (row instanceof Repair repair) {
            truck(repair.truck());
        } else if (row instanceof UnitReturn back) {
            cylinder("cylinder", back.cylinder(), familyOf(truck(back.truck())));
        } else if (row instanceof TaskDone done) {
            task(truck(done.truck()).family(), done.task());
        } else if (row instanceof FailureAnswer answer) {
            part("part", answer.part());
        }
    }

    private void replacement(Replacement row) {
        Truck truck = truck(row.truck());
        EngineFamily family = familyOf(truck);
        ReplacementMerge.check(row, truck, family);
        String given = row.part();
        Part part = part("part", given == null ? family.injectorPart() : given);
        row.codes().forEach(code -> code("code", code, part));
    }

    private void familyRow(EngineFamily family) {
        part("injector_part", family.injectorPart());
        EngineFamily before = known.family(family.family());
        if (before != null
                && before.cylinders() > family.cylinders()
                && known.trucks().stream().anyMatch(truck -> truck.family().equals(family.family()))) {
            throw new InvalidValueException(
                    "cylinders",
                    family.cylinders(),
                    "the family has " + before.cylinders() + " cylinders so far and has trucks",
                    "load it as a family with a different name, and reload the trucks with that name");
        }
    }

    private void truckRow(Truck truck) {
        depot(truck.depot());
        EngineFamily family = family(truck.family());
        Truck before = known.truck(truck.truck());
        if (before != null && !before.family().equals(truck.family())) {
            known.injectors(truck.truck()).forEach(injector -> cylinderStays(injector, family));
        }
        String group = truck.dutyGroup();
        if (group != null && known.dutyGroup(group) == null) {
            throw unknown("duty_group", group, DutyGroup.class, "duty groups");
        }
        if (truckOfVin.isEmpty()) {
            known.trucks().forEach(each -> truckOfVin.put(each.vinText(), each.truck()));
        }
        if (truck.vin() == null) {
            return;
        }
        String owner = truckOfVin.putIfAbsent(truck.vinText(), truck.truck());
        if (owner != null && !owner.equals(truck.truck())) {
            throw new InvalidValueException(
                    "vin", truck.vinText(), "already belongs to truck " + owner, "compare both VIN plates");
        }
    }

    private static void cylinderStays(FittedInjector injector, EngineFamily family) {
        if (injector.cylinder() > family.cylinders()) {
            throw new InvalidValueException(
                    "family",
                    family.family(),
                    "has " + family.cylinders() + " cylinders, but the truck has an injector in cylinder "
                            + injector.cylinder(),
                    "correct the family, or give the truck with its new engine a new name");
        }
    }

    private void jobPart(JobPart jobPart) {
        EngineFamily family = family(jobPart.family());
        part("part", jobPart.part());
        String task = jobPart.task();
        if (task != null) {
            task(family.family(), task);
        }
        String step = jobPart.step();
        if (step != null && known.step(family.family(), step) == null) {
            throw new InvalidValueException(
                    "step",
                    step,
                    "is not an access step of family " + family.family(),
                    fix("load the access steps first", step, known.steps(family.family())));
        }
    }

    private void task(String family, String task) {
        if (!known.tasks(family).contains(task)) {
            throw new InvalidValueException(
                    "task",
                    task,
                    "is not a scheduled service of family " + family,
                    fix("load the intervals first", task, known.tasks(family)));
        }
    }

    private void ofRule(@Nullable String family) {
        if (family != null) {
            family(family);
        }
    }

    private void ofLog(LogSource source) {
        String name = source.truck();
        if (name != null) {
            truck(name);
        }
    }

    private static void code(FittedInjector injector, Part part) {
        String code = injector.calibrationCode();
        if (code != null) {
            code("calibration_code", code, part);
        }
    }

    private static void code(String column, String code, Part part) {
        if (!part.acceptsCode(code)) {
            throw new InvalidValueException(
                    column,
                    code,
                    "does not match the pattern of part " + part.part() + ", " + part.codePattern(),
                    "read the code on the injector again, or correct the part's code_pattern");
        }
    }

    private static void cylinder(String field, int cylinder, EngineFamily family) {
        if (cylinder > family.cylinders()) {
            throw new InvalidValueException(
                    field,
                    cylinder,
                    "family " + family.family() + " has " + family.cylinders() + " cylinders",
                    "enter 1 to " + family.cylinders());
        }
    }

    private EngineFamily familyOf(Truck truck) {
        return family(truck.family());
    }

    private void depot(String name) {
        depot("depot", name);
    }

    private void depot(String field, String name) {
        if (known.depot(name) == null) {
            throw unknown(field, name, Depot.class, "depots");
        }
    }

    private Part part(String field, String name) {
        Part part = known.part(name);
        if (part == null) {
            throw unknown(field, name, Part.class, "parts");
        }
        return part;
    }

    private EngineFamily family(String name) {
        EngineFamily family = known.family(name);
        if (family == null) {
            throw unknown("family", name, EngineFamily.class, "engine families");
        }
        return family;
    }

    private Truck truck(String name) {
        Truck truck = known.truck(name);
        if (truck == null) {
            throw unknown("truck", name, Truck.class, "trucks");
        }
        return truck;
    }

    private InvalidValueException unknown(String field, String name, Class<?> type, String table) {
        if (fixes.size() > MOST_FIXES) {
            fixes.clear();
        }
        String fix = fixes.computeIfAbsent(
                table + '\n' + name, key -> fix("load it with the " + table + " first", name, known.names(type)));
        return new UnknownNameException(field, name, type, fix);
    }

    private static String fix(String first, String name, Collection<String> names) {
        LevenshteinDistance distance = new LevenshteinDistance(NEAR);
        Optional<String> near = names.stream()
                .filter(other -> distance.apply(name, other) >= 0)
                .min(Comparator.<String>comparingInt(other -> distance.apply(name, other))
                        .thenComparing(Comparator.naturalOrder()));
        return first
                + near.map(other -> ", or correct it: the closest is " + other).orElse(", or correct it");
    }
}
