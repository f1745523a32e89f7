package dev.injectorplanner.app.web.worklist;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.download.FileOffer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.truck.TruckSearch;
import dev.injectorplanner.core.plan.Holds;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.reports.work.TruckListBook;
import dev.injectorplanner.reports.work.WorklistLine;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Trucks as a worklist: sorted, filtered, kept as views, exported. */
@Controller
public class WorklistPage {
    private final Application application;
    private final Office office;
    private final SiteClock clock;
    private final Downloads downloads;
    private final Store store;
    private final TruckSearch search;
    private final SavedViews saved;
    private final PageAnswers<Of, List<WorkTruck>> lists;

    /** Whose list: a depot, the number of its plan, and how units are shown in its words. */
    private record Of(String depot, long plan, SiteUnits units) {}

    /** What a workbook is of. */
    private record Workbook(WorklistQuery query, List<Long> plans, long stored) {}

    WorklistPage(Application application, Office office, SiteClock clock, Downloads downloads) {
        this.application = application;
        this.office = office;
        this.clock = clock;
        this.downloads = downloads;
        this.store = application.store();
        this.search = new TruckSearch(store);
        this.saved = new SavedViews(store.dataSource());
        this.lists = new PageAnswers<>(store.dataSource());
    }

    @GetMapping("/trucks")
    String list(@ModelAttribute("viewer") Viewer viewer, @RequestParam Map<String, String> sent, Model model) {
        WorklistQuery query = new WorklistQuery(sent);
        ChosenDepots chosen = office.choose(viewer, ""); // the depot is a filter here: views count over all
        List<WorkTruck> trucks = trucks(viewer, chosen);
        WorklistFiller filler = new WorklistFiller(office.units(), query);
        model.addAttribute("chosen", chosen);
        model.addAttribute("query", query);
        model.addAttribute("address", query.address());
        model.addAttribute("unit", office.units().distanceUnit());
        model.addAttribute("view", filler.of(trucks, found(viewer, query), saved.list(viewer.name())));
        model.addAttribute("depots", names(trucks, WorkTruck::depot));
        model.addAttribute("dutyGroups", names(trucks, WorkTruck::group));
        model.addAttribute("families", names(trucks, WorkTruck::family));
        model.addAttribute("standings", Standing.values());
        return "trucks";
    }

    @GetMapping("/sheets/trucks.xlsx")
    Object sheet(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam Map<String, String> sent,
            HttpServletResponse response,
            Model model) {
        WorklistQuery query = new WorklistQuery(sent);
        ChosenDepots chosen = office.choose(viewer, "");
        List<WorklistLine> lines = query.of(trucks(viewer, chosen), found(viewer, query), office.units()).stream()
                .map(WorklistPage::line)
                .toList();
        Workbook wanted = new Workbook(
                query, chosen.plans().stream().map(plan -> plan.kept().id()).toList(), store.changes());
        return downloads.answer(
                wanted,
                (progress, out) -> {
                    progress.step("writing the workbook");
                    new TruckListBook(lines, query.words() + ". " + chosen.made() + ".").write(out, office.form());
                },
                FileOffer.workbook("trucks.xlsx", query.link()),
                response,
                model);
    }

    private static WorklistLine line(WorkTruck truck) {
        WorkTruck.Risk risk = truck.risk();
        WorkTruck.Next next = truck.next();
        return new WorklistLine(
                truck.truck(),
                truck.depot(),
                truck.group(),
                truck.family(),
                truck.vin(),
                risk == null ? null : Double.valueOf(risk.chance()),
                risk == null ? null : Integer.valueOf(risk.cylinder()),
                truck.faults(),
                truck.meters().sinceKm(),
                truck.meters().odometerKm(),
                truck.meters().hours(),
                truck.meters().kmPerWeek(),
                next == null ? null : next.week().toString(),
                next == null ? null : next.day(),
                next == null ? "" : next.work(),
                next == null ? null : Double.valueOf(next.hours()),
                truck.standing().words());
    }

    @PostMapping("/trucks/views")
    String save(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("name") String name,
            @RequestParam(name = "view", defaultValue = "") String view) {
        WorklistQuery query = WorklistQuery.parse(view).with("page", "");
        saved.save(viewer.name(), name, query.address(), clock.now());
        return "redirect:" + query.link();
    }

    @PostMapping("/trucks/views/forget")
    String forget(@ModelAttribute("viewer") Viewer viewer, @RequestParam("name") String name) {
        saved.forget(viewer.name(), name, clock.now());
        return "redirect:/trucks";
    }

    private Set<String> found(Viewer viewer, WorklistQuery query) {
        String piece = query.get("find");
        return piece.isEmpty()
                ? Set.of()
                : search.find(piece, viewer.depot(), Integer.MAX_VALUE).stream()
                        .map(TruckSearch.Row::truck)
                        .collect(Collectors.toSet());
    }

    private List<WorkTruck> trucks(Viewer viewer, ChosenDepots chosen) {
        List<WorkTruck> trucks = new ArrayList<>();
        for (DepotPlan plan : chosen.plans()) {
            Of of = new Of(plan.depot(), plan.kept().id(), plan.units());
            trucks.addAll(lists.of(of, key -> list(plan)));
        }
        for (String depot : chosen.withoutPlan()) {
            search.find("", depot, Integer.MAX_VALUE).stream()
                    .filter(row -> viewer.sees(depot))
                    .map(WorklistPage::unplanned)
                    .forEach(trucks::add);
        }
        return trucks;
    }

    private List<WorkTruck> list(DepotPlan plan) {
        Holds holds = application.holds().holds(plan.depot(), plan.plan().firstWeek());
        return new Worklist(plan, holds).list();
    }

    private static WorkTruck unplanned(TruckSearch.Row row) {
        return new WorkTruck(
                row.truck(),
                row.vin(),
                row.depot(),
                "",
                row.family(),
                null,
                0,
                new WorkTruck.Meters(null, null, null, null),
                null,
                Standing.NOT_PLANNED,
                false);
    }

    private static Set<String> names(List<WorkTruck> trucks, Function<WorkTruck, String> name) {
        return trucks.stream().map(name).filter(each -> !each.isEmpty()).collect(Collectors.toCollection(TreeSet::new));
    }
}
