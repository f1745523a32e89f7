package dev.injectorplanner.app.web.alerts;

import dev.injectorplanner.app.alert.Alert;
import dev.injectorplanner.app.alert.AlertState;
import dev.injectorplanner.app.alert.Alerts;
import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.office.Address;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What somebody is told about: to acknowledge it, or to snooze it until a date with a reason. */
@Controller
public class AlertsPage {
    /** Alerts of a list shown at once. */
    private static final int MOST = 25;

    private final Alerts alerts;
    private final Office office;
    private final SiteClock clock;

    AlertsPage(Application application, Office office, SiteClock clock) {
        this.alerts = new Alerts(application.store().dataSource());
        this.office = office;
        this.clock = clock;
    }

    /** An alert as it is shown. */
    public record Row(
            long id,
            String about,
            String link,
            String depot,
            String rule,
            String evidence,
            String limit,
            String by,
            String answer) {}

    /**
     * Alerts of one state.
     *
     * @param from the first row shown, counted from 0
     * @param folded whether nothing has to be decided there, so that they open only when asked for
     */
    public record Group(
            String letter,
            String title,
            String empty,
            List<Row> rows,
            boolean toSee,
            boolean toMute,
            boolean folded,
            String state,
            int from) {
        /** The page that holds a row; opened, since somebody turned its pages. */
        Group startingAt(int row) {
            int least = Math.max(0, Math.min(row, rows.size() - 1)) / MOST * MOST;
            return new Group(letter, title, empty, rows, toSee, toMute, false, state, least);
        }

        /** Those shown now. */
        public List<Row> page() {
            return rows.subList(from, upTo());
        }

        public int upTo() {
            return Math.min(rows.size(), from + MOST);
        }

        /** Where the page before this one begins, or below 0. */
        public int before() {
            return from - MOST;
        }

        /** Whether its alerts are snoozed, and can be woken. */
        public boolean toWake() {
            return state.equals(AlertState.MUTED.name());
        }
    }

    @GetMapping("/alerts")
    String alerts(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "list", defaultValue = "") String list,
            @RequestParam(name = "from", defaultValue = "0") int from,
            Model model) {
        ChosenDepots chosen = office.choose(viewer, depot);
        model.addAttribute("chosen", chosen);
        boolean may = viewer.is(Role.MANAGER, Role.ADMINISTRATOR);
        String only = chosen.only();
        model.addAttribute(
                "groups",
                List.of(
                                group("A", "Raised", "No new alerts.", only, AlertState.RAISED, may, may),
                                group(
                                        "B",
                                        "Seen",
                                        "No acknowledged alert is waiting for a visit.",
                                        only,
                                        AlertState.SEEN,
                                        false,
                                        may),
                                group(
                                        "C",
                                        "Planned",
                                        "No alert is covered by a visit.",
                                        only,
                                        AlertState.PLANNED,
                                        false,
                                        may),
                                group("D", "Snoozed", "Nothing is snoozed.", only, AlertState.MUTED, false, false))
                        .stream()
                        .map(group -> group.letter().equals(list) ? group.startingAt(from) : group)
                        .toList());
        return "alerts";
    }

    private Group group(
            String letter,
            String title,
            String empty,
            @Nullable String depot,
            AlertState state,
            boolean see,
            boolean mute) {
        SiteUnits units = office.units();
        List<Row> rows = alerts.list(depot, Set.of(state)).stream()
                .map(alert -> row(alert, units))
                .toList();
        boolean folded = state == AlertState.PLANNED || state == AlertState.MUTED;
        return new Group(letter, title, empty, rows, see, mute, folded, state.name(), 0);
    }

    private static Row row(Alert alert, SiteUnits units) {
        String truck = alert.truck();
        String answer = "";
        if (alert.visitWeek() != null) {
            answer = "visit in " + alert.visitWeek();
        } else if (alert.mutedUntil() != null) {
            answer = "snoozed until " + DisplayFormat.shortDate(alert.mutedUntil()) + ": " + alert.mutedWhy();
        }
        return new Row(
                alert.id(),
                alert.about(),
                truck != null ? Address.truck(truck) : alert.isOfJob() ? "/jobs" : "/life",
                Objects.requireNonNullElse(alert.depot(), "all"),
                units.sentence(alert.ruleWords()),
                units.sentence(alert.evidence()),
                units.sentence(alert.limit()),
                DisplayFormat.shortDate(alert.by()),
                answer);
    }

    @PostMapping("/alerts/seen")
    String seen(@ModelAttribute("viewer") Viewer viewer, @RequestParam("id") long id) {
        check(viewer, id);
        alerts.seen(id, viewer.name(), clock.now());
        return "redirect:/alerts";
    }

    @PostMapping("/alerts/mute")
    String mute(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("id") long id,
            @RequestParam("until") String until,
            @RequestParam("why") String why) {
        Alert alert = check(viewer, id);
        LocalDate today = alert.depot() == null
                ? clock.today(java.time.ZoneOffset.UTC)
                : office.find(alert.depot()).map(plan -> plan.today()).orElse(clock.today(java.time.ZoneOffset.UTC));
        alerts.mute(id, day(until), why, viewer.name(), clock.now(), today);
        return "redirect:/alerts";
    }

    /**
     * Several at once: those ticked, or all of a list.
     *
     * @param act seen, mute or wake
     * @param all the state whose alerts are all meant, or empty for those ticked
     */
    @PostMapping("/alerts/many")
    String many(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("act") String act,
            @RequestParam(name = "id", defaultValue = "") List<Long> ids,
            @RequestParam(name = "all", defaultValue = "") String all,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam(name = "until", defaultValue = "") String until,
            @RequestParam(name = "why", defaultValue = "") String why) {
        Permissions.require(viewer, Role.MANAGER, Role.ADMINISTRATOR);
        ChosenDepots chosen = office.choose(viewer, depot);
        List<Long> meant = all.isEmpty()
                ? ids
                : alerts.list(chosen.only(), Set.of(state(all))).stream()
                        .map(Alert::id)
                        .toList();
        if (meant.isEmpty()) {
            throw new InvalidValueException("alerts", "", "none is ticked", "tick some, or choose all of the list");
        }
        for (long id : meant) {
            switch (act) {
                case "seen" -> seen(viewer, id);
                case "mute" -> mute(viewer, id, until, why);
                case "wake" -> alerts.wake(check(viewer, id).id(), viewer.name(), clock.now());
                default -> throw new InvalidValueException("act", act, "is not known", "open the page again");
            }
        }
        return "redirect:/alerts" + (depot.isEmpty() ? "" : "?depot=" + Address.escaped(depot));
    }

    private static AlertState state(String name) {
        try {
            return AlertState.valueOf(name);
        } catch (IllegalArgumentException e) {
            throw new InvalidValueException("all", name, "is not a list of alerts", "open the page again");
        }
    }

    private Alert check(Viewer viewer, long id) {
        Permissions.require(viewer, Role.MANAGER, Role.ADMINISTRATOR);
        Alert alert = alerts.get(id);
        if (alert.depot() != null && !viewer.sees(alert.depot())) {
            throw new InvalidValueException("alert", id, "is not known", "use a number from the list of alerts");
        }
        return alert;
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text.strip());
        } catch (DateTimeParseException e) {
            throw new InvalidValueException("until", text, "is not a date", "write it as 2026-03-31");
        }
    }
}
