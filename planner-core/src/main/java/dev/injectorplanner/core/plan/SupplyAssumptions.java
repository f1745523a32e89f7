package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.coolant.ConcentratePart;
import dev.injectorplanner.core.coolant.CoolantMixer;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.coolant.GlycolWater;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.parts.OrderRules;
import dev.injectorplanner.core.parts.PartsPlan;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.warranty.WarrantyClaims;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What the figures on parts, cores, claims and coolant take as given, with whose assumption it is. */
final class SupplyAssumptions {
    private static final String DEFAULT = "planner default";

    private final List<Assumption> rows = new ArrayList<>();

    private SupplyAssumptions() {}

    static List<Assumption> of(FleetIndex index, OrderRules orders, CoolantRules coolant, PartsPlan parts) {
        SupplyAssumptions made = new SupplyAssumptions();
        made.orders(orders);
        made.sharing(orders);
        made.unplanned(orders, parts);
        made.returns();
        made.coolant(coolant);
        made.concentrate(index, coolant);
        return made.rows;
    }

    private void add(String topic, String text, String source) {
        rows.add(new Assumption(topic, text, source));
    }

    private void orders(OrderRules rules) {
        OrderRules usual = OrderRules.standard();
        add(
                "service level",
                "kits and stock cover the need with a chance of " + Figures.givenPercent(rules.serviceLevel())
                        + "; breakage of each piece is independent (binomial); unused kit parts go back to stock",
                Assumptions.whose(rules.serviceLevel() == usual.serviceLevel()));
        add(
                "ordering",
                "the buyer reviews orders every " + Figures.count(rules.reviewDays(), "day", "days")
                        + "; whatever must be ordered before the next review is ordered now, the rest with the"
                        + " supplier's other lines that week",
                Assumptions.whose(rules.reviewDays() == usual.reviewDays()));
        add(
                "expediting",
                "a shipment costs " + rules.expeditePrice().toPlainString() + " and takes "
                        + Figures.count(rules.expediteDays(), "day", "days")
                        + "; used where it costs less than postponing: "
                        + rules.postponementPerWeek().toPlainString()
                        + " for each week the visit would move, times the chance of that",
                Assumptions.whose(
                        rules.expeditePrice().compareTo(usual.expeditePrice()) == 0,
                        rules.expediteDays() == usual.expediteDays(),
                        rules.postponementPerWeek().compareTo(usual.postponementPerWeek()) == 0));
    }

    private void sharing(OrderRules rules) {
        OrderRules usual = OrderRules.standard();
        add(
                "shared stock",
                "each piece in stock and on an open order goes to one visit; no visit starts before its kit is"
                        + " complete; an ordinary order counts at its longest lead time; a shipment is counted once a"
                        + " visit and supplier",
                DEFAULT);
        add(
                "transfers",
                "between depots without a row in table transfers one costs "
                        + rules.transferCost().toPlainString() + " and takes "
                        + Figures.count(rules.transferDays(), "day", "days")
                        + "; a depot gives only what its own visits and its safety stock leave",
                Assumptions.whose(
                        rules.transferCost().compareTo(usual.transferCost()) == 0,
                        rules.transferDays() == usual.transferDays()));
    }

    private void unplanned(OrderRules rules, PartsPlan parts) {
        if (parts.forecastKnown()) {
            add(
                    "safety stock",
                    "covers failures until an order placed at the buyer's next review arrives, with a chance of "
                            + Figures.givenPercent(rules.serviceLevel())
                            + "; every lead time from usual to longest is equally likely",
                    DEFAULT);
        } else {
            add("safety stock", "no forecast of unplanned failures yet: no safety stock is held", DEFAULT);
        }
    }

    private void returns() {
        add(
                "cores",
                "one owed for each reman injector fitted in service; returns are not recorded yet, so a core"
                        + " counts as sent or lost " + CoresOwed.PAST_DAYS + " days after its return deadline",
                DEFAULT);
        add(
                "warranty claims",
                "listed for " + WarrantyClaims.CLAIM_DAYS
                        + " days after removal, then taken as claimed or dropped; the evidence covers the "
                        + WarrantyClaims.EVIDENCE_DAYS + " days before",
                DEFAULT);
    }

    private void coolant(CoolantRules rules) {
        CoolantRules usual = CoolantRules.standard();
        add(
                "coolant",
                rules.renew()
                        ? "drained coolant is replaced; the old coolant is waste"
                        : "drained coolant goes back in, except for " + Figures.givenPercent(rules.lostShare())
                                + " lost, unless the strength has to change",
                rules.renew()
                        ? Assumptions.whose(rules.renew() == usual.renew())
                        : Assumptions.whose(rules.renew() == usual.renew(), rules.lostShare() == usual.lostShare()));
        add(
                "coolant strength",
                (rules.protectToC() == null
                                ? "each family keeps its own strength, also assumed for what is in the block"
                                : "to protect to " + Figures.given(rules.protectToC())
                                        + " C; the family's own strength is assumed for what is in the block")
                        + (rules.anyStrength()
                                ? "; the site allows any strength"
                                : "; " + Figures.tenths(CoolantMixer.LEAST_PERCENT) + " to "
                                        + Figures.tenths(CoolantMixer.MOST_PERCENT) + " % by volume only (ASTM D6210)"),
                Assumptions.whose(
                        Objects.equals(rules.protectToC(), usual.protectToC()),
                        rules.anyStrength() == usual.anyStrength()));
        add(
                "containers",
                "concentrate by " + Figures.given(rules.concentrateContainerLitres()) + " l, water by "
                        + Figures.given(rules.waterContainerLitres()) + " l, waste by "
                        + Figures.given(rules.wasteContainerLitres()) + " l, in whole containers per depot and week",
                Assumptions.whose(
                        rules.concentrateContainerLitres() == usual.concentrateContainerLitres(),
                        rules.waterContainerLitres() == usual.waterContainerLitres(),
                        rules.wasteContainerLitres() == usual.wasteContainerLitres()));
        add("freezing points", GlycolWater.basis(), "ASHRAE 2001, Melinder 2010");
        add(
                "mixing",
                "volumes are added; the real mix shrinks by less than 1 %, corrected when the level is"
                        + " checked; concentrate counts as pure glycol",
                "common practice");
    }

    private void concentrate(FleetIndex index, CoolantRules rules) {
        add("concentrate", ConcentratePart.words(index, rules), Assumptions.whose(rules.concentratePart() == null));
    }
}
