package dev.injectorplanner.core.replay;

/** Looks on while a replay runs. Called from several threads. */
public interface ReplayWatch {
    /** Nobody looks on. */
    ReplayWatch NONE = new ReplayWatch() {};

    /** Weeks of planning played so far, of all that the planner will play, or steps of the search. */
    default void progress(String what, int done, int all) {}

    /** Whether to stop: what is finished by then is still compared. */
    default boolean stopped() {
        return false;
    }
}
