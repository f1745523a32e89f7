package dev.injectorplanner.app.web.life;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.planning.Planning;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.OwnWords;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.plan.RecordsState;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** How long injectors live, as the records say and as the plan takes it. */
@Controller
public class LifePage {
    private final Office office;
    private final Application application;
    private final Planning planning;
    private final Replanning anew;
    private final SiteClock clock;
    private final PageAnswers<Of, List<LifeCurves.Curve>> curves;

    /** Curves of the depots shown, by the numbers of their plans. */
    private record Of(List<Long> plans, String depots) {}

    LifePage(Application application, Office office, Replanning anew, SiteClock clock) {
        this.application = application;
        this.planning = application.planning();
        this.office = office;
        this.anew = anew;
        this.clock = clock;
        this.curves = new PageAnswers<>(application.store().dataSource());
    }

    /** A part without a failure on record, and the question about it. */
    public record Asked(String part, String words) {}

    private List<FailureAnswer> answers() {
        return application
                .store()
                .<List<FailureAnswer>>inJointTransaction((connection, writer) -> writer.all(FailureAnswer.class))
                .stream()
                .sorted(Comparator.comparing(FailureAnswer::part))
                .toList();
    }

    /** Keeps an answer for the whole fleet, and plans by it. */
    @PostMapping("/life/answer")
    String answer(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("part") String part,
            @RequestParam("answer") String answer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        if (viewer.depot() != null) {
            throw new NotHereException("Lives are learned from the whole fleet. Fix: ask a manager of all depots.");
        }
        ChosenDepots chosen = office.choose(viewer, depot);
        LocalDate today = chosen.plans().stream()
                .map(DepotPlan::today)
                .max(Comparator.naturalOrder())
                .orElseThrow(() -> new NotHereException("There is no plan yet. Fix: make one first."));
        FailureAnswer given = new FailureAnswer(part, wordOf(answer), today, viewer.name());
        application.store().inJointTransaction((connection, writer) -> {
            if (writer.all(Part.class).stream().noneMatch(each -> each.part().equals(part))) {
                throw new NotHereException("Part \"" + part + "\" is not in the table of parts.");
            }
            String before = writer.all(FailureAnswer.class).stream()
                    .filter(each -> each.part().equals(part))
                    .map(LifePage::words)
                    .findFirst()
                    .orElse("");
            writer.merge(FailureAnswer.class, List.of(given), true);
            AuditTrail.write(
                    connection, clock.now(), viewer.name(), "answer about failures", part, before, words(given));
            return true;
        });
        chosen.plans().stream()
                .map(DepotPlan::depot)
                .forEach(each -> anew.plan(viewer, each, "answer about " + part + " " + clock.now() + " " + each));
        next.addFlashAttribute("done", part + ": " + words(given) + ". Replanned.");
        return "redirect:/life";
    }

    private static FailureAnswer.Answer wordOf(String answer) {
        return Arrays.stream(FailureAnswer.Answer.values())
                .filter(each -> each.name().equals(answer))
                .findFirst()
                .orElseThrow(() -> new InvalidValueException(
                        "answer", answer, "is neither of the two", "choose one of the buttons"));
    }

    private static String words(FailureAnswer answer) {
        return answer.answer() == FailureAnswer.Answer.NONE_FAILED
                ? "none failed, the lives on record count"
                : "failures were not recorded before " + answer.answeredOn() + ", lives count from then on";
    }

    @GetMapping("/life")
    String life(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        model.addAttribute("mayPlan", viewer.is(Role.MANAGER));
        if (!chosen.anyPlan()) {
            return "no-plan";
        }
        OwnWords.keep(model, "done");
        model.addAttribute("mayAnswer", viewer.is(Role.MANAGER) && viewer.depot() == null);
        model.addAttribute(
                "questions",
                RecordsState.together(
                                chosen.plans().stream().map(DepotPlan::records).toList())
                        .questions()
                        .stream()
                        .map(question ->
                                new Asked(question.part(), chosen.units().sentence(question.words())))
                        .toList());
        model.addAttribute("answers", answers());
        Of of = new Of(chosen.plans().stream().map(plan -> plan.kept().id()).toList(), chosen.depotOrAll());
        model.addAttribute(
                "curves",
                curves.of(of, key -> new LifeCurves(chosen.plans(), planning.policy(), chosen.units()).curves()));
        return "life";
    }
}
