package dev.injectorplanner.imports.file;

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
        return FileType.of(file) == FileType.WORKBOOK ? WorkbookFile.open(file, settings) : CsvFile.open(file);
    }
}
