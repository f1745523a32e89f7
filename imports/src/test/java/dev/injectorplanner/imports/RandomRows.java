package dev.injectorplanner.imports;

import dev.injectorplanner.core.fleet.AccessStep;
import dev.injectorplanner.core.fleet.AwayWindow;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.CapacityOverride;
import dev.injectorplanner.core.fleet.CylinderPick;
import dev.injectorplanner.core.fleet.CylinderTest;
import dev.injectorplanner.core.fleet.Depot;
import dev.injectorplanner.core.fleet.DepotShift;
import dev.injectorplanner.core.fleet.DutyGroup;
import dev.injectorplanner.core.fleet.EngineFamily;
import dev.injectorplanner.core.fleet.FailureAnswer;
import dev.injectorplanner.core.fleet.Fault;
import dev.injectorplanner.core.fleet.FaultCode;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.fleet.IntervalTask;
import dev.injectorplanner.core.fleet.JobPart;
import dev.injectorplanner.core.fleet.LogSource;
import dev.injectorplanner.core.fleet.Origin;
import dev.injectorplanner.core.fleet.Part;
import dev.injectorplanner.core.fleet.PartKind;
import dev.injectorplanner.core.fleet.Per;
import dev.injectorplanner.core.fleet.PurchaseLine;
import dev.injectorplanner.core.fleet.Reading;
import dev.injectorplanner.core.fleet.Repair;
import dev.injectorplanner.core.fleet.Replacement;
import dev.injectorplanner.core.fleet.Rule;
import dev.injectorplanner.core.fleet.RuleKind;
import dev.injectorplanner.core.fleet.StockLine;
import dev.injectorplanner.core.fleet.TaskDone;
import dev.injectorplanner.core.fleet.TestKind;
import dev.injectorplanner.core.fleet.Transfer;
import dev.injectorplanner.core.fleet.Truck;
import dev.injectorplanner.core.fleet.UnitReturn;
import dev.injectorplanner.core.fleet.Vin;
import dev.injectorplanner.imports.table.Table;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** Rows of every table with awkward names, from a seed. */
final class RandomRows {
    private static final String[] NAMES = {
        "T-0001",
        "007",
        "O'Hare, \"north\"",
        "=SUM(A1)",
        "-12",
        "@home",
        "Müller & Söhne",
        "Łódź",
        "東京",
        "a;b",
        "tab|pipe",
        "1,234",
        "03/04/2026",
        "all",
        "yes",
        "x".repeat(60)
    };

    private final Random random;
    private int made;

    RandomRows(long seed) {
        this.random = new Random(seed);
    }

    /** Rows of a table with different keys. */
    <R> List<R> of(Table<R> table, int count) {
        Map<List<Object>, R> rows = new LinkedHashMap<>();
        Supplier<?> maker = maker(table);
        while (rows.size() < count) {
            R row = table.rowType().cast(maker.get());
            rows.put(table.key(row), row);
        }
        return List.copyOf(rows.values());
    }

    private Supplier<?> maker(Table<?> table) {
        return switch (table.name()) {
            case "depots" -> this::depot;
            case "capacity" -> () -> new CapacityOverride(name(), day(), number(100), random.nextInt(9));
            case "engine_families" -> this::family;
            case "access" -> this::step;
            case "duty_groups" -> () -> new DutyGroup(name(), random.nextInt(99), money());
            case "trucks" -> this::truck;
            case "injectors" -> this::injector;
            case "replacements" -> this::replacement;
            case "readings" -> this::reading;
            case "faults" -> this::fault;
            case "cylinder_tests" -> this::test;
            case "parts" -> this::part;
            case "job_parts" -> this::jobPart;
            case "stock" -> () -> new StockLine(name(), name(), number(1_000));
            case "purchase_lines" -> this::purchaseLine;
            case "transfers" ->
                () -> new Transfer(
                        "way " + made++, name(), BigDecimal.valueOf(random.nextInt(100_000), 2), random.nextInt(60));
            case "away" -> this::away;
            case "shifts" -> this::shift;
            case "repairs" -> this::repair;
            case "task_done" -> () -> new TaskDone(name(), name(), day(), maybe(this::km), maybe(() -> number(30_000)));
            case "failure_answers" ->
                () -> new FailureAnswer("part " + made++, one(FailureAnswer.Answer.class), day(), name());
            case "log_sources" -> this::logSource;
            case "returns" -> this::returned;
            case "intervals" -> this::interval;
            case "rules" -> this::rule;
            default -> throw new IllegalArgumentException("no rows for " + table);
        };
    }

