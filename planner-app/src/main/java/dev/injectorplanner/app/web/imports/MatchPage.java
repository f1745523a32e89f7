package dev.injectorplanner.app.web.imports;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.Intake;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.intake.StoredNames;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.people.Viewer;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.office.NotHereException;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.propose.Answers;
import dev.injectorplanner.imports.propose.Proposal;
import dev.injectorplanner.imports.propose.Proposer;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** A foreign file is matched once: headings, units, forms of numbers and dates, words; then loaded. */
@Controller
public class MatchPage {
    private static final int SHOWN = 20;

    private final Store store;
    private final Intake intake;
    private final AuditTrail audit;
    private final ImportsPage imports;
    private final MatchFiles files = new MatchFiles();

    MatchPage(Application application, ImportsPage imports) {
        this.imports = imports;
        this.store = application.store();
        this.intake = application.intake();
        this.audit = application.audit();
    }

    @PostMapping("/imports/match")
    String take(@ModelAttribute("viewer") Viewer viewer, @RequestParam("file") MultipartFile file) throws IOException {
        ImportsPage.allow(viewer);
        if (file.isEmpty()) {
            throw new InvalidValueException("file", "", "no file was chosen", "choose a file");
        }
        return "redirect:/imports/match/" + files.keep(file, viewer.name());
    }

    @GetMapping("/imports/match/{key}")
    String page(@ModelAttribute("viewer") Viewer viewer, @PathVariable("key") String key, Model model) {
        ImportsPage.allow(viewer);
        return shown(key, viewer, Map.of(), model);
    }

    @PostMapping("/imports/match/{key}")
    String answer(
            @ModelAttribute("viewer") Viewer viewer,
            @PathVariable("key") String key,
            @RequestParam MultiValueMap<String, String> form,
            Model model,
            HttpServletResponse response) {
        ImportsPage.allow(viewer);
        boolean sameAsBefore = first(form, "table").equals(first(form, "was.table"))
                && first(form, "sheet").equals(first(form, "was.sheet"))
                && first(form, "heading").equals(first(form, "was.heading"));
        if (!sameAsBefore || !first(form, "do").equals("apply")) {
            return shown(key, viewer, form, model);
        }
        Path file = file(key, viewer);
        Proposal proposal = propose(file, form, new Proposer(StoredNames.read(store)));
        FileMatch match = Answers.apply(proposal, form);
        if (!match.open().isEmpty()) {
            return shown(key, viewer, form, model);
        }
        files.hold(key);
        return imports.started(viewer, listener -> load(key, file, match, viewer, listener), model, response);
    }

    private LoadRuns.Outcome load(String key, Path file, FileMatch match, Viewer viewer, LoadListener listener) {
        try {
            LoadSettings settings = LoadSettings.of(Mode.GOOD_ROWS).withMatches(List.of(match));
            List<FileReport> reports = intake.load(List.of(file), settings, listener);
            if (reports.stream().anyMatch(FileReport::applied)) {
                intake.matches().save(match, Instant.now(), viewer.name());
                audit.record(viewer.name(), "match a file", match.source(), "", "read as " + match.table());
            }
            return new LoadRuns.Outcome(
                    reports, false, imports.uploads().keepRefused(MatchFiles.taken(file), reports), match.source());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot keep the refused rows", e);
        } finally {
            files.release(key);
        }
    }

    private String shown(String key, Viewer viewer, Map<String, List<String>> form, Model model) {
        Path file = file(key, viewer);
        Proposer proposer = new Proposer(StoredNames.read(store));
        Proposal proposal = propose(file, form, proposer);
        boolean answered = form.containsKey("asked")
                && proposal.match().table().equals(first(form, "was.table"))
                && String.valueOf(proposal.headingLine()).equals(first(form, "was.heading"))
                && (proposal.sheet() == null || proposal.sheet().equals(first(form, "was.sheet")));
        FileMatch match = answered ? Answers.apply(proposal, form) : proposal.match();
        model.addAttribute("match", MatchView.of(key, proposal, match, proposer.preview(file, match, SHOWN)));
        return "match";
    }

    private static Proposal propose(Path file, Map<String, List<String>> form, Proposer proposer) {
        String table = first(form, "table");
        Table<?> said = table.isEmpty() ? null : Tables.get(table);
        String sheet = first(form, "sheet");
        return proposer.propose(file, new Proposer.Said(said, sheet, line(form)));
    }

    private static long line(Map<String, List<String>> form) {
        String text = first(form, "heading").strip();
        if (!text.isEmpty() && !text.matches("[0-9]{1,7}")) {
            throw new InvalidValueException("heading row", text, "is not a row", "enter its number, such as 3");
        }
        return text.isEmpty() ? 0 : Long.parseLong(text);
    }

    private static String first(Map<String, List<String>> form, String name) {
        @Nullable List<String> values = form.get(name);
        return values == null || values.isEmpty() ? "" : values.get(0);
    }

    private Path file(String key, Viewer viewer) {
        return files.find(key, viewer.name())
                .orElseThrow(
                        () -> new NotHereException("That file is no longer kept. Fix: choose it again under Imports."));
    }

    /** Forgets how files of a source are read. */
    @PostMapping("/imports/match/forget")
    String forget(@ModelAttribute("viewer") Viewer viewer, @RequestParam("source") String source) {
        ImportsPage.allow(viewer);
        if (intake.matches().forget(source)) {
            audit.record(viewer.name(), "forget a match", source, "kept", "asked about again");
        }
        return "redirect:/imports";
    }
}
