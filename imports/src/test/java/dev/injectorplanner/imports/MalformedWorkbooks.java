package dev.injectorplanner.imports;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks that are refused as a whole. */
final class MalformedWorkbooks {
    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private static final String CUT =
            "starts as a workbook but is damaged or cut short. Fix: copy or download it again, or save a new copy"
                    + " from a spreadsheet program.";
    private static final String SAVE_COPY =
            " Fix: open it in a spreadsheet program and save a new copy, or copy it again.";

    private final Path folder;
    private final List<MalformedFiles.Case> cases = new ArrayList<>();

    private MalformedWorkbooks(Path folder) {
        this.folder = folder;
    }

    static List<MalformedFiles.Case> in(Path folder) throws IOException {
        MalformedWorkbooks books = new MalformedWorkbooks(folder);
        books.addContainers();
        books.addXml();
        books.addBombs();
        books.addSheets();
        return books.cases;
    }

    private void addContainers() throws IOException {
        Path locked = folder.resolve("locked.xlsx");
        encrypted(locked);
        add(
                "password",
                locked,
                "is protected by a password. Fix: open it, save a copy without the password, load that.");
        Path old = folder.resolve("old.xls");
        try (HSSFWorkbook workbook = new HSSFWorkbook();
                OutputStream out = Files.newOutputStream(old)) {
            workbook.createSheet("readings");
            workbook.write(out);
        }
        String asTable = " Fix: save the table as CSV (UTF-8) or XLSX and load that.";
        add("old workbook without rows", old, "holds no rows. Fix: export it again.");
        Path broken = folder.resolve("broken.xls");
        Files.write(broken, Arrays.copyOf(Files.readAllBytes(old), 700));
        add("old workbook, cut", broken, "is a damaged workbook of the old .xls kind." + asTable);
        byte[] whole = Files.readAllBytes(Workbooks.write(folder.resolve("whole.xlsx"), Workbooks::readings));
        for (int percent : new int[] {10, 50, 95}) {
            Path cut = folder.resolve("cut-" + percent + ".xlsx");
            Files.write(cut, Arrays.copyOf(whole, whole.length * percent / 100));
            add("cut at " + percent + " %", cut, CUT);
        }
        zip("plain.zip", "readings.csv", "truck,taken_at\n");
        add(
                "ZIP",
                folder.resolve("plain.zip"),
                "is a ZIP file but no workbook. Fix: unpack it, or save the table as XLSX or CSV.");
        zip("sheet.ods", "mimetype", "application/vnd.oasis.opendocument.spreadsheet");
        add(
                "OpenDocument",
                folder.resolve("sheet.ods"),
                "is an OpenDocument file without content. Fix: save it again.");
        changed(
                "letter.docx",
                "[Content_Types].xml",
                xml -> xml.replace("spreadsheetml.sheet.main", "wordprocessingml.document.main"));
        add(
                "text document",
                folder.resolve("letter.docx"),
                "is an office document but no workbook. Fix: save the table as XLSX or CSV and load that.");
        changed(
                "readings.xlsb",
                "[Content_Types].xml",
                xml -> xml.replace(
                        "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                        "application/vnd.ms-excel.sheet.binary.macroEnabled.main"));
        add(
                "binary workbook",
                folder.resolve("readings.xlsb"),
                "is a binary workbook (.xlsb). Fix: save the table as XLSX or CSV and load that.");
    }

    private void addXml() throws IOException {
        changed("unclosed.xlsx", SHEET, xml -> xml.replace("</sheetData>", ""));
        add(
                "sheet not well formed",
                folder.resolve("unclosed.xlsx"),
                "is a damaged workbook (sheet \"Readings\" cannot be read)." + SAVE_COPY);
        changed("index.xlsx", "xl/workbook.xml", xml -> xml.substring(0, xml.length() / 2));
        add(
                "list of sheets cut",
                folder.resolve("index.xlsx"),
                "is a damaged workbook (its list of sheets cannot be read)." + SAVE_COPY);
        String declares = " declares a document type, which no spreadsheet program writes. Fix: open it in a"
                + " spreadsheet program and save a new copy.";
        changed(
                "entity.xlsx",
                SHEET,
                xml -> withDoctype(xml, "<!DOCTYPE worksheet [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>"));
        add("entity from outside", folder.resolve("entity.xlsx"), "sheet \"Readings\"" + declares);
        changed(
                "laughs.xlsx",
                "xl/sharedStrings.xml",
                xml -> withDoctype(
                        xml, "<!DOCTYPE sst [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;\">]>"));
        add("entities that grow", folder.resolve("laughs.xlsx"), "its list of texts" + declares);
        changed(
                "relation.xlsx",
                "xl/_rels/workbook.xml.rels",
                xml -> xml.replace("worksheets/sheet1.xml", "worksheets/none.xml"));
        add(
                "sheet is not in the file",
                folder.resolve("relation.xlsx"),
                "is a damaged workbook (sheet \"Readings\" cannot be read)." + SAVE_COPY);
    }

    private void addBombs() throws IOException {
        String bomb =
                "unpacks to more than a hundred times its size, which no real table does. Fix: save the table as CSV"
                        + " and load that.";
        String zeros = "0".repeat(40 << 20);
        changed("bomb.xlsx", SHEET, xml -> xml.replace("<sheetData>", "<!--" + zeros + "--><sheetData>"));
        add("sheet that unpacks without end", folder.resolve("bomb.xlsx"), bomb);
        changed("bomb-texts.xlsx", "xl/sharedStrings.xml", xml -> xml.replace("</sst>", "<!--" + zeros + "--></sst>"));
        add("texts that unpack without end", folder.resolve("bomb-texts.xlsx"), bomb);
    }

    private void addSheets() throws IOException {
        book("no-rows.xlsx", workbook -> workbook.createSheet("Readings"));
        add("no rows", folder.resolve("no-rows.xlsx"), "holds no rows. Fix: export it again.");
        book("hidden.xlsx", workbook -> {
            Workbooks.readings(workbook);
            workbook.createSheet("Empty");
            workbook.setActiveSheet(1);
            workbook.setSheetHidden(0, true);
        });
        add(
                "hidden sheet",
                folder.resolve("hidden.xlsx"),
                "has rows in hidden sheets only. Fix: show the sheet to be read.");
        sheet("one.xlsx", "Readings", new Object[] {"truck"}, new Object[] {"T1"});
        add(
                "one column",
                folder.resolve("one.xlsx"),
                "sheet \"Readings\": has only one column. Fix: put the headings in the first row, one per cell.");
        sheet("heads.xlsx", "Readings", new Object[] {"truck", "taken_at", "odometer_km"});
        add(
                "headings only",
                folder.resolve("heads.xlsx"),
                "sheet \"Readings\": has headings but no rows. Fix: export it again, with its rows.");
        sheet("twice.xlsx", "Readings", new Object[] {"truck", "taken_at", "TAKEN AT"}, new Object[] {"T1", "2026-04-03"
        });
        add(
                "heading twice",
                folder.resolve("twice.xlsx"),
                "sheet \"Readings\": column taken_at is a duplicate, in B1 and C1."
                        + " Fix: keep one of the two, and rename or remove the other.");
        sheet("stray.xlsx", "Readings", new Object[] {"truck", null, "taken_at", "odometer_km"}, new Object[] {
            "T1", "x", "2026-04-03", 7
        });
        add(
                "blank heading over a value",
                folder.resolve("stray.xlsx"),
                "sheet \"Readings\": the value in B2 is under a blank heading."
                        + " Fix: give the column a heading, or clear it.");
        sheet("shapes.xlsx", "Sheet1", new Object[] {"colour", "shape"}, new Object[] {"red", "round"});
        add(
                "no table",
                folder.resolve("shapes.xlsx"),
                "matches no table, neither by its name nor by its headings. Fix: match its headings once: match FILE; or say"
                        + " which table it is, such as --as readings.");
    }

    private void add(String name, Path file, String sentence) {
        cases.add(new MalformedFiles.Case("workbook: " + name, file, file.getFileName() + ": " + sentence));
    }

    private void book(String name, Consumer<XSSFWorkbook> content) {
        Workbooks.write(folder.resolve(name), content);
    }

    private void changed(String name, String part, UnaryOperator<String> change) {
        Workbooks.change(Workbooks.write(folder.resolve(name), Workbooks::readings), part, change);
    }

    private void sheet(String file, String name, Object[]... rows) {
        book(file, workbook -> {
            Sheet sheet = workbook.createSheet(name);
            for (int i = 0; i < rows.length; i++) {
                Workbooks.row(sheet, i, rows[i]);
            }
        });
    }

    private static String withDoctype(String xml, String doctype) {
        int end = xml.indexOf("?>") + 2;
        return xml.substring(0, end) + doctype + xml.substring(end);
    }

    private void zip(String name, String entry, String text) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(folder.resolve(name)))) {
            zip.putNextEntry(new ZipEntry(entry));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
    }

    private static void encrypted(Path file) throws IOException {
        ByteArrayOutputStream plain = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            Workbooks.readings(workbook);
            workbook.write(plain);
        }
        try (POIFSFileSystem container = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("made up");
            try (OutputStream out = encryptor.getDataStream(container)) {
                out.write(plain.toByteArray());
            }
            try (OutputStream out = Files.newOutputStream(file)) {
                container.writeFilesystem(out);
            }
        } catch (GeneralSecurityException e) {
            throw new IOException(e);
        }
    }
}
