package dev.injectorplanner.app.web.worklist;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names as people count them: {@code T9} before {@code T10}. */
enum NaturalOrder implements Comparator<String> {
    INSTANCE;

    private static final Pattern PIECE = Pattern.compile("\\d+|\\D+");

    @Override
    public int compare(String one, String other) {
        Matcher first = PIECE.matcher(one);
        Matcher second = PIECE.matcher(other);
        while (true) {
            boolean more = first.find();
            if (!second.find()) {
                return more ? 1 : one.compareTo(other);
            }
            if (!more) {
                return -1;
            }
            int order = piece(first.group(), second.group());
            if (order != 0) {
                return order;
            }
        }
    }

    private static int piece(String one, String other) {
        return isFigure(one) && isFigure(other)
                ? new BigInteger(one).compareTo(new BigInteger(other))
                : one.compareToIgnoreCase(other);
    }

    private static boolean isFigure(String piece) {
        return piece.charAt(0) >= '0' && piece.charAt(0) <= '9';
    }
}
