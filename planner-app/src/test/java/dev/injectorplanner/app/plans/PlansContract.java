package dev.injectorplanner.app.plans;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.demo.SampleFiles;
import dev.injectorplanner.app.holds.Hold;
import dev.injectorplanner.app.intake.LoadListener;
import dev.injectorplanner.app.intake.LoadSettings;
import dev.injectorplanner.app.intake.LoadSettings.Mode;
import dev.injectorplanner.app.planning.Planning.NothingToPlanException;
import dev.injectorplanner.app.store.StoreSettings;
import dev.injectorplanner.app.store.StoreSql;
import dev.injectorplanner.core.calendar.IsoWeek;
import dev.injectorplanner.core.check.InvalidValueException;
import dev.injectorplanner.core.generate.DemoFleet;
import dev.injectorplanner.core.plan.Plan;
import dev.injectorplanner.core.plan.Policy;
import dev.injectorplanner.core.visit.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** Kept plans, holds and confirmed visits on the demo's fleet, whatever database is below. */
@TestInstance(Lifecycle.PER_CLASS)
abstract class PlansContract {
    static final Instant NIGHT = Instant.parse("2026-03-02T01:00:00Z");
    private static final Policy POLICY = Policy.standard().withWeeks(8);
    static final String DEPOT = "Norrvik";

    Application application;
    Plan plan;

    abstract StoreSettings store(Path data) throws Exception;

    @BeforeAll
    void load(@TempDir Path files) throws Exception {
        application = Application.open(store(files.resolve("data")));
        application
                .intake()
                .load(
                        SampleFiles.copyTo(Files.createDirectories(files.resolve("files"))),
                        LoadSettings.of(Mode.GOOD_ROWS),
                        new LoadListener() {});
    }

    @AfterAll
    void close() {
        application.close();
    }

    @BeforeEach
    void forget() {
        application.store().inTransaction(session -> {
            session.createMutationQuery("delete from PlanRunRow").executeUpdate();
            session.createMutationQuery("delete from HoldRow").executeUpdate();
            return session.createMutationQuery("delete from ConfirmedVisitRow").executeUpdate();
        });
        plan = planned(DEPOT);
    }

    private Plan planned(@Nullable String depot) {
        return application.planning().plan(DemoFleet.TODAY, POLICY, depot).plan();
    }

    @Test
    void a_plan_comes_back_word_for_word() {
        long id = application.plans().keep("run 1", DEPOT, NIGHT, plan);
        assertThat(application.plans().findInForce(DEPOT)).hasValue(new KeptPlan(id, DEPOT, NIGHT, plan));
        assertThat(application.plans().find(id)).isPresent();
    }

    @Test
    void its_visits_are_told_without_reading_the_plan() {
        application.plans().keep("run 1", DEPOT, NIGHT, plan);
        List<KeptVisit> visits = application.plans().listVisits(DEPOT);
        assertThat(visits).hasSameSizeAs(plan.visits());
        Visit first = plan.visits().get(0);
        assertThat(visits.get(0).truck()).isEqualTo(first.truck());
        assertThat(visits.get(0).cylinders()).isEqualTo(first.cylinders());
        assertThat(visits.get(0).tasks()).isEqualTo(first.tasks());
        assertThat(visits).anySatisfy(visit -> assertThat(visit.startsAt()).isNotNull());
    }

    @Test
    void a_run_that_happens_twice_keeps_its_plan_once() {
        long first = application.plans().keep("nightly 2026-03-02", DEPOT, NIGHT, plan);
        long second = application.plans().keep("nightly 2026-03-02", DEPOT, NIGHT.plusSeconds(60), plan);
        assertThat(second).isEqualTo(first);
        assertThat(application.plans().findInForce(DEPOT).orElseThrow().keptAt())
                .isEqualTo(NIGHT);
    }

    @Test
    void the_newest_is_in_force_be_it_of_one_depot_or_of_all() {
        application.plans().keep("one", DEPOT, NIGHT, plan);
        long all = application.plans().keep("all", null, NIGHT.plusSeconds(1), planned(null));
        assertThat(application.plans().findInForceId(DEPOT)).hasValue(all);
        long one = application.plans().keep("one again", DEPOT, NIGHT.plusSeconds(2), plan);
        assertThat(application.plans().findInForceId(DEPOT)).hasValue(one);
        assertThat(application.plans().findInForceId("Nowhere")).hasValue(all);
    }

