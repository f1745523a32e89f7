package dev.injectorplanner.app.web.results;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.results.Results;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.plan.RulePrice;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** Did it pay: by month, what the site's rules cost, forecasts held against what happened. */
@Controller
public class ResultsPage {
    private final Office office;
    private final Results results;
    private final RulePricing pricing;
    private final PageAnswers<Of, Results.OfDepot> answers;

    /** Of a depot and the number of its plan. */
    private record Of(String depot, long plan) {}

    ResultsPage(Office office, Application application, RulePricing pricing) {
        this.office = office;
        this.results = new Results(application.store());
        this.pricing = pricing;
        this.answers = new PageAnswers<>(application.store().dataSource());
    }

    /**
     * A rule with its price.
     *
     * @param width of its bar, of 160
     */
    public record Priced(String rule, String price, double width, String visits, String injectors) {}

    @GetMapping("/results")
    String results(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "rules", defaultValue = "") String rules,
            HttpServletResponse response,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        List<Results.OfDepot> of = chosen.plans().stream()
                .map(plan -> answers.of(
                        new Of(plan.depot(), plan.kept().id()),
                        key -> results.of(
                                plan.fleet(), plan.depot(), plan.plan().lives(), plan.today())))
                .toList();
        model.addAttribute("view", new ResultsView(Results.together(of), Results.calibration(of), office.form()));
        model.addAttribute(
                "judgedFrom",
                results.forecasts()
                        .findFirstJudged(
                                chosen.plans().stream().map(DepotPlan::depot).toList())
                        .map(DisplayFormat::date)
                        .orElse(""));
        rules(chosen, !rules.isEmpty(), response, model);
        return "results";
    }

    private void rules(ChosenDepots chosen, boolean asked, HttpServletResponse response, Model model) {
        DepotPlan plan = chosen.plans().get(0);
        RulePricing.Of of = new RulePricing.Of(chosen.only(), plan.kept().id());
        Optional<RulePricing.Making> making = asked ? Optional.of(pricing.ask(of, plan.today())) : pricing.peek(of);
        Optional<List<RulePrice>> found = making.flatMap(RulePricing.Making::find);
        model.addAttribute("weeks", plan.plan().weeks());
        model.addAttribute("ruleCount", plan.fleet().fleet().rules().size());
        model.addAttribute(
                "priced", found.map(prices -> shown(prices, office.units())).orElse(List.of()));
        model.addAttribute(
                "rulesAnswer",
                found.map(prices -> answer(prices, plan, office.units())).orElse(""));
        boolean waiting = making.isPresent() && found.isEmpty();
        model.addAttribute("rulesProgress", waiting ? making.get().progress() : "");
        if (waiting) {
            response.setHeader("Refresh", "2");
        }
    }

    private static List<Priced> shown(List<RulePrice> prices, SiteUnits units) {
        double most = prices.stream()
                .mapToDouble(each -> Math.abs(each.price()))
                .max()
                .orElse(0);
        return prices.stream()
                .map(each -> new Priced(
                        words(each.rule(), units),
                        DisplayFormat.costs(each.price()),
                        most == 0 ? 0 : Math.rint(1600 * Math.abs(each.price()) / most) / 10,
                        each.visitsWith() + " with, " + each.visitsWithout() + " without",
                        each.injectorsWith() + " with, " + each.injectorsWithout() + " without"))
                .toList();
    }

    private static String answer(List<RulePrice> prices, DepotPlan plan, SiteUnits units) {
        if (prices.isEmpty()) {
            return "The site has set no rule of its own that can be priced.";
        }
        RulePrice dearest = prices.get(0);
        return dearest.price() < 0.5
                ? "No rule of the site costs anything in these " + plan.plan().weeks() + " weeks."
                : DisplayFormat.sentence(words(dearest.rule(), units)) + " " + DisplayFormat.costs(dearest.price())
                        + " in these " + plan.plan().weeks()
                        + " weeks: the plan with it and without it, in expected money.";
    }

    private static String words(Rule rule, SiteUnits units) {
        String family = rule.family() == null ? "" : " for " + rule.family();
        String limit = Figures.tenths(rule.limit());
        return switch (rule.rule()) {
            case AGE_MONTHS -> "the limit of " + limit + " months" + family;
            case DISTANCE_KM -> "the limit of " + units.distance(rule.limit()) + family;
            case ENGINE_HOURS -> "the limit of " + Figures.whole(rule.limit()) + " engine hours" + family;
            case FAULTS -> "the limit of " + limit + " faults" + family;
            case RISK -> "the limit of " + limit + " % chance of failing in 12 weeks" + family;
            case BALANCE -> "the balance limit of " + limit + " mm3 a stroke" + family;
            case RETURN_FLOW -> "the return flow limit of " + limit + " ml a minute" + family;
            case WARRANTY -> "the test within " + limit + " days before a warranty ends" + family;
            case SAFETY -> rule.rule().name().toLowerCase(Locale.ROOT);
        };
    }
}
