package dev.injectorplanner.app.results;

import java.time.YearMonth;

/**
 * A month of injector work.
 *
 * @param month the month
 * @param planned visits of its weeks in the plan that was in force when each week began; -1 where no plan was kept
 * @param done truck-days on which injectors were replaced or a visit was closed out
 * @param doneAsPlanned of those, close-outs of a planned visit
 * @param roadFailures truck-days on which an injector was taken out as failed that no planned visit had
 * @param plannedHours labour of the planned visits, h; -1 where no plan was kept
 * @param workedHours labour of planned visits closed out, h
 * @param unplannedHours labour of other close-outs, recorded repairs, and work known from fittings alone, h
 * @param early value of the life left in injectors taken out healthy, money
 * @param coresCredited deposits credited, money
 * @param coresLost deposits refused or credited short, money
 * @param warranty claims credited, money
 * @param km distance driven
 * @param parts price of injectors fitted, money
 * @param labour labour, money
 * @param failures road failures at the family's price, money
 */
public record MonthResult(
        YearMonth month,
        int planned,
        int done,
        int doneAsPlanned,
        int roadFailures,
        double plannedHours,
        double workedHours,
        double unplannedHours,
        double early,
        double coresCredited,
        double coresLost,
        double warranty,
        double km,
        double parts,
        double labour,
        double failures) {
    /** All that injectors cost: parts, labour, road failures, deposits lost, less what warranty gave back; money. */
    public double cost() {
        return parts + labour + failures + coresLost - warranty;
    }

    /** Whether a plan was kept for it. */
    public boolean hasPlan() {
        return planned >= 0;
    }

    /** Two depots' months together; planned is known where either had a plan. */
    MonthResult plus(MonthResult other) {
        return new MonthResult(
                month,
                hasPlan() ? planned + Math.max(0, other.planned) : other.planned,
                done + other.done,
                doneAsPlanned + other.doneAsPlanned,
                roadFailures + other.roadFailures,
                hasPlan() ? plannedHours + Math.max(0, other.plannedHours) : other.plannedHours,
                workedHours + other.workedHours,
                unplannedHours + other.unplannedHours,
                early + other.early,
                coresCredited + other.coresCredited,
                coresLost + other.coresLost,
                warranty + other.warranty,
                km + other.km,
                parts + other.parts,
                labour + other.labour,
                failures + other.failures);
    }

    /** Months together, under the first one's name. */
    public static MonthResult sum(java.util.List<MonthResult> months) {
        return months.stream().reduce(MonthResult::plus).orElseThrow();
    }
}
