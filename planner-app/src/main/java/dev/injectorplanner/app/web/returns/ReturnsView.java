package dev.injectorplanner.app.web.returns;

import dev.injectorplanner.app.returns.Returns;
import dev.injectorplanner.app.web.office.ChosenDepots;
import dev.injectorplanner.app.web.office.DepotPlan;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.cores.CoreMonth;
import dev.injectorplanner.core.cores.CoreOwed;
import dev.injectorplanner.core.cores.CoresOwed;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.warranty.WarrantyClaim;
import dev.injectorplanner.core.warranty.WarrantyClaims;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Cores and claims of the depots chosen.
 *
 * @param owed cores to ship
 * @param atStake their deposits
 * @param claims claims to send
 * @param suppliers cores to ship by supplier, the one with the earliest last day first
 * @param notes return notes that wait for an answer
 * @param toClaim claims to send
 * @param sentClaims claims that wait for an answer
 * @param months deposits by month, the newest first
 * @param answered the newest answer first
 * @param today of the plan, for the forms
 */
public record ReturnsView(
        int owed,
        String atStake,
        int claims,
        List<SupplierCores> suppliers,
        List<Note> notes,
        List<ClaimRow> toClaim,
        List<SentRow> sentClaims,
        List<MonthRow> months,
        List<SentRow> answered,
        String today) {
    private static final int MONTHS = 12;

    /** Cores of one supplier that go together. */
    public record SupplierCores(String key, String supplier, String sum, List<CoreRow> rows) {}

    /** A core to ship; {@code unit} is what the form sends. */
    public record CoreRow(
            String unit,
            String lastDay,
            String left,
            String mark,
            String part,
            String serial,
            String truck,
            int cylinder,
            String depot,
            String fitted,
            String deposit) {}

    /** A return note with its open units. */
    public record Note(
            String key,
            String document,
            String sent,
            String sum,
            String open,
            boolean whole,
            boolean allShown,
            List<SentRow> rows) {}

    /** A unit that was sent. */
    public record SentRow(
            String key,
            String unit,
            String document,
            String what,
            String truck,
            int cylinder,
            String fitted,
            String sent,
            String amount,
            String plainAmount,
            String answer,
            String state,
            String mark) {}

    /** A claim to send. */
    public record ClaimRow(
            String key,
            String unit,
            String query,
            String removed,
            String supplier,
            String part,
            String serial,
            String truck,
            int cylinder,
            String evidence,
            String lacking,
            String value,
            String plainValue) {}

    /** A month of deposits and claims. */
    public record MonthRow(
            String month,
            String opening,
            String charged,
            String credited,
            String refused,
            String lost,
            String closing,
            String claimed,
            String claimCredits) {}

    static ReturnsView of(ChosenDepots chosen, List<UnitReturn> all) {
        List<CoreOwed> cores = new ArrayList<>();
        List<WarrantyClaim> claims = new ArrayList<>();
        Map<String, String> depots = new java.util.HashMap<>();
        for (DepotPlan plan : chosen.plans()) {
            plan.trucks().forEach(truck -> depots.put(truck, plan.depot()));
            CoresOwed.of(plan.fleet(), plan.today()).stream()
                    .filter(core -> core.depot().equals(plan.depot()))
                    .forEach(cores::add);
            WarrantyClaims.of(plan.fleet(), plan.today()).stream()
                    .filter(claim -> claim.depot().equals(plan.depot()))
                    .forEach(claims::add);
        }
        cores.sort(java.util.Comparator.comparing((CoreOwed core) -> core.daysLeft() < 0)
                .thenComparing(CoreOwed.MOST_URGENT));
        claims.sort(WarrantyClaim.OLDEST);
        List<UnitReturn> rows =
                all.stream().filter(row -> depots.containsKey(row.truck())).toList();
        List<UnitReturn> open =
                rows.stream().filter(row -> row.settledOn() == null).toList();
        return new ReturnsView(
                cores.size(),
                DisplayFormat.cents(sum(cores, CoreOwed::deposit)),
                claims.size(),
                suppliers(cores),
                notes(open, rows),
                claims.stream().map(ReturnsView::claim).toList(),
                open.stream()
                        .filter(row -> row.what() == UnitReturn.What.CLAIM)
                        .map(ReturnsView::sent)
                        .toList(),
                months(chosen).stream().map(month -> month(month, rows)).toList(),
                answered(rows),
                chosen.plans().get(0).today().toString());
    }

    /** The newest answer first. */
    private static List<SentRow> answered(List<UnitReturn> rows) {
        return rows.stream()
                .filter(row -> row.settledOn() != null)
                .sorted(Comparator.comparing(
                                UnitReturn::settledOn, Comparator.nullsFirst(Comparator.<LocalDate>naturalOrder()))
                        .reversed())
                .map(ReturnsView::sent)
                .toList();
    }

    /** Months of all depots together, the newest first, from the first shipment of any. */
    private static List<CoreMonth> months(ChosenDepots chosen) {
        YearMonth began = chosen.plans().stream()
                .map(plan -> CoreMonth.began(plan.fleet(), plan.today()))
                .min(YearMonth::compareTo)
                .orElseThrow();
        Map<YearMonth, CoreMonth> months = new TreeMap<>(java.util.Comparator.reverseOrder());
        chosen.plans()
                .forEach(plan -> CoreMonth.of(plan.fleet(), plan.today(), MONTHS, began)
                        .forEach(month -> months.merge(month.month(), month, ReturnsView::together)));
        return List.copyOf(months.values());
    }

    private static CoreMonth together(CoreMonth one, CoreMonth other) {
        return new CoreMonth(
                one.month(),
                one.opening().add(other.opening()),
                one.charged().add(other.charged()),
                one.credited().add(other.credited()),
                one.refused().add(other.refused()),
                one.lost().add(other.lost()),
                one.closing().add(other.closing()));
    }

    private static <T> BigDecimal sum(List<T> rows, Function<T, BigDecimal> amount) {
        return rows.stream().map(amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<SupplierCores> suppliers(List<CoreOwed> cores) {
        Map<String, List<CoreOwed>> bySupplier = cores.stream()
                .collect(Collectors.groupingBy(CoreOwed::supplier, LinkedHashMap::new, Collectors.toList()));
        return bySupplier.entrySet().stream()
                .map(each -> new SupplierCores(
                        UUID.randomUUID().toString(),
                        each.getKey(),
                        DisplayFormat.cents(sum(each.getValue(), CoreOwed::deposit)),
                        each.getValue().stream().map(ReturnsView::core).toList()))
                .toList();
    }

    private static CoreRow core(CoreOwed core) {
        return new CoreRow(
                unit(core.truck(), core.cylinder(), core.fittedOn(), core.fitting()),
                DisplayFormat.day(core.lastDay()),
                core.daysLeft() < 0
                        ? "past by " + days(-core.daysLeft())
                        : core.daysLeft() == 0 ? "today is the last day" : days(core.daysLeft()) + " left",
                switch (core.state()) {
                    case PAST -> "no";
                    case SEND_NOW -> "decide";
                    default -> "plan";
                },
                core.part(),
                core.oldSerial() == null ? "not on record" : core.oldSerial(),
                core.truck(),
                core.cylinder(),
                core.depot(),
                DisplayFormat.shortDate(core.fittedOn()),
                DisplayFormat.cents(core.deposit()));
    }

    private static String days(int days) {
        return days == 1 ? "1 day" : days + " days";
    }

    /** A unit as forms send it. */
    static String unit(String truck, int cylinder, LocalDate fittedOn, int fitting) {
        return cylinder + "\t" + fittedOn + "\t" + fitting + "\t" + truck;
    }

    private static List<Note> notes(List<UnitReturn> open, List<UnitReturn> all) {
        Map<String, List<UnitReturn>> whole = Returns.byDocument(all);
        List<UnitReturn> cores =
                open.stream().filter(row -> row.what() == UnitReturn.What.CORE).toList();
        return Returns.byDocument(cores).entrySet().stream()
                .map(each -> new Note(
                        UUID.randomUUID().toString(),
                        each.getKey(),
                        DisplayFormat.shortDate(each.getValue().get(0).sentOn()) + ", "
                                + each.getValue().get(0).sentBy(),
                        DisplayFormat.cents(sum(each.getValue(), UnitReturn::amount)),
                        each.getValue().size() + " of "
                                + whole.getOrDefault(each.getKey(), List.of()).size(),
                        each.getValue().size()
                                == whole.getOrDefault(each.getKey(), List.of()).size(),
                        each.getValue().size()
                                == whole.getOrDefault(each.getKey(), List.of()).stream()
                                        .filter(row -> row.settledOn() == null)
                                        .count(),
                        each.getValue().stream().map(ReturnsView::sent).toList()))
                .toList();
    }

    private static SentRow sent(UnitReturn row) {
        BigDecimal credit = row.credit();
        return new SentRow(
                UUID.randomUUID().toString(),
                unit(row.truck(), row.cylinder(), row.fittedOn(), row.fitting()),
                row.document(),
                row.what().name(),
                row.truck(),
                row.cylinder(),
                DisplayFormat.shortDate(row.fittedOn()),
                DisplayFormat.shortDate(row.sentOn()) + ", " + row.sentBy(),
                DisplayFormat.cents(row.amount()),
                row.amount().stripTrailingZeros().toPlainString(),
                credit == null || row.settledOn() == null
                        ? ""
                        : DisplayFormat.shortDate(row.settledOn()) + ", " + row.settledBy() + ": "
                                + DisplayFormat.cents(credit)
                                + (row.reason().isEmpty() ? "" : ", " + row.reason()),
                row.state().name().toLowerCase(Locale.ROOT),
                switch (row.state()) {
                    case SENT -> "move";
                    case CREDITED -> "done";
                    case REFUSED -> "no";
                });
    }

    private static ClaimRow claim(WarrantyClaim claim) {
        return new ClaimRow(
                UUID.randomUUID().toString(),
                unit(claim.truck(), claim.cylinder(), claim.fittedOn(), claim.fitting()),
                "cylinder=" + claim.cylinder() + "&fitted=" + claim.fittedOn() + "&fitting=" + claim.fitting(),
                DisplayFormat.shortDate(claim.removedOn()),
                claim.supplier(),
                claim.part(),
                claim.serial() == null ? "not on record" : claim.serial(),
                claim.truck(),
                claim.cylinder(),
                (claim.faultCodes().isEmpty() ? "no fault codes" : String.join("; ", claim.faultCodes())) + "; "
                        + (claim.tests().isEmpty() ? "no tests" : String.join("; ", claim.tests())),
                claim.lacking().isEmpty() ? "nothing" : String.join(", ", claim.lacking()),
                DisplayFormat.cents(claim.value()),
                claim.value().stripTrailingZeros().toPlainString());
    }

    private static MonthRow month(CoreMonth month, List<UnitReturn> rows) {
        List<UnitReturn> claims =
                rows.stream().filter(row -> row.what() == UnitReturn.What.CLAIM).toList();
        BigDecimal claimed = sum(
                claims.stream()
                        .filter(row -> YearMonth.from(row.sentOn()).equals(month.month()))
                        .toList(),
                UnitReturn::amount);
        BigDecimal credits = claims.stream()
                .filter(row -> row.settledOn() != null
                        && YearMonth.from(row.settledOn()).equals(month.month()))
                .map(row -> row.credit() == null ? BigDecimal.ZERO : row.credit())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return new MonthRow(
                month.month().getMonth().getDisplayName(TextStyle.FULL, Locale.UK) + " "
                        + month.month().getYear(),
                DisplayFormat.cents(month.opening()),
                DisplayFormat.cents(month.charged()),
                DisplayFormat.cents(month.credited()),
                DisplayFormat.cents(month.refused()),
                DisplayFormat.cents(month.lost()),
                DisplayFormat.cents(month.closing()),
                DisplayFormat.cents(claimed),
                DisplayFormat.cents(credits));
    }
}
