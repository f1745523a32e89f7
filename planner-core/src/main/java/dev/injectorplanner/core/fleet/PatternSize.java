package dev.injectorplanner.core.fleet;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How large a regular expression is once its counted repeats are written out, found without writing them out. */
final class PatternSize {
    private static final Pattern COUNTED = Pattern.compile("\\{(\\d{1,9})(,(\\d{0,9}))?\\}");

    private final String pattern;
    private final Deque<Long> outer = new ArrayDeque<>();
    private int at;
    private long sum;
    private long last;

    private PatternSize(String pattern) {
        this.pattern = pattern;
    }

    /** Characters and classes, repeated as often as they may have to be; any large number where there are very many. */
    static long of(String pattern) {
        return new PatternSize(pattern).measured();
    }

    /** Whether a class holds a class, or is cut with one, which engines read differently. */
    static boolean hasClassInClass(String pattern) {
        boolean inside = false;
        for (int i = 0; i < pattern.length(); i++) {
            char c = pattern.charAt(i);
            if (c == '\\') {
                i++;
            } else if (inside && (c == '[' && !pattern.startsWith("[:", i) || pattern.startsWith("&&", i))) {
                return true;
            } else if (c == '[') {
                inside = true;
            } else if (c == ']') {
                inside = false;
            }
        }
        return false;
    }

    private long measured() {
        Matcher counted = COUNTED.matcher(pattern);
        while (at < pattern.length()) {
            char c = pattern.charAt(at);
            if (c == '(') {
                outer.push(sum + last);
                sum = 0;
                last = 0;
                at++;
            } else if (c == ')' && !outer.isEmpty()) {
                last = Math.max(1, sum + last);
                sum = outer.pop();
                at++;
            } else if (c == '{' && counted.find(at) && counted.start() == at) {
                last = times(last, counted);
                at = counted.end();
            } else {
                sum += last;
                last = 1;
                at = afterOne(c);
            }
        }
        return sum + last;
    }

    private static long times(long size, Matcher counted) {
        long most = Long.parseLong(counted.group(1));
        String upTo = counted.group(3);
        if (upTo != null && !upTo.isEmpty()) {
            most = Math.max(most, Long.parseLong(upTo));
        } else if (upTo != null) {
            most++; // {n,}: n times, and then a loop
        }
        return Math.min(size * Math.max(1, most), Integer.MAX_VALUE);
    }

    /** Where the next character or class begins. */
    private int afterOne(char c) {
        if (c == '\\') {
            return at + 2;
        }
        if (c != '[') {
            return at + 1;
        }
        int end = pattern.indexOf(']', at + 2);
        while (end > 0 && pattern.charAt(end - 1) == '\\') {
            end = pattern.indexOf(']', end + 1);
        }
        return end < 0 ? pattern.length() : end + 1;
    }
}
