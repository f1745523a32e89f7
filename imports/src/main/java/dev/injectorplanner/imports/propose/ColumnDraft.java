package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.cell.CellKinds;
import dev.injectorplanner.imports.cell.ColumnUnit;
import dev.injectorplanner.imports.cell.CylinderCells;
import dev.injectorplanner.imports.cell.DateOrder;
import dev.injectorplanner.imports.match.ColumnMatch;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.propose.ColumnChoice.Pick;
import dev.injectorplanner.imports.propose.Proposal.Option;
import dev.injectorplanner.imports.propose.Proposal.Question;
import dev.injectorplanner.imports.table.Column;
import dev.injectorplanner.imports.table.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What is proposed for one heading: its unit, its words, and what a person should decide. */
final class ColumnDraft {
    private static final int MOST_WORDS = 40; // of a column with a fixed list of words
    private static final int MOST_SAID = 4;

    private final ColumnSample sample;
    private final Column<?> column;
    private final List<Question> questions = new ArrayList<>();
    private final Map<String, String> values = new LinkedHashMap<>();
    private String heading;
    private String doubt = "";
    private String note = "";
    private final Set<String> asks = new TreeSet<>();
    private boolean asAbove;
    private boolean dropsShortened;
    private boolean namesAlike;
    private int unknown;

    ColumnDraft(Table<?> table, ColumnSample sample, Pick pick, KnownNames known) {
        this.sample = sample;
        this.column = pick.column();
        this.heading = column.name();
        if (pick.byValues()) {
            doubt = "matched by its values, not its heading";
            asks.add("column:" + sample.heading());
        }
        unit();
        words(known);
        cylinderZero();
        shortened();
        blanks(table);
        unread();
    }

    private void unit() {
        if (column.units().isEmpty()) {
            return;
        }
        Set<ColumnUnit> inCells = new TreeSet<>();
        sample.values().keySet().forEach(cell -> {
            ColumnUnit unit = ColumnUnit.behind(cell);
            if (unit != null) {
                inCells.add(unit);
            }
        });
        ColumnUnit said = TradeWords.unit(sample.heading(), column);
        if (said != null) {
            inCells.add(said);
        }
        if (inCells.size() > 1) {
            heading = FileMatch.ASK;
            doubt = "has two units, " + inCells.stream().map(ColumnUnit::suffix).collect(Collectors.joining(" and "));
            return;
        }
        if (said == null) {
            said = column.units().stream()
                    .filter(unit -> sample.share(cell -> hasUnit(cell, unit)) > 0.5)
                    .findFirst()
                    .orElse(null);
        }
        heading = said == null ? FileMatch.ASK : Draft.headingOf(column, said);
        if (said == null) {
            doubt = "names no unit: " + column.headings().stream().collect(Collectors.joining(" or "));
        }
    }

    private static boolean hasUnit(String cell, ColumnUnit unit) {
        String word = cell.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        return unit.isNamed(word);
    }

    /** Words of a choice, and names that differ from stored ones in case, spaces or signs only. */
    private void words(KnownNames known) {
        boolean choice = !column.kind().holdsNumbers() && !column.kind().holdsDates() && isChoice();
        if (choice) {
            sample.frequent(MOST_WORDS).forEach(cell -> choiceWord(cell.getKey()));
        } else if (known.has(column.name())) {
            knownNames(known);
        }
    }

    /** Whether the column has a fixed list of words. */
    private boolean isChoice() {
        return CellTests.reads(column, "unknown", DateOrder.UNSTATED)
                        && column.kind() != (Object) CellKinds.TEXT
                        && !CellTests.reads(column, "zz-nothing", DateOrder.UNSTATED)
                || Set.of("origin", "found", "kind", "test").contains(column.name());
    }

    private void choiceWord(String cell) {
        if (CellTests.reads(column, cell, DateOrder.UNSTATED) || CellTests.isEmptyWord(cell)) {
            return;
        }
        String word = TradeWords.valueWord(column, cell);
        values.put(cell, word.isEmpty() ? FileMatch.ASK : word);
        if (word.isEmpty()) {
            unknown(cell, "");
        }
    }

