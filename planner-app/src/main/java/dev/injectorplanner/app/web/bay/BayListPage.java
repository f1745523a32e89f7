package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.plans.KeptPlan;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.plan.DepotDays;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.schedule.days.DayPlan.Laid;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.workbook.Words;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** A depot's bay sheets: today's, then the rest of the week, then the week after, each by start. */
@Controller
public class BayListPage {
    private static final DateTimeFormatter START = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm", Locale.ENGLISH);

    private final BayDesk desk;

    BayListPage(BayDesk desk) {
        this.desk = desk;
    }

    /** A visit in the list. */
    public record Line(String truck, String start, @Nullable Integer bay, String work, String hours, boolean done) {}

    /** Visits of a stretch of days. */
    public record Group(String letter, String title, List<Line> lines) {}

    private record Placed(Visit visit, @Nullable Laid laid) {
        LocalDateTime start() {
            return laid == null ? visit.week().sunday().atTime(23, 0) : laid.start();
        }
    }

    @GetMapping("/bay")
    String list(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String asked,
            Model model) {
        Optional<Depot> depot = desk.chosen(viewer, asked);
        Optional<KeptPlan> plan = depot.flatMap(row -> desk.findPlan(row.depot()));
        model.addAttribute("depots", desk.depots(viewer));
        model.addAttribute("depot", depot.orElse(null));
        model.addAttribute("jobs", depot.map(row -> desk.openJobs(row.depot())).orElse(List.of()));
        model.addAttribute("day", plan.map(kept -> kept.plan().today()).orElse(null));
        model.addAttribute(
                "groups",
                depot.isPresent() && plan.isPresent()
                        ? groups(
                                depot.get().depot(),
                                plan.get().plan(),
                                desk.done(depot.get().depot(), plan.get()))
                        : List.of());
        return "bay-list";
    }

    private static List<Group> groups(String depot, Plan plan, Map<String, CloseOut> done) {
        IsoWeek week = IsoWeek.of(plan.today());
        List<Placed> visits = plan.visits().stream()
                .filter(visit -> visit.depot().equals(depot))
                .filter(visit -> visit.week().compareTo(week.plus(1)) <= 0)
                .map(visit ->
                        new Placed(visit, DepotDays.find(plan.days(), visit).orElse(null)))
                .sorted(Comparator.comparing(Placed::start)
                        .thenComparing(placed -> placed.visit().truck()))
                .toList();
        List<Group> groups = new ArrayList<>();
        List<Placed> today =
                visits.stream().filter(placed -> isIn(placed, plan.today())).toList();
        groups.add(new Group("A", "Today", lines(today, done)));
        groups.add(new Group(
                "B",
                "This week",
                lines(
                        visits.stream()
                                .filter(placed -> placed.visit().week().equals(week) && !today.contains(placed))
                                .toList(),
                        done)));
        groups.add(new Group(
                "C",
                "Next week",
                lines(
                        visits.stream()
                                .filter(placed -> placed.visit().week().equals(week.plus(1)))
                                .toList(),
                        done)));
        return groups;
    }

    private static boolean isIn(Placed placed, LocalDate day) {
        Laid laid = placed.laid();
        return laid != null
                && !day.isBefore(laid.start().toLocalDate())
                && !day.isAfter(laid.end().toLocalDate());
    }

    private static List<Line> lines(List<Placed> visits, Map<String, CloseOut> done) {
        return visits.stream()
                .map(placed -> {
                    Visit visit = placed.visit();
                    Laid laid = placed.laid();
                    return new Line(
                            visit.truck(),
                            laid == null ? "day not set" : laid.start().format(START),
                            laid == null ? null : laid.bay(),
                            work(visit),
                            Words.quantity(visit.labourHours()),
                            done.containsKey(visit.truck()));
                })
                .toList();
    }

    private static String work(Visit visit) {
        List<String> words = new ArrayList<>();
        if (!visit.cylinders().isEmpty()) {
            words.add(
                    (visit.cylinders().size() == 1 ? "cylinder " : "cylinders ") + Words.cylinders(visit.cylinders()));
        }
        if (visit.inspection()) {
            words.add("injector test");
        }
        words.addAll(visit.tasks());
        return String.join(", ", words);
    }
}
