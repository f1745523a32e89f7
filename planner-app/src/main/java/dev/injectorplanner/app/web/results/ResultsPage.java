package dev.injectorplanner.app.web.results;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.forecast.Calibration;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.results.Results;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.app.web.office.BackgroundWork;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.core.plan.RulePrice;
import dev.injectorplanner.core.units.Figures;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.results.ResultsWorkbook;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
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
    private final Downloads downloads;
    private final Store changes;
    private final PageAnswers<Of, Results.OfDepot> answers;

    /** Of a depot and the number of its plan. */
    private record Of(String depot, long plan) {}

    ResultsPage(Office office, Application application, RulePricing pricing, Downloads downloads) {
        this.downloads = downloads;
        this.changes = application.store();
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
        List<Results.OfDepot> of = listed(chosen);
        model.addAttribute("view", new ResultsView(Results.together(of), Results.calibration(of), office.form()));
        model.addAttribute("judgedFrom", judgedFrom(chosen));
        rules(chosen, !rules.isEmpty(), response, model);
        return "results";
    }

    private List<Results.OfDepot> listed(ChosenDepots chosen) {
        return chosen.plans().stream()
                .map(plan -> answers.of(
                        new Of(plan.depot(), plan.kept().id()),
                        key -> results.of(
                                plan.fleet(), plan.depot(), plan.plan().lives(), plan.today())))
                .toList();
    }

    private String judgedFrom(ChosenDepots chosen) {
        return results.forecasts()
                .findFirstJudged(chosen.plans().stream().map(DepotPlan::depot).toList())
                .map(DisplayFormat::date)
                .orElse("");
    }

    /** What the page shows, for people who go on reckoning; prices of rules as far as somebody had them worked out. */
    @GetMapping("/results/results.xlsx")
    Object sheet(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            HttpServletResponse response,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        if (!chosen.anyPlan()) {
            throw new NotHereException("There is no plan yet, so there are no results. Fix: plan first.");
        }
        DepotPlan first = chosen.plans().get(0);
        List<RulePrice> prices = pricing.peek(
                        new RulePricing.Of(chosen.only(), first.kept().id()))
                .flatMap(BackgroundWork.Job::find)
                .orElse(List.of());
        List<Long> plans = chosen.plans().stream().map(plan -> plan.kept().id()).toList();
        return downloads.answer(
                new Sheet(plans, prices.size(), changes.changes()),
                (progress, out) -> {
                    progress.step("writing the workbook");
                    book(chosen, prices).write(out, office.form());
                },
                FileOffer.workbook("results.xlsx", "/results?depot=" + chosen.depotOrAll()),
                response,
                model);
    }

    /** What a workbook is of. */
    private record Sheet(List<Long> plans, int prices, long stored) {}

    private ResultsWorkbook book(ChosenDepots chosen, List<RulePrice> prices) {
        List<Results.OfDepot> of = listed(chosen);
        Calibration calibration = Results.calibration(of);
        String from = judgedFrom(chosen);
        return new ResultsWorkbook(
                ResultsSheet.months(Results.together(of), office.units()),
                ResultsSheet.rules(prices, office.units()),
                ResultsSheet.forecasts(calibration),
                chosen.made() + ". The last month is not over.",
                prices.isEmpty()
                        ? "Not worked out: press \"Work out the prices\" on the page of results, then take this workbook again."
                        : "Expected money of the plan with the rule less without it. Rules hold each other up, so prices do"
                                + " not add. Safety rules are not priced.",
                calibration.count() > 0
                        ? Figures.whole(calibration.count())
                                + " forecasts of 12 weeks, from the first plan kept of each week."
                        : from.isEmpty()
                                ? "No forecast was kept yet."
                                : "No forecast is 12 weeks old yet: the first can be judged on " + from + ".");
    }

    private void rules(ChosenDepots chosen, boolean asked, HttpServletResponse response, Model model) {
        DepotPlan plan = chosen.plans().get(0);
        RulePricing.Of of = new RulePricing.Of(chosen.only(), plan.kept().id());
        Optional<BackgroundWork.Job<List<RulePrice>>> making =
                asked ? Optional.of(pricing.ask(of, plan.today())) : pricing.peek(of);
        Optional<List<RulePrice>> found = making.flatMap(BackgroundWork.Job::find);
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
                        RuleWords.of(each.rule(), units),
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
                : DisplayFormat.sentence(RuleWords.of(dearest.rule(), units)) + " "
                        + DisplayFormat.costs(dearest.price())
                        + " in these " + plan.plan().weeks()
                        + " weeks: the plan with it and without it, in expected money.";
    }
}
