package dev.injectorplanner.core.replay.run;

/** What nobody can know: for the policy that shows how far the best is away. */
public interface OracleView extends FleetView {
    /** Day on which the injector now fitted fails if left in; far ahead where it outlives the replay. */
    int failDay(int truck, int cylinder);

    /** Day on which the truck leaves the fleet or the replay ends. */
    int lastDay(int truck);
}
