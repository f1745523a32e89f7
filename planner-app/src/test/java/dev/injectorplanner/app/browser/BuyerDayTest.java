package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import dev.injectorplanner.app.people.Role;
import java.io.IOException;
import java.io.InputStream;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The parts buyer's order list, cores and workbook; and what the store takes in and picks for a visit. */
@InBrowser
class BuyerDayTest {
    @ParameterizedTest
    @EnumSource
    void what_to_order_and_to_send_back(Size size, Site.Demo demo) throws IOException {
        try (Person buyer = demo.person(Role.BUYER, size)) {
            buyer.open("/");
            buyer.goTo("Parts to order");
            assertThat(buyer.section("A").locator("h2")).containsText("Order now");
            assertThat(buyer.section("A")).containsText("Calder Diesel Supply");
            buyer.goTo("Cores and claims");
            assertThat(buyer.section("A").locator("h2")).containsText("Cores to ship");
            Download book = buyer.page().waitForDownload(() -> buyer.follow("Parts workbook"));
            try (InputStream in = book.createReadStream();
                    Workbook workbook = WorkbookFactory.create(in)) {
                assertThat(workbook.getNumberOfSheets()).isGreaterThan(1);
                assertThat(workbook.getSheetAt(0).getLastRowNum()).isGreaterThan(1);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"DESK, T037, 5, DESK370000000001, complete", "PHONE, T019, 1, PHONE19000000001, T019"})
    void an_injector_comes_in_and_is_picked_for_its_cylinder(
            Size size, String truck, String cylinder, String code, String says, Site.Demo demo) {
        try (Person storeman = demo.person(Role.STOREMAN, size)) {
            storeman.open("/store?depot=Brennick");
            storeman.page()
                    .getByLabel("Part", new com.microsoft.playwright.Page.GetByLabelOptions().setExact(true))
                    .selectOption("KL-6110");
            storeman.type("Serial 1", "S-" + truck);
            storeman.type("Code 1", code.substring(1));
            storeman.press("Receive");
            assertThat(storeman.page().locator("#wrong")).containsText("does not match the pattern of part KL-6110");
            assertThat(storeman.page().getByLabel("Serial 1", exact())).hasValue("S-" + truck);
            storeman.forgive("the server responded with a status of 422");
            storeman.type("Code 1", code);
            storeman.press("Receive");
            assertThat(storeman.page().locator("main")).containsText("1 injector received.");
            storeman.press("Allocate the kit of " + truck + " from stock");
            Locator kit = storeman.section("A")
                    .locator("tr", new Locator.LocatorOptions().setHasText(truck))
                    .first();
            assertThat(kit).containsText(cylinder + ": S-" + truck);
            assertThat(kit).containsText(says);
        }
    }

    private static com.microsoft.playwright.Page.GetByLabelOptions exact() {
        return new com.microsoft.playwright.Page.GetByLabelOptions().setExact(true);
    }
}
