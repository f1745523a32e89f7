package dev.injectorplanner.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Margin;
import dev.injectorplanner.app.people.Role;
import dev.injectorplanner.app.web.frame.Navigation;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** Pictures of the pages, for people to look at. */
@InBrowser
class PicturesTest {
    private static final Path README = Path.of("pictures");
    private static final String ALBUM = "planner.album";

    /** Addresses parted by commas, where not every page is wanted. */
    private static final String ALBUM_OF = "planner.album.of";

    @Test
    @EnabledIfSystemProperty(
            named = "planner.pictures",
            matches = "write",
            disabledReason = "writes the README's pictures anew where asked to with -Dplanner.pictures=write")
    void the_readmes_pictures(Site.Demo demo) {
        picture(demo, Role.MANAGER, Size.DESK, "/week", 1080, "week-ahead");
        picture(demo, Role.MANAGER, Size.DESK, "/trucks/T059", 1080, "truck-file");
        picture(demo, Role.MANAGER, Size.PHONE, "/bay/T005", 1000, "bay-sheet");
    }

    private static void picture(Site.Demo demo, Role role, Size size, String path, int height, String name) {
        try (Person person = demo.person(role, size)) {
            person.page().setViewportSize(size.width(), height);
            person.open(path);
            Path file = README.resolve(name + ".png");
            person.page().screenshot(new Page.ScreenshotOptions().setPath(file));
            assertThat(file).isNotEmptyFile();
        }
    }

    @Test
    @EnabledIfSystemProperty(
            named = ALBUM,
            matches = ".+",
            disabledReason = "writes every page as pictures into the folder of -Dplanner.album=DIR where asked to")
    void every_page_at_every_size_in_light_and_dark_and_on_paper(Site.Demo demo, Site.Empty empty) throws Exception {
        Path album = Files.createDirectories(Path.of(System.getProperty(ALBUM)));
        String only = System.getProperty(ALBUM_OF, "");
        if (!only.isEmpty()) {
            album(demo, Role.MANAGER, List.of(only.split(",")), album, "");
            return;
        }
        List<String> office = new ArrayList<>(
                Navigation.PLACES.stream().map(Navigation.Place::path).toList());
        office.addAll(EveryPageTest.within());
        album(demo, Role.MANAGER, office, album, "");
        album(demo, Role.ADMINISTRATOR, EveryPageTest.administrators(), album, "");
        album(empty, Role.MANAGER, List.of("/week", "/alerts", "/bay", "/store", "/jobs", "/trucks"), album, "empty");
    }

    private static void album(Site site, Role role, List<String> paths, Path album, String mark) {
        for (String path : paths) {
            String name = mark + path.replaceAll("[^A-Za-z0-9]+", "-");
            for (Size size : Size.values()) {
                try (Person person = site.person(role, size)) {
                    person.open(path);
                    String at = name + "-" + size.name().toLowerCase(Locale.ROOT);
                    shot(person.page(), ColorScheme.LIGHT, album.resolve(at + ".png"));
                    shot(person.page(), ColorScheme.DARK, album.resolve(at + "-dark.png"));
                    if (size == Size.DESK) {
                        print(person.page(), album.resolve(name + ".pdf"));
                    }
                }
            }
        }
    }

    private static void shot(Page page, ColorScheme scheme, Path file) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(file));
    }

    private static void print(Page page, Path file) {
        page.pdf(new Page.PdfOptions()
                .setFormat("A4")
                .setPreferCSSPageSize(true)
                .setMargin(new Margin())
                .setPath(file));
    }
}
