package dev.injectorplanner.app.web.week;

import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.office.Office;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** The strip alone, for a page that looks whether its plan is still the newest. */
@Controller
public class LivePage {
    private final Office office;
    private final LiveState live;

    LivePage(Office office, LiveState live) {
        this.office = office;
        this.live = live;
    }

    @GetMapping("/week/state")
    String state(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "depot", defaultValue = "") String depot,
            @RequestParam("plan") long plan,
            Model model) {
        model.addAttribute("live", live.of(viewer, office.choose(viewer, depot), plan));
        return "live :: strip";
    }
}
