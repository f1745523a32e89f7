package dev.injectorplanner.app.web.imports;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.start.Starter;
import dev.injectorplanner.app.start.StarterKit;
import dev.injectorplanner.app.start.StoreNeeds;
import dev.injectorplanner.app.start.StoreNeeds.Need;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.table.Tables;
import java.io.IOException;
import java.io.InputStream;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The first steps: what is missing for a plan and what it would add, starter kits, depots, templates. */
@Controller
public class SetUpPage {
    private final Starter starter;
    private final StoreNeeds needs;
    private final AuditTrail audit;
    private final Office office;

    SetUpPage(Application application, Office office) {
        this.starter = new Starter(application.store(), application.intake());
        this.needs = new StoreNeeds(application.store());
        this.audit = application.audit();
        this.office = office;
    }

    @GetMapping("/imports/start")
    String page(@ModelAttribute("viewer") Viewer viewer, Model model) {
        ImportsPage.allow(viewer);
        List<Need> all = needs.list();
        model.addAttribute("needs", all);
        model.addAttribute(
                "loaded", all.stream().filter(need -> !need.missing()).count());
        model.addAttribute("kits", StarterKit.values());
        return "set-up";
    }

    @PostMapping("/imports/start")
    String store(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam(name = "kit", required = false) @Nullable List<String> kits,
            @RequestParam(name = "depots", defaultValue = "") String depots,
            @RequestParam(name = "zone", defaultValue = "") String zone,
            @RequestParam(name = "before", defaultValue = "") String before) {
        ImportsPage.allow(viewer);
        List<String> names = Arrays.stream(depots.split(","))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .toList();
        ZoneId zoneOfDepots = names.isEmpty() ? ZoneOffset.UTC : zone(zone); // refused before anything is stored
        List<StarterKit> chosen =
                kits == null ? List.of() : kits.stream().map(StarterKit::of).toList();
        starter.kits(chosen, false);
        int added = names.isEmpty() ? 0 : starter.depots(names, zoneOfDepots);
        int filled = before.isEmpty() ? 0 : starter.fillBeforeRecords();
        audit.record(
                viewer.name(),
                "set up the store",
                chosen.isEmpty() ? "examples" : chosen.toString(),
                "",
                added + " depots, " + filled + " injectors from before the records");
        office.changed();
        return "redirect:/imports/start";
    }

    private static ZoneId zone(String text) {
        try {
            return ZoneId.of(text.strip());
        } catch (DateTimeException e) {
            throw new InvalidValueException("time zone", text, "is not a time zone", "write it as America/Chicago");
        }
    }

    /** The template of a table. */
    @GetMapping("/imports/templates/{table}")
    ResponseEntity<byte[]> template(@ModelAttribute("viewer") Viewer viewer, @PathVariable("table") String table)
            throws IOException {
        ImportsPage.allow(viewer);
        String name = Tables.get(table).name() + ".csv";
        try (InputStream in = SetUpPage.class.getResourceAsStream("/samples/templates/" + name)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without the template " + name);
            }
            return ResponseEntity.ok()
                    .contentType(MediaType.parseMediaType("text/csv;charset=UTF-8"))
                    .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                    .body(in.readAllBytes());
        }
    }
}