    private PurchaseLine purchaseLine() {
        double quantity = 0.5 + number(50);
        return new PurchaseLine(
                name(),
                name(),
                name(),
                quantity,
                day(),
                maybe(this::day),
                maybe(this::day),
                random.nextBoolean() ? 0 : quantity,
                maybe(() -> BigDecimal.valueOf(random.nextInt(100_000), 2)));
    }

    private Rule rule() {
        RuleKind kind = one(RuleKind.class);
        double limit = kind == RuleKind.SAFETY ? 1 + number(59) : 0.1 + number(1e6);
        return new Rule(maybe(this::familyName), kind, limit, maybe(this::days));
    }

    private Depot depot() {
        Set<DayOfWeek> days = EnumSet.of(one(DayOfWeek.class), one(DayOfWeek.class), one(DayOfWeek.class));
        BigDecimal labour = money();
        List<String> zones = ZoneId.getAvailableZoneIds().stream().sorted().toList();
        ZoneId zone = ZoneId.of(zones.get(random.nextInt(zones.size())));
        return new Depot(
                name(),
                name(),
                zone,
                1 + days(),
                number(99),
                days,
                labour,
                labour.add(money()),
                number(40),
                maybe(this::day));
    }

    private EngineFamily family() {
        int cylinders = 1 + random.nextInt(16);
        List<Integer> order = shuffled(cylinders);
        int left = cylinders == 1 ? 1 : 1 + random.nextInt(cylinders - 1);
        List<Integer> all = shuffled(cylinders);
        List<Bank> banks = left == cylinders
                ? List.of(new Bank("inline", all))
                : List.of(new Bank("left", all.subList(0, left)), new Bank("bank 2", all.subList(left, cylinders)));
        return new EngineFamily(name(), cylinders, banks, order, number(9), number(90), number(99), name(), money());
    }

    private List<Integer> shuffled(int cylinders) {
        List<Integer> all =
                new ArrayList<>(IntStream.rangeClosed(1, cylinders).boxed().toList());
        Collections.shuffle(all, random);
        return all;
    }

    private AccessStep step() {
        List<Integer> cylinders = shuffled(16).subList(0, random.nextInt(5));
        return new AccessStep(name(), name(), days(), number(9), cylinders, number(99), text());
    }

    private Truck truck() {
        LocalDate in = day();
        Vin vin = new Vin("W" + String.format("%016d", random.nextInt(1_000_000_000)));
        return new Truck(
                name(),
                vin,
                name(),
                name(),
                maybe(this::name),
                in,
                maybe(() -> in.plusDays(days())),
                maybe(this::day),
                maybe(this::day));
    }

    private FittedInjector injector() {
        LocalDate in = random.nextInt(9) == 0 ? FittedInjector.BEFORE_RECORDS : day();
        boolean out = random.nextBoolean();
        return new FittedInjector(
                name(),
                1 + random.nextInt(16),
                name(),
                maybe(this::name),
                maybe(this::name),
                one(Origin.class),
                in,
                maybe(this::km),
                maybe(() -> number(30_000)),
                out ? (in.equals(FittedInjector.BEFORE_RECORDS) ? day() : in.plusDays(days())) : null,
                out ? maybe(this::km) : null,
                out ? maybe(() -> number(30_000)) : null,
                out ? maybe(() -> one(Found.class)) : null,
                1 + random.nextInt(3));
    }

    private Replacement replacement() {
        List<Integer> cylinders =
                random.nextBoolean() ? List.of() : List.of(1 + random.nextInt(16), 1 + random.nextInt(16));
        return new Replacement(
                name(),
                new CylinderPick(cylinders, cylinders.isEmpty() && random.nextBoolean() ? "left" : ""),
                day(),
                maybe(this::km),
                maybe(() -> number(30_000)),
                maybe(this::name),
                maybe(() -> one(Origin.class)),
                random.nextBoolean() ? List.of() : List.of("S1", "S 2"),
                random.nextBoolean() ? List.of() : List.of("=A1"),
                maybe(() -> one(Found.class)));
    }

    private Reading reading() {
        Double km = maybe(this::km);
        return new Reading(
                name(),
                moment(),
                km,
                km == null ? Double.valueOf(number(1e5)) : maybe(() -> number(9e5)),
                random.nextBoolean());
    }

