package dev.injectorplanner.reports.work;

import dev.injectorplanner.core.due.DueItem;
import dev.injectorplanner.core.due.DueKind;
import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.parts.PartNeeds;
import dev.injectorplanner.core.visit.Visit;
import dev.injectorplanner.reports.bay.Cautions;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.PageSheet;
import dev.injectorplanner.reports.workbook.Words;
import java.util.List;
import java.util.Optional;

/** One truck's page of a work list: what was seen, cautions, steps in order, cylinders, parts, end of the job. */
final class TruckPage {
    private static final String BOX = "\u2610";

    private final FleetIndex index;
    private final PartNeeds parts;
    private final Visit visit;
    private char letter = 'A';

    TruckPage(FleetIndex index, PartNeeds parts, Visit visit) {
        this.index = index;
        this.parts = parts;
        this.visit = visit;
    }

    void write(Book book, String remark) {
        PageSheet page = book.page(
                visit.truck(),
                "Truck " + visit.truck() + "   " + work(),
                visit.family() + ", " + visit.depot() + ", week " + visit.week() + ", "
                        + Words.quantity(visit.labourHours()) + " h, " + Words.quantity(visit.drainedLitres())
                        + " l of coolant drained. " + remark);
        seen(page);
        cautions(page);
        steps(page);
        cylinders(page);
        kit(page);
        end(page);
    }

    private String work() {
        if (visit.cylinders().isEmpty()) {
            return visit.inspection() ? "injector test" : String.join(", ", visit.tasks());
        }
        return "cylinders " + Words.cylinders(visit.cylinders());
    }

    private String next() {
        return String.valueOf(letter++);
    }

    private void seen(PageSheet page) {
        page.section(next(), "Evidence");
        for (DueItem item : visit.dueItems()) {
            page.text(VisitColumns.seen(item)
                    + (item.kind() == DueKind.COST
                            ? " (worth doing while it's open)"
                            : " (limit " + item.limit() + ", " + item.limitSource() + ")"));
        }
        visit.tasks().forEach(task -> page.text((task.equals(Visit.DIAGNOSIS) ? "To do: " : "Also done: ") + task));
    }

    private void cautions(PageSheet page) {
        page.section(next(), "Cautions");
        Cautions.BEFORE.forEach(page::text);
    }

    private void steps(PageSheet page) {
        if (visit.steps().isEmpty()) {
            return;
        }
        page.section(next(), "Access steps, in this order; refit in the reverse order");
        List<Format> formats = List.of(Format.TEXT, Format.WRAPPED, Format.ONE_DECIMAL, Format.TEXT, Format.WRAPPED);
        page.heads(List.of("Done", "Step", "Hours, off and on", "For cylinders", "Caution"), formats);
        for (AccessStep step : index.accessOf(visit.family())) {
            if (visit.steps().contains(step.step())) {
                page.row(formats, BOX, step.step(), step.hours(), servedBy(step), step.cautions());
            }
        }
    }

    private String servedBy(AccessStep step) {
        return Words.cylinders(visit.cylinders().stream().filter(step::serves).toList());
    }

    private void cylinders(PageSheet page) {
        if (visit.cylinders().isEmpty()) {
            return;
        }
        EngineFamily family = index.family(visit.family());
        page.section(next(), "Injectors, front to rear");
        List<Format> formats = List.of(Format.TEXT, Format.WRAPPED, Format.TEXT, Format.TEXT, Format.TEXT, Format.TEXT);
        page.heads(
                List.of("Cylinder", "Comes out", "Found", "New serial", "New calibration code", "Coded, read back"),
                formats);
        family.banks()
                .forEach(bank -> bank.cylinders().stream()
                        .filter(visit.cylinders()::contains)
                        .forEach(cylinder -> page.row(
                                formats, cylinder + " " + bank.name(), fitted(cylinder), null, null, null, BOX)));
    }

    private String fitted(int cylinder) {
        Optional<FittedInjector> now = index.injectorsOf(visit.truck()).stream()
                .filter(injector -> injector.cylinder() == cylinder && injector.removedOn() == null)
                .findFirst();
        return now.map(injector -> injector.part() + (injector.serial() == null ? "" : " serial " + injector.serial())
                        + ", fitted " + injector.fittedWords())
                .orElse("no record of the fitted injector");
    }

    private void kit(PageSheet page) {
        page.section(next(), "Parts to pick");
        List<Format> formats = List.of(Format.TEXT, Format.WRAPPED, Format.QUANTITY, Format.TEXT, Format.TEXT);
        page.heads(List.of("Picked", "Part", "Pieces", "Number", "Supplier"), formats);
        parts.kitOf(visit).forEach((number, kit) -> {
            Optional<Part> part = index.findPart(number);
            page.row(
                    formats,
                    BOX,
                    part.map(Part::description).orElse("not in the table of parts"),
                    kit.pieces(),
                    number,
                    part.map(Part::supplier).orElse(""));
        });
    }

    private void end(PageSheet page) {
        page.section(next(), "End of the job");
        List<Format> formats = List.of(Format.TEXT, Format.WRAPPED);
        Cautions.end(
                        !visit.cylinders().isEmpty(),
                        visit.diagnosis(),
                        visit.inspection() && visit.cylinders().isEmpty())
                .forEach(line -> page.text(BOX + "  " + line));
        page.row(formats, "Odometer, hours", null);
        page.row(formats, "Date, name", null);
    }
}
