package dev.injectorplanner.app.web.imports;

import dev.injectorplanner.imports.match.ColumnMatch;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.propose.Preview;
import dev.injectorplanner.imports.propose.Proposal;
import dev.injectorplanner.imports.propose.Proposal.ColumnNote;
import dev.injectorplanner.imports.propose.Proposal.Option;
import dev.injectorplanner.imports.propose.Proposal.Question;
import dev.injectorplanner.imports.propose.Proposal.State;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * A match as its page shows it.
 *
 * @param key where the file is kept
 * @param doubts columns and questions that are still in doubt
 * @param tables names of all tables
 * @param open what must be answered before the file can be loaded
 */
record MatchView(
        String key,
        String file,
        long rows,
        int used,
        int columns,
        int doubts,
        long headingLine,
        String sheet,
        List<String> sheets,
        String table,
        List<String> tables,
        List<TopLine> top,
        List<ColumnLine> lines,
        List<QuestionLine> questions,
        List<FixedLine> fixed,
        Preview preview,
        List<String> open) {
    private static final int CELLS = 12;

    /** One of the first rows of the file. */
    record TopLine(long line, List<String> cells, boolean heading, boolean above) {}

    /** One heading: what it means, and what its words mean. */
    record ColumnLine(
            String name,
            String heading,
            String samples,
            List<Choice> means,
            String mark,
            String state,
            String note,
            List<WordLine> words) {}

    /** A choice of a list. */
    record Choice(String value, String label, boolean chosen) {}

    /** A word of a column that means another. */
    record WordLine(String name, String cell, String means) {}

    /** A question. */
    record QuestionLine(
            String name,
            String number,
            String title,
            String evidence,
            boolean several,
            boolean sure,
            List<Option> options) {}

    /** A column without a heading. */
    record FixedLine(String name, String column, String description, String value) {}

    static MatchView of(String key, Proposal proposal, FileMatch match, Preview preview) {
        Table<?> table = Tables.get(match.table());
        List<ColumnLine> lines = new ArrayList<>();
        for (int i = 0; i < match.columns().size(); i++) {
            lines.add(line(i, proposal.columns().get(i), match.columns().get(i), table));
        }
        lines.sort((a, b) -> Boolean.compare(a.mark().equals("decide"), b.mark().equals("decide")) * -1);
        List<String> open = match.open();
        return new MatchView(
                key,
                proposal.file(),
                proposal.rows(),
                (int) match.columns().stream().filter(ColumnMatch::used).count(),
                match.columns().size(),
                proposal.doubts(),
                proposal.headingLine(),
                proposal.sheet() == null ? "" : proposal.sheet(),
                proposal.sheets(),
                match.table(),
                Tables.ALL.stream().map(Table::name).sorted().toList(),
                top(proposal),
                lines,
                questions(proposal, match),
                fixed(match, table),
                preview,
                open);
    }

    private static List<TopLine> top(Proposal proposal) {
        return proposal.top().stream()
                .map(row -> new TopLine(
                        row.line(),
                        row.cells().subList(0, Math.min(CELLS, row.cells().size())),
                        row.line() == proposal.headingLine(),
                        row.line() < proposal.headingLine()))
                .toList();
    }

    private static ColumnLine line(int at, ColumnNote note, ColumnMatch column, Table<?> table) {
        List<Choice> means = new ArrayList<>();
        means.add(new Choice("", "Not used", !column.used()));
        if (column.column().equals(FileMatch.ASK)) {
            means.add(new Choice(FileMatch.ASK, "Choose", true));
        }
        for (Column<?> each : table.columns()) {
            for (String heading : each.headings()) {
                means.add(new Choice(heading, heading.replace('_', ' '), heading.equals(column.column())));
            }
        }
        boolean asked = column.column().equals(FileMatch.ASK) || column.values().containsValue(FileMatch.ASK);
        boolean doubt =
                asked || (note.state() == State.IN_DOUBT && column.column().equals(note.column()));
        List<WordLine> words = new ArrayList<>();
        new TreeMap<>(column.values())
                .forEach((cell, word) ->
                        words.add(new WordLine("v" + at + "." + cell, cell, word.equals(FileMatch.ASK) ? "" : word)));
        return new ColumnLine(
                "m" + at,
                column.heading(),
                String.join(" | ", note.samples()),
                means,
                doubt ? "decide" : column.used() ? "done" : "leave",
                doubt ? "in doubt" : column.used() ? "sure" : "left out",
                column.used() ? note.note() : "",
                words.size() > 12 ? List.of() : words);
    }

    private static List<QuestionLine> questions(Proposal proposal, FileMatch match) {
        List<QuestionLine> lines = new ArrayList<>();
        for (Question question : proposal.questions()) {
            List<Option> options = question.options().stream()
                    .map(option -> new Option(option.value(), option.label(), chosen(question, option, match)))
                    .toList();
            lines.add(new QuestionLine(
                    "q." + question.id(),
                    "C" + (lines.size() + 1),
                    question.title(),
                    question.evidence(),
                    question.several(),
                    question.sure() || options.stream().anyMatch(Option::chosen),
                    options));
        }
        return lines;
    }

    private static boolean chosen(Question question, Option option, FileMatch match) {
        return switch (question.id()) {
            case "numbers" -> match.numbers().example().equals(option.value());
            case "dates" ->
                !match.asks().contains("dates")
                        && option.value()
                                .equals(
                                        match.dates() == dev.injectorplanner.imports.cell.DateOrder.DAY_FIRST
                                                ? "dmy"
                                                : "mdy");
            case "empty" -> match.emptyWords().contains(option.value());
            default -> chosenOfColumn(question, option, match);
        };
    }

    private static boolean chosenOfColumn(Question question, Option option, FileMatch match) {
        String heading = question.id().substring(question.id().indexOf(':') + 1);
        ColumnMatch column = match.columns().stream()
                .filter(each -> each.heading().equals(heading))
                .findFirst()
                .orElseThrow();
        return switch (option.value()) {
            case "empty" -> column.dropsShortened();
            case "above" -> column.asAbove();
            case "similar" -> column.namesAlike();
            case "exact" -> !column.namesAlike();
            case "shift" -> "1".equals(column.values().get("0"));
            case "leave" ->
                !column.values().containsValue(FileMatch.ASK)
                        && !"1".equals(column.values().get("0"));
            default -> !column.dropsShortened() && !column.asAbove();
        };
    }

    private static List<FixedLine> fixed(FileMatch match, Table<?> table) {
        Map<String, String> sorted = new TreeMap<>(match.fixed());
        return sorted.entrySet().stream()
                .map(each -> new FixedLine(
                        "fixed." + each.getKey(),
                        each.getKey().replace('_', ' '),
                        table.findColumn(each.getKey()).map(Column::description).orElse(""),
                        each.getValue().equals(FileMatch.ASK) ? "" : each.getValue()))
                .toList();
    }

    /** How many rows can be applied, in words. */
    public String applies() {
        return String.format(Locale.ROOT, "%,d", preview.good());
    }
}
