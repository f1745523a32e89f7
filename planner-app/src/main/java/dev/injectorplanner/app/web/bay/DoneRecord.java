package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.closeout.CloseOut;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.warranty.WarrantyClaims;
import dev.injectorplanner.reports.bay.CodedInjector;
import dev.injectorplanner.reports.workbook.Words;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A close-out as people read it.
 *
 * @param closeOut the close-out
 * @param entered when and by whom
 * @param finished when the work was finished
 * @param odometer as read, in the site's unit; empty where it was not
 * @param lines what was done a cylinder
 * @param next what follows from it: cores owed, claims, stock to count, recheck
 */
record DoneRecord(
        CloseOut closeOut, String entered, String finished, String odometer, List<Line> lines, List<String> next) {
    private static final DateTimeFormatter AT = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

    /** A cylinder, in words. */
    record Line(int cylinder, String done, String code, String confirmed) {}

    static DoneRecord of(TruckInBay at, CloseOut made) {
        return new DoneRecord(
                made,
                made.madeAt().atZone(at.depot().timeZone()).format(AT) + " by " + made.madeBy(),
                made.finishedAt().atZone(at.depot().timeZone()).format(AT),
                made.odometerKm() == null ? "" : at.units().distance(made.odometerKm()),
                made.cylinders().stream().map(DoneRecord::line).toList(),
                next(at, made));
    }

    private static Line line(CloseOut.Done done) {
        if (!done.fitted()) {
            return new Line(done.cylinder(), "not done: " + done.reason(), "", "");
        }
        String old = done.oldSerial() == null ? "old one" : "old one " + done.oldSerial();
        String code = done.code();
        return new Line(
                done.cylinder(),
                "fitted " + done.serial() + " (" + Words.of(java.util.Objects.requireNonNull(done.origin())) + "); "
                        + old
                        + " found "
                        + (done.found() == null ? "not known" : Words.of(done.found()))
                        + (done.failedFirst() == null
                                ? ""
                                : "; " + done.failedFirst() + " was fitted first and failed at once"),
                code == null ? "" : CodedInjector.grouped(code),
                code == null
                        ? "has no code"
                        : "programmed, read back"
                                + (done.readBack() == CloseOut.ReadBack.TYPED ? " and typed" : " and compared"));
    }

    private static List<String> next(TruckInBay at, CloseOut made) {
        List<String> next = new ArrayList<>(made.remarks());
        String truck = made.truck();
        CoresOwed.of(at.fleet(), at.today()).stream()
                .filter(core -> core.truck().equals(truck) && core.fittedOn().equals(made.doneOn()))
                .forEach(core -> next.add("Core owed: send "
                        + (core.oldSerial() == null ? "the old unit" : core.oldSerial()) + " of cylinder "
                        + core.cylinder() + " to " + core.supplier() + " by " + core.lastDay() + ", deposit "
                        + core.deposit().toPlainString() + "."));
        WarrantyClaims.of(at.fleet(), at.today()).stream()
                .filter(claim ->
                        claim.truck().equals(truck) && claim.removedOn().equals(made.doneOn()))
                .forEach(claim -> next.add("Warranty claim: "
                        + (claim.serial() == null ? "the old unit" : claim.serial()) + " of cylinder "
                        + claim.cylinder() + ", "
                        + at.fleet().findPart(claim.part()).map(Part::supplier).orElse(claim.supplier())
                        + ": keep it aside, with its fault codes."));
        if (made.recheckOn() != null) {
            next.add("Recheck faults and leaks on " + made.recheckOn() + ".");
        }
        return next;
    }
}
