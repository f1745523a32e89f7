package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.match.FileMatch;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How a foreign file could be read: a match for a person to confirm, and what is in doubt.
 *
 * @param file name of the file
 * @param sheet the sheet, or null for a text file
 * @param sheets all sheets with rows, for a choice
 * @param headingLine line of the headings, as a person counts
 * @param rows rows below the headings
 * @param top the first rows of the file as they are, the headings among them
 * @param match the match as proposed; what nobody can tell says {@link FileMatch#ASK}
 * @param columns what was thought of each heading, in the order of the file
 * @param questions how values are read, the doubtful ones first
 */
public record Proposal(
        String file,
        @Nullable String sheet,
        List<String> sheets,
        long headingLine,
        long rows,
        List<TopRow> top,
        FileMatch match,
        List<ColumnNote> columns,
        List<Question> questions) {
    /** One of the first rows. */
    public record TopRow(long line, List<String> cells) {}

    /** How sure a proposal is. */
    public enum State {
        SURE,
        IN_DOUBT,
        LEFT_OUT
    }

    /**
     * What was thought of a heading.
     *
     * @param samples its first values
     * @param column heading of the table's column, or empty
     * @param note why it is in doubt, or what is to be known
     */
    public record ColumnNote(String heading, List<String> samples, String column, State state, String note) {}

    /**
     * A question about the values.
     *
     * @param id what it is about: numbers, dates, empty, or a kind and a heading
     * @param title what is asked
     * @param evidence what the file says
     * @param options the answers
     * @param several whether more than one answer may be chosen
     * @param sure whether the file leaves no doubt
     */
    public record Question(
            String id, String title, String evidence, List<Option> options, boolean several, boolean sure) {}

    /**
     * An answer.
     *
     * @param value what it is in the match
     * @param label what a person reads
     * @param chosen whether it is proposed
     */
    public record Option(String value, String label, boolean chosen) {}

    /** How many columns and questions are in doubt. */
    public int doubts() {
        return (int) (columns.stream()
                        .filter(column -> column.state() == State.IN_DOUBT)
                        .count()
                + questions.stream().filter(question -> !question.sure()).count());
    }

    /** What a person should look at in the match's file, by heading or key. */
    public Map<String, String> remarks() {
        Map<String, String> remarks = new LinkedHashMap<>();
        for (ColumnNote column : columns) {
            String doubt = column.state() == State.IN_DOUBT ? "in doubt: " : "";
            String values = column.samples().isEmpty() ? "no values" : String.join(" | ", column.samples());
            remarks.put(column.heading(), doubt + (column.note().isEmpty() ? values : column.note() + "; " + values));
        }
        for (Question question : questions) {
            if (question.id().equals("numbers") || question.id().equals("dates")) {
                remarks.put(question.id(), (question.sure() ? "" : "in doubt: ") + question.evidence());
            }
        }
        return remarks;
    }
}
