package dev.injectorplanner.reports.work;

import static java.util.Comparator.comparingDouble;

import dev.injectorplanner.core.history.PartLife;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.risk.InjectorRisk;
import dev.injectorplanner.reports.workbook.Book;
import dev.injectorplanner.reports.workbook.Format;
import dev.injectorplanner.reports.workbook.SheetColumn;
import dev.injectorplanner.reports.workbook.TableSheet;
import dev.injectorplanner.reports.workbook.Words;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The sheet on risk: fitted injectors by their chance of failing, and the chances that other sheets quote. */
final class RiskSheet {
    /** Longer than anyone reads; of more injectors those with the highest chances are listed. */
    static final int MOST_ROWS = 5_000;

    private final Plan plan;
    private final Map<String, InjectorRisk> risks = new HashMap<>();
    private final Map<String, PartLife> lives = new HashMap<>();
    private final Set<String> unknownAges = new HashSet<>();

    RiskSheet(Plan plan) {
        this.plan = plan;
        plan.risks().forEach(risk -> risks.put(risk.truck() + "\n" + risk.cylinder(), risk));
        plan.lives().forEach(life -> lives.put(life.part() + "\n" + life.origin(), life));
        plan.injectors().stream()
                .filter(age -> !age.fittingKnown())
                .forEach(age -> unknownAges.add(age.truck() + "\n" + age.cylinder()));
    }

    /** Chance of failing within 12 weeks, percent; null where it is not known or no one cylinder is meant. */
    @Nullable
    Double percent12(String truck, @Nullable Integer cylinder) {
        InjectorRisk risk = cylinder == null ? null : risks.get(truck + "\n" + cylinder);
        return risk == null ? null : Double.valueOf(percent(risk.chance12()));
    }

    private static double percent(double chance) {
        return Math.rint(chance * 1_000) / 10;
    }

    void write(Book book, String remark) {
        boolean cut = plan.risks().size() > MOST_ROWS;
        TableSheet sheet = book.table(
                "Risk",
                "Chance of failing in service if not replaced",
                cut ? remark + ". The " + MOST_ROWS + " with the highest chances" : remark,
                List.of(
                        SheetColumn.of("Truck", Format.TEXT, 11),
                        SheetColumn.of("Depot", Format.TEXT, 14),
                        SheetColumn.of("Cylinder", Format.WHOLE, 9),
                        SheetColumn.of("Part", Format.TEXT, 13),
                        SheetColumn.of("Origin", Format.TEXT, 8),
                        SheetColumn.of("Age", Format.WHOLE, 11),
                        SheetColumn.of("counted in", Format.TEXT, 12),
                        SheetColumn.of("Condition", Format.WRAPPED, 40),
                        SheetColumn.of("Failure rate, times normal", Format.ONE_DECIMAL, 11),
                        SheetColumn.of("4 weeks, %", Format.ONE_DECIMAL, 9),
                        SheetColumn.of("12 weeks, %", Format.ONE_DECIMAL, 9),
                        SheetColumn.of("26 weeks, %", Format.ONE_DECIMAL, 9),
                        SheetColumn.of("Life model", Format.TEXT, 30),
                        SheetColumn.of("Failure rate from", Format.TEXT, 28)));
        plan.risks().stream()
                .sorted(comparingDouble(InjectorRisk::chance12).reversed())
                .limit(MOST_ROWS)
                .forEach(risk -> row(sheet, risk));
        sheet.finish();
    }

    private void row(TableSheet sheet, InjectorRisk risk) {
        sheet.row(
                risk.truck(),
                risk.depot(),
                risk.cylinder(),
                risk.part(),
                Words.of(risk.origin()),
                risk.age(),
                risk.clock().unit(),
                risk.condition(),
                risk.multiplier(),
                percent(risk.chance4()),
                percent(risk.chance12()),
                percent(risk.chance26()),
                source(risk),
                risk.multiplierSource());
    }

    private String source(InjectorRisk risk) {
        PartLife life = lives.get(risk.part() + "\n" + risk.origin());
        String source = life == null ? "" : life.source().words();
        if (plan.records().questionOf(risk.part()).isPresent()) {
            source = "planner default until the question about failures is answered";
        }
        boolean unknown = unknownAges.contains(risk.truck() + "\n" + risk.cylinder());
        return unknown
                ? (source.isEmpty() ? "" : source + "; ") + "age by the truck's meters, day of fitting unknown"
                : source;
    }
}
