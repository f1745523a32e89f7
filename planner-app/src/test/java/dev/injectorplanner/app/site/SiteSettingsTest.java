package dev.injectorplanner.app.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.injectorplanner.app.people.AuditEntry;
import dev.injectorplanner.app.people.AuditTrail;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.check.Require;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.units.SiteUnits;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What a site sets, on both databases. */
class SiteSettingsTest {
    private static SiteSettings of(Database database) {
        var store = database.empty();
        new StoreSql(store.dataSource())
                .inTransaction(connection -> StoreSql.update(connection, "delete from site_setting"));
        return new SiteSettings(store.dataSource());
    }

    private static SiteSettings.Wish wish(String name, String typed, long seen) {
        return new SiteSettings.Wish(SettingKinds.get(name), typed, seen);
    }

    @ParameterizedTest
    @EnumSource
    void what_is_not_set_is_the_planners(Database database) {
        SiteSettings settings = of(database);

        assertThat(settings.policy()).isEqualTo(Policy.standard());
        assertThat(settings.units()).isEqualTo(SiteUnits.METRIC);
        assertThat(settings.siteName()).isEmpty();
    }

    /** Every figure of the list changes the policy in a way no other does, and goes back. */
    @ParameterizedTest
    @EnumSource
    void every_figure_does_something_of_its_own(Database database) {
        SiteSettings settings = of(database);
        Set<Policy> policies = new HashSet<>(Set.of(Policy.standard()));
        for (SettingKind kind : SettingKinds.ALL) {
            if (kind.area() == SettingArea.SITE) {
                continue;
            }
            settings.set(kind, another(kind), "ann");
            assertThat(policies.add(settings.policy())).as(kind.name()).isTrue();
            settings.clear(kind, "ann");
            assertThat(settings.policy()).as(kind.name()).isEqualTo(Policy.standard());
        }
    }

    /** Within its range and not the default: its upper end, or the lower where that is the default. */
    private static String another(SettingKind kind) {
        if (!kind.choices().isEmpty()) {
            return kind.choices().get(kind.standard().equals("yes") ? 1 : 0);
        }
        String most = kind.shown(Require.plain(kind.most()), SiteUnits.METRIC);
        return most.equals(kind.shown(kind.standard(), SiteUnits.METRIC))
                ? kind.shown(Require.plain(kind.least()), SiteUnits.METRIC)
                : most;
    }

    @ParameterizedTest
    @EnumSource
    void who_set_it_when_and_what_stood_there_is_kept(Database database) {
        SiteSettings settings = of(database);
        settings.set(SettingKinds.get("service-level"), "97.5", "ann");
        settings.set(SettingKinds.get("service-level"), "98", "bob");

        assertThat(settings.policy().orders().serviceLevel()).isEqualTo(0.98);
        assertThat(settings.kept().get("service-level").changedBy()).isEqualTo("bob");
        AuditEntry newest = new AuditTrail(database.empty().dataSource())
                .list(Long.MAX_VALUE, 1)
                .get(0);
        assertThat(newest.who()).isEqualTo("bob");
        assertThat(newest.subject()).isEqualTo("Service level");
        assertThat(newest.before()).isEqualTo("97.5 %");
        assertThat(newest.after()).isEqualTo("98 %");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rescheduling-cost | many | is not a number",
                "rescheduling-cost | -1 | is out of range",
                "rescheduling-cost | 1e3 | is not a number",
                "frozen-weeks | 1.5 | is not a whole number",
                "frozen-weeks | 27 | is out of range",
                "service-level | 100 | is out of range",
                "protect-to | -60 | is out of range",
                "renew-coolant | maybe | is not one of the choices",
                "distance | leagues | is not one of the choices",
            })
    void what_cannot_be_is_said(String name, String typed, String reason) {
        SiteSettings settings = of(Database.HSQLDB);

        assertThatThrownBy(() -> settings.set(SettingKinds.get(name), typed, "ann"))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("\"" + typed + "\": " + reason)
                .hasMessageContaining("Fix: ");
        assertThat(settings.kept()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void of_several_wishes_all_are_set_or_none(Database database) {
        SiteSettings settings = of(database);

        Map<String, SiteSettings.Refused> wrong = settings.change(
                List.of(wish("rescheduling-cost", "120", 0), wish("frozen-weeks", "90", 0)), SiteUnits.METRIC, "ann");

        assertThat(wrong).containsOnlyKeys("frozen-weeks");
        assertThat(settings.kept()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void what_somebody_else_set_meanwhile_is_not_overwritten(Database database) {
        SiteSettings settings = of(database);
        settings.set(SettingKinds.get("rescheduling-cost"), "100", "ann");
        long seen = settings.kept().get("rescheduling-cost").version();
        settings.set(SettingKinds.get("rescheduling-cost"), "150", "bob");

        Map<String, SiteSettings.Refused> wrong =
                settings.change(List.of(wish("rescheduling-cost", "120", seen)), SiteUnits.METRIC, "ann");

        assertThat(wrong.get("rescheduling-cost").words())
                .contains("bob set it to 150")
                .contains("Fix: ");
        assertThat(wrong.get("rescheduling-cost").meanwhile()).isTrue();
        assertThat(settings.policy().visits().reschedulingCost()).isEqualTo(150);
        long now = settings.kept().get("rescheduling-cost").version();
        assertThat(settings.change(List.of(wish("rescheduling-cost", "120", now)), SiteUnits.METRIC, "ann"))
                .isEmpty();
        assertThat(settings.policy().visits().reschedulingCost()).isEqualTo(120);
    }

    /** 12,000 miles are 19,312.128 km; 5.28 gallons are 19.98697 l; -30 F are -34.44 C: by the definitions, with a calculator. */
    @ParameterizedTest
    @EnumSource
    void people_type_and_read_the_sites_units(Database database) {
        SiteSettings settings = of(database);
        settings.set(SettingKinds.get("distance"), "miles", "ann");
        settings.set(SettingKinds.get("volume"), "us gallons", "ann");
        settings.set(SettingKinds.get("temperature"), "fahrenheit", "ann");
        SiteUnits units = settings.units();
        settings.set(SettingKinds.get("defect-delay"), "12000", "ann");
        settings.set(SettingKinds.get("water-container"), "5.28", "ann");
        settings.set(SettingKinds.get("protect-to"), "-30", "ann");

        Policy policy = settings.policy();
        assertThat(policy.defects().meanDelayKm()).isCloseTo(19_312.128, within(1e-6));
        assertThat(policy.coolant().waterContainerLitres()).isCloseTo(19.98697, within(1e-5));
        assertThat(policy.coolant().protectToC()).isCloseTo(-34.4444, within(1e-4));
        settings.kept().forEach((name, kept) -> {
            if (name.equals("defect-delay")) {
                assertThat(SettingKinds.get(name).shown(kept.value(), units)).isEqualTo("12000");
            }
        });
        assertThat(SettingKinds.get("water-container")
                        .shown(settings.kept().get("water-container").value(), units))
                .isEqualTo("5.28");
        assertThat(SettingKinds.get("protect-to")
                        .shown(settings.kept().get("protect-to").value(), units))
                .isEqualTo("-30");
    }
}
