package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.CellForm;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.propose.Proposal.Option;
import dev.injectorplanner.imports.propose.Proposal.Question;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What the numbers of a file say of its decimal sign. */
final class NumberEvidence {
    private static final Pattern POINT = Pattern.compile(
            "[+-]?[0-9]{1,3}(,[0-9]{3})+\\.[0-9]+|[+-]?[0-9]{1,3}(,[0-9]{3}){2,}|[+-]?[0-9]*\\.([0-9]{1,2}|[0-9]{4,})|[+-]?0?\\.[0-9]+");
    private static final Pattern COMMA = Pattern.compile(
            "[+-]?[0-9]{1,3}(\\.[0-9]{3})+,[0-9]+|[+-]?[0-9]{1,3}(\\.[0-9]{3}){2,}|[+-]?[0-9]*,([0-9]{1,2}|[0-9]{4,})|[+-]?0?,[0-9]+");

    private static final Pattern TYPED = Pattern.compile("[+-]?[0-9]*\\.[0-9]+");

    private long point;
    private long comma;
    private long doubtfulPoint;
    private long doubtfulComma;
    private boolean sure = true;
    private String example = "";
    private String pointExample = "";
    private String commaExample = "";

    /** @param ofWorkbook whether numbers such as 12.5 may be held as numbers: those say nothing of how texts are written */
    void add(ColumnSample sample, boolean ofWorkbook) {
        long pointBefore = point;
        long commaBefore = comma;
        long doubtfulBefore = doubtfulPoint;
        long doubtfulCommaBefore = doubtfulComma;
        sample.values().forEach((cell, times) -> {
            String number = CellTests.bare(cell);
            if (ofWorkbook && TYPED.matcher(cell).matches() && !CellForm.readsTwoWays(cell)) {
                return;
            }
            if (CellForm.readsTwoWays(number)) {
                example = example.isEmpty() ? number : example;
                if (number.indexOf('.') >= 0) {
                    doubtfulPoint += times;
                } else {
                    doubtfulComma += times;
                }
            } else if (POINT.matcher(number).matches()) {
                point += times;
                pointExample = pointExample.isEmpty() ? number : pointExample;
            } else if (COMMA.matcher(number).matches()) {
                comma += times;
                commaExample = commaExample.isEmpty() ? number : commaExample;
            }
        });
        boolean ofPoint = point > pointBefore && comma == commaBefore && doubtfulPoint == doubtfulBefore;
        boolean noDoubt = doubtfulPoint == doubtfulBefore && doubtfulComma == doubtfulCommaBefore;
        sure &= noDoubt || ofPoint;
    }

    boolean anyDoubt() {
        return doubtfulPoint + doubtfulComma > 0;
    }

    /** What the file says without doubt; unstated where it says nothing or both. */
    NumberForm form() {
        boolean saysPoint = point > 0 && comma == 0;
        boolean saysComma = comma > 0 && point == 0;
        return saysPoint ? NumberForm.POINT : saysComma ? NumberForm.COMMA : NumberForm.UNSTATED;
    }

    /**
     * Whether the doubtful numbers can be read as the rest of their own column says. A dot among decimal commas may be
     * either: 533.290 beside 533.120,5 comes from two systems as like as not.
     */
    boolean sure() {
        return !anyDoubt() || (sure && form() == NumberForm.POINT);
    }

    Question question() {
        NumberForm form = form();
        String digits = example.replaceAll("[.,]", "");
        String decimals = example.replace(',', '.');
        boolean hasComma = example.indexOf(',') >= 0;
        String pointMeans = hasComma ? digits : decimals;
        String commaMeans = hasComma ? decimals : digits;
        String evidence = String.format(
                Locale.ROOT,
                "%,d values like %s can be read two ways%s%s",
                doubtfulPoint + doubtfulComma,
                example,
                pointExample.isEmpty()
                        ? ""
                        : String.format(Locale.ROOT, "; %,d like %s have a decimal point", point, pointExample),
                commaExample.isEmpty()
                        ? ""
                        : String.format(Locale.ROOT, "; %,d like %s have a decimal comma", comma, commaExample));
        return new Question(
                "numbers",
                "Numbers",
                evidence,
                List.of(
                        new Option(
                                NumberForm.POINT.example(),
                                example + " is " + pointMeans,
                                form == NumberForm.POINT && sure()),
                        new Option(
                                NumberForm.COMMA.example(),
                                example + " is " + commaMeans,
                                form == NumberForm.COMMA && sure())),
                false,
                sure());
    }
}
