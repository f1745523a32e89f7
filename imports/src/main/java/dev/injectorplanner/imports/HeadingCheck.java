package dev.injectorplanner.imports;

import dev.injectorplanner.imports.cell.CellForm;
import dev.injectorplanner.imports.cell.CellNames;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.cell.Heading;
import dev.injectorplanner.imports.cell.NumberForm;
import dev.injectorplanner.imports.file.RawSheet;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.match.MatchedLayout;
import dev.injectorplanner.imports.refusal.FileRefusedException;
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
    <R> Layout layout(Table<R> table, ReadSettings settings, List<String> remarks) {
        if (survey.titleRows() > 0) {
            remarks.add(
                    survey.titleRows() == 1
                            ? "one row above the headings was left out"
                            : survey.titleRows() + " rows above the headings were left out");
        }
        FileMatch kept = survey.match();
        if (kept != null) {
            return matched(kept, table, settings, remarks);
        }
        HeadingMatch<R> match = new HeadingMatch<>(table, survey.headings(), settings.dates());
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
        List<Layout.Place> places = match.places().stream()
                .map(place -> withForm(table, place, settings.numbers()))
                .toList();
        return new Layout(
                FileRefusedException.nameOf(file),
                sheet.name(),
                sheet.delimiter(),
                survey.headings(),
                places,
                List.of());
    }

    /** Numbers like 533.290 are in doubt where others of the column have a comma before their decimals. */
    private Layout.Place withForm(Table<?> table, Layout.Place place, NumberForm said) {
        boolean numeric = table.findColumn(place.column())
                .map(column -> column.kind().holdsNumbers())
                .orElse(false);
        boolean doubt = said == NumberForm.UNSTATED && survey.commaDecimals().contains(place.at());
        return numeric && (said != NumberForm.UNSTATED || doubt) ? place.with(ofThis(CellForm.numbers(said))) : place;
    }

    private CellForm ofThis(CellForm form) {
        return sheet.name() == null ? form.ofText() : form;
    }

    private <R> Layout matched(FileMatch match, Table<R> table, ReadSettings settings, List<String> remarks) {
        if (!match.open().isEmpty()) {
            throw refused(
                    "the match made from " + match.source() + " still asks about " + String.join(", ", match.open()),
                    "answer it in the match, then load again");
        }
        refuseContradiction(match, settings);
        MatchedLayout layout = MatchedLayout.of(match, table, survey.headings());
        List<Layout.Place> places = layout.places().stream()
                .map(place -> place(match, place, settings))
                .map(place -> place.with(ofThis(place.form())))
                .toList();
        refuseUnmatched(table, match, places);
        remarks.add("read as table " + table.name() + " by the match made from " + match.source());
        return new Layout(
                FileRefusedException.nameOf(file),
                sheet.name(),
                sheet.delimiter(),
                survey.headings(),
                places,
                layout.asAbove());
    }

    /** What is said of numbers and dates now must not differ from the match in silence. */
    private void refuseContradiction(FileMatch match, ReadSettings settings) {
        boolean numbers = settings.numbers() != NumberForm.UNSTATED
                && match.numbers() != NumberForm.UNSTATED
                && settings.numbers() != match.numbers();
        boolean dates = settings.dates() != DateOrder.UNSTATED
                && match.dates() != DateOrder.UNSTATED
                && settings.dates() != match.dates();
        if (numbers || dates) {
            throw refused(
                    "the match made from " + match.source() + " reads " + (numbers ? "numbers" : "dates")
                            + " otherwise than was said now",
                    "match the file again, or leave out " + (numbers ? "--numbers" : "--dates"));
        }
    }

    private static Layout.Place place(FileMatch match, MatchedLayout.MatchedColumn column, ReadSettings settings) {
        boolean isFixed = column.at().isEmpty();
        return new Layout.Place(
                column.column().name(),
                column.column().base(),
                column.heading(),
                isFixed ? -1 : column.at().get(0),
                column.unit(),
                match.dates(),
                column.namesAlike()
                        ? column.form()
                                .named(cell ->
                                        settings.nameOf().apply(column.column().name(), cell))
                        : column.form(),
                isFixed ? List.of() : column.at().subList(1, column.at().size()),
                isFixed ? column.fixed() : null);
    }

    private void refuseUnmatched(Table<?> table, FileMatch match, List<Layout.Place> places) {
        String missing = table.columns().stream()
                .filter(Column::required)
                .map(Column::name)
                .filter(name ->
                        places.stream().noneMatch(place -> place.column().equals(name)))
                .collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            throw refused(
                    "the match made from " + match.source() + " has no column for " + missing + " of table "
                            + table.name(),
                    "give a heading that column, or a fixed value for all rows");
        }
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
