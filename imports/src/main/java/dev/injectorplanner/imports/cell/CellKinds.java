package dev.injectorplanner.imports.cell;

import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.fleet.Bank;
import dev.injectorplanner.core.fleet.CylinderPick;
import dev.injectorplanner.core.fleet.FaultText;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.Vin;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The kinds of cells that the tables have. */
public final class CellKinds {
    private static final Set<String> BEFORE = Set.of(
            Heading.plain("before records"), Heading.plain("before the records began"), Heading.plain("unknown"));

    public static final CellKind<String> TEXT = of((text, context) -> text, text -> text);

    public static final CellKind<Integer> WHOLE =
            numbers((text, context) -> NumberCells.whole(context.column(), text), String::valueOf);

    public static final CellKind<Double> NUMBER =
            numbers((text, context) -> NumberCells.number(context.column(), text), Require::plain);

    public static final CellKind<Double> PERCENT =
            numbers((text, context) -> NumberCells.percent(context.column(), text), Require::plain);

    public static final CellKind<Double> CHANCE =
            numbers((text, context) -> NumberCells.chance(context.column(), text), Require::plain);

    public static final CellKind<BigDecimal> MONEY =
            numbers((text, context) -> NumberCells.decimal(context.column(), text), BigDecimal::toPlainString);

    public static final CellKind<LocalDate> DATE = dated(DateCells::date, LocalDate::toString);

    /** A day of fitting; {@code before records} where nobody knows it. */
    public static final CellKind<LocalDate> FITTED_ON = dated(
            (text, context) -> BEFORE.contains(Heading.plain(text))
                    ? FittedInjector.BEFORE_RECORDS
                    : DateCells.date(text, context),
            day -> day.equals(FittedInjector.BEFORE_RECORDS) ? "before records" : day.toString());

    public static final CellKind<Instant> INSTANT = dated(InstantCells::instant, Instant::toString);

    public static final CellKind<Boolean> YES_NO = of(CellKinds::yesNo, yes -> yes ? "yes" : "no");

    public static final CellKind<ZoneId> ZONE = of(CellKinds::zone, ZoneId::getId);

    public static final CellKind<Set<DayOfWeek>> WORK_DAYS =
            of((text, context) -> DayCells.read(context.column(), text), DayCells::write);

    /** One day of the week. */
    public static final CellKind<DayOfWeek> WEEKDAY =
            of((text, context) -> DayCells.one(context.column(), text), day -> DayCells.write(Set.of(day)));

    /** A time of day, to the minute. */
    public static final CellKind<LocalTime> TIME =
            of((text, context) -> TimeCells.read(context.column(), text), LocalTime::toString);

    public static final CellKind<List<Integer>> CYLINDERS =
            of((text, context) -> CylinderCells.cylinders(context.column(), text), CylinderCells::writeOrAll);

    public static final CellKind<CylinderPick> CYLINDER_PICK =
            of((text, context) -> CylinderCells.pick(context.column(), text), CylinderPick::toString);

    /** Several texts, separated by semicolons. */
    public static final CellKind<List<String>> TEXTS = of(
            (text, context) -> Arrays.stream(text.split(";"))
                    .map(String::strip)
                    .filter(each -> !each.isEmpty())
                    .toList(),
            texts -> String.join("; ", texts));

    public static final CellKind<List<Integer>> FIRING_ORDER =
            of((text, context) -> CylinderCells.sequence(context.column(), text), CylinderCells::write);

    public static final CellKind<List<Bank>> BANKS =
            of((text, context) -> CylinderCells.banks(context.column(), text), CylinderCells::writeBanks);

    public static final CellKind<Vin> VIN = of((text, context) -> new Vin(text), Vin::text);

    /** A fault as people and scan tools write it. */
    public static final CellKind<FaultText> FAULT_CODE =
            of((text, context) -> FaultText.read(text), fault -> fault.code().text());

    /** A family's name; "all" reads as empty, which {@link dev.injectorplanner.core.fleet.Rule} takes for all. */
    public static final CellKind<String> FAMILY_OR_ALL =
            of((text, context) -> text.equalsIgnoreCase("all") ? "" : text, text -> text);

    private static final Set<String> YES = Set.of("yes", "true", "1", "y");
    private static final Set<String> NO = Set.of("no", "false", "0", "n");

    private CellKinds() {}

    /** One of the names of an enum; case, spaces, hyphens and underscores do not count. */
    public static <E extends Enum<E>> CellKind<E> choice(Class<E> type) {
        List<E> all = Arrays.asList(type.getEnumConstants());
        return of(
                (text, context) -> all.stream()
                        .filter(one -> Heading.plain(one.name()).equals(Heading.plain(text)))
                        .findFirst()
                        .orElseThrow(() -> new InvalidValueException(
                                context.column(),
                                text,
                                "is not a known name",
                                "write one of "
                                        + all.stream().map(CellKinds::small).collect(Collectors.joining(", ")))),
                CellKinds::small);
    }

    private static String small(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT);
    }

    private static boolean yesNo(String text, CellContext context) {
        String small = text.toLowerCase(Locale.ROOT);
        if (YES.contains(small)) {
            return true;
        }
        if (NO.contains(small)) {
            return false;
        }
        throw new InvalidValueException(context.column(), text, "is neither yes nor no", "write yes or no");
    }

    private static ZoneId zone(String text, CellContext context) {
        try {
            return ZoneId.of(text);
        } catch (DateTimeException e) {
            return ZoneId.getAvailableZoneIds().stream()
                    .filter(id -> Heading.plain(id).equals(Heading.plain(text)))
                    .sorted()
                    .findFirst()
                    .map(ZoneId::of)
                    .orElseThrow(() -> new InvalidValueException(
                            context.column(),
                            text,
                            "is not an IANA time zone",
                            "write it as America/Chicago or Europe/Berlin"));
        }
    }

    private static <T> CellKind<T> of(BiFunction<String, CellContext, T> reader, Function<T, String> writer) {
        return new Plain<>(reader, writer, false, false);
    }

    private static <T> CellKind<T> dated(BiFunction<String, CellContext, T> reader, Function<T, String> writer) {
        return new Plain<>(reader, writer, true, false);
    }

    private static <T> CellKind<T> numbers(BiFunction<String, CellContext, T> reader, Function<T, String> writer) {
        return new Plain<>(reader, writer, false, true);
    }

    private record Plain<T>(
            BiFunction<String, CellContext, T> reader,
            Function<T, String> writer,
            boolean holdsDates,
            boolean holdsNumbers)
            implements CellKind<T> {
        @Override
        public T read(String text, CellContext context) {
            return reader.apply(text, context);
        }

        @Override
        public String write(T value) {
            return writer.apply(value);
        }
    }
}
