package dev.injectorplanner.app.web.bay;

import dev.injectorplanner.app.bayjob.JobOffer;
import dev.injectorplanner.app.web.office.DisplayFormat;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A set of cylinders that can be done, in words.
 *
 * @param set its cylinders with blanks between them, as the form sends them
 * @param parts where its parts are
 */
record OfferView(
        String set,
        String name,
        String cylinders,
        boolean best,
        String more,
        String hours,
        String bill,
        String deposits,
        String offRoad,
        String until,
        String chance,
        boolean allInStock,
        String parts,
        String coolant) {
    static OfferView of(JobOffer offer, TruckInBay at) {
        List<JobOffer.PartReady> waiting = offer.waiting();
        return new OfferView(
                offer.cylinders().stream().map(String::valueOf).collect(Collectors.joining(" ")),
                capital(offer.name()),
                DisplayFormat.numbers(offer.cylinders()),
                offer.best(),
                offer.more() == null ? "" : DisplayFormat.more(offer.more()),
                DisplayFormat.tenth(offer.hours()),
                DisplayFormat.cents(offer.bill()),
                offer.deposits().signum() == 0 ? "" : DisplayFormat.cents(offer.deposits()),
                days(offer.daysOffRoad()),
                offer.finishedOn() == null ? "" : DisplayFormat.day(offer.finishedOn()),
                offer.chanceLeft() == null ? "not known" : DisplayFormat.chance(offer.chanceLeft()),
                waiting.isEmpty(),
                parts(offer, waiting, at),
                offer.coolantLitres() == 0 ? "" : at.units().volume(offer.coolantLitres()));
    }

    private static String days(@Nullable Integer days) {
        return days == null ? "not known" : days == 1 ? "1 day" : days + " days";
    }

    private static String capital(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    private static String parts(JobOffer offer, List<JobOffer.PartReady> waiting, TruckInBay at) {
        if (waiting.isEmpty()) {
            return "All " + offer.parts().size() + " parts in stock at "
                    + at.depot().name();
        }
        return waiting.stream()
                .map(part -> DisplayFormat.pieces(Math.min(part.free(), part.pieces())) + " of "
                        + DisplayFormat.pieces(part.pieces()) + " " + part.part() + " in stock, the rest "
                        + (part.readyOn() == null
                                ? "on a day that is not known"
                                : "by " + DisplayFormat.day(part.readyOn())))
                .collect(Collectors.joining("; "));
    }
}
