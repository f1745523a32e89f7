package dev.injectorplanner.app.intake;

import dev.injectorplanner.imports.Remark;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What is said of a file's meters that go back or run ahead: the first ones in words, then how many more. */
final class MeterRemarks {
    private static final int SHOWN = 20;

    private final String file;
    private final List<Remark> shown = new ArrayList<>();
    private long all;

    MeterRemarks(Path file) {
        this.file = String.valueOf(file.getFileName());
    }

    void add(String text) {
        all++;
        if (shown.size() < SHOWN) {
            shown.add(new Remark(file, null, text));
        }
    }

    List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>(shown);
        if (all > shown.size()) {
            remarks.add(new Remark(file, null, all + " readings flagged in total"));
        }
        return remarks;
    }
}
