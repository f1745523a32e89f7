package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.propose.Proposal.Option;
import dev.injectorplanner.imports.propose.Proposal.Question;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the dates of a file say of the order of day and month. */
final class DateEvidence {
    private static final Pattern DATE =
            Pattern.compile("([0-9]{1,2})([/.-])([0-9]{1,2})\\2([0-9]{4}|[0-9]{2})(?![0-9]).*");

    private long dayFirst;
    private long monthFirst;
    private long twoWays;
    private long shortYears;
    private String example = "";

    void add(ColumnSample sample) {
        sample.values().forEach(this::add);
    }

    private void add(String cell, long times) {
        Matcher date = DATE.matcher(cell);
        if (!date.matches()) {
            return;
        }
        int one = Integer.parseInt(date.group(1));
        int two = Integer.parseInt(date.group(3));
        shortYears += date.group(4).length() == 2 ? times : 0;
        if (one > 12 && two <= 12) {
            dayFirst += times;
        } else if (two > 12 && one <= 12) {
            monthFirst += times;
        } else if (one != two && !date.group(2).equals(".")) {
            twoWays += times;
            example = example.isEmpty() ? date.group(1) + date.group(2) + date.group(3) : example;
        }
    }

    boolean anyDoubt() {
        return twoWays > 0;
    }

    boolean hasShortYears() {
        return shortYears > 0;
    }

    DateOrder order() {
        if (dayFirst > 0 && monthFirst > 0) {
            return DateOrder.UNSTATED;
        }
        return dayFirst > 0 ? DateOrder.DAY_FIRST : monthFirst > 0 ? DateOrder.MONTH_FIRST : DateOrder.UNSTATED;
    }

    boolean sure() {
        return !anyDoubt() || order() != DateOrder.UNSTATED;
    }

    Question question() {
        String evidence = String.format(
                Locale.ROOT,
                "%,d dates like %s can be read two ways; %,d have a first part above 12, %,d a second part above 12",
                twoWays,
                example,
                dayFirst,
                monthFirst);
        return new Question(
                "dates",
                "Dates",
                evidence,
                List.of(
                        new Option("dmy", "Day, month, year", order() == DateOrder.DAY_FIRST),
                        new Option("mdy", "Month, day, year", order() == DateOrder.MONTH_FIRST)),
                false,
                sure());
    }
}