    private LogSource logSource() {
        String truck = maybe(this::name);
        return new LogSource(
                name() + "*.log",
                maybe(() -> random.nextInt(254)),
                truck,
                truck == null ? Integer.valueOf(1 + random.nextInt(4)) : maybe(() -> 1 + random.nextInt(4)));
    }

    private Fault fault() {
        FaultCode code =
                new FaultCode(random.nextBoolean() ? "P0171" : random.nextInt(4_000) + "/" + random.nextInt(32));
        Integer cylinder = code.cylinder() == null ? maybe(() -> 1 + random.nextInt(16)) : code.cylinder();
        Instant seenAt = moment();
        Instant last = maybe(() -> seenAt.plusSeconds(random.nextInt(100_000)));
        return new Fault(name(), seenAt, code, cylinder, days(), maybe(this::km), last);
    }

    private CylinderTest test() {
        double value = number(100) - 50;
        return new CylinderTest(
                name(), 1 + random.nextInt(16), moment(), one(TestKind.class), value, "mm3/stroke", text());
    }

    private Part part() {
        int lead = days();
        return new Part(
                name(),
                text(),
                one(PartKind.class),
                name(),
                money(),
                money(),
                days(),
                lead,
                lead + random.nextInt(9),
                1 + random.nextInt(9),
                random.nextInt(9),
                random.nextInt(60),
                km(),
                maybe(() -> "[0-9A-Z]{" + days() + "}"));
    }

    private JobPart jobPart() {
        Per per = one(Per.class);
        return new JobPart(
                name(),
                per,
                per == Per.STEP ? name() : null,
                name(),
                0.25 + number(9),
                random.nextDouble(),
                per == Per.TASK ? name() : null);
    }

    private DepotShift shift() {
        LocalTime start = LocalTime.of(random.nextInt(12), random.nextInt(60));
        boolean rests = random.nextBoolean();
        return new DepotShift(
                name(),
                DayOfWeek.of(1 + random.nextInt(7)),
                start,
                start.plusMinutes(300),
                rests ? start.plusMinutes(60) : null,
                rests ? start.plusMinutes(90) : null);
    }

    private UnitReturn returned() {
        UnitReturn sent = new UnitReturn(
                random.nextBoolean() ? UnitReturn.What.CORE : UnitReturn.What.CLAIM,
                name(),
                1 + random.nextInt(16),
                day(),
                name(),
                day(),
                name(),
                money(),
                null,
                null,
                null,
                text());
        return random.nextBoolean()
                ? sent
                : sent.settled(sent.sentOn().plusDays(random.nextInt(60)), name(), money(), "as agreed");
    }

    private Repair repair() {
        return new Repair(name(), day(), maybe(this::km), name(), maybe(() -> 1.5), text(), name());
    }

    private AwayWindow away() {
        LocalDate from = day();
        return new AwayWindow(name(), from, from.plusDays(random.nextInt(9)), text());
    }

    private IntervalTask interval() {
        Double km = maybe(() -> 1 + km());
        return new IntervalTask(
                name(),
                name(),
                km,
                km == null ? Double.valueOf(1 + number(999)) : null,
                maybe(this::days),
                number(9),
                random.nextBoolean());
    }

    private String name() {
        String name = NAMES[random.nextInt(NAMES.length)];
        return random.nextInt(3) == 0 ? name : "T " + made++;
    }

    private String familyName() {
        return "F" + made++;
    }

    private String text() {
        return random.nextInt(3) == 0 ? "" : "mind, \"the\" " + name();
    }

    private LocalDate day() {
        return LocalDate.of(2000, 1, 1).plusDays(random.nextInt(12_000));
    }

    private int days() {
        return 1 + random.nextInt(99);
    }

    private Instant moment() {
        return Instant.ofEpochSecond(1_000_000_000L + random.nextInt(900_000_000), random.nextInt(3) * 1_000L);
    }

    private double km() {
        return number(1_500_000);
    }

    private double number(double below) {
        return switch (random.nextInt(4)) {
            case 0 -> Math.rint(random.nextDouble() * below);
            case 1 -> Math.rint(random.nextDouble() * below * 10) / 10;
            default -> random.nextDouble() * below;
        };
    }

    private BigDecimal money() {
        return BigDecimal.valueOf(random.nextInt(10_000_000), random.nextInt(5));
    }

    private <E extends Enum<E>> E one(Class<E> type) {
        return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
    }

    private <T> T maybe(Supplier<T> value) {
        return random.nextBoolean() ? value.get() : null;
    }
}