    /** Names are matched by a rule, however many there are; of families, each that is not known is asked about. */
    private void knownNames(KnownNames known) {
        long here = sample.rows(cell -> known.alike(column.name(), cell).isPresent());
        long exact = sample.rows(cell -> known.isKnown(column.name(), cell));
        long all = sample.rows(cell -> true);
        note = String.format(
                Locale.ROOT,
                "%,d of %,d rows%s have a known name",
                here,
                all,
                all < sample.filled() ? " looked at" : "");
        if (here > exact) {
            namesAlike = true;
            String cell = sample.values().keySet().stream()
                    .filter(name -> !known.isKnown(column.name(), name)
                            && known.alike(column.name(), name).isPresent())
                    .findFirst()
                    .orElseThrow();
            questions.add(new Question(
                    "names:" + sample.heading(),
                    "Names in " + sample.heading(),
                    String.format(
                            Locale.ROOT,
                            "%,d rows differ from a stored name in case, spaces or signs only, such as \"%s\" from \"%s\"",
                            here - exact,
                            cell,
                            known.alike(column.name(), cell).orElseThrow()),
                    List.of(
                            new Option("similar", "Read them as the stored names", true),
                            new Option("exact", "Take them as they are", false)),
                    false,
                    true));
        }
        if (column.name().equals("family")) {
            sample.frequent(MOST_WORDS).forEach(cell -> unknownFamily(known, cell.getKey()));
        }
    }

    private void unknownFamily(KnownNames known, String cell) {
        if (known.alike("family", cell).isPresent() || CellTests.isEmptyWord(cell)) {
            return;
        }
        values.put(cell, FileMatch.ASK);
        unknown(
                cell,
                kit(known, cell)
                        .map(kit -> "perhaps " + kit)
                        .orElseGet(() -> "known: " + String.join(", ", known.names("family"))));
    }

    /** The first words that nobody knows, with what they may be. */
    private void unknown(String cell, String hint) {
        unknown++;
        String words = "\"" + cell + "\"" + (hint.isEmpty() ? "" : " (" + hint + ")");
        if (unknown == 1) {
            doubt = "does not know " + words;
        } else if (unknown <= MOST_SAID) {
            doubt += ", " + words;
        } else if (unknown == MOST_SAID + 1) {
            doubt += " and more";
        }
    }

    /** The one family that is built the same, by words such as V8 or I6. */
    private static Optional<String> kit(KnownNames known, String cell) {
        String shape = shape(cell);
        List<String> same = known.names("family").stream()
                .filter(name -> !shape.isEmpty() && shape(name).equals(shape))
                .toList();
        return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
    }

    private static String shape(String name) {
        String plain = name.toLowerCase(Locale.ROOT);
        if (plain.matches(".*\\bv-?8\\b.*")) {
            return "v8";
        }
        return plain.matches(".*(\\b[il]-?6\\b|inline[ -]?(six|6)|straight[ -]?(six|6)|\\b6[ -]?cyl).*") ? "i6" : "";
    }

    /** Some list their cylinders from 0. */
    private void cylinderZero() {
        boolean listsCylinders = column.name().equals("cylinder") || column.kind() == (Object) CellKinds.CYLINDER_PICK;
        long zeros = listsCylinders ? sample.rows(cell -> CylinderCells.names(cell, 0)) : 0;
        if (zeros == 0) {
            return;
        }
        boolean highest = sample.rows(cell -> CylinderCells.names(cell, 8)) > 0;
        doubt = "has 0";
        for (int cylinder = 0; cylinder <= 11; cylinder++) {
            values.put(String.valueOf(cylinder), cylinder == 0 ? FileMatch.ASK : String.valueOf(cylinder));
        }
        questions.add(new Question(
                "zero:" + sample.heading(),
                "Cylinder 0 in " + sample.heading(),
                String.format(
                        Locale.ROOT,
                        "%,d rows have 0, %s has 8. Engine makers count from 1.",
                        zeros,
                        highest ? "one" : "none"),
                List.of(
                        new Option("shift", "0 to 7 in the file means 1 to 8", false),
                        new Option("leave", "0 means not known; leave those rows out", false)),
                false,
                false));
    }

