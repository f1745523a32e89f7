package dev.injectorplanner.app.site;

import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.PageAnswers;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.replay.calibrate.PlanningFigure;
import dev.injectorplanner.core.units.SiteForm;
import dev.injectorplanner.core.units.SiteUnits;
import dev.injectorplanner.imports.vehicle.LogNameRule;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What the site has set: read again each time, so that what another process sets holds at once. */
public final class SiteSettings {
    private static final Logger LOG = LoggerFactory.getLogger(SiteSettings.class);
    private static final String MEANWHILE =
            " in the meantime; nothing was overwritten. Fix: save again to use your value.";
    private static final String ROWS = "select name, setting, version, changed_at, changed_by from site_setting";

    private final StoreSql sql;
    private final InstantSource clock;
    private final PageAnswers<String, Map<String, KeptSetting>> kept;
    private final KeptCalibrations calibrations;

    public SiteSettings(DataSource store) {
        this(store, InstantSource.system());
    }

    public SiteSettings(DataSource store, InstantSource clock) {
        this.sql = new StoreSql(store);
        this.clock = clock;
        this.kept = new PageAnswers<>(store);
        this.calibrations = new KeptCalibrations(store);
    }

    /** What is set, by name. */
    public Map<String, KeptSetting> kept() {
        return kept.of("", key -> {
            Map<String, KeptSetting> rows = new LinkedHashMap<>();
            sql.list(ROWS + " order by name", SiteSettings::row).forEach(row -> rows.put(row.name(), row));
            return Collections.unmodifiableMap(rows);
        });
    }

    /** How plans are made: the planner's defaults, the planning figures as they were last calibrated, and what the site has set. */
    public Policy policy() {
        Map<String, KeptSetting> kept = kept();
        Policy policy = Policy.standard();
        policy = policy.withFigures(calibrations.findFigures().orElse(policy.figures()));
        for (SettingKind kind : SettingKinds.ALL) {
            KeptSetting set = kept.get(kind.name());
            if (set != null) {
                policy = with(policy, kind, set);
            }
        }
        return policy;
    }

    private static Policy with(Policy policy, SettingKind kind, KeptSetting set) {
        try {
            return kind.effect().on(policy, set.value());
        } catch (IllegalArgumentException e) {
            LOG.warn("Setting {} is {}, which is not valid: the default is used", set.name(), set.value());
            return policy;
        }
    }

    /** Planning figures that the site has set: no calibration moves them. */
    public Set<PlanningFigure> setFigures() {
        Set<PlanningFigure> set = EnumSet.noneOf(PlanningFigure.class);
        for (PlanningFigure figure : PlanningFigure.values()) {
            if (kept().containsKey(figure.setting())) {
                set.add(figure);
            }
        }
        return set;
    }

    /** The units in which people of the site read and type. */
    public SiteUnits units() {
        Map<String, KeptSetting> kept = kept();
        return new SiteUnits(
                unit(kept, SettingKinds.DISTANCE, SiteUnits.Distance.values()),
                unit(kept, SettingKinds.VOLUME, SiteUnits.Volume.values()),
                unit(kept, SettingKinds.TEMPERATURE, SiteUnits.Temperature.values()));
    }

    /** How the site wants its papers. */
    public SiteForm form() {
        Map<String, KeptSetting> kept = kept();
        KeptSetting currency = kept.get(SettingKinds.CURRENCY);
        return new SiteForm(
                units(),
                currency == null ? "" : currency.value(),
                unit(kept, SettingKinds.DATES, SiteForm.DateForm.values()),
                unit(kept, SettingKinds.PAPER, SiteForm.PaperSize.values()));
    }

    private static <E extends Enum<E>> E unit(Map<String, KeptSetting> kept, String name, E[] units) {
        KeptSetting set = kept.get(name);
        for (E unit : units) {
            if (set != null && SettingKinds.words(unit).equals(set.value())) {
                return unit;
            }
        }
        return units[0];
    }

