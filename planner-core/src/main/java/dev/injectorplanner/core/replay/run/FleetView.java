package dev.injectorplanner.core.replay.run;

import dev.injectorplanner.core.fleet.FleetSnapshot;

/** What a shop can know of its fleet. Trucks and cylinders count from 0, days are days of the epoch. */
public interface FleetView {
    int trucks();

    /** Place of a truck's family in the scenario's list. */
    int family(int truck);

    int cylinders(int truck);

    boolean inService(int truck, int day);

    /** Day on which the truck leaves the fleet as far as that is known on a day; far ahead where it is not. */
    int leaves(int truck, int day);

    /** Km since fitting. */
    double ageKm(int truck, int cylinder, int day);

    /** Days with a stored fault of the injector now fitted, from one day to another, both included. */
    int faultDays(int truck, int cylinder, int from, int to);

    /** Tests in a row, up to now, in which the injector now fitted was over a limit. */
    int testsOver(int truck, int cylinder);

    /** Whether both balance and return flow were over their limits in the last test of the injector now fitted. */
    boolean bothOver(int truck, int cylinder);

    /** Km since the truck's injectors were last tested. */
    double kmSinceTest(int truck, int day);

    /**
     * All of it as tables, as production has them on a morning: nothing of that day or later.
     *
     * @throws IllegalStateException where the run keeps no records
     */
    FleetSnapshot snapshot(int day);

    /** A truck's name in the tables. */
    String nameOf(int truck);

    /** Place of a truck by its name. */
    int truckOf(String name);
}
