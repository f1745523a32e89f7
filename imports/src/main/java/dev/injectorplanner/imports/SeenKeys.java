package dev.injectorplanner.imports;

import java.nio.charset.StandardCharsets;
import org.apache.commons.codec.digest.MurmurHash3;

/**
 * Remembers which keys have come, with what content and where, in 28 bytes a slot: 128-bit fingerprints of keys and
 * 64-bit fingerprints of contents in open addressing. Chance that a million keys hold two of one fingerprint: below
 * 1e-26.
 */
final class SeenKeys {
    /** The key has not come before. */
    static final int NEW = 0;

    /** The key has come with the same content. */
    static final int REPEATED = -1;

    private static final int START = 1 << 10;
    private static final double FULL = 0.75;

    private long[] high = new long[START];
    private long[] low = new long[START];
    private long[] contents = new long[START];
    private int[] places = new int[START];
    private int size;

    /**
     * Remembers a row, unless its key has come before.
     *
     * @param key text of the key
     * @param content text of the whole row
     * @param place where it stands, above 0
     * @return {@link #NEW}, {@link #REPEATED}, or the place where the key came with another content
     */
    int add(String key, String content, int place) {
        long[] keyHash = MurmurHash3.hash128x64(key.getBytes(StandardCharsets.UTF_8));
        long contentHash = MurmurHash3.hash128x64(content.getBytes(StandardCharsets.UTF_8))[0];
        int slot = slotOf(keyHash[0], keyHash[1]);
        if (places[slot] != 0) {
            return contents[slot] == contentHash ? REPEATED : places[slot];
        }
        put(slot, keyHash[0], keyHash[1], contentHash, place);
        if (++size > FULL * places.length) {
            grow();
        }
        return NEW;
    }

    private int slotOf(long keyHigh, long keyLow) {
        int mask = places.length - 1;
        int slot = (int) keyHigh & mask;
        while (places[slot] != 0 && (high[slot] != keyHigh || low[slot] != keyLow)) {
            slot = slot + 1 & mask;
        }
        return slot;
    }

    private void put(int slot, long keyHigh, long keyLow, long content, int place) {
        high[slot] = keyHigh;
        low[slot] = keyLow;
        contents[slot] = content;
        places[slot] = place;
    }

    private void grow() {
        long[] oldHigh = high;
        long[] oldLow = low;
        long[] oldContents = contents;
        int[] oldPlaces = places;
        int slots = 2 * oldPlaces.length;
        high = new long[slots];
        low = new long[slots];
        contents = new long[slots];
        places = new int[slots];
        for (int i = 0; i < oldPlaces.length; i++) {
            if (oldPlaces[i] != 0) {
                put(slotOf(oldHigh[i], oldLow[i]), oldHigh[i], oldLow[i], oldContents[i], oldPlaces[i]);
            }
        }
    }
}
