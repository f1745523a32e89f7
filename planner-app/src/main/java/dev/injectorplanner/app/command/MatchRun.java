package dev.injectorplanner.app.command;

import dev.injectorplanner.imports.bus.BusLog;
import dev.injectorplanner.imports.match.MatchFile;
import dev.injectorplanner.imports.propose.Preview;
import dev.injectorplanner.imports.propose.Proposal;
import dev.injectorplanner.imports.propose.Proposal.State;
import dev.injectorplanner.imports.propose.Proposer;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Proposes a match for each of some files, writes it beside the file, and reports what is in doubt. */
final class MatchRun {
    private static final int SHOWN = 20;

    private final PrintWriter out;
    private final Proposer proposer;
    private final boolean again;
    private final List<Map<String, Object>> files = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();
    private String folder = "";

    MatchRun(PrintWriter out, Proposer proposer, boolean again) {
        this.out = out;
        this.proposer = proposer;
        this.again = again;
    }

    /** @return whether a file was refused */
    boolean run(List<Path> given, Proposer.Said said) {
        boolean refused = false;
        for (Path file : given) {
            try {
                propose(file, said);
            } catch (FileRefusedException e) {
                lines.add(String.valueOf(e.getMessage()));
                files.add(Map.of("file", file.toString(), "refusal", String.valueOf(e.getMessage())));
                refused = true;
            }
        }
        return refused;
    }

    private void propose(Path file, Proposer.Said said) {
        String name = FileRefusedException.nameOf(file);
        if (BusLog.isLog(file) || name.endsWith(".refused.csv")) {
            lines.add(name + ": needs no match.");
            return;
        }
        Path beside = MatchFile.beside(file);
        if (Files.exists(beside) && !again) {
            lines.add(name + ": " + FileRefusedException.nameOf(beside) + " is there already; --again replaces it.");
            return;
        }
        Proposal proposal = proposer.propose(file, said);
        Preview preview = proposer.preview(file, proposal.match(), SHOWN);
        MatchFile.write(proposal.match(), proposal.remarks(), beside);
        Path parent = file.getParent();
        folder = MatchFile.inCommand(parent == null ? "." : parent.toString());
        report(name, beside, proposal, preview);
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("file", file.toString());
        json.put("match", beside.toString());
        json.put("table", proposal.match().table());
        json.put("headingRow", proposal.headingLine());
        json.put("rows", proposal.rows());
        json.put("open", proposal.match().open());
        json.put("columns", proposal.columns());
        json.put("questions", proposal.questions());
        json.put("preview", preview);
        files.add(json);
    }

    private void report(String name, Path beside, Proposal proposal, Preview preview) {
        long used = proposal.columns().stream()
                .filter(column -> column.state() != State.LEFT_OUT)
                .count();
        lines.add(String.format(
                Locale.ROOT,
                "%s: table %s, headings in row %d, %,d rows, %d of %d columns used%s",
                name,
                proposal.match().table(),
                proposal.headingLine(),
                proposal.rows(),
                used,
                proposal.columns().size(),
                inWords(preview, !proposal.match().open().isEmpty())));
        proposal.columns().stream()
                .filter(column -> column.state() == State.IN_DOUBT)
                .forEach(column -> lines.add("  in doubt: \"" + column.heading() + "\" as "
                        + (column.column().isEmpty() ? "nothing" : column.column()) + ": " + column.note()));
        proposal.questions().stream()
                .filter(question -> !question.sure())
                .forEach(question -> lines.add("  in doubt: " + question.title() + ": " + question.evidence()));
        List<String> open = proposal.match().open();
        lines.add(
                open.isEmpty()
                        ? "  Nothing to answer. Look through " + FileRefusedException.nameOf(beside)
                                + " before you load it."
                        : "  Answer in " + FileRefusedException.nameOf(beside) + ": " + String.join(", ", open));
    }

    /** The folder in which matches were written, as a command line takes it; empty where none was. */
    String folder() {
        return folder;
    }

    private static String inWords(Preview preview, boolean asks) {
        if (!preview.refusal().isEmpty()) {
            return "";
        }
        String read = String.format(Locale.ROOT, "; %,d rows can be read", preview.good());
        return preview.refused() == 0
                ? read
                : read
                        + String.format(
                                Locale.ROOT,
                                asks ? ", %,d not before it is answered" : ", %,d cannot",
                                preview.refused());
    }

    void print() {
        lines.forEach(out::println);
    }

    void printJson() {
        Json.print(out, Map.of("files", files));
    }
}
