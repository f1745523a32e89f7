package dev.injectorplanner.app.web.worklist;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A truck of the worklist. Distances are in km.
 *
 * @param truck its name
 * @param vin its VIN
 * @param depot its depot
 * @param group its duty group, or empty
 * @param family its engine
 * @param risk its likeliest injector to fail, or null where none is forecast
 * @param faults injector faults open on its cylinders
 * @param meters what its meters say
 * @param next its next visit, or null
 * @param standing how it stands
 * @param overdue whether something is past its day
 */
public record WorkTruck(
        String truck,
        String vin,
        String depot,
        String group,
        String family,
        @Nullable Risk risk,
        long faults,
        Meters meters,
        @Nullable Next next,
        Standing standing,
        boolean overdue) {

    /**
     * The injector of a truck that is likeliest to fail.
     *
     * @param chance within 12 weeks, 0..1
     * @param cylinder its cylinder
     * @param limit the site's limit for that chance, 0..1, or null where it set none
     */
    public record Risk(
            double chance, int cylinder, @Nullable Double limit) {
        boolean overLimit() {
            return limit != null && chance > limit;
        }
    }

    /**
     * A truck's meters; null where they are not known.
     *
     * @param sinceKm km since the fitting of the injector that is likeliest to fail
     * @param odometerKm newest reading
     * @param hours engine hours, newest reading
     * @param kmPerWeek usual km a week
     */
    public record Meters(
            @Nullable Double sinceKm,
            @Nullable Double odometerKm,
            @Nullable Double hours,
            @Nullable Double kmPerWeek) {}

    /**
     * A visit ahead.
     *
     * @param week its week
     * @param day its day, or null where it has none yet
     * @param work what is done
     * @param hours labour, h
     */
    public record Next(IsoWeek week, @Nullable LocalDate day, String work, double hours) {
        LocalDate first() {
            return day == null ? week.monday() : day;
        }
    }
}
