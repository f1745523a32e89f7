package dev.injectorplanner.app.drop;

import dev.injectorplanner.app.drop.DropResult.Outcome;
import dev.injectorplanner.app.intake.CauseText;
import dev.injectorplanner.app.intake.FileReport;
import dev.injectorplanner.app.intake.TableCount;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Moves a file that was read to where it belongs, with what a person needs beside it. */
final class FileRouting {
    private final DropSettings settings;

    FileRouting(DropSettings settings) {
        this.settings = settings;
    }

    /** The file itself goes last: until then a crash leaves it where it is found and read again. */
    DropResult move(FileReport report) throws IOException {
        boolean refused = report.anyRefused();
        Path folder = Files.createDirectories(refused ? settings.refused() : settings.done());
        String name = String.valueOf(report.file().getFileName());
        Path place = FreeName.reserve(folder, name);
        String stem = FreeName.stem(String.valueOf(place.getFileName()));
        if (refused) {
            Files.write(folder.resolve(stem + ".report.txt"), lines(report), StandardCharsets.UTF_8);
            for (Path rows : report.refusedRows()) {
                String rest = String.valueOf(rows.getFileName())
                        .substring(FreeName.stem(name).length());
                Files.move(rows, folder.resolve(stem + rest), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Files.move(report.file(), place, StandardCopyOption.ATOMIC_MOVE);
        return new DropResult(name, refused ? Outcome.REFUSED : Outcome.DONE, words(name, report), place, report);
    }

    private static String words(String name, FileReport report) {
        if (report.refusal() != null) {
            return report.refusal();
        }
        long read = report.tables().stream().mapToLong(TableCount::read).sum();
        String counted = String.format(Locale.ROOT, "%s: %,d rows read", name, read);
        return report.anyRefused()
                ? String.format(
                        Locale.ROOT,
                        "%s, %,d refused. Fix: correct them in the .refused file next to it, in the folder refused, and drop that file again.",
                        counted,
                        report.refusedCount())
                : counted + ", none refused.";
    }

    private static List<String> lines(FileReport report) {
        List<String> lines = new ArrayList<>();
        if (report.refusal() != null) {
            lines.add(report.refusal());
        }
        for (TableCount count : report.tables()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "table %s: %,d read, %,d added, %,d changed, %,d unchanged, %,d refused",
                    count.table(),
                    count.read(),
                    count.added(),
                    count.changed(),
                    count.unchanged(),
                    count.refused()));
        }
        report.causes().forEach(cause -> lines.addAll(CauseText.lines(cause)));
        report.remarks().forEach(remark -> lines.add(remark.toString()));
        return lines;
    }
}
