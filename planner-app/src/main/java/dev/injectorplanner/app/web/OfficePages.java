package dev.injectorplanner.app.web;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.site.SiteRows;
import dev.injectorplanner.app.site.SiteSettings;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.web.alerts.AlertsPage;
import dev.injectorplanner.app.web.download.Downloads;
import dev.injectorplanner.app.web.find.FindPage;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.PlansInForce;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.imports.ImportsPage;
import dev.injectorplanner.app.web.imports.MatchPage;
import dev.injectorplanner.app.web.imports.SetUpPage;
import dev.injectorplanner.app.web.life.LifePage;
import dev.injectorplanner.app.web.office.Office;
import dev.injectorplanner.app.web.office.PageDates;
import dev.injectorplanner.app.web.office.ReadAhead;
import dev.injectorplanner.app.web.office.Refusals;
import dev.injectorplanner.app.web.office.Replanning;
import dev.injectorplanner.app.web.office.TurnedAdvice;
import dev.injectorplanner.app.web.order.OrderFilePage;
import dev.injectorplanner.app.web.order.OrderPages;
import dev.injectorplanner.app.web.order.OrderPapers;
import dev.injectorplanner.app.web.order.OrdersPage;
import dev.injectorplanner.app.web.order.SuppliersPage;
import dev.injectorplanner.app.web.outlook.OutlookPage;
import dev.injectorplanner.app.web.outlook.Outlooks;
import dev.injectorplanner.app.web.outlook.PartsAheadPage;
import dev.injectorplanner.app.web.plan.PlanPage;
import dev.injectorplanner.app.web.replay.ReplayPage;
import dev.injectorplanner.app.web.results.ResultsPage;
import dev.injectorplanner.app.web.results.RulePricing;
import dev.injectorplanner.app.web.returns.ReturnPapers;
import dev.injectorplanner.app.web.returns.ReturnsPage;
import dev.injectorplanner.app.web.settings.FiguresPage;
import dev.injectorplanner.app.web.settings.OutdatedPlans;
import dev.injectorplanner.app.web.settings.RowsPage;
import dev.injectorplanner.app.web.settings.SettingsPage;
import dev.injectorplanner.app.web.stock.StockPage;
import dev.injectorplanner.app.web.truck.SafetyPage;
import dev.injectorplanner.app.web.truck.TruckFilePage;
import dev.injectorplanner.app.web.week.DecidePage;
import dev.injectorplanner.app.web.week.LivePage;
import dev.injectorplanner.app.web.week.LiveState;
import dev.injectorplanner.app.web.week.WeekPage;
import dev.injectorplanner.app.web.worklist.WorklistPage;
import java.time.Duration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** The pages of the office, switched on together. */
@Configuration(proxyBeanMethods = false)
@Import({
    Refusals.class,
    TurnedAdvice.class,
    WeekPage.class,
    DecidePage.class,
    LivePage.class,
    LiveState.class,
    PlanPage.class,
    TruckFilePage.class,
    WorklistPage.class,
    FindPage.class,
    SafetyPage.class,
    OrderPages.class,
    OrdersPage.class,
    OrderFilePage.class,
    SuppliersPage.class,
    StockPage.class,
    ReturnsPage.class,
    ReturnPapers.class,
    SettingsPage.class,
    FiguresPage.class,
    RowsPage.class,
    AlertsPage.class,
    ImportsPage.class,
    MatchPage.class,
    SetUpPage.class,
    LifePage.class,
    OutlookPage.class,
    ReplayPage.class,
    ResultsPage.class,
    PartsAheadPage.class
})
public class OfficePages {
    /** Most files are made sooner; after that, a page says how far a file is. */
    private static final Duration PATIENCE = Duration.ofSeconds(5);

    @Bean
    Office office(Store store, PlansInForce plans, Fleets fleets) {
        return new Office(store, plans, fleets);
    }

    @Bean
    PageDates pageDates() {
        return new PageDates();
    }

    @Bean(destroyMethod = "close")
    ReadAhead readAhead(Office office, Application application) {
        return new ReadAhead(office, application.plans());
    }

    @Bean
    Outlooks outlooks(Application application, Office office) {
        return new Outlooks(application.planning(), office);
    }

    @Bean
    RulePricing rulePricing(Application application) {
        return new RulePricing(application.planning());
    }

    @Bean
    OrderPapers orderPapers(Application application) {
        SiteSettings settings = new SiteSettings(application.store().dataSource());
        return new OrderPapers(application.store(), settings);
    }

    @Bean
    Downloads downloads() {
        return new Downloads(PATIENCE);
    }

    @Bean
    SiteSettings siteSettings(Application application, SiteClock clock) {
        return new SiteSettings(application.store().dataSource(), clock.source());
    }

    @Bean
    SiteRows siteRows(Application application, SiteClock clock) {
        return new SiteRows(application.store(), application.intake(), clock.source());
    }

    @Bean
    OutdatedPlans madeBefore(Office office, SiteSettings settings) {
        return new OutdatedPlans(office, settings);
    }

    @Bean
    Replanning planAnew(Application application, Office office, SiteClock clock) {
        return new Replanning(application, office, clock);
    }
}
