package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.OpenFaults;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.usage.InjectorAge;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The engine from above, front at the top: banks side by side, each cylinder with its figures. */
public final class EngineView {

    private static final int PITCH = 106;
    private static final int FIRST = 104;
    private static final double WIDEST_CHANCE = 0.4;
    private static final int BAR = 94;

    private final DepotPlan plan;
    private final Truck truck;
    private final EngineFamily family;
    private final List<Integer> done;
    private final @Nullable Double limit;

    /** @param limit limit of the chance of failing within 12 weeks, 0..1, or null for none */
    EngineView(DepotPlan plan, Truck truck, EngineFamily family, @Nullable Double limit) {
        this.limit = limit;
        this.plan = plan;
        this.truck = truck;
        this.family = family;
        this.done =
                plan.findVisit(truck.truck()).map(visit -> visit.cylinders()).orElse(List.of());
    }

    /**
     * The drawing.
     *
     * @param height of its frame, whose width is 426
     * @param banks one or two
     * @param cylinders all, bank by bank
     * @param limit where the limit lies on each bar, from its left edge; below 0 for none
     * @param limitWords the limit in words, empty for none
     * @param words what it shows, for those who hear it
     */
    public record Drawing(
            int height, List<Side> banks, List<Cylinder> cylinders, double limit, String limitWords, String words) {}

    /** A bank as a frame. */
    public record Side(String name, int x, int width, int y, int height, int nameX, String anchor) {}

    /**
     * A cylinder.
     *
     * @param x its middle
     * @param y its middle
     * @param textX where its figures stand
     * @param anchor on which side of that
     * @param barX left edge of its bar
     * @param filled how much of its bar is filled
     * @param chance chance of failing within 12 weeks, in words
     * @param done whether the visit replaces it
     * @param fittedOn day on which its injector was fitted, in words
     * @param condition what faults and tests say of it, in words
     */
    public record Cylinder(
            int number,
            String bank,
            int x,
            int y,
            int textX,
            String anchor,
            int barX,
            double filled,
            String chance,
            String age,
            String faults,
            boolean anyFault,
            String code,
            boolean done,
            String fittedOn,
            String condition) {}

    Drawing draw() {
        boolean inline = family.banks().size() == 1;
        int longest = family.banks().stream()
                .mapToInt(bank -> bank.cylinders().size())
                .max()
                .orElse(1);
        int length = longest * PITCH + 12;
        List<Side> sides = new ArrayList<>();
        List<Cylinder> cylinders = new ArrayList<>();
        for (int at = 0; at < family.banks().size(); at++) {
            Bank bank = family.banks().get(at);
            boolean left = !inline && at % 2 == 0;
            int middle = inline ? 148 : left ? 148 : 252;
            sides.add(new Side(
                    inline ? "" : DisplayFormat.sentence(bank.name()) + " bank",
                    middle - 35,
                    70,
                    64,
                    length,
                    left ? 106 : 294,
                    left ? "end" : "start"));
            for (int row = 0; row < bank.cylinders().size(); row++) {
                cylinders.add(cylinder(bank, bank.cylinders().get(row), middle, FIRST + row * PITCH, left));
            }
        }
        String words = cylinders.stream()
                .map(each -> "Cylinder " + each.number() + ": " + each.age() + ", " + each.chance()
                        + " chance of failing within 12 weeks, " + each.faults() + ", "
                        + (each.done() ? "replace" : "leave")
                        + ".")
                .collect(Collectors.joining(" "));
        return new Drawing(
                64 + length + 56,
                sides,
                cylinders,
                limit == null ? -1 : filled(limit),
                limit == null ? "" : "its tick is the limit of " + DisplayFormat.chance(limit),
                words);
    }

    private Cylinder cylinder(Bank bank, int number, int x, int y, boolean left) {
        Optional<InjectorRisk> risk = plan.risksOf(truck.truck()).stream()
                .filter(each -> each.cylinder() == number)
                .findFirst();
        double chance = risk.map(InjectorRisk::chance12).orElse(0.0);
        long faults = new OpenFaults(plan).of(truck.truck(), number);
        boolean wide = family.banks().size() == 1;
        int textX = left ? 98 : wide ? 206 : 302;
        return new Cylinder(
                number,
                bank.name(),
                x,
                y,
                textX,
                left ? "end" : "start",
                left ? textX - BAR : textX,
                filled(chance),
                risk.map(each -> DisplayFormat.chance(each.chance12())).orElse("not known"),
                age(number),
                faults == 0 ? "no faults" : Figures.count(faults, "fault", "faults"),
                faults > 0,
                fitted(number)
                        .map(FittedInjector::calibrationCode)
                        .map(DisplayFormat::code)
                        .orElse(""),
                done.contains(number),
                fitted(number)
                        .map(each -> each.fittingKnown()
                                ? DisplayFormat.shortDate(each.fittedOn())
                                : "before the records began")
                        .orElse("not known"),
                condition(risk));
    }

    private static double filled(double chance) {
        return Math.rint(Math.min(1, chance / WIDEST_CHANCE) * BAR * 10) / 10;
    }

    private String condition(Optional<InjectorRisk> risk) {
        return risk.map(InjectorRisk::condition)
                .filter(words -> !words.isEmpty())
                .map(plan.units()::sentence)
                .orElse("none");
    }

    private String age(int number) {
        Optional<InjectorAge> age = plan.plan().injectors().stream()
                .filter(each -> each.truck().equals(truck.truck()) && each.cylinder() == number)
                .findFirst();
        if (age.isEmpty()) {
            return "age unknown";
        }
        Double km = age.get().km();
        Double least = age.get().leastKm();
        if (!age.get().fittingKnown()) {
            return least == null ? "age unknown" : "over " + plan.units().distance(least);
        }
        return km == null ? age.get().months() + " months" : plan.units().distance(km);
    }

    private Optional<FittedInjector> fitted(int number) {
        LocalDate today = plan.today();
        return plan.fleet().injectorsOf(truck.truck()).stream()
                .filter(each -> each.cylinder() == number && each.fittedAt(today))
                .findFirst();
    }
}
