package dev.injectorplanner.imports.obd;

import java.util.List;

/**
 * An ECU's answer to a question for its trouble codes.
 *
 * @param micros when it was complete, as the log counts
 * @param source last byte of the identifier it answered under
 * @param kind which codes were asked for
 * @param codes the codes, two bytes each; empty where it has none
 */
public record ObdReport(long micros, int source, Kind kind, List<Integer> codes) {
    /** Which codes. */
    public enum Kind {
        /** Service 03: confirmed codes. */
        ACTIVE("active"),
        /** Service 07: seen in this or the last driving cycle, not confirmed. */
        PENDING("pending"),
        /** Service 0A: cleared by the ECU alone. */
        PERMANENT("permanent");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public ObdReport {
        codes = List.copyOf(codes);
    }
}
