package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.condition.SignEffect;
import dev.injectorplanner.core.due.UnseenLimit;
import dev.injectorplanner.core.history.LifeBook;
import dev.injectorplanner.core.history.LifeChange;
import dev.injectorplanner.core.history.LifeSource;
import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.history.TruckWear;
import dev.injectorplanner.core.risk.DefectEstimate;
import dev.injectorplanner.core.risk.FamilyInspection;
import dev.injectorplanner.core.risk.FleetRisk;
import dev.injectorplanner.core.units.Figures;
import java.util.List;
import java.util.Locale;

/** What the forecasts take as given: life models, ratios of signs, behaviour of defects, limits. */
final class RiskAssumptions {
    private static final String DEFAULT = "planner default";
    private static final String RECORDS = "fleet's records";

    private final Assumptions to;

    RiskAssumptions(Assumptions to) {
        this.to = to;
    }

    void list(FleetRisk risk, List<FamilyInspection> inspections, UnseenLimit unseen) {
        risk.lives().lives().forEach(this::life);
        risk.defects().forEach(part -> wear(part.part(), risk.lives().wearOf(part.part())));
        risk.lives().changes().forEach(change -> to.add("fails sooner", words(change, risk.lives()), RECORDS));
        history(risk);
        signs(risk.signEffects());
        risk.defects().forEach(this::defects);
        inspections.forEach(this::inspection);
        if (!risk.tested()) {
            to.add(
                    "inspection",
                    "no balance or return-flow test on record: no injector test is due until the first results are in",
                    DEFAULT);
        }
        to.add(
                "injector tests",
                "a truck is due for a test in the week in which the result is worth most against its cost, and not at all where"
                        + " it would change nothing"
                        + (unseen.isOn()
                                ? "; and when the chance of a road failure from an undetected defect passes "
                                        + Figures.givenPercent(unseen.chance())
                                : ""),
                unseen.isOn() ? "site" : DEFAULT);
    }

    private void wear(String part, TruckWear wear) {
        if (wear.differs()) {
            to.add(
                    "trucks and " + part,
                    "wear differs from truck to truck: the hardest one in ten uses its injectors up "
                            + Figures.whole(100 * (wear.hardestTenth() - 1)) + " % faster than usual",
                    RECORDS);
        }
    }

    private void life(PartLife life) {
        String data = Figures.count(life.failures(), "failure", "failures") + ", " + life.worn() + " found worn, "
                + Figures.count(life.suspensions(), "still working when last seen", "still working when last seen");
        String prior = life.prior().isEmpty() ? "" : "; prior: " + life.prior();
        to.add(
                "life of " + life.part() + " " + life.origin().name().toLowerCase(Locale.ROOT),
                "Weibull in " + life.clock().unit() + ", shape "
                        + Figures.tenths(life.life().shape()) + ", scale "
                        + Figures.whole(life.life().scale()) + " "
                        + life.clock().unit() + early(life) + ": "
                        + life.source().words() + " (" + data + ")" + prior,
                life.source() == LifeSource.FITTED ? RECORDS : life.prior().equals(DEFAULT) ? DEFAULT : RECORDS);
    }

    private static String words(LifeChange change, LifeBook lives) {
        PartLife since = lives.since(change);
        return change.words() + "; their life is learned apart: scale "
                + Figures.whole(since.life().scale()) + " against "
                + Figures.whole(lives.before(change).life().scale()) + " "
                + since.clock().unit() + " before";
    }

    private static String early(PartLife life) {
        return life.early().share() == 0
                ? ""
                : ", and " + Figures.percent(life.early().share()) + " early failures after "
                        + Figures.whole(life.early().meanAge()) + " "
                        + life.clock().unit() + " on average";
    }

    private void history(FleetRisk risk) {
        to.add(
                "worn injectors",
                "count as failing half the mean defect delay after removal; counting them as survivors would"
                        + " overstate life",
                DEFAULT);
        if (risk.history().beforeRecords() > 0) {
            to.add(
                    "injectors removed before the records begin",
                    Figures.count(risk.history().beforeRecords(), "injector", "injectors")
                            + " came out before their truck's first reading and are left out of the life models",
                    DEFAULT);
        }
        risk.questions()
                .forEach(question ->
                        to.add("failures on record?", question.words() + " " + question.meanwhile(), DEFAULT));
        if (risk.history().unknownHistory() > 0) {
            to.add(
                    "injectors of unknown history",
                    Figures.count(risk.history().unknownHistory(), "injector", "injectors")
                            + " fitted before the records began, or of unknown origin: left out of the life models; a fitted one"
                            + " counts with the age to be expected between the km since the records began and the truck's"
                            + " own km, by survival (planner default)",
                    DEFAULT);
        }
        if (risk.unknown() > 0) {
            to.add(
                    "risk not known",
                    Figures.count(risk.unknown(), "fitted injector has", "fitted injectors have")
                            + " no age or usage on record",
                    DEFAULT);
        }
    }

    private void signs(List<SignEffect> effects) {
        for (SignEffect effect : effects) {
            to.add(
                    "sign: " + effect.sign().words(),
                    "makes failing in the next 12 weeks " + Figures.tenths(effect.ratio())
                            + " times as likely, for a typical injector that showed nothing before ("
                            + Figures.count(effect.failuresWith(), "failure", "failures") + " with it on record)",
                    effect.source().equals(SignEffect.DEFAULT) ? DEFAULT : RECORDS);
        }
    }

    private void defects(DefectEstimate estimate) {
        String topic = "defects of " + estimate.part();
        to.add(topic, "fail " + delay(estimate) + " km after they appear, on average", source(estimate.delaySource()));
        to.add(
                topic,
                "a test finds " + share(estimate.sensitivity(), estimate.sensitivitySource())
                        + " of the defects present",
                source(estimate.sensitivitySource()));
        to.add(
                topic,
                share(estimate.silentShare(), estimate.silentSource()) + " of failures come without an earlier fault",
                source(estimate.silentSource()));
    }

    /** Estimates are no finer than a hundred km; what somebody set is said as it was set. */
    private static String delay(DefectEstimate estimate) {
        double km = estimate.meanDelayKm();
        return isGiven(estimate.delaySource()) ? Figures.given(km) : Figures.whole(Math.rint(km / 100) * 100);
    }

    private static String share(double share, String source) {
        return isGiven(source) ? Figures.givenPercent(share) : Figures.percent(share);
    }

    private static boolean isGiven(String source) {
        return source.equals(DefectEstimate.DEFAULT) || source.equals(DefectEstimate.SITE);
    }

    private static String source(String of) {
        return isGiven(of) ? of : RECORDS;
    }

    private void inspection(FamilyInspection family) {
        Double interval = family.policy().interval();
        to.add(
                "tests of " + family.family(),
                interval == null
                        ? "testing never pays for itself"
                        : "cheapest every " + Figures.whole(Math.rint(interval / 100) * 100) + " "
                                + family.clock().unit() + " (Christer and Waller 1984)",
                RECORDS);
    }
}
