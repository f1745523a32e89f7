package dev.injectorplanner.reports.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.TextStyle;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import net.fortuna.ical4j.model.ComponentList;
import net.fortuna.ical4j.model.PropertyList;
import net.fortuna.ical4j.model.component.Daylight;
import net.fortuna.ical4j.model.component.Observance;
import net.fortuna.ical4j.model.component.Standard;
import net.fortuna.ical4j.model.component.VTimeZone;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.TzId;
import net.fortuna.ical4j.model.property.TzName;
import net.fortuna.ical4j.model.property.TzOffsetFrom;
import net.fortuna.ical4j.model.property.TzOffsetTo;

/**
 * A zone's clock for some days, every change of it listed: made from the rules that the plan itself was made with, so
 * that nothing is fetched and both agree.
 */
final class ZoneTable {
    private ZoneTable() {}

    /** @return VTIMEZONE that holds from the change before {@code first} to {@code last} */
    static VTimeZone of(ZoneId zone, LocalDate first, LocalDate last) {
        ZoneRules rules = zone.getRules();
        List<Observance> all = new ArrayList<>();
        Instant end = last.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant();
        ZoneOffsetTransition change =
                rules.previousTransition(first.atStartOfDay(ZoneOffset.UTC).toInstant());
        if (change == null) {
            ZoneOffset offset = rules.getOffset(end);
            all.add(observance(zone, LocalDateTime.of(1970, 1, 1, 0, 0), offset, offset, end));
        }
        while (change != null && change.getInstant().isBefore(end)) {
            all.add(observance(
                    zone,
                    change.getDateTimeBefore(),
                    change.getOffsetBefore(),
                    change.getOffsetAfter(),
                    change.getInstant()));
            change = rules.nextTransition(change.getInstant());
        }
        return new VTimeZone(new PropertyList(List.of(new TzId(zone.getId()))), new ComponentList<>(all));
    }

    private static Observance observance(
            ZoneId zone, LocalDateTime start, ZoneOffset from, ZoneOffset to, Instant moment) {
        boolean summer = zone.getRules().isDaylightSavings(moment);
        String name = summer ? summerName(zone) : zone.getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
        PropertyList properties = new PropertyList(
                List.of(new DtStart<>(start), new TzOffsetFrom(from), new TzOffsetTo(to), new TzName(name)));
        return summer ? new Daylight(properties) : new Standard(properties);
    }

    private static String summerName(ZoneId zone) {
        return TimeZone.getTimeZone(zone).getDisplayName(true, TimeZone.SHORT, Locale.ENGLISH);
    }
}