    @Test
    void what_was_in_force_before_can_be_asked() {
        application.plans().keep("yesterday", DEPOT, NIGHT, plan);
        application.plans().keep("today", DEPOT, NIGHT.plusSeconds(86_400), plan);
        assertThat(application.plans().findVisitsBefore(DEPOT, NIGHT)).isEmpty();
        assertThat(application.plans().findVisitsBefore(DEPOT, NIGHT.plusSeconds(1)))
                .hasValueSatisfying(visits -> assertThat(visits).hasSameSizeAs(plan.visits()));
    }

    @Test
    void old_plans_keep_their_visits_and_let_their_documents_go() {
        long oldest = application.plans().keep("night 0", DEPOT, NIGHT, plan);
        for (int night = 1; night <= 7; night++) {
            application.plans().keep("night " + night, DEPOT, NIGHT.plusSeconds(86_400L * night), plan);
        }
        assertThat(application.plans().find(oldest)).isEmpty();
        assertThat(application.plans().findVisitsBefore(DEPOT, NIGHT.plusSeconds(1)))
                .hasValueSatisfying(visits -> assertThat(visits).isNotEmpty());
    }

    @Test
    void a_stored_pin_holds_in_every_later_plan() {
        Visit visit = plan.visits().stream()
                .filter(each -> !each.cylinders().isEmpty()) // no pin puts a safety visit off
                .findFirst()
                .orElseThrow();
        IsoWeek week = visit.week().plus(3);
        application.holds().hold(hold(visit.truck(), Hold.Kind.PIN, week));
        assertThat(weekOf(planned(DEPOT), visit.truck())).isEqualTo(week);
        assertThat(application.holds().release(visit.truck(), NIGHT, "Ilze")).isEqualTo(1);
        assertThat(planned(DEPOT)).isEqualTo(plan);
    }

    @Test
    void a_stored_block_keeps_a_truck_out() {
        String truck = plan.visits().get(0).truck();
        application.holds().hold(hold(truck, Hold.Kind.REFUSE, null));
        assertThat(planned(DEPOT).visits()).noneMatch(visit -> visit.truck().equals(truck));
    }

    @Test
    void the_later_hold_of_a_truck_wins() {
        String truck = plan.visits().get(0).truck();
        IsoWeek week = plan.firstWeek().plus(2);
        application.holds().hold(hold(truck, Hold.Kind.PIN, week.plus(1)));
        application.holds().hold(hold(truck, Hold.Kind.PIN, week));
        application.holds().hold(hold(truck, Hold.Kind.REFUSE, week.plus(1)));
        assertThat(application.holds().list(DEPOT)).hasSize(2);
        application.holds().hold(hold(truck, Hold.Kind.REFUSE, week));
        assertThat(application.holds().list(DEPOT)).allMatch(hold -> hold.kind() == Hold.Kind.REFUSE);
        application.holds().hold(hold(truck, Hold.Kind.REFUSE, null));
        assertThat(application.holds().list(DEPOT)).singleElement().matches(hold -> hold.week() == null);
        application.holds().hold(hold(truck, Hold.Kind.PIN, week));
        assertThat(application.holds().list(null)).singleElement().matches(hold -> week.equals(hold.week()));
    }

    @Test
    void a_pin_that_is_over_or_beyond_the_plan_waits() {
        String truck = plan.visits().get(0).truck();
        application.holds().hold(hold(truck, Hold.Kind.PIN, plan.firstWeek().plus(-1)));
        assertThat(planned(DEPOT)).isEqualTo(plan);
        application.holds().hold(hold(truck, Hold.Kind.PIN, plan.firstWeek().plus(20)));
        assertThat(planned(DEPOT).visits()).noneMatch(visit -> visit.truck().equals(truck));
    }

    @Test
    void an_unknown_truck_cannot_be_held() {
        assertThatThrownBy(() -> application.holds().hold(hold("T-none", Hold.Kind.REFUSE, null)))
                .isInstanceOf(InvalidValueException.class)
                .hasMessageContaining("T-none")
                .hasMessageContaining("Fix: ");
    }

