package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.Viewer;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;

/** Answers what the readings typed so far will do to the plan; nothing is kept. */
@Controller
class ReadingsPage {
    private final BayDesk desk;
    private final Application application;

    ReadingsPage(BayDesk desk, Application application) {
        this.desk = desk;
        this.application = application;
    }

    @PostMapping(path = "/bay/{truck}/readings", produces = "application/json")
    @ResponseBody
    Map<String, String> readings(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("truck") String name,
            @RequestParam MultiValueMap<String, String> sent) {
        TruckInBay at = desk.truck(viewer, name);
        return new ReadingsJudge(at, application.planning().policy().usageWindowDays())
                .of(
                        new EntryReader(at, new FormState(sent)).read().tests(),
                        desk.clock().now());
    }
}