    private void shortened() {
        long rows = sample.rows(cell -> Draft.shortened(column, cell));
        if (rows == 0) {
            return;
        }
        boolean optional = !column.required();
        dropsShortened = optional;
        if (optional) {
            asks.add("shortened:" + sample.heading());
        }
        doubt = String.format(Locale.ROOT, "%,d values were shortened by a spreadsheet", rows);
        if (optional) {
            questions.add(new Question(
                    "shortened:" + sample.heading(),
                    "Values like "
                            + sample.values().keySet().stream()
                                    .filter(cell -> Draft.shortened(column, cell))
                                    .findFirst()
                                    .orElse(""),
                    String.format(Locale.ROOT, "A spreadsheet shortened %,d numbers. The digits are lost.", rows),
                    List.of(
                            new Option("empty", "Leave " + column.name() + " empty in these rows", true),
                            new Option("refuse", "Refuse these rows", false)),
                    false,
                    false));
        }
    }

    /** A name that stands once above several rows, as in merged areas. */
    private void blanks(Table<?> table) {
        boolean key =
                table.keyColumns().contains(column.name()) || column.name().equals("truck");
        if (key && column.required() && sample.blanks() > 0 && sample.filled() > 0) {
            asAbove = true;
            asks.add("above:" + sample.heading());
            doubt = String.format(Locale.ROOT, "%,d blank cells are taken as the one above", sample.blanks());
            questions.add(new Question(
                    "above:" + sample.heading(),
                    "Blank cells in " + sample.heading(),
                    String.format(Locale.ROOT, "%,d rows have none, as in merged areas.", sample.blanks()),
                    List.of(
                            new Option("above", "A blank means the same as the row above", true),
                            new Option("refuse", "Refuse these rows", false)),
                    false,
                    false));
        }
    }

    private void unread() {
        long unread = sample.rows(cell -> !CellTests.fits(column, cell) && !values.containsKey(cell));
        boolean times = sample.share(CellTests::isTime) > 0.8;
        if (unread > 0 && doubt.isEmpty() && !times) {
            String first = sample.values().keySet().stream()
                    .filter(cell -> !CellTests.fits(column, cell) && !values.containsKey(cell))
                    .findFirst()
                    .orElse("");
            doubt = String.format(Locale.ROOT, "%,d rows cannot be read, such as \"%s\"", unread, first);
        }
    }

    ColumnMatch match() {
        return new ColumnMatch(sample.heading(), heading, values, asAbove, dropsShortened, namesAlike);
    }

    /** What a person must confirm before it holds, as {@link FileMatch#asks()} has it. */
    Set<String> asks() {
        return asks;
    }

    List<Question> questions() {
        return questions;
    }

    String doubt() {
        return doubt;
    }

    String note() {
        return note;
    }

    /** Words of the column that mean an empty cell. */
    Set<String> emptyWords() {
        return sample.values().keySet().stream()
                .filter(CellTests::isEmptyWord)
                .map(cell -> cell.toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Signs and units around the numbers. */
    Set<String> signs() {
        Set<String> signs = new TreeSet<>();
        for (String cell : sample.values().keySet()) {
            String small = cell.toLowerCase(Locale.ROOT).strip();
            String bare = CellTests.bare(cell);
            if (!bare.equals(small) && CellTests.isNumber(cell)) {
                for (String part : small.replace(bare, " ").strip().split("\\s+")) {
                    boolean ofOther = TradeWords.isUnit(part) && TradeWords.unit(part, column) == null;
                    if (CellTests.SIGNS.contains(part) && !ofOther) {
                        signs.add(part);
                    }
                }
            }
        }
        return signs;
    }
}
