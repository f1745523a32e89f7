package dev.injectorplanner.imports.propose;

import dev.injectorplanner.imports.TableFinder;
import dev.injectorplanner.imports.file.RawFile;
import dev.injectorplanner.imports.file.RawSheet;
import dev.injectorplanner.imports.file.ReadSettings;
import dev.injectorplanner.imports.match.FileMatch;
import dev.injectorplanner.imports.refusal.FileRefusedException;
import dev.injectorplanner.imports.table.Table;
import dev.injectorplanner.imports.table.Tables;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Proposes how a foreign file could be read, by the words of the trade and by its values. A person confirms it. */
public final class Proposer {
    private static final double NAMED = 1.5;

    private final KnownNames known;

    /** @param known names that are stored already */
    public Proposer(KnownNames known) {
        this.known = known;
    }

    /**
     * What a person has said already.
     *
     * @param table the table, or null
     * @param sheet the sheet, or empty
     * @param headingLine line of the headings, or 0
     */
    public record Said(@Nullable Table<?> table, String sheet, long headingLine) {
        public static final Said NOTHING = new Said(null, "", 0);
    }

    /**
     * Proposes a match.
     *
     * @throws FileRefusedException if the file is no file of rows
     */
    public Proposal propose(Path file, Said said) {
        try (RawFile raw = RawFile.open(file, ReadSettings.standard(truck -> null))) {
            List<SheetSample> samples = new ArrayList<>();
            for (RawSheet sheet : raw.sheets()) {
                if (!sheet.hidden()) {
                    SheetSample sample = SheetSample.of(sheet, said.headingLine());
                    if (!sample.isEmpty() && sample.rows() > 0) {
                        samples.add(sample);
                    }
                }
            }
            if (samples.isEmpty()) {
                throw new FileRefusedException(file, "holds no rows below headings", "export it again, with its rows");
            }
            return propose(file, samples, said);
        }
    }

    /** The first rows as a match would read them, {@code most} of them. */
    public Preview preview(Path file, FileMatch match, int most) {
        return Preview.of(file, match, known, most);
    }

    private Proposal propose(Path file, List<SheetSample> samples, Said said) {
        SheetSample best = samples.get(0);
        ColumnChoice choice = null;
        for (SheetSample sample : samples) {
            ColumnChoice each = choose(file, sample, said);
            boolean wanted =
                    said.sheet().isEmpty() || said.sheet().equals(sample.sheet().name());
            if (wanted && (choice == null || each.score() > choice.score())) {
                choice = each;
                best = sample;
            }
        }
        if (choice != null && best.columns().isEmpty()) {
            throw new FileRefusedException(
                    file,
                    "has no headings in row " + best.headingLine(),
                    "give each column a heading, or name the row that has them");
        }
        if (choice == null) {
            throw new FileRefusedException(
                    file,
                    "has no sheet \"" + said.sheet() + "\" with rows",
                    "name one of "
                            + String.join(
                                    ", ",
                                    samples.stream()
                                            .map(each ->
                                                    String.valueOf(each.sheet().name()))
                                            .toList()));
        }
        return new Draft(file, best, choice, known)
                .proposal(samples.stream()
                        .map(sample -> sample.sheet().name())
                        .filter(java.util.Objects::nonNull)
                        .map(String::valueOf)
                        .toList());
    }

    private ColumnChoice choose(Path file, SheetSample sample, Said said) {
        Table<?> table = said.table();
        if (table != null) {
            return ColumnChoice.of(table, sample.columns(), known);
        }
        String sheet = sample.sheet().name();
        Table<?> bySheet = sheet == null ? null : TableFinder.byName(sheet);
        Table<?> named = bySheet == null ? TableFinder.byFileName(file) : bySheet;
        List<ColumnChoice> choices = new ArrayList<>();
        for (Table<?> each : Tables.ALL) {
            choices.add(ColumnChoice.of(each, sample.columns(), known));
        }
        return choices.stream()
                .max(Comparator.comparingDouble(choice -> choice.score() + (choice.table() == named ? NAMED : 0)))
                .orElseThrow();
    }
}
