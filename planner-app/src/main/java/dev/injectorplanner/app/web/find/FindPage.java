package dev.injectorplanner.app.web.find;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.find.SiteSearch.Hit;
import dev.injectorplanner.app.web.frame.Navigation;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** What the search in the top bar finds; one exact hit opens at once. */
@Controller
public class FindPage {
    private final SiteSearch search;

    FindPage(Application application) {
        this.search = new SiteSearch(application.store().dataSource());
    }

    /** Hits of one kind. */
    public record Group(String letter, String title, List<Hit> hits, boolean more) {}

    @GetMapping("/find")
    String find(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "q", defaultValue = "") String piece,
            Model model) {
        String asked = piece.strip();
        List<Group> groups = new ArrayList<>();
        if (!asked.isEmpty()) {
            add(groups, "Trucks", search.trucks(asked, viewer.depot()));
            add(groups, "Injectors in trucks", search.fitted(asked, viewer.depot()));
            if (Navigation.mayGo(viewer, "/store")) {
                add(groups, "Injectors in stock", search.inStock(asked, viewer.depot()));
            }
            if (Navigation.mayGo(viewer, "/stock")) {
                add(groups, "Parts", search.parts(asked));
            }
            if (Navigation.mayGo(viewer, "/orders")) {
                add(groups, "Orders", search.orders(asked, viewer.depot()));
            }
        }
        List<Hit> exact = groups.stream()
                .flatMap(group -> group.hits().stream())
                .filter(Hit::exact)
                .toList();
        if (exact.size() == 1) {
            return "redirect:" + exact.get(0).link();
        }
        model.addAttribute("asked", asked);
        model.addAttribute("groups", groups);
        model.addAttribute("most", SiteSearch.MOST);
        return "find";
    }

    private static void add(List<Group> groups, String title, List<Hit> hits) {
        if (!hits.isEmpty()) {
            String letter = String.valueOf((char) ('A' + groups.size()));
            groups.add(new Group(letter, title, hits, hits.size() >= SiteSearch.MOST));
        }
    }
}
