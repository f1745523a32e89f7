package dev.injectorplanner.imports;

import dev.injectorplanner.imports.cell.CellNames;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.Heading;
import dev.injectorplanner.imports.file.FileRefusedException;
import dev.injectorplanner.imports.file.RawSheet;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Refuses a file whose headings do not make a table, in one sentence; says which columns are left out. */
final class HeadingCheck {
    private final Path file;
    private final RawSheet sheet;
    private final Survey survey;

    HeadingCheck(Path file, RawSheet sheet, Survey survey) {
        this.file = file;
        this.sheet = sheet;
        this.survey = survey;
    }

    /** @throws FileRefusedException if a column is missing, is a duplicate, has no unit, or a value stands under none */
    <R> Layout layout(Table<R> table, DateOrder dates, List<String> remarks) {
        HeadingMatch<R> match = new HeadingMatch<>(table, survey.headings(), dates);
        refuseWithoutUnit(table, match);
        refuseTwice(match);
        refuseMissing(table, match);
        if (survey.strayLine() > 0) {
            throw refused(
                    "the value in " + at(survey.strayAt(), survey.strayLine()) + " is under a blank heading",
                    "give the column a heading, or clear it");
        }
        if (survey.rows() == 0) {
            throw refused("has headings but no rows", "export it again, with its rows");
        }
        for (int at : match.unknown()) {
            String heading = survey.headings().get(at);
            String near = Heading.nearest(heading, match.free());
            remarks.add("column \"" + heading.strip() + "\" is not known in table " + table.name() + " and was ignored"
                    + (near.isEmpty() ? "" : " (did you mean " + near + "?)"));
        }
        return new Layout(
                FileRefusedException.nameOf(file), sheet.name(), sheet.delimiter(), survey.headings(), match.places());
    }

    /** A text file whose heading line has one cell only is no table: every table has two columns at least. */
    void refuseOneColumn() {
        long filled = survey.headings().stream().filter(h -> !h.isBlank()).count();
        if (filled == 1) {
            throw refused(
                    "has only one column",
                    sheet.name() == null
                            ? "separate the cells by commas, semicolons or tabs"
                            : "put the headings in the first row, one per cell");
        }
    }

    private void refuseWithoutUnit(Table<?> table, HeadingMatch<?> match) {
        for (int at : match.withoutUnit()) {
            String heading = survey.headings().get(at).strip();
            String names = table.findColumn(Heading.plain(heading))
                    .map(c -> String.join(" or ", c.headings()))
                    .orElseGet(() -> heading + " with its unit");
            throw refused(
                    "heading \"" + heading + "\" in " + at(at, survey.headingLine()) + " does not name its unit",
                    "name it " + names);
        }
    }

    private void refuseTwice(HeadingMatch<?> match) {
        for (HeadingMatch.Twice twice : match.twice()) {
            throw refused(
                    "column " + twice.column() + " is a duplicate, in " + at(twice.first(), survey.headingLine())
                            + " and " + at(twice.second(), survey.headingLine()),
                    "keep one of the two, and rename or remove the other");
        }
    }

    private <R> void refuseMissing(Table<R> table, HeadingMatch<R> match) {
        List<Column<R>> missing = match.missing();
        if (missing.isEmpty()) {
            return;
        }
        String names = missing.stream().map(Column::name).collect(Collectors.joining(", "));
        Table<?> other = TableFinder.byHeadings(survey.headings());
        if (other != null) {
            throw refused(
                    "is read as table " + table.name() + " but has no column " + names,
                    "add it, or load it as table " + other.name() + ", which its headings match");
        }
        List<String> unknown = match.unknown().stream()
                .map(at -> survey.headings().get(at).strip())
                .toList();
        String nearest = missing.stream()
                .map(column -> nearest(column, unknown))
                .filter(hint -> !hint.isEmpty())
                .collect(Collectors.joining(", "));
        throw refused(
                "is read as table " + table.name() + " but has no column " + names
                        + (nearest.isEmpty() ? "" : "; nearest: " + nearest),
                nearest.isEmpty() ? "add the column, or rename its heading" : "rename the heading, or add the column");
    }

    private static String nearest(Column<?> column, List<String> unknown) {
        String near = Heading.nearest(column.name(), unknown);
        return near.isEmpty() ? "" : "\"" + near + "\" for " + column.name();
    }

    private String at(int at, long line) {
        return sheet.name() == null ? "cell " + (at + 1) + " of line " + line : CellNames.column(at) + line;
    }

    FileRefusedException refused(String reason, String fix) {
        String where = sheet.name() == null ? "" : "sheet \"" + sheet.name() + "\": ";
        return new FileRefusedException(file, where + reason, fix);
    }
}
