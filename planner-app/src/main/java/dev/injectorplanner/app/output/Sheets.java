package dev.injectorplanner.app.output;

import dev.injectorplanner.app.planning.Planning.Planned;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.UserError;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.reports.bay.BaySheet;
import dev.injectorplanner.reports.bay.BaySheetMaker;
import dev.injectorplanner.reports.bay.Paper;
import dev.injectorplanner.reports.calendar.VisitCalendar;
import dev.injectorplanner.reports.coolant.CoolantWorkbook;
import dev.injectorplanner.reports.parts.PartsWorkbook;
import dev.injectorplanner.reports.work.UpcomingWorkbook;
import dev.injectorplanner.reports.work.WorkListBook;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes the sheets of a plan into a folder. A sheet is there whole, or as it was before. */
public final class Sheets {
    /** Work lists reach from the plan's first week this many weeks. */
    private static final int WORK_LIST_WEEKS = 2;

    private final Path folder;
    private final SiteForm form;
    private final List<Path> written = new ArrayList<>();

    /** In the site's units, currency, dates and paper. */
    public Sheets(Path folder, SiteForm form) {
        this.folder = folder;
        this.form = form;
    }

    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    /**
     * Writes the sheets of some readers.
     *
     * @return the files, in the order of the readers
     * @throws SheetException in words, where the folder cannot be written to
     */
    public List<Path> write(Planned planned, Set<Reader> readers) {
        Plan plan = planned.plan();
        if (readers.contains(Reader.MANAGER)) {
            file("upcoming-work.xlsx", out -> new UpcomingWorkbook(planned.fleet(), plan).write(out, form));
            calendars(planned);
        }
        if (readers.contains(Reader.BUYER)) {
            file("parts-needs.xlsx", out -> new PartsWorkbook(planned.fleet(), plan).write(out, form));
        }
        if (readers.contains(Reader.STOREMAN)) {
            file("coolant.xlsx", out -> new CoolantWorkbook(plan).write(out, form));
        }
        if (readers.contains(Reader.MECHANIC)) {
            workLists(planned);
        }
        return List.copyOf(written);
    }

    private void calendars(Planned planned) {
        for (Depot depot : planned.fleet().depots()) {
            file(
                    "visits-" + inFileName(depot.depot()) + ".ics",
                    new VisitCalendar(planned.fleet(), planned.plan(), depot.depot(), form)::write);
        }
    }

    private void workLists(Planned planned) {
        FleetIndex index = new FleetIndex(planned.fleet());
        Plan plan = planned.plan();
        BaySheetMaker maker = new BaySheetMaker(index, plan, form.units());
        for (Depot depot : planned.fleet().depots()) {
            for (int ahead = 0; ahead < Math.min(WORK_LIST_WEEKS, plan.weeks()); ahead++) {
                IsoWeek week = plan.firstWeek().plus(ahead);
                WorkListBook book = new WorkListBook(index, plan, depot.depot(), week);
                if (book.visits().isEmpty()) {
                    continue; // a list without work would look like one that broke
                }
                String of = inFileName(depot.depot()) + "-" + week;
                file("work-list-" + of + ".xlsx", out -> book.write(out, form));
                List<BaySheet> sheets = book.visits().stream()
                        .map(visit -> maker.of(visit, Map.of()))
                        .toList();
                file("bay-sheets-" + of + ".pdf", out -> Paper.baySheets(sheets, form.paper(), out));
            }
        }
    }

    private static String inFileName(String name) {
        return name.replaceAll("[^\\p{L}\\p{N}_-]+", "-");
    }

    private void file(String name, Writing writing) {
        Path file = folder.resolve(name);
        Path half = folder.resolve(name + ".part");
        try {
            Files.createDirectories(folder);
            try (OutputStream out = Files.newOutputStream(half)) {
                writing.to(out);
            }
            Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
            written.add(file);
        } catch (IOException e) {
            throw new SheetException(
                    file + " cannot be written (" + e.getMessage()
                            + "). Fix: close it if it is open elsewhere, or choose another folder with --out.",
                    e);
        }
    }

    /** A sheet could not be written. */
    public static final class SheetException extends RuntimeException implements UserError {
        private static final long serialVersionUID = 1L;

        SheetException(String message, Throwable cause) {
            super(message, cause);
        }
    }
}
