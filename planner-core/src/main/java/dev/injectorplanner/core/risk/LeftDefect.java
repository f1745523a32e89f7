package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.defect.CostOfDeferring;
import dev.injectorplanner.core.defect.DefectBook;

/**
 * An injector with a defect that is left in for a time: it fails, or shows and is taken out, or neither.
 *
 * @param inTime chance that one of the two comes within the time, 0..1
 * @param failing chance that it is the failure, 0..1
 * @param endsPerUse rate at which one of them comes, per unit of the part's clock
 */
record LeftDefect(double inTime, double failing, double endsPerUse) {
    /** @param weeks how long it is left, infinite for ever */
    static LeftDefect of(DefectBook.Entry defects, CostOfDeferring.Terms terms, double weeks) {
        double fails = 1 / defects.model().meanDelay();
        double ends = fails + defects.showsPerUse();
        double inTime = weeks == Double.POSITIVE_INFINITY ? 1 : -Math.expm1(-ends * terms.perWeek() * weeks);
        return new LeftDefect(inTime, fails / ends, ends);
    }

    /** What its end costs beyond a planned replacement. */
    double costOfEnd(CostOfDeferring.Terms terms) {
        return (terms.failure() - terms.planned()) * failing + (terms.alone() - terms.planned()) * (1 - failing);
    }
}
