package dev.injectorplanner.core.plan;

import dev.injectorplanner.core.option.PricedVisit;

/**
 * A visit beside a truck's main one, in another week.
 *
 * @param truck the truck
 * @param visit work without cylinders
 */
record SecondVisit(TruckChoices truck, PricedVisit visit) {}