    /** Left to itself the truck would come in another week; confirmed for a frozen week it stays there. */
    @Test
    void confirmed_visits_stay_in_the_frozen_weeks() {
        Plan free = planned(null);
        IsoWeek week = plan.firstWeek();
        Visit late = free.visits().stream()
                .filter(visit -> visit.week().compareTo(week) > 0)
                .findFirst()
                .orElseThrow();
        application.holds().hold(hold(late.truck(), Hold.Kind.PIN, week));
        application.plans().keep("run 1", null, NIGHT, planned(null));
        var confirmed = application.confirmation().confirm(late.depot(), week, NIGHT, "Ilze");
        assertThat(confirmed.trucks()).contains(late.truck());
        assertThat(confirmed.added()).isEqualTo(confirmed.trucks().size());
        assertThat(application
                        .confirmation()
                        .confirm(late.depot(), week, NIGHT, "Ilze")
                        .added())
                .isZero();
        application.holds().release(late.truck(), NIGHT, "Ilze");
        assertThat(weekOf(planned(null), late.truck())).isEqualTo(week);
        new StoreSql(application.store().dataSource())
                .inTransaction(connection -> StoreSql.update(connection, "delete from announced_visit"));
        assertThat(planned(null)).isEqualTo(free);
    }

    @Test
    void a_depot_is_judged_by_the_lives_of_the_whole_fleet() {
        assertThat(plan.lives()).isEqualTo(planned(null).lives());
        assertThat(plan.signEffects()).isEqualTo(planned(null).signEffects());
    }

    /** The same fleet, priced with what the visits of an earlier day's plan paid for shared access. */
    @Test
    void access_labour_is_shared_as_the_plans_of_earlier_days_paid_it() {
        application.plans().keep("the day before", DEPOT, NIGHT, earlier());
        application.plans().keep("the same day", DEPOT, NIGHT.plusSeconds(1), plan);
        assertThat(application.plans().listEarlier(DEPOT, DemoFleet.TODAY, 4)).containsExactly(earlier());
        assertThat(planned(DEPOT).cost()).isNotEqualTo(plan.cost());
        assertThat(planned(DEPOT)).isEqualTo(planned(DEPOT));
    }

    /** A sweep every quarter of an hour keeps many plans a day. */
    @Test
    void many_plans_of_one_day_leave_the_days_before_whole() {
        application.plans().keep("the day before", DEPOT, NIGHT, earlier());
        for (int sweep = 1; sweep <= 9; sweep++) {
            application.plans().keep("sweep " + sweep, DEPOT, NIGHT.plusSeconds(900L * sweep), plan);
        }
        assertThat(application.plans().listEarlier(DEPOT, DemoFleet.TODAY, 4)).containsExactly(earlier());
        assertThat(application.plans().listEarlier(DEPOT, DemoFleet.TODAY.plusDays(1), 4))
                .containsExactly(plan, earlier());
        assertThat(application.plans().listEarlier(DEPOT, DemoFleet.TODAY.plusDays(1), 1))
                .containsExactly(plan);
    }

    /** Between a work list and its confirmation another plan may come into force. */
    @Test
    void visits_are_confirmed_as_the_plan_at_hand_has_them() {
        Visit visit = plan.visits().get(0);
        application.holds().hold(hold(visit.truck(), Hold.Kind.REFUSE, null));
        application.plans().keep("another", DEPOT, NIGHT, planned(DEPOT));
        assertThat(application
                        .confirmation()
                        .confirm(plan, DEPOT, visit.week(), NIGHT, "work list")
                        .trucks())
                .contains(visit.truck());
        assertThat(application.holds().holds(DEPOT, plan.firstWeek()).confirmed())
                .containsEntry(visit.truck(), visit.week());
    }

    private Plan earlier() {
        return application
                .planning()
                .plan(DemoFleet.TODAY.minusDays(1), POLICY, DEPOT)
                .plan();
    }

    @Test
    void nothing_can_be_confirmed_without_a_plan() {
        assertThatThrownBy(() -> application.confirmation().confirm(DEPOT, plan.firstWeek(), NIGHT, "Ilze"))
                .isInstanceOf(NothingToPlanException.class)
                .hasMessageContaining("has no plan in force. Fix: ");
    }

    private static Hold hold(String truck, Hold.Kind kind, @Nullable IsoWeek week) {
        return new Hold(truck, kind, week, NIGHT, "Ilze", "");
    }

    private static IsoWeek weekOf(Plan plan, String truck) {
        return plan.visits().stream()
                .filter(visit -> visit.truck().equals(truck))
                .findFirst()
                .orElseThrow()
                .week();
    }
}
