package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.coolant.CoolantMixer;
import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.coolant.GlycolWater;
import dev.injectorplanner.core.cores.CoresOwed;
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

    static List<Assumption> of(OrderRules orders, CoolantRules coolant, PartsPlan parts) {
        SupplyAssumptions made = new SupplyAssumptions();
        made.orders(orders);
        made.unplanned(orders, parts);
        made.returns();
        made.coolant(coolant);
        return made.rows;
    }

    private void add(String topic, String text, String source) {
        rows.add(new Assumption(topic, text, source));
    }

    private void orders(OrderRules rules) {
        OrderRules usual = OrderRules.standard();
        add(
                "service level",
                "kits and shelves are to suffice with a chance of " + Figures.givenPercent(rules.serviceLevel())
                        + "; pieces that break do so each by itself (binomial), what a kit leaves over goes back",
                Assumptions.whose(rules.serviceLevel() == usual.serviceLevel()));
        add(
                "ordering",
                "the buyer looks every " + Figures.count(rules.reviewDays(), "day", "days")
                        + "; what must be ordered before the next look is ordered now, the rest with the supplier's"
                        + " other lines of its week",
                Assumptions.whose(rules.reviewDays() == usual.reviewDays()));
        add(
                "expediting",
                "a shipment costs " + rules.expeditePrice().toPlainString() + " and takes "
                        + Figures.count(rules.expediteDays(), "day", "days")
                        + "; advised where that is less than waiting: "
                        + rules.postponementPerWeek().toPlainString()
                        + " for each week the visit would move, times the chance that it comes to that",
                Assumptions.whose(
                        rules.expeditePrice().compareTo(usual.expeditePrice()) == 0,
                        rules.expediteDays() == usual.expediteDays(),
                        rules.postponementPerWeek().compareTo(usual.postponementPerWeek()) == 0));
    }

    private void unplanned(OrderRules rules, PartsPlan parts) {
        if (parts.forecastKnown()) {
            add(
                    "unplanned need",
                    "stock covers failures until an order of the buyer's next look has come, with a chance of "
                            + Figures.givenPercent(rules.serviceLevel())
                            + "; any lead time from the usual to the longest is as likely as the others",
                    DEFAULT);
        } else {
            add("unplanned need", "no forecast of unplanned need yet: nothing is kept for it", DEFAULT);
        }
    }

    private void returns() {
        add(
                "cores",
                "one owed for each reman injector fitted in service; returns are not recorded yet, so a core is taken as"
                        + " sent or lost " + CoresOwed.PAST_DAYS + " days after its last day",
                DEFAULT);
        add(
                "warranty claims",
                "listed for " + WarrantyClaims.CLAIM_DAYS + " days after the unit came out, then taken as made or given"
                        + " up; evidence is what was seen in the " + WarrantyClaims.EVIDENCE_DAYS + " days before",
                DEFAULT);
    }

    private void coolant(CoolantRules rules) {
        CoolantRules usual = CoolantRules.standard();
        add(
                "coolant",
                rules.renew()
                        ? "what is drained is replaced, the old is waste"
                        : "what is drained goes back in, save " + Figures.givenPercent(rules.lostShare())
                                + " that is lost, and more only where the strength must change",
                rules.renew()
                        ? Assumptions.whose(rules.renew() == usual.renew())
                        : Assumptions.whose(rules.renew() == usual.renew(), rules.lostShare() == usual.lostShare()));
        add(
                "coolant strength",
                (rules.protectToC() == null
                                ? "each family keeps its own, which is also taken as what is in the block"
                                : "to protect to " + Figures.given(rules.protectToC())
                                        + " C; each family's own is taken as what is in the block")
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
                        + Figures.given(rules.wasteContainerLitres()) + " l, whole ones for each depot and week",
                Assumptions.whose(
                        rules.concentrateContainerLitres() == usual.concentrateContainerLitres(),
                        rules.waterContainerLitres() == usual.waterContainerLitres(),
                        rules.wasteContainerLitres() == usual.wasteContainerLitres()));
        add("freezing points", GlycolWater.basis(), "ASHRAE 2001, Melinder 2010");
        add(
                "mixing",
                "volumes add up; in truth the mix shrinks by under 1 %, made good when the level is checked;"
                        + " concentrate counts as pure glycol",
                "common practice");
    }
}
