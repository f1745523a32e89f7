package dev.injectorplanner.app.command;

import dev.injectorplanner.core.check.InvalidValueException;
import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/** A password from who sits there, twice and unseen, or the first line of standard input where nobody does. */
final class PasswordInput {
    private PasswordInput() {}

    static String ask(String name) {
        Console console = System.console();
        if (console == null) {
            return line();
        }
        char[] first = console.readPassword("Password of %s: ", name);
        char[] again = console.readPassword("Again: ");
        if (first == null || again == null) {
            throw nothing();
        }
        if (!String.valueOf(first).equals(String.valueOf(again))) {
            throw new InvalidValueException("password", "…", "does not match", "type the same password twice");
        }
        return String.valueOf(first);
    }

    private static String line() {
        try {
            // not closed: standard input is not ours
            String line = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
            if (line == null) {
                throw nothing();
            }
            return line;
        } catch (IOException e) {
            throw nothing();
        }
    }

    private static InvalidValueException nothing() {
        return new InvalidValueException("password", "", "is missing", "type it, or pipe it into standard input");
    }
}
