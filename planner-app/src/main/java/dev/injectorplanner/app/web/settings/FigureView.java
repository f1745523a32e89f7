package dev.injectorplanner.app.web.settings;

import dev.injectorplanner.app.site.KeptSetting;
import dev.injectorplanner.app.site.SettingArea;
import dev.injectorplanner.app.site.SettingKind;
import dev.injectorplanner.app.web.office.DisplayFormat;
import dev.injectorplanner.core.units.SiteUnits;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A setting as a field.
 *
 * @param name of its kind
 * @param title its label
 * @param meaning what it means
 * @param unit in which it is typed; empty for words
 * @param keyboard that of a phone: decimal, or text for words and for figures with a minus, which some lack
 * @param range what may be entered
 * @param standard the planner's default
 * @param plain the planner's default without its unit
 * @param choices what may be chosen; empty where it is typed
 * @param typed what is in the field; empty for the default
 * @param was what stood in the field at that version
 * @param seen the version that the person has seen
 * @param whose "planner default", or who set it when
 * @param wrong what is wrong with what was typed; empty where nothing is
 */
record FigureView(
        String name,
        String title,
        String meaning,
        String unit,
        String keyboard,
        String range,
        String standard,
        String plain,
        List<String> choices,
        String typed,
        String was,
        long seen,
        String whose,
        String wrong) {
    private static final String PLANNER = "planner default";
    private static final String CALIBRATED = "last calibration";
    private static final DateTimeFormatter AT =
            DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm 'UTC'", Locale.UK).withZone(ZoneOffset.UTC);

    static FigureView of(SettingKind kind, @Nullable KeptSetting set, SiteUnits units, Optional<String> calibrated) {
        String shown = set == null ? "" : kind.shown(set.value(), units);
        return new FigureView(
                kind.name(),
                kind.title(),
                kind.meaning(),
                kind.unit(units),
                kind.measure().isFigure() && kind.least() >= 0 ? "decimal" : "text",
                DisplayFormat.sentence(
                        (kind.unit(units).isEmpty() && kind.choices().isEmpty() && kind.area() == SettingArea.SITE
                                        ? ""
                                        : "from ")
                                + kind.range(units)),
                calibrated.map(value -> kind.words(value, units)).orElseGet(() -> kind.standardWords(units)),
                kind.standard().isEmpty() ? "none" : kind.shown(calibrated.orElse(kind.standard()), units),
                kind.choices(),
                shown,
                shown,
                set == null ? KeptSetting.UNSET : set.version(),
                set == null
                        ? calibrated.isPresent() ? CALIBRATED : PLANNER
                        : "set by " + set.changedBy() + ", " + AT.format(set.changedAt()),
                "");
    }

    /** The same with what was typed and what is wrong with it, the person having read the current value. */
    FigureView again(String typedNow, String wrongNow) {
        return again(typedNow, was, seen, wrongNow);
    }

    /** The same with what was typed and what is wrong with it, by a person who has seen an earlier version. */
    FigureView again(String typedNow, String wasThen, long seenThen, String wrongNow) {
        return new FigureView(
                name, title, meaning, unit, keyboard, range, standard, plain, choices, typedNow, wasThen, seenThen,
                whose, wrongNow);
    }

    /** Whether the site has set it. */
    public boolean bySite() {
        return !whose.equals(PLANNER) && !whose.equals(CALIBRATED);
    }
}
