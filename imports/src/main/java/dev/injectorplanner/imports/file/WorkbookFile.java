package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipCollection;
import org.apache.poi.openxml4j.opc.PackageRelationshipTypes;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.jspecify.annotations.Nullable;

/** A workbook (XLSX, XLSM), read as a stream of events. */
final class WorkbookFile implements RawFile {
    private final OPCPackage container;
    private final List<RawSheet> sheets = new ArrayList<>();

    private WorkbookFile(Path file, OPCPackage container, XSSFReader reader, long mostBytes) {
        this.container = container;
        WorkbookXml xml = new WorkbookXml(file, mostBytes);
        WorkbookIndex index = new WorkbookIndex();
        xml.read("its list of sheets", reader::getWorkbookData, index);
        CellStyles styles = new CellStyles();
        xml.read("its list of styles", reader::getStylesData, styles);
        SharedTexts texts = new SharedTexts(file, Runtime.getRuntime().maxMemory() / 2);
        xml.read("its list of texts", reader::getSharedStringsData, texts);
        for (WorkbookIndex.Entry entry : index.sheets()) {
            sheets.add(new Sheet(
                    entry,
                    (handler) -> xml.read(
                            "sheet \"" + entry.name() + "\"", () -> reader.getSheet(entry.relation()), handler),
                    rows -> new SheetRows(texts, styles, index.from1904(), rows)));
        }
    }

    static WorkbookFile open(Path file, ReadSettings settings) {
        OPCPackage container = null;
        try {
            container = OPCPackage.open(file.toFile(), PackageAccess.READ);
            refuseOtherKinds(file, container);
            return new WorkbookFile(file, container, new XSSFReader(container), settings.mostSheetBytes());
        } catch (FileRefusedException e) {
            closeQuietly(container);
            throw e;
        } catch (Exception e) {
            closeQuietly(container);
            throw WorkbookXml.isBomb(e) ? WorkbookXml.bomb(file, e) : notRead(file, e);
        }
    }

    private static void refuseOtherKinds(Path file, OPCPackage container) throws Exception {
        PackageRelationshipCollection core = container.getRelationshipsByType(PackageRelationshipTypes.CORE_DOCUMENT);
        if (core.isEmpty()) {
            throw noWorkbook(file, null);
        }
        PackageRelationship relation = core.getRelationship(0);
        PackagePart main = relation == null ? null : container.getPart(relation);
        String type = main == null ? "" : main.getContentType();
        if (type.contains("binary")) {
            throw new FileRefusedException(
                    file, "is a binary workbook (.xlsb)", "save the table as XLSX or CSV and load that");
        }
        if (!type.contains("spreadsheet") && !type.contains("ms-excel")) {
            throw new FileRefusedException(
                    file, "is an office document but no workbook", "save the table as XLSX or CSV and load that");
        }
    }

    private static FileRefusedException notRead(Path file, Exception e) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry type = zip.getEntry("mimetype");
            if (type != null
                    && new String(zip.getInputStream(type).readNBytes(40), StandardCharsets.US_ASCII)
                            .startsWith("application/vnd.oasis")) {
                return new FileRefusedException(
                        file, "is an OpenDocument file", "save the table as XLSX or CSV and load that", e);
            }
            if (zip.getEntry("[Content_Types].xml") == null) {
                return noWorkbook(file, e);
            }
        } catch (IOException | RuntimeException unreadable) {
            e.addSuppressed(unreadable);
        }
        return new FileRefusedException(
                file,
                "starts as a workbook but is damaged or cut short",
                "copy or download it again, or save a new copy from a spreadsheet program",
                e);
    }

    private static FileRefusedException noWorkbook(Path file, @Nullable Exception e) {
        return new FileRefusedException(
                file, "is a ZIP file but no workbook", "unpack it, or save the table as XLSX or CSV", e);
    }

    @Override
    public List<RawSheet> sheets() {
        return sheets;
    }

    @Override
    public void close() {
        closeQuietly(container);
    }

    /** Nothing is written, so there is nothing to save. */
    private static void closeQuietly(@Nullable OPCPackage container) {
        if (container != null) {
            container.revert();
        }
    }

    private interface SheetXml {
        void read(SheetRows handler);
    }

    private interface HandlerOf {
        SheetRows make(RawRows rows);
    }

    /** One sheet. */
    private static final class Sheet implements RawSheet {
        private final WorkbookIndex.Entry entry;
        private final SheetXml xml;
        private final HandlerOf handlers;
        private List<String> remarks = List.of();

        Sheet(WorkbookIndex.Entry entry, SheetXml xml, HandlerOf handlers) {
            this.entry = entry;
            this.xml = xml;
            this.handlers = handlers;
        }

        @Override
        public String name() {
            return entry.name();
        }

        @Override
        public boolean hidden() {
            return entry.hidden();
        }

        @Override
        public char delimiter() {
            return ',';
        }

        @Override
        public boolean countsCells() {
            return false;
        }

        @Override
        public void read(RawRows rows) {
            SheetRows handler = handlers.make(rows);
            xml.read(handler);
            List<String> said = new ArrayList<>();
            if (handler.hiddenRows() > 0) {
                said.add("hidden rows (" + handler.hiddenRows() + ") were read like the others");
            }
            if (handler.mergedAreas() > 0) {
                said.add("merged areas (" + handler.mergedAreas()
                        + "): only the first cell of each holds its value; the others are empty");
            }
            remarks = said;
        }

        @Override
        public List<String> remarks() {
            return remarks;
        }
    }
}
