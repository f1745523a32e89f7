package dev.injectorplanner.app.web.truck;

import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.store.Store;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestParam;

/** Trucks by name, VIN, serial or part. */
@Controller
public class TruckListPage {
    private final TruckSearch search;

    TruckListPage(Store store) {
        this.search = new TruckSearch(store);
    }

    @GetMapping("/trucks")
    String list(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "find", defaultValue = "") String find,
            Model model) {
        List<TruckSearch.Row> trucks = search.find(find.strip(), viewer.depot());
        model.addAttribute("find", find.strip());
        model.addAttribute("trucks", trucks);
        model.addAttribute("most", TruckSearch.MOST);
        return "trucks";
    }
}
