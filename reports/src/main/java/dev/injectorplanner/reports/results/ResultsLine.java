package dev.injectorplanner.reports.results;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A month of results. Money is in the site's currency.
 *
 * @param month its first day
 * @param planned visits planned, or null where no plan was kept
 * @param doneAsPlanned of those done
 * @param done visits done in all
 * @param roadFailures trucks stranded
 * @param plannedHours labour planned, h, or null where no plan was kept
 * @param workedHours labour of planned visits, h
 * @param unplannedHours other labour, h
 * @param early value of the life left in injectors taken out healthy
 * @param coresCredited deposits credited
 * @param coresLost deposits lost
 * @param warranty claims credited
 * @param parts price of injectors fitted
 * @param labour price of labour
 * @param failures price of road failures
 * @param km distance driven, km
 * @param costPer1000 cost per 1,000 of the site's distance, or null where too little was driven
 */
public record ResultsLine(
        LocalDate month,
        @Nullable Integer planned,
        int doneAsPlanned,
        int done,
        int roadFailures,
        @Nullable Double plannedHours,
        double workedHours,
        double unplannedHours,
        double early,
        double coresCredited,
        double coresLost,
        double warranty,
        double parts,
        double labour,
        double failures,
        double km,
        @Nullable Double costPer1000) {}
