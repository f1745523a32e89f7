package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.CellForm;
import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.match.ColumnMatch;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.propose.ColumnChoice.Pick;
import dev.injectorplanner.imports.propose.Proposal.ColumnNote;
import dev.injectorplanner.imports.propose.Proposal.Question;
import dev.injectorplanner.imports.propose.Proposal.State;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Column;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Puts the proposal for one sheet together: columns, forms of numbers and dates, words, and what is in doubt. */
final class Draft {
    private static final int SAMPLES = 4;

    private final Path file;
    private final SheetSample sample;
    private final ColumnChoice choice;
    private final KnownNames known;
    private final List<ColumnMatch> columns = new ArrayList<>();
    private final List<ColumnNote> notes = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final Set<String> empty = new TreeSet<>();
    private final Set<String> ignored = new TreeSet<>();
    private final Set<String> asks = new HashSet<>();
    private final NumberEvidence numbers = new NumberEvidence();
    private final DateEvidence dates = new DateEvidence();

    Draft(Path file, SheetSample sample, ColumnChoice choice, KnownNames known) {
        this.file = file;
        this.sample = sample;
        this.choice = choice;
        this.known = known;
    }

    Proposal proposal(List<String> sheets) {
        for (ColumnSample column : sample.columns()) {
            add(column);
        }
        if (numbers.anyDoubt()) {
            questions.add(numbers.question());
        }
        if (dates.anyDoubt()) {
            questions.add(dates.question());
        }
        emptyWords();
        questions.sort(Comparator.comparing(Question::sure));
        if (!numbers.sure()) {
            asks.add("numbers");
        }
        if (!dates.sure()) {
            asks.add("dates");
        }
        FileMatch match = new FileMatch(
                FileRefusedException.nameOf(file),
                choice.table().name(),
                columns,
                numbers.sure() ? form() : NumberForm.UNSTATED,
                dates.sure() ? dates.order() : DateOrder.UNSTATED,
                dates.hasShortYears() ? 20 : 0,
                List.copyOf(empty),
                List.copyOf(ignored),
                fixed(),
                asks);
        return new Proposal(
                FileRefusedException.nameOf(file),
                sample.sheet().name(),
                sheets,
                sample.headingLine(),
                sample.rows(),
                sample.top(),
                match,
                notes,
                questions);
    }

    /** A file in which nothing can be read two ways is read the same in either form. */
    private NumberForm form() {
        return numbers.anyDoubt() ? numbers.form() : NumberForm.UNSTATED;
    }

    private void add(ColumnSample column) {
        Pick pick = choice.pick(column);
        List<String> first = column.first(SAMPLES);
        boolean nothing = column.share(CellTests::isEmptyWord) >= 1 || column.isEmpty();
        if (pick == null || (nothing && !pick.column().required())) {
            columns.add(ColumnMatch.unused(column.heading()));
            notes.add(new ColumnNote(column.heading(), first, "", State.LEFT_OUT, ""));
            return;
        }
        ColumnDraft draft = new ColumnDraft(choice.table(), column, pick, known);
        if (pick.column().kind().holdsNumbers() && !column.isEmpty()) {
            numbers.add(column, sample.sheet().name() != null);
            ignored.addAll(draft.signs());
        }
        if (pick.column().kind().holdsDates()) {
            dates.add(column);
        }
        empty.addAll(draft.emptyWords());
        columns.add(draft.match());
        questions.addAll(draft.questions());
        asks.addAll(draft.asks());
        notes.add(new ColumnNote(
                column.heading(),
                first,
                draft.match().column(),
                draft.doubt().isEmpty() ? State.SURE : State.IN_DOUBT,
                draft.doubt().isEmpty() ? draft.note() : draft.doubt()));
    }

    private void emptyWords() {
        Map<String, Long> words = new LinkedHashMap<>();
        for (ColumnSample column : sample.columns()) {
            if (choice.pick(column) != null) {
                column.values().forEach((cell, times) -> {
                    if (empty.contains(cell.toLowerCase(Locale.ROOT))) {
                        words.merge(cell.toLowerCase(Locale.ROOT), times, Long::sum);
                    }
                });
            }
        }
        if (!words.isEmpty()) {
            questions.add(new Question(
                    "empty",
                    "Words that mean empty",
                    "Found where a value should be",
                    words.entrySet().stream()
                            .map(word -> new Proposal.Option(
                                    word.getKey(),
                                    String.format(Locale.ROOT, "%s (%,d times)", word.getKey(), word.getValue()),
                                    true))
                            .toList(),
                    true,
                    true));
        }
    }

    private Map<String, String> fixed() {
        Map<String, String> fixed = new LinkedHashMap<>();
        for (Column<?> column : choice.missing()) {
            boolean origin = column.name().equals("origin");
            fixed.put(column.name(), origin ? "unknown" : FileMatch.ASK);
        }
        return fixed;
    }

    /** Whether a column's numbers were shortened by a spreadsheet. */
    static boolean shortened(Column<?> column, String cell) {
        return column.kind() == (Object) CellKinds.TEXT && CellForm.isShortened(cell);
    }

    static String headingOf(Column<?> column, ColumnUnit unit) {
        return column.base() + "_" + unit.suffix();
    }
}
