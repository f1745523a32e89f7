package dev.injectorplanner.app.web.replay;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.site.KeptCalibrations;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.BackgroundWork;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.PlanOfDepots;
import dev.injectorplanner.core.plan.Planner;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.Replay;
import dev.injectorplanner.core.replay.ReplayRequest;
import dev.injectorplanner.core.replay.ReplayResult;
import dev.injectorplanner.core.replay.ReplayWatch;
import dev.injectorplanner.core.replay.keeper.PlannerKeeper;
import dev.injectorplanner.core.replay.own.OwnFleet;
import dev.injectorplanner.core.replay.scenario.Scenario;
import dev.injectorplanner.core.replay.scenario.Scenarios;
import dev.injectorplanner.core.schedule.exact.ExactScheduler;
import dev.injectorplanner.core.schedule.exact.SearchLimits;
import dev.injectorplanner.reports.replay.ReplayWorkbook;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Years of fleets like this one, or of made-up truths, under the planner and under simple rules. */
@Controller
public class ReplayPage implements AutoCloseable {
    private static final SearchLimits LIMITS = new SearchLimits(2, 5e-4, 1, 1);
    private static final long SEED = 7;
    private static final int MOST_TRUCKS = 60;
    private static final int KEPT = 8;

    private final Office office;
    private final Planning planning;
    private final Downloads downloads;
    private final SiteSettings settings;
    private final KeptCalibrations calibrations;
    private final BackgroundWork<ReplayQuestion, ReplayResult> replays = new BackgroundWork<>("replay", KEPT);

    ReplayPage(Office office, Application application, Downloads downloads) {
        this.office = office;
        this.planning = application.planning();
        this.downloads = downloads;
        this.settings = application.settings();
        this.calibrations = new KeptCalibrations(application.store().dataSource());
    }

    @GetMapping("/replay")
    String replay(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "scenario", defaultValue = ReplayQuestion.OWN) String scenario,
            @RequestParam(name = "fleets", defaultValue = "4") int fleets,
            @RequestParam(name = "years", defaultValue = "2") int years,
            HttpServletResponse response,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        model.addAttribute("maySet", viewer.is(Role.MANAGER) && viewer.depot() == null);
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        ReplayQuestion question = question(chosen, scenario, fleets, years);
        Optional<BackgroundWork.Job<ReplayResult>> job = replays.peek(question);
        Optional<ReplayResult> found = job.flatMap(BackgroundWork.Job::find);
        model.addAttribute("question", question);
        model.addAttribute(
                "figures", PlanningFiguresView.of(calibrations.find(), planning.policy(), settings, office.form()));
        model.addAttribute("scenarios", Scenarios.list());
        model.addAttribute("fleetChoices", ReplayQuestion.FLEETS);
        model.addAttribute("yearChoices", ReplayQuestion.YEARS);
        model.addAttribute(
                "progress", job.isPresent() && found.isEmpty() ? job.get().progress() : "");
        model.addAttribute("address", address(chosen, question));
        model.addAttribute(
                "view",
                found.map(result -> ReplayView.of(result, "planner", office.form()))
                        .orElse(null));
        if (job.isPresent() && found.isEmpty()) {
            response.setHeader("Refresh", "3");
        }
        return "replay";
    }

    /** Begins a replay, stops it, or plays it again; nothing that is stored changes. */
    @PostMapping("/replay")
    String act(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam("scenario") String scenario,
            @RequestParam("fleets") int fleets,
            @RequestParam("years") int years,
            @RequestParam("do") String what) {
        ChosenDepots chosen = office.choose(viewer, depot);
        ReplayQuestion question = question(chosen, scenario, fleets, years);
        if (chosen.anyPlan()) {
            switch (what) {
                case "stop" -> replays.peek(question).ifPresent(BackgroundWork.Job::stop);
                case "again" -> {
                    replays.forget(question);
                    begin(chosen, question);
                }
                default -> begin(chosen, question);
            }
        }
        return "redirect:" + address(chosen, question);
    }

    private void begin(ChosenDepots chosen, ReplayQuestion question) {
        List<DepotPlan> plans = question.isOwn() ? office.asWritten(chosen.plans()) : List.of();
        String only = chosen.only();
        Policy policy = planning.policy();
        replays.ask(question, watch -> play(question, scenario(question, plans, only), policy, watch));
    }

    private Scenario scenario(ReplayQuestion question, List<DepotPlan> plans, @Nullable String only) {
        Scenario scenario = question.isOwn()
                ? OwnFleet.scenario(planning.fleet(only), PlanOfDepots.of(plans))
                : Scenarios.getScenario(question.scenario());
        return scenario.withTrucks(Math.min(MOST_TRUCKS, scenario.trucks()));
    }

    private static ReplayResult play(ReplayQuestion question, Scenario scenario, Policy policy, ReplayWatch watch) {
        return Replay.run(
                new ReplayRequest(
                        scenario,
                        question.fleets(),
                        question.years(),
                        SEED,
                        List.of(PlannerKeeper.Use.standard(policy)),
                        1),
                new Planner(new ExactScheduler(LIMITS)),
                watch);
    }

    /** The replay that was made, as a workbook; where there is none, the page. */
    @GetMapping("/replay/replay.xlsx")
    Object workbook(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam("scenario") String scenario,
            @RequestParam("fleets") int fleets,
            @RequestParam("years") int years,
            HttpServletResponse response,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        ReplayQuestion question = question(chosen, scenario, fleets, years);
        Optional<ReplayResult> found = replays.peek(question).flatMap(BackgroundWork.Job::find);
        if (found.isEmpty()) {
            return "redirect:" + address(chosen, question);
        }
        return downloads.answer(
                question,
                (progress, out) -> {
                    progress.step("writing the workbook");
                    new ReplayWorkbook(found.get()).write(out, office.form());
                },
                FileOffer.workbook("replay.xlsx", address(chosen, question)),
                response,
                model);
    }

    private static ReplayQuestion question(ChosenDepots chosen, String scenario, int fleets, int years) {
        boolean own = scenario.equals(ReplayQuestion.OWN);
        return new ReplayQuestion(
                scenario,
                own ? chosen.plans().stream().map(DepotPlan::depot).toList() : List.of(),
                own ? chosen.plans().stream().map(plan -> plan.kept().id()).toList() : List.of(),
                fleets,
                years);
    }

    private static String address(ChosenDepots chosen, ReplayQuestion question) {
        return "/replay?depot=" + Address.escaped(chosen.depotOrAll()) + "&scenario=" + question.scenario() + "&fleets="
                + question.fleets() + "&years=" + question.years();
    }

    @Override
    public void close() {
        replays.close();
    }
}
