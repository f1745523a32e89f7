package dev.injectorplanner.app.web.find;

import static org.assertj.core.api.Assertions.assertThat;

import dev.injectorplanner.app.store.FleetMerge;
import dev.injectorplanner.app.store.OneOfEach;
import dev.injectorplanner.app.store.Store;
import dev.injectorplanner.app.store.StoreWriter;
import dev.injectorplanner.app.testkit.Database;
import dev.injectorplanner.core.fleet.FittedInjector;
import dev.injectorplanner.core.fleet.PurchaseLine;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is written on a truck, an injector, a part or an order finds it; another depot's things stay there. */
class SiteSearchTest {
    @ParameterizedTest
    @EnumSource
    void each_kind_is_found_by_what_is_written_on_it(Database database) {
        Store store = database.empty();
        try (StoreWriter writer = store.writer()) {
            FleetMerge.into(writer, OneOfEach.fleet());
            writer.commit();
        }
        SiteSearch search = new SiteSearch(store.dataSource());
        FittedInjector coded = OneOfEach.fleet().injectors().stream()
                .filter(each -> each.calibrationCode() != null && each.serial() != null)
                .findFirst()
                .orElseThrow();
        PurchaseLine line = OneOfEach.fleet().purchaseLines().get(0);
        String code = coded.calibrationCode().toLowerCase(Locale.ROOT);

        assertThat(search.trucks("t-1", null)).extracting(SiteSearch.Hit::name).contains("T-1");
        assertThat(search.trucks("t-1", null).get(0).exact()).isTrue();
        assertThat(search.trucks("t-", null).get(0).exact()).isFalse();
        assertThat(search.fitted(coded.serial(), null))
                .extracting(SiteSearch.Hit::link)
                .contains("/trucks/" + coded.truck());
        // a label prints codes in groups: 7Q2M 0F4K
        assertThat(search.fitted(code.substring(0, 2) + " " + code.substring(2), null))
                .extracting(SiteSearch.Hit::name)
                .contains(coded.serial());
        assertThat(search.parts("inj-4r")).extracting(SiteSearch.Hit::name).contains("INJ-4R");
        assertThat(search.orders(line.order(), null))
                .extracting(SiteSearch.Hit::name)
                .contains(line.order());
        assertThat(search.trucks("%", null)).isEmpty();
        assertThat(search.trucks("t-1", "elsewhere")).isEmpty();
        assertThat(search.fitted(coded.serial(), "elsewhere")).isEmpty();
        assertThat(search.orders(line.order(), "elsewhere")).isEmpty();
        assertThat(search.inStock("x", "elsewhere")).isEmpty();
    }
}
