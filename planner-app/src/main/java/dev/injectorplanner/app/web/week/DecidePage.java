package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.desk.Answer;
import dev.injectorplanner.app.desk.Decision;
import dev.injectorplanner.app.desk.Desk;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Does what a question's button says, and takes it back. */
@Controller
public class DecidePage {
    private final Office office;
    private final Desk desk;
    private final WeekFiller filler;
    private final Replanning replanning;
    private final SiteClock clock;

    DecidePage(Office office, Application application, Replanning replanning, SiteClock clock) {
        this.office = office;
        this.desk = new Desk(application.store(), application.holds());
        this.filler = new WeekFiller(application.plans(), desk);
        this.replanning = replanning;
        this.clock = clock;
    }

    @PostMapping("/week/decide")
    String decide(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("key") String key,
            @RequestParam("depot") String depot,
            @RequestParam("subject") String subject,
            @RequestParam("act") String act,
            @RequestParam(name = "shown", defaultValue = "") String shown,
            @RequestParam(name = "week", defaultValue = "") String week,
            RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        ChosenDepots chosen = office.choose(viewer, depot);
        String once = key + "/" + Integer.toHexString(subject.hashCode());
        if (desk.decisions().find(once).isEmpty()) {
            DeskQuestion question = new Questions(week.isEmpty() ? null : IsoWeek.parse(week))
                    .of(chosen.plans(), filler.decided(chosen)).stream()
                            .filter(each -> each.subject().equals(subject))
                            .findFirst()
                            .orElseThrow(DecidePage::changed);
            DeskQuestion.Option option = question.find(act);
            Answer answer = option == null ? null : option.answer();
            if (option == null || answer == null) {
                throw changed();
            }
            desk.decide(
                    once,
                    depot,
                    subject,
                    Questions.shortened(question.state()),
                    question.title() + ": " + lower(option.label())
                            + (option.money().isEmpty() ? "" : ", money " + option.money()) + ".",
                    answer,
                    clock.now(),
                    viewer.name());
            if (answer.kind() != Decision.Kind.LEAVE) {
                replanning.plan(viewer, depot, "decision " + once);
            }
        }
        return back(next, shown, week);
    }

    private static String lower(String label) {
        return label.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + label.substring(1);
    }

    private static InvalidValueException changed() {
        return new InvalidValueException(
                "question",
                "this",
                "is another one since the page was made: the plan has changed",
                "open Week ahead again and decide on what it shows now");
    }

    @PostMapping("/week/undo")
    String undo(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("key") String key,
            @RequestParam(name = "shown", defaultValue = "") String shown,
            @RequestParam(name = "week", defaultValue = "") String week,
            RedirectAttributes next) {
        Permissions.require(viewer, Role.MANAGER);
        Decision decision = desk.decisions()
                .find(key)
                .filter(each -> viewer.sees(each.depot()))
                .orElseThrow(() -> new NotHereException(
                        "There is no such decision. Fix: open Week ahead again and undo what it shows."));
        if (decision.stands()) {
            desk.undo(decision, clock.now(), viewer.name());
            if (decision.kind() != Decision.Kind.LEAVE) {
                replanning.plan(viewer, decision.depot(), "undo " + key);
            }
        }
        return back(next, shown, week);
    }

    /** To the page as it was: the same depots, the same week. */
    private static String back(RedirectAttributes next, String shown, String week) {
        if (!shown.isEmpty()) {
            next.addAttribute("depot", shown);
        }
        if (!week.isEmpty()) {
            next.addAttribute("week", week);
        }
        return "redirect:/week";
    }
}
