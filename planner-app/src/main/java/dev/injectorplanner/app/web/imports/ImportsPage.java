package dev.injectorplanner.app.web.imports;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadNotes;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.Permissions;
import dev.injectorplanner.core.check.InvalidValueException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.springframework.http.ContentDisposition;
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
import org.springframework.web.multipart.MultipartFile;

/** Files from the browser: checked, or loaded; refused rows come back as a file. */
@Controller
public class ImportsPage {
    private static final Role[] WHO = {Role.MANAGER, Role.BUYER, Role.ADMINISTRATOR};

    private final Intake intake;
    private final AuditTrail audit;
    private final Office office;
    private final Uploads uploads = new Uploads();
    private final LoadRuns runs = new LoadRuns();

    ImportsPage(Application application, Office office) {
        this.intake = application.intake();
        this.audit = application.audit();
        this.office = office;
    }

    /** What was sent and refused, for the pages that load files, too. */
    Uploads uploads() {
        return uploads;
    }

    @GetMapping("/imports")
    String page(@ModelAttribute("viewer") Viewer viewer, Model model) {
        allow(viewer);
        model.addAttribute("matches", intake.matches().list());
        model.addAttribute("unreadable", intake.matches().unreadable());
        model.addAttribute("most", Uploads.MOST_BYTES / (1024 * 1024));
        return "imports";
    }

    @PostMapping("/imports")
    String load(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("files") List<MultipartFile> files,
            @RequestParam("mode") String mode,
            Model model,
            HttpServletResponse response)
            throws IOException {
        allow(viewer);
        List<MultipartFile> given =
                files.stream().filter(file -> !file.isEmpty()).toList();
        if (given.isEmpty()) {
            throw new InvalidValueException("files", "", "no file was chosen", "choose one or more files");
        }
        Mode how = mode(mode);
        Uploads.Taken taken = uploads.take(given);
        return started(viewer, listener -> load(taken, how, listener), model, response);
    }

    /** Starts a load; shows what became of it, or how far it is where it takes long. */
    String started(
            Viewer viewer, Function<LoadListener, LoadRuns.Outcome> load, Model model, HttpServletResponse response) {
        String key = runs.start(viewer.name(), load, outcome -> {
            LoadNotes.write(audit, viewer.name(), outcome.reports());
            office.changed();
        });
        return runs.find(key, viewer.name()).filter(LoadRuns.Run::ended).isPresent()
                ? run(viewer, key, model, response)
                : "redirect:/imports/runs/" + key;
    }

    private LoadRuns.Outcome load(Uploads.Taken taken, Mode how, LoadListener listener) {
        try {
            List<FileReport> reports =
                    intake.load(taken.files(), LoadSettings.of(how).withRefusedFiles(), listener);
            return new LoadRuns.Outcome(reports, how == Mode.CHECK, uploads.keepRefused(taken, reports), "");
        } catch (IOException e) {
            throw new UncheckedIOException("cannot keep the refused rows", e);
        } finally {
            uploads.clear(taken);
        }
    }

    /** A load that goes on, or what became of it. */
    @GetMapping("/imports/runs/{key}")
    String run(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("key") String key,
            Model model,
            HttpServletResponse response) {
        allow(viewer);
        LoadRuns.Run run = runs.find(key, viewer.name())
                .orElseThrow(() ->
                        new NotHereException("That load is no longer known. Fix: look under Imports, and load again."));
        if (!run.ended()) {
            model.addAttribute("progress", run.state());
            response.setHeader("Refresh", "3");
            return "load";
        }
        LoadRuns.Outcome outcome = run.outcome().orElseThrow();
        model.addAttribute("reports", ReportRow.of(outcome.reports()));
        model.addAttribute("checked", outcome.checked());
        model.addAttribute("refused", outcome.refused());
        model.addAttribute("source", outcome.source());
        return outcome.source().isEmpty() ? page(viewer, model) : "match-done";
    }

    /** Rows of a file may be of any depot, and what is said of them names its trucks. */
    static void allow(Viewer viewer) {
        Permissions.require(viewer, WHO);
        Permissions.requireAllDepots(viewer, "Files");
    }

    private static Mode mode(String name) {
        try {
            return Mode.valueOf(name.toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            throw new InvalidValueException("mode", name, "is not a way to load", "choose one of the three");
        }
    }

    /** A file of refused rows; its key is a secret of this process and dies with it. */
    @GetMapping("/imports/refused/{key}")
    ResponseEntity<byte[]> refused(@ModelAttribute("viewer") Viewer viewer, @PathVariable("key") String key)
            throws IOException {
        allow(viewer);
        Path file = uploads.findRefused(key)
                .orElseThrow(() ->
                        new NotHereException("That file of refused rows is no longer kept. Fix: load the file again."));
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/csv;charset=UTF-8"))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(String.valueOf(file.getFileName()))
                                .build()
                                .toString())
                .body(Files.readAllBytes(file));
    }
}
