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
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
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

    ImportsPage(Application application, Office office) {
        this.intake = application.intake();
        this.audit = application.audit();
        this.office = office;
    }

    @GetMapping("/imports")
    String page(@ModelAttribute("viewer") Viewer viewer, Model model) {
        allow(viewer);
        model.addAttribute("matches", intake.matches().list());
        model.addAttribute("most", Uploads.MOST_BYTES / (1024 * 1024));
        return "imports";
    }

    @PostMapping("/imports")
    String load(
            @ModelAttribute("viewer") Viewer viewer,
            @RequestParam("files") List<MultipartFile> files,
            @RequestParam("mode") String mode,
            Model model)
            throws IOException {
        allow(viewer);
        List<MultipartFile> given =
                files.stream().filter(file -> !file.isEmpty()).toList();
        if (given.isEmpty()) {
            throw new InvalidValueException("files", "", "no file was chosen", "choose one or more files");
        }
        Mode how = mode(mode);
        Uploads.Taken taken = uploads.take(given);
        try {
            List<FileReport> reports = intake.load(taken.files(), LoadSettings.of(how), LoadListener.SILENT);
            LoadNotes.write(audit, viewer.name(), reports);
            office.changed();
            model.addAttribute("reports", ReportRow.of(reports));
            model.addAttribute("checked", how == Mode.CHECK);
            model.addAttribute("refused", uploads.keepRefused(taken, reports));
        } finally {
            uploads.clear(taken);
        }
        return page(viewer, model);
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
