package dev.injectorplanner.app.forecast;

import dev.injectorplanner.app.store.StoreException;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.FleetIndex;
import dev.injectorplanner.core.fleet.FleetSnapshot;
import dev.injectorplanner.core.fleet.Found;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.risk.InjectorRisk;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;

/** The chances that plans gave, kept once a depot and week. */
public final class ForecastBook {
    private static final int FIELDS = 4;

    private final StoreSql sql;

    public ForecastBook(DataSource source) {
        this.sql = new StoreSql(source);
    }

    /** A forecast as it was kept. */
    private record Kept(LocalDate madeFor, String truck, int cylinder, LocalDate fittedOn, double chance) {}

    /** Keeps a plan's chances for each of its depots whose week has none yet. */
    public void keep(FleetSnapshot fleet, Plan plan) {
        Map<String, List<InjectorRisk>> byDepot = plan.risks().stream()
                .collect(Collectors.groupingBy(InjectorRisk::depot, TreeMap::new, Collectors.toList()));
        FleetIndex index = new FleetIndex(fleet);
        IsoWeek week = IsoWeek.of(plan.today());
        byDepot.forEach((depot, risks) -> {
            try {
                keep(depot, week, plan.today(), written(index, risks, plan.today()));
            } catch (StoreException e) {
                if (!StoreSql.isOtherFaster(e)) { // another node kept the same week
                    throw e;
                }
            }
        });
    }

    private void keep(String depot, IsoWeek week, LocalDate day, byte[] chances) {
        sql.inTransaction(connection -> {
            boolean there = !StoreSql.list(
                            connection,
                            "select week from kept_forecast where depot = ? and week = ?",
                            row -> row.getString("week"),
                            depot,
                            week.toString())
                    .isEmpty();
            if (!there) {
                StoreSql.update(
                        connection,
                        "insert into kept_forecast (depot, week, made_for, chances) values (?, ?, ?, ?)",
                        depot,
                        week.toString(),
                        day,
                        chances);
            }
            return true;
        });
    }

    private static byte[] written(FleetIndex fleet, List<InjectorRisk> risks, LocalDate today) {
        StringBuilder lines = new StringBuilder();
        for (InjectorRisk risk : risks) {
            fleet.injectorsOf(risk.truck()).stream()
                    .filter(unit -> unit.cylinder() == risk.cylinder() && unit.fittedAt(today))
                    .findFirst()
                    .ifPresent(unit -> lines.append(risk.truck())
                            .append('\t')
                            .append(risk.cylinder())
                            .append('\t')
                            .append(unit.fittedOn())
                            .append('\t')
                            .append(String.format(Locale.ROOT, "%.5f", risk.chance12()))
                            .append('\n'));
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(bytes)) {
            zip.write(lines.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /**
     * A depot's forecasts that are 12 weeks old, held against its records.
     *
     * @param today the day up to which records are known
     */
    public List<Calibration.Outcome> outcomes(FleetIndex fleet, String depot, LocalDate today) {
        List<Kept> kept = sql
                .list(
                        "select made_for, chances from kept_forecast where depot = ? and made_for <= ? order by week",
                        row -> read(row.getDate("made_for").toLocalDate(), row.getBytes("chances")),
                        depot,
                        today.minusDays(Calibration.DAYS))
                .stream()
                .flatMap(List::stream)
                .toList();
        List<Calibration.Outcome> outcomes = new ArrayList<>();
        for (Kept each : kept) {
            find(fleet, each).ifPresent(unit -> outcomes.add(outcome(each, unit)));
        }
        return outcomes;
    }

    private static Optional<FittedInjector> find(FleetIndex fleet, Kept kept) {
        return fleet.injectorsOf(kept.truck()).stream()
                .filter(unit ->
                        unit.cylinder() == kept.cylinder() && unit.fittedOn().equals(kept.fittedOn()))
                .filter(unit -> unit.removedOn() == null || !unit.removedOn().isBefore(kept.madeFor()))
                .findFirst();
    }

    private static Calibration.Outcome outcome(Kept kept, FittedInjector unit) {
        LocalDate end = kept.madeFor().plusDays(Calibration.DAYS);
        @Nullable LocalDate out = unit.removedOn();
        boolean within = out != null && !out.isAfter(end);
        boolean failed = within && unit.found() == Found.FAILED;
        long days = within && !failed ? ChronoUnit.DAYS.between(kept.madeFor(), out) : Calibration.DAYS;
        return new Calibration.Outcome(kept.chance(), days, failed);
    }

    /** The day from which the first forecast of these depots can be judged; empty where none was kept. */
    public Optional<LocalDate> findFirstJudged(List<String> depots) {
        return depots.stream()
                .flatMap(depot -> sql
                        .list(
                                "select min(made_for) as first_day from kept_forecast where depot = ?",
                                row -> Optional.ofNullable(row.getDate("first_day")),
                                depot)
                        .stream())
                .flatMap(Optional::stream)
                .map(day -> day.toLocalDate().plusDays(Calibration.DAYS))
                .min(LocalDate::compareTo);
    }

    private static List<Kept> read(LocalDate madeFor, byte[] bytes) {
        List<Kept> kept = new ArrayList<>();
        try (GZIPInputStream zip = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            for (String line : new String(zip.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
                String[] field = line.split("\t");
                if (field.length == FIELDS) {
                    kept.add(new Kept(
                            madeFor,
                            field[0],
                            Integer.parseInt(field[1]),
                            LocalDate.parse(field[2]),
                            Double.parseDouble(field[3])));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return kept;
    }
}
