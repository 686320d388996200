package org.fandown.app.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * A new password: asked twice at the terminal and not shown, or the first line of standard input.
 * Never an argument, which others at the machine could see.
 */
final class TypedPassword {
    private TypedPassword() {}

    /** Asks for it, or refuses with what to do. */
    static String ask(CommandLine command) {
        Console console = terminal();
        String typed = console == null ? line(command) : twice(console, command);
        if (typed == null || typed.isEmpty()) {
            throw new ParameterException(
                    command,
                    "There is no password. Next: type it when it is asked for, or give it as the"
                            + " first line of standard input.");
        }
        return typed;
    }

    /** From Java 22 on there always is a console, and it says itself whether it is a terminal. */
    @SuppressWarnings("SystemConsoleNull")
    private static @Nullable Console terminal() {
        Console console = System.console();
        try {
            boolean terminal =
                    console != null
                            && Boolean.TRUE.equals(
                                    Console.class.getMethod("isTerminal").invoke(console));
            return terminal ? console : null;
        } catch (NoSuchMethodException e) {
            return console;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("A console does not say what it is.", e);
        }
    }

    private static @Nullable String twice(Console console, CommandLine command) {
        char[] first = console.readPassword("New password (it is not shown): ");
        char[] second = console.readPassword("The same again: ");
        if (first == null || second == null) {
            return null;
        }
        if (!Arrays.equals(first, second)) {
            throw new ParameterException(
                    command, "The two passwords are not the same. Next: try again.");
        }
        return new String(first);
    }

    private static @Nullable String line(CommandLine command) {
        try {
            // The stream stays open: it is not ours.
            return new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))
                    .readLine();
        } catch (IOException e) {
            throw new ParameterException(command, "Standard input cannot be read.", e);
        }
    }
}
