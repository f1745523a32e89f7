package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.bayjob.BayJob;
import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.bayjob.JobOffer;
import dev.injectorplanner.app.bayjob.JobOffers;
import dev.injectorplanner.app.diagnosis.LookBook;
import dev.injectorplanner.app.entry.EntryProblem;
import dev.injectorplanner.app.entry.RefusedEntryException;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.stock.Kits;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.app.web.truck.TruckSearch;
import dev.injectorplanner.core.diagnosis.DiagnosisKind;
import dev.injectorplanner.reports.bay.CylinderLabel;
import jakarta.servlet.http.HttpServletResponse;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Starts a job that nobody planned: which truck, what failed, that one, the bank, or all. */
@Controller
class StartPage {
    private static final int NOT_KEPT = 422;
    private static final int SHOWN = 12;

    private final BayDesk desk;
    private final TruckSearch search;
    private final BayJobs jobs;
    private final SerialisedStock shelf;
    private final Kits kits;
    private final Application application;

    StartPage(
            BayDesk desk, TruckSearch search, BayJobs jobs, SerialisedStock shelf, Kits kits, Application application) {
        this.desk = desk;
        this.search = search;
        this.jobs = jobs;
        this.shelf = shelf;
        this.kits = kits;
        this.application = application;
    }

    /** Trucks that were found; one alone is opened at once, and a scanned label opens its truck. */
    @GetMapping("/start")
    String find(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "find", defaultValue = "") String find,
            Model model) {
        String piece = find.strip();
        Optional<CylinderLabel.Scanned> label = CylinderLabel.read(piece);
        List<TruckSearch.Row> hits = piece.isEmpty()
                ? List.of()
                : search.find(label.map(CylinderLabel.Scanned::truck).orElse(piece), viewer.depot());
        Optional<TruckSearch.Row> only = hits.stream()
                .filter(row -> hits.size() == 1
                        || row.truck().equalsIgnoreCase(piece)
                        || label.isPresent() && row.truck().equals(label.get().truck()))
                .findFirst();
        if (only.isPresent()) {
            return "redirect:" + BayAddresses.start(only.get().truck());
        }
        model.addAttribute("find", piece);
        model.addAttribute("hits", hits.stream().limit(SHOWN).toList());
        model.addAttribute("more", Math.max(0, hits.size() - SHOWN));
        model.addAttribute("at", null);
        return "start";
    }

    @GetMapping("/start/{truck}")
    String truck(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam(name = "failed", defaultValue = "") List<Integer> failed,
            @RequestParam(name = "look", defaultValue = "") String look,
            Model model) {
        return show(
                viewer,
                name,
                failed,
                new FormState(Map.of("formKey", List.of(UUID.randomUUID().toString()), "look", List.of(look))),
                model);
    }

    @PostMapping("/start/{truck}")
    String start(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam(name = "formKey", defaultValue = "") String key,
            @RequestParam(name = "failed", defaultValue = "") List<Integer> failed,
            @RequestParam(name = "set", defaultValue = "") String set,
            @RequestParam(name = "why", defaultValue = "") String why,
            @RequestParam(name = "look", defaultValue = "") String look,
            HttpServletResponse response,
            Model model) {
        TruckInBay at = desk.truck(viewer, name);
        try {
            Optional<DiagnosisKind> kind = DiagnosisKind.find(look);
            Collection<String> codes = kind.<Collection<String>>map(each -> LookPage.codes(at, each))
                    .orElseGet(List::of);
            jobs.start(
                    new BayJobs.Start(key, name, failed, numbers(set), BayJob.why(codes, why)),
                    desk.clock().now(),
                    viewer.name(),
                    (connection, writer, job) -> along(connection, writer, job, kind.orElse(null)));
            desk.changed();
            return "redirect:" + BayAddresses.bay(name);
        } catch (RefusedEntryException e) {
            FormState typed = new FormState(
                    Map.of("formKey", List.of(key), "set", List.of(set), "why", List.of(why), "look", List.of(look)));
            for (EntryProblem problem : e.problems()) {
                typed.wrong(problem);
            }
            response.setStatus(NOT_KEPT);
            return show(viewer, name, failed, typed, model);
        }
    }

    /** With the job its kit is allocated, and the diagnosis that led to it is over. */
    private static void along(Connection connection, StoreWriter writer, BayJob job, @Nullable DiagnosisKind kind)
            throws SQLException {
        Kits.fill(connection, writer, job);
        if (kind != null) {
            String how = "injectors to be replaced, failed: cylinders "
                    + job.failed().stream().map(String::valueOf).collect(Collectors.joining(" "));
            LookBook.end(connection, job.truck(), kind, how, job.startedAt(), job.startedBy());
        }
    }

    /** Calls an open job off; its injectors are free again, those of the planned visit stay allocated. */
    @PostMapping("/start/{truck}/call-off")
    String callOff(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam(name = "job", defaultValue = "0") long job) {
        TruckInBay at = desk.truck(viewer, name);
        if (at.job() == null || at.job().id() != job) {
            return "redirect:" + BayAddresses.bay(name); // over already, or another one: that page says which
        }
        jobs.callOff(name, job, desk.clock().now(), viewer.name());
        TruckInBay after = desk.truck(viewer, name);
        at.kit().forEach((cylinder, injector) -> {
            if (at.planned().contains(cylinder) && !after.planned().contains(cylinder)) {
                kits.release(at.depot().depot(), injector.id(), desk.clock().now(), viewer.name());
            }
        });
        desk.changed();
        return "redirect:" + BayAddresses.start(name);
    }

    private static List<Integer> numbers(String set) {
        List<Integer> numbers = new ArrayList<>();
        for (String each : set.split(" ")) {
            if (each.matches("\\d{1,2}")) {
                numbers.add(Integer.valueOf(each));
            }
        }
        return numbers;
    }

    private String show(Viewer viewer, String name, List<Integer> asked, FormState typed, Model model) {
        TruckInBay at = desk.truck(viewer, name);
        List<Integer> failed = new TreeSet<>(asked)
                .stream().filter(at.family().allCylinders()::contains).toList();
        List<JobOffer> offers = failed.isEmpty() || at.job() != null ? List.of() : offers(at, failed);
        model.addAttribute("at", at);
        model.addAttribute("find", name);
        model.addAttribute("hits", List.of());
        model.addAttribute("more", 0);
        model.addAttribute("failed", failed);
        model.addAttribute("rows", EnginePick.of(at));
        model.addAttribute("banks", at.family().banks());
        model.addAttribute(
                "offers", offers.stream().map(each -> OfferView.of(each, at)).toList());
        model.addAttribute("form", typed);
        return "start";
    }

    private List<JobOffer> offers(TruckInBay at, List<Integer> failed) {
        OthersPieces others = new OthersPieces(at.truck().truck());
        shelf.list(at.depot().depot()).forEach(others::bound);
        desk.findPlan(at.depot().depot())
                .ifPresent(plan -> others.planned(
                        plan.plan().parts().allocation().pieces(), at.depot().depot()));
        return new JobOffers(
                        at.fleet(), application.planning().policy(), at.today(), others.inStock(), others.onOrder())
                .of(at.truck(), failed);
    }
}
