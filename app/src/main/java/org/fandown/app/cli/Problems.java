package org.fandown.app.cli;

import java.util.List;
import org.fandown.app.files.FileWriteException;
import org.fandown.document.DocumentException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says on standard error what went wrong, and what to do next. */
final class Problems {
    private Problems() {}

    /** Reports a command that cannot be understood. */
    static int badUsage(ParameterException problem, String[] args) {
        CommandLine command = problem.getCommandLine();
        command.getErr().println("fandown: " + textOf(problem));
        command.getErr().println("Next: '" + nameOf(command) + " --help' shows what is possible.");
        command.getErr().flush();
        return ExitCode.REFUSED;
    }

    private static String textOf(ParameterException problem) {
        if (!(problem instanceof UnmatchedArgumentException unmatched)) {
            return String.valueOf(problem.getMessage());
        }
        String word = unmatched.getUnmatched().get(0);
        boolean isVerb = problem.getCommandLine().getParent() == null && !word.startsWith("-");
        List<String> near = unmatched.getSuggestions();
        return (isVerb ? "There is no verb '" : "There is no place for '")
                + word
                + "'."
                + (near.isEmpty() ? "" : " Did you mean '" + near.get(0) + "'?");
    }

    private static String nameOf(CommandLine command) {
        return command.getCommandSpec().qualifiedName(" ");
    }

    /** Reports input that cannot be used, or else a failure of the program itself. */
    static int report(Exception problem, CommandLine command) {
        if (problem instanceof DocumentException
                || problem instanceof ParameterException
                || problem instanceof FileWriteException) {
            command.getErr().println("fandown: " + problem.getMessage());
            command.getErr().flush();
            return ExitCode.REFUSED;
        }
        return failure(problem, command);
    }

    /** Reports a failure of the program itself, which is never a verdict. */
    private static int failure(Exception failure, CommandLine command) {
        command.getErr().println("fandown: The program failed, and nothing was judged: " + failure);
        command.getErr().println("Next: report this with the file and the lines below.");
        failure.printStackTrace(command.getErr());
        command.getErr().flush();
        return ExitCode.REFUSED;
    }
}
