package dev.injectorplanner.core.history;

/** Where a life model comes from. */
public enum LifeSource {
    /** Maximum likelihood on the fleet's own records. */
    FITTED("fitted to the fleet's records"),
    /** The fleet's own records and a prior together. */
    POSTERIOR("fleet's records with a prior"),
    /** The prior alone: there are no records yet. */
    PRIOR("prior alone");

    private final String words;

    LifeSource(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
