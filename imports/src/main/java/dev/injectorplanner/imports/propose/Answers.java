package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.match.ColumnMatch;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.propose.Proposal.Question;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A proposal with a person's answers: {@code m0} what the first heading means, {@code v0.word} what a cell of it means,
 * {@code fixed.column} a value for all rows, {@code q.id} the answer to a question.
 */
public final class Answers {
    private final Proposal proposal;
    private final Map<String, List<String>> given;

    private Answers(Proposal proposal, Map<String, List<String>> given) {
        this.proposal = proposal;
        this.given = given;
    }

    /** The match that the answers make of the proposal; what was not answered stays as proposed. */
    public static FileMatch apply(Proposal proposal, Map<String, List<String>> given) {
        return new Answers(proposal, given).match();
    }

    private FileMatch match() {
        FileMatch proposed = proposal.match();
        List<ColumnMatch> columns = new ArrayList<>();
        for (int i = 0; i < proposed.columns().size(); i++) {
            columns.add(column(i, proposed.columns().get(i)));
        }
        Set<String> asks = new HashSet<>(proposed.asks());
        String numbers = answer("q.numbers");
        String dates = answer("q.dates");
        if (numbers != null) {
            asks.remove("numbers");
        }
        if (dates != null) {
            asks.remove("dates");
        }
        answered(asks, columns);
        Map<String, String> fixed = new LinkedHashMap<>(proposed.fixed());
        fixed.keySet()
                .removeIf(column ->
                        columns.stream().anyMatch(each -> each.column().equals(column)));
        fixed.replaceAll((column, value) -> {
            String said = answer("fixed." + column);
            return said == null || said.isBlank() ? value : said.strip();
        });
        return new FileMatch(
                proposed.source(),
                proposed.table(),
                columns,
                numbers == null ? proposed.numbers() : form(numbers),
                dates == null ? proposed.dates() : dates.equals("dmy") ? DateOrder.DAY_FIRST : DateOrder.MONTH_FIRST,
                proposed.century(),
                emptyWords(proposed),
                proposed.ignored(),
                fixed,
                asks);
    }

    /** Takes away what columns ask and the answers say. */
    private void answered(Set<String> asks, List<ColumnMatch> columns) {
        for (int i = 0; i < columns.size(); i++) {
            String heading = columns.get(i).heading();
            boolean meant = answer("m" + i) != null;
            boolean used = columns.get(i).used();
            asks.removeIf(ask -> ask.equals("column:" + heading) && meant
                    || ask.endsWith(":" + heading) && (answer("q." + ask) != null || !used));
        }
    }

    private static NumberForm form(String said) {
        return said.equals(NumberForm.COMMA.example()) ? NumberForm.COMMA : NumberForm.POINT;
    }

    /** Of a question with several answers none may be right, so an answer of the form itself says that it was asked. */
    private List<String> emptyWords(FileMatch proposed) {
        boolean asked =
                proposal.questions().stream().anyMatch(question -> question.id().equals("empty"));
        if (!asked || answer("asked") == null) {
            return proposed.emptyWords();
        }
        return List.copyOf(new TreeSet<>(given.getOrDefault("q.empty", List.of())));
    }

    private ColumnMatch column(int at, ColumnMatch proposed) {
        String meaning = answer("m" + at);
        ColumnMatch column = meaning == null ? proposed : proposed.to(meaning);
        Map<String, String> values = new LinkedHashMap<>(column.values());
        values.replaceAll((cell, word) -> {
            String said = answer("v" + at + "." + cell);
            return said == null || said.isBlank() ? word : said.strip();
        });
        column = column.with(values);
        for (Question question : proposal.questions()) {
            String answer = answer("q." + question.id());
            if (answer != null && question.id().endsWith(":" + proposed.heading())) {
                column = answered(column, question.id(), answer);
            }
        }
        return column;
    }

    private static ColumnMatch answered(ColumnMatch column, String id, String answer) {
        if (id.startsWith("shortened:")) {
            return column.withDropsShortened(answer.equals("empty"));
        }
        if (id.startsWith("names:")) {
            return column.withNamesAlike(answer.equals("similar"));
        }
        if (id.startsWith("above:")) {
            return column.withAsAbove(answer.equals("above"));
        }
        if (id.startsWith("zero:")) {
            Map<String, String> values = new LinkedHashMap<>();
            for (int cylinder = 0; answer.equals("shift") && cylinder <= 11; cylinder++) {
                values.put(String.valueOf(cylinder), String.valueOf(cylinder + 1));
            }
            return column.with(values);
        }
        return column;
    }

    private @Nullable String answer(String name) {
        List<String> answers = given.get(name);
        return answers == null || answers.isEmpty() ? null : answers.get(0);
    }
}
