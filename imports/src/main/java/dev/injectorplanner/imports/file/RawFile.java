package dev.injectorplanner.imports.file;

import dev.injectorplanner.imports.refusal.FileRefusedException;
import java.nio.file.Path;
import java.util.List;

/** A file that holds one or more sheets of rows. */
public interface RawFile extends AutoCloseable {
    List<RawSheet> sheets();

    @Override
    void close();

    /**
     * Opens a file by what it holds, whatever its name says.
     *
     * @throws FileRefusedException if it is not there, or is no file of rows
     */
    static RawFile open(Path file, ReadSettings settings) {
        return switch (FileType.of(file)) {
            case WORKBOOK ->
                OpenDocumentFile.is(file)
                        ? OpenDocumentFile.open(file, settings.mostSheetBytes())
                        : WorkbookFile.open(file, settings);
            case OLD_WORKBOOK -> OldWorkbookFile.open(file);
            case JSON -> TelematicsFile.status(file, settings.truckOf());
            case XML -> TelematicsFile.snapshot(file, settings.truckOf());
            case TEXT -> CsvFile.open(file);
        };
    }
}
