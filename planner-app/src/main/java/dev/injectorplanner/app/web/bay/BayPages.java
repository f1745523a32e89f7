package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.bayjob.BayJobs;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.stock.Kits;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.PlansInForce;
import dev.injectorplanner.app.web.frame.SiteClock;
import dev.injectorplanner.app.web.truck.TruckSearch;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** Pages of mechanics and storemen, and what they stand on. */
@Configuration(proxyBeanMethods = false)
@Import({
    BayListPage.class,
    BaySheetPage.class,
    BayPapers.class,
    CorrectionPage.class,
    LookPage.class,
    PhotoPage.class,
    ReadingsPage.class,
    StartPage.class,
    StorePage.class
})
public class BayPages {
    @Bean
    CloseOuts closeOuts(Application application) {
        return new CloseOuts(application.store());
    }

    @Bean
    SerialisedStock shelf(Application application) {
        return new SerialisedStock(application.store());
    }

    @Bean
    BayJobs bayJobs(Application application) {
        return new BayJobs(application.store());
    }

    @Bean
    TruckSearch truckSearch(Application application) {
        return new TruckSearch(application.store());
    }

    @Bean
    Kits kits(Application application) {
        return new Kits(application.store(), application.plans());
    }

    @Bean
    BayDesk bayDesk(
            Application application,
            Fleets fleets,
            PlansInForce plans,
            SiteClock clock,
            CloseOuts closeOuts,
            SerialisedStock shelf,
            BayJobs jobs) {
        return new BayDesk(
                application.store(),
                fleets,
                plans,
                clock,
                closeOuts,
                shelf,
                jobs,
                () -> application.planning().policy());
    }
}
