package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.truck.VisitBill.Line;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.option.Rates;
import dev.injectorplanner.core.plan.Advisor;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.plan.TruckRates;
import dev.injectorplanner.core.schedule.days.ShiftBook;
import dev.injectorplanner.core.units.Figures;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What a set of cylinders costs the site while the truck is open: parts as picked, labour, coolant, standing. */
final class SetBill {
    private static final double HAIR = 1e-9;

    private final List<Line> lines = new ArrayList<>();
    private double sum;

    SetBill(DepotPlan plan, Truck truck, Policy policy, Advisor.Option option) {
        option.parts().forEach((number, pieces) -> plan.fleet().findPart(number).ifPresent(part -> part(part, pieces)));
        add("Labour", option.hours(), " h", plan.site().labourPerHour().doubleValue());
        Rates rates =
                new TruckRates(plan.fleet(), policy, new ShiftBook(plan.fleet(), policy.bayHoursPerDay())).of(truck);
        double litres = plan.units().ofLitres(1);
        add(
                "Coolant",
                option.coolantLitres() * litres,
                "\u00a0" + plan.units().volumeUnit(),
                rates.coolantPerLitre() / litres);
        add("Off the road", rates.truckDays(option.hours()), " days", rates.downtimePerDay());
    }

    private void part(Part part, double pieces) {
        add(
                part.description().isEmpty() ? part.part() : part.description() + ", " + part.part(),
                pieces,
                "",
                part.price().doubleValue());
    }

    private void add(String item, double quantity, String unit, double each) {
        if (quantity > HAIR && each > 0) {
            sum += quantity * each;
            lines.add(new Line(
                    item,
                    "",
                    Figures.tenths(quantity) + unit,
                    DisplayFormat.cents(BigDecimal.valueOf(each)),
                    DisplayFormat.cents(BigDecimal.valueOf(quantity * each))));
        }
    }

    List<Line> lines() {
        return List.copyOf(lines);
    }

    double sum() {
        return sum;
    }
}
