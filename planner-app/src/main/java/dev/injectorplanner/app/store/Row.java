package dev.injectorplanner.app.store;

/** A stored row of a table, and the record it stands for. */
interface Row<R> {
    /** Takes over every value of the record. */
    void take(R record);

    /** The record; equal to the one that was taken. */
    R row();
}