    /** How long there must have been no change before plans are made again by themselves; empty: they are not. */
    public Optional<Duration> quietBeforeReplanning() {
        KeptSetting set = kept().get(SettingKinds.REPLAN);
        String said = set == null ? SettingKinds.get(SettingKinds.REPLAN).standard() : set.value();
        return said.equals(SettingKinds.REPLAN_OFF)
                ? Optional.empty()
                : Optional.of(Duration.ofMinutes(Long.parseLong(said.replaceAll("[^0-9]", ""))));
    }

    /** What the site calls itself; empty where it has not said. */
    public String siteName() {
        KeptSetting set = kept().get(SettingKinds.SITE_NAME);
        return set == null ? "" : set.value();
    }

    /** How the file name of a vehicle log tells its truck. */
    public LogNameRule logNames() {
        KeptSetting set = kept().get(SettingKinds.LOG_NAMES);
        return new LogNameRule(set == null ? LogNameRule.STANDARD : set.value());
    }

    /** Whether a plan was made before something was changed that plans are made of. */
    public boolean isBeforeChange(long plan) {
        return sql.inTransaction(connection -> !StoreSql.list(
                        connection,
                        "select turn from settings_gate where id = 1 and newest_plan >= ?",
                        row -> row.getLong(1),
                        plan)
                .isEmpty());
    }

    /** How often something was changed so far; a plan takes it before it reads what it is made of. */
    public long turn() {
        return sql.list("select turn from settings_gate where id = 1", row -> row.getLong(1))
                .get(0);
    }

    /**
     * A plan was kept. Where something was changed while it was made, it does not know of that.
     *
     * @param turn when the plan was begun
     */
    public void planKept(long plan, long turn) {
        sql.retried(connection -> StoreSql.update(
                connection,
                "update settings_gate set newest_plan = ? where id = 1 and turn > ? and coalesce(newest_plan, 0) < ?",
                plan,
                turn,
                plan));
    }

    /**
     * Sets something.
     *
     * @param typed as a person types it, in the site's units
     * @throws InvalidValueException where it cannot be that
     */
    public void set(SettingKind kind, String typed, String who) {
        SiteUnits units = units();
        kind.kept(typed, units);
        change(List.of(new Wish(kind, typed, null)), units, who);
    }

    /** Back to the planner's default. */
    public void clear(SettingKind kind, String who) {
        change(List.of(new Wish(kind, "", null)), units(), who);
    }

    /**
     * What a person wants to be set.
     *
     * @param typed as typed; empty for the planner's default
     * @param seen the version that the person saw, {@link KeptSetting#UNSET} for the default; null to set it in any case
     */
    public record Wish(
            SettingKind kind, String typed, @Nullable Long seen) {}

    /**
     * What a wish was refused for.
     *
     * @param words one sentence
     * @param meanwhile whether somebody else has set it since it was seen: who has read the sentence may set it again
     */
    public record Refused(String words, boolean meanwhile) {}

    /**
     * Sets all that is wished, or, where anything is wrong, nothing. Each change leaves a note in the audit trail.
     *
     * @param units in which the wishes were typed
     * @return what is wrong, a sentence by name of the setting; empty where all was set
     */
    public Map<String, Refused> change(List<Wish> wishes, SiteUnits units, String who) {
        Map<String, Refused> wrong = new LinkedHashMap<>();
        Map<Wish, String> kept = new LinkedHashMap<>();
        for (Wish wish : wishes) {
            try {
                kept.put(wish, wish.typed().isBlank() ? "" : wish.kind().kept(wish.typed(), units));
            } catch (InvalidValueException e) {
                wrong.put(
                        wish.kind().name(),
                        new Refused("“" + e.value() + "” " + e.reason() + ". Fix: " + e.fix() + ".", false));
            }
        }
        return sql.inTransaction(connection -> {
            long turn = takeTurn(connection);
            for (Wish wish : wishes) {
                KeptSetting there = find(connection, wish.kind());
                if (wish.seen() != null && wish.seen() != (there == null ? KeptSetting.UNSET : there.version())) {
                    wrong.putIfAbsent(wish.kind().name(), new Refused(meanwhile(wish.kind(), there, units), true));
                }
            }
            if (wrong.isEmpty()) {
                for (Map.Entry<Wish, String> each : kept.entrySet()) {
                    write(connection, each.getKey().kind(), each.getValue(), turn, units, who);
                }
            } else {
                giveBackTurn(connection);
            }
            return wrong;
        });
    }

