package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.assembly.Application;
import dev.injectorplanner.app.closeout.CloseOuts;
import dev.injectorplanner.app.stock.Kits;
import dev.injectorplanner.app.stock.SerialisedStock;
import dev.injectorplanner.app.web.frame.Fleets;
import dev.injectorplanner.app.web.frame.PlansInForce;
import dev.injectorplanner.app.web.frame.SiteClock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** Pages of mechanics and storemen, and what they stand on. */
@Configuration(proxyBeanMethods = false)
@Import({BayListPage.class, BaySheetPage.class, BayPapers.class, CorrectionPage.class, StorePage.class})
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
            SerialisedStock shelf) {
        return new BayDesk(application.store(), fleets, plans, clock, closeOuts, shelf);
    }
}
