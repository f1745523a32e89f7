package dev.injectorplanner.core.risk;

import dev.injectorplanner.core.calendar.IsoWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Injectors of a part that will fail in service at a depot in a week if nothing is replaced: the sum of their chances.
 *
 * @param depot the depot
 * @param part part number
 * @param week the ISO week; of the first, the days from today
 * @param expected mean number, zero or more
 */
public record ExpectedFailures(String depot, String part, IsoWeek week, double expected) {
    /** One row for each depot, part and week, in that order. */
    public static List<ExpectedFailures> of(List<InjectorRisk> risks, LocalDate today, int weeks) {
        IsoWeek first = IsoWeek.of(today);
        Map<String, double[]> sums = new TreeMap<>();
        for (InjectorRisk risk : risks) {
            double[] sum = sums.computeIfAbsent(risk.depot() + "\n" + risk.part(), key -> new double[weeks]);
            double before = 0;
            for (int week = 0; week < weeks; week++) {
                long days = ChronoUnit.DAYS.between(today, first.plus(week).sunday()) + 1;
                double until = risk.chanceWithin(days);
                sum[week] += until - before;
                before = until;
            }
        }
        List<ExpectedFailures> rows = new ArrayList<>();
        sums.forEach((key, sum) -> {
            int cut = key.indexOf('\n');
            for (int week = 0; week < weeks; week++) {
                rows.add(new ExpectedFailures(
                        key.substring(0, cut), key.substring(cut + 1), first.plus(week), sum[week]));
            }
        });
        return rows;
    }
}
