package dev.injectorplanner.app.site;

import static dev.injectorplanner.app.site.SettingKinds.figure;
import static dev.injectorplanner.app.site.SettingKinds.yesOrNo;

import dev.injectorplanner.core.coolant.CoolantRules;
import dev.injectorplanner.core.parts.OrderRules;
import dev.injectorplanner.core.plan.Policy;
import java.math.BigDecimal;
import java.util.List;

/** How the site buys parts and handles coolant. */
final class SupplySettings {
    private static final OrderRules ORDERS = Policy.standard().orders();
    private static final CoolantRules COOLANT = Policy.standard().coolant();

    /** Not set: each family keeps its own strength. */
    private static final SettingKind PROTECT_TO = new SettingKind(
            "protect-to",
            SettingArea.COOLANT,
            "Protect to",
            "freezing point every mix must reach; empty: each family keeps its own strength",
            Measure.TEMPERATURE,
            -45,
            -5,
            List.of(),
            SettingKind.NONE,
            (policy, kept) -> policy.withCoolant(policy.coolant().withProtectToC(number(kept))));

    /** Not set: the only part of kind coolant. */
    private static final SettingKind CONCENTRATE_PART = new SettingKind(
            "concentrate-part",
            SettingArea.COOLANT,
            "Part number of concentrate",
            "a container of it goes on the order list; empty: the only part of kind coolant",
            Measure.TEXT,
            0,
            0,
            List.of(),
            SettingKind.NONE,
            (policy, kept) -> policy.withCoolant(policy.coolant().withConcentratePart(kept)));

    static final List<SettingKind> LIST = List.of(
            figure(
                    "service-level",
                    SettingArea.PARTS,
                    "Service level",
                    "chance that kits and stock cover the need",
                    Measure.PERCENT,
                    0.5,
                    0.9999,
                    ORDERS.serviceLevel(),
                    orders(OrderRules::withServiceLevel)),
            figure(
                    "review-days",
                    SettingArea.PARTS,
                    "Days between order reviews",
                    "whatever must be ordered before the next review is ordered now",
                    Measure.DAYS,
                    0,
                    60,
                    ORDERS.reviewDays(),
                    orders((rules, v) -> rules.withReviewDays((int) v))),
            figure(
                    "expedite-days",
                    SettingArea.PARTS,
                    "Express shipment, days",
                    "from order to receipt",
                    Measure.DAYS,
                    0,
                    60,
                    ORDERS.expediteDays(),
                    orders((rules, v) -> rules.withExpediteDays((int) v))),
            figure(
                    "expedite-price",
                    SettingArea.PARTS,
                    "Express shipment, cost",
                    "per supplier, on top of the parts",
                    Measure.MONEY,
                    0,
                    1_000_000,
                    ORDERS.expeditePrice().doubleValue(),
                    orders((rules, v) -> rules.withExpeditePrice(BigDecimal.valueOf(v)))),
            figure(
                    "moving-per-week",
                    SettingArea.PARTS,
                    "Cost to postpone a visit for missing parts",
                    "for each week it moves",
                    Measure.MONEY_A_WEEK,
                    0,
                    1_000_000,
                    ORDERS.postponementPerWeek().doubleValue(),
                    orders((rules, v) -> rules.withPostponementPerWeek(BigDecimal.valueOf(v)))),
            figure(
                    "transfer-cost",
                    SettingArea.PARTS,
                    "Transfer between depots, cost",
                    "of one trip where the transfers table has no row for the two depots",
                    Measure.MONEY,
                    0,
                    1_000_000,
                    ORDERS.transferCost().doubleValue(),
                    orders((rules, v) -> rules.withTransferCost(BigDecimal.valueOf(v)))),
            figure(
                    "transfer-days",
                    SettingArea.PARTS,
                    "Transfer between depots, days",
                    "until the parts are there, where the transfers table has no row for the two depots",
                    Measure.DAYS,
                    0,
                    60,
                    ORDERS.transferDays(),
                    orders((rules, v) -> rules.withTransferDays((int) v))),
            yesOrNo(
                    "renew-coolant",
                    SettingArea.COOLANT,
                    "Replace drained coolant",
                    "no: it goes back in",
                    COOLANT.renew(),
                    (policy, kept) -> policy.withCoolant(policy.coolant().withRenew(yes(kept)))),
            PROTECT_TO,
            yesOrNo(
                    "any-strength",
                    SettingArea.COOLANT,
                    "Strengths outside 40 to 60 %",
                    "by volume; the engine maker’s limits come first",
                    COOLANT.anyStrength(),
                    (policy, kept) -> policy.withCoolant(policy.coolant().withAnyStrength(yes(kept)))),
            figure(
                    "lost-share",
                    SettingArea.COOLANT,
                    "Lost when draining",
                    "where it is put back",
                    Measure.PERCENT,
                    0,
                    1,
                    COOLANT.lostShare(),
                    coolant(CoolantRules::withLostShare)),
            figure(
                    "concentrate-container",
                    SettingArea.COOLANT,
                    "Concentrate container",
                    "whole containers are drawn",
                    Measure.VOLUME,
                    0.1,
                    10_000,
                    COOLANT.concentrateContainerLitres(),
                    coolant(CoolantRules::withConcentrateContainerLitres)),
            CONCENTRATE_PART,
            figure(
                    "water-container",
                    SettingArea.COOLANT,
                    "Water container",
                    "whole containers are drawn",
                    Measure.VOLUME,
                    0.1,
                    10_000,
                    COOLANT.waterContainerLitres(),
                    coolant(CoolantRules::withWaterContainerLitres)),
            figure(
                    "waste-container",
                    SettingArea.COOLANT,
                    "Waste container",
                    "whole containers are collected",
                    Measure.VOLUME,
                    0.1,
                    10_000,
                    COOLANT.wasteContainerLitres(),
                    coolant(CoolantRules::withWasteContainerLitres)));

    private SupplySettings() {}

    private interface OrderChange {
        OrderRules of(OrderRules rules, double value);
    }

    private interface CoolantChange {
        CoolantRules of(CoolantRules rules, double value);
    }

    private static SettingKind.Effect orders(OrderChange change) {
        return (policy, kept) -> policy.withOrders(change.of(policy.orders(), number(kept)));
    }

    private static SettingKind.Effect coolant(CoolantChange change) {
        return (policy, kept) -> policy.withCoolant(change.of(policy.coolant(), number(kept)));
    }

    private static boolean yes(String kept) {
        return kept.equals(SettingKind.YES);
    }

    private static double number(String kept) {
        return Double.parseDouble(kept);
    }
}
