package dev.injectorplanner.core.warranty;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A failure inside its part's warranty, with the evidence a supplier asks for.
 *
 * @param depot depot of the truck
 * @param truck the truck
 * @param vin its identification number
 * @param cylinder the cylinder
 * @param part part that failed
 * @param supplier who sold it
 * @param serial its serial, or null
 * @param fittedOn day it went in
 * @param fitting which of that cylinder's fittings of that day, from 1
 * @param removedOn day it came out
 * @param months whole months it was in
 * @param km km it was in, or null where neither row tells
 * @param warrantyMonths limit in months, 0 for none
 * @param warrantyKm limit in km, 0 for none
 * @param faultCodes fault codes of the cylinder before it came out, how often and from when to when
 * @param tests tests of the cylinder before it came out, in words, oldest first
 * @param value price of the part
 * @param lacking what a supplier will ask for and the tables do not tell, in words; empty where all is there
 */
public record WarrantyClaim(
        String depot,
        String truck,
        String vin,
        int cylinder,
        String part,
        String supplier,
        @Nullable String serial,
        LocalDate fittedOn,
        int fitting,
        LocalDate removedOn,
        int months,
        @Nullable Double km,
        int warrantyMonths,
        double warrantyKm,
        List<String> faultCodes,
        List<String> tests,
        BigDecimal value,
        List<String> lacking) {
    /** By the day of removal, then by truck and cylinder. */
    public static final Comparator<WarrantyClaim> OLDEST = Comparator.comparing(WarrantyClaim::removedOn)
            .thenComparing(WarrantyClaim::truck)
            .thenComparing(WarrantyClaim::cylinder);

    public WarrantyClaim {
        fitting = Math.max(1, fitting); // plans kept before there were several a day have none
        faultCodes = List.copyOf(faultCodes);
        tests = List.copyOf(tests);
        lacking = List.copyOf(lacking);
    }
}
