package dev.injectorplanner.app.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.microsoft.playwright.Page;
import dev.injectorplanner.app.people.Role;
import org.junit.jupiter.api.Test;

/** The library that reads labels is served from here, and reads a square code that another library drew (ZXing for Java). */
@InBrowser
class CameraTest {
    private static final String LABEL = "T005;3;SN-703;7Q2M0F4K91XA0001";
    private static final int SIDE = 240;

    private static final String READ = """
            async rows => {
              const canvas = document.createElement('canvas');
              canvas.width = canvas.height = rows.length;
              const pen = canvas.getContext('2d');
              pen.fillStyle = '#fff';
              pen.fillRect(0, 0, rows.length, rows.length);
              pen.fillStyle = '#000';
              rows.forEach((row, y) => { for (let x = 0; x < row.length; x++) { if (row[x] === '1') { pen.fillRect(x, y, 1, 1); } } });
              return window.readLabel(canvas);
            }""";

    @Test
    void a_label_is_read(Site.Demo demo) throws Exception {
        BitMatrix code = new QRCodeWriter().encode(LABEL, BarcodeFormat.QR_CODE, SIDE, SIDE);
        String[] rows = new String[SIDE];
        for (int y = 0; y < SIDE; y++) {
            StringBuilder row = new StringBuilder();
            for (int x = 0; x < SIDE; x++) {
                row.append(code.get(x, y) ? '1' : '0');
            }
            rows[y] = row.toString();
        }
        try (Person manager = demo.person(Role.MANAGER, Size.PHONE)) {
            manager.open("/start");
            assertThat(manager.page().evaluate(READ, rows)).isEqualTo(LABEL);
        }
    }

    /** Without a camera the words say what to do, and the field is still there to type in. */
    @Test
    void without_a_camera_people_type(Site.Demo demo) {
        try (Person manager = demo.person(Role.MANAGER, Size.PHONE)) {
            Page page = manager.page();
            manager.open("/start");
            page.locator("button.scan").click();
            assertThat(page.locator(".scanner")).containsText("Fix: type it");
            manager.press("Stop, I will type it");
            assertThat(page.locator(".scanner")).hasCount(0);
            page.locator("#find").fill(LABEL);
            manager.press("Find");
            assertThat(page.locator("#sec-b")).containsText("T005");
        }
    }
}
