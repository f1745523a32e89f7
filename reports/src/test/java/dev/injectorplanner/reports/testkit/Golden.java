package dev.injectorplanner.reports.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Workbooks checked against a dump of their cells, one a line: sheet!cell, type, value, format, formula. To accept a change,
 * run the test with {@code -Dgolden.rewrite=true} and read the difference before committing it.
 */
public final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/golden");

    private Golden() {}

    /** Something that writes a workbook. */
    @FunctionalInterface
    public interface Writing {
        void to(OutputStream out) throws IOException;
    }

    public static XSSFWorkbook open(Writing writing) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            writing.to(out);
            return new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Holds the workbook's cells against {@code golden/name.txt}. */
    public static void check(String name, Writing writing) {
        try (XSSFWorkbook book = open(writing)) {
            Path file = FOLDER.resolve(name + ".txt");
            List<String> dump = dump(book);
            if (Boolean.getBoolean("golden.rewrite")) {
                Files.createDirectories(FOLDER);
                Files.write(file, dump);
            }
            assertThat(dump).as("cells of " + name + ", against " + file).isEqualTo(Files.readAllLines(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> dump(XSSFWorkbook book) {
        List<String> lines = new ArrayList<>();
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() != CellType.BLANK) {
                        lines.add(sheet.getSheetName() + "!" + cell.getAddress() + " | " + line(cell));
                    }
                }
            }
        }
        return lines;
    }

    private static String line(Cell cell) {
        boolean formula = cell.getCellType() == CellType.FORMULA;
        CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
        String value = type == CellType.NUMERIC
                ? String.format(Locale.ROOT, "%.6f", cell.getNumericCellValue() + 0.0)
                : cell.toString();
        return type.name().toLowerCase(Locale.ROOT) + " | " + value + " | "
                + cell.getCellStyle().getDataFormatString() + (formula ? " | =" + cell.getCellFormula() : "");
    }

    /** Recalculates every formula and holds it against the value the engine gave; answers how many there were. */
    public static int recalculated(XSSFWorkbook book) {
        FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
        int formulas = 0;
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.FORMULA) {
                        double given = cell.getNumericCellValue();
                        double found = evaluator.evaluate(cell).getNumberValue();
                        assertThat(found)
                                .as(sheet.getSheetName() + "!" + cell.getAddress() + " =" + cell.getCellFormula())
                                .isCloseTo(
                                        given,
                                        org.assertj.core.api.Assertions.within(1e-9 * Math.max(1, Math.abs(given))));
                        formulas++;
                    }
                }
            }
        }
        return formulas;
    }
}