    private static @Nullable KeptSetting find(Connection connection, SettingKind kind) throws SQLException {
        return StoreSql.list(connection, ROWS + " where name = ?", SiteSettings::row, kind.storedName()).stream()
                .findFirst()
                .orElse(null);
    }

    private void write(Connection connection, SettingKind kind, String value, long turn, SiteUnits units, String who)
            throws SQLException {
        KeptSetting there = find(connection, kind);
        if (value.equals(there == null ? "" : there.value())) {
            return;
        }
        StoreSql.update(connection, "delete from site_setting where name = ?", kind.storedName());
        Instant now = clock.instant();
        if (!value.isEmpty()) {
            StoreSql.update(
                    connection,
                    "insert into site_setting (name, setting, version, changed_at, changed_by) values (?, ?, ?, ?, ?)",
                    kind.storedName(),
                    value,
                    turn,
                    now,
                    who);
        }
        if (kind.area() != SettingArea.SITE) {
            noteChange(connection);
        }
        String before = words(kind, there == null ? "" : there.value(), units);
        AuditTrail.write(connection, now, who, "set", kind.title(), before, words(kind, value, units));
    }

    private String meanwhile(SettingKind kind, @Nullable KeptSetting there, SiteUnits units) {
        return (there == null
                        ? "Somebody reset it to " + unset(kind, units)
                        : there.changedBy() + " set it to " + words(kind, there.value(), units))
                + MEANWHILE;
    }

    /** In words, with its unit. */
    public String words(SettingKind kind, String value, SiteUnits units) {
        return value.isEmpty() ? unset(kind, units) : kind.words(value, units);
    }

    /** What holds where the site has not set it, and who chose that. */
    public String unset(SettingKind kind, SiteUnits units) {
        return calibrated(kind)
                .map(value -> kind.words(value, units) + " (last calibration)")
                .orElseGet(() -> kind.standardWords(units) + " (planner default)");
    }

    /** The value, as kept, that the last calibration chose for a planning figure. */
    public Optional<String> calibrated(SettingKind kind) {
        return Arrays.stream(PlanningFigure.values())
                .filter(figure -> figure.setting().equals(kind.name()))
                .findFirst()
                .flatMap(figure -> calibrations.findFigures().map(figures -> Require.plain(figure.of(figures))));
    }

    /**
     * Waits for its turn: until this transaction ends nobody else changes settings.
     *
     * @return a number that grows with every turn
     */
    static long takeTurn(Connection connection) throws SQLException {
        StoreSql.update(connection, "update settings_gate set turn = turn + 1 where id = 1");
        return StoreSql.list(connection, "select turn from settings_gate where id = 1", row -> row.getLong(1))
                .get(0);
    }

    /** Nothing was changed after all. */
    static void giveBackTurn(Connection connection) throws SQLException {
        StoreSql.update(connection, "update settings_gate set turn = turn - 1 where id = 1");
    }

    /** Plans kept so far were made without this change. */
    static void noteChange(Connection connection) throws SQLException {
        StoreSql.update(
                connection,
                "update settings_gate set newest_plan = (select coalesce(max(id), 0) from plan_run) where id = 1");
    }

    private static KeptSetting row(ResultSet row) throws SQLException {
        return new KeptSetting(
                SettingKinds.currentName(row.getString("name")),
                row.getString("setting"),
                row.getLong("version"),
                StoreSql.moment(row, "changed_at"),
                row.getString("changed_by"));
    }
}
