/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import org.ferrule.cli.internal.CommandLineException;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The command line. Exit code 0: everything fits, no problems; 1: any other verdict, or problems were found; 2: it could
 * not run. Results go to standard output, errors and progress to standard error.
 */
@Command(name = "ferrule", mixinStandardHelpOptions = true, versionProvider = VersionProvider.class,
        subcommands = { FitCommand.class, ChartCommand.class, CheckCommand.class, DemoCommand.class },
        description = "Does it pass? Compatibility of devices and the lumens around them, with reasons.",
        footer = { "", "Exit code: 0 fits or no problems, 1 any other verdict or problems found, 2 could not run.",
                "Not a medical device. The instructions for use decide." })
public final class Main implements Runnable {
    /** Everything fits, no problems. */
    public static final int FITS = 0;
    /** Another verdict, or problems were found. */
    public static final int OTHER = 1;
    /** It could not run. */
    public static final int FAILED = 2;

    @Spec
    private CommandSpec spec;

    /** Runs a command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        System.exit(run(arguments));
    }

    /** Runs a command and returns its exit code. */
    public static int run(String... arguments) {
        return new CommandLine(new Main()).setExecutionExceptionHandler(failureHandler())
                .setCaseInsensitiveEnumValuesAllowed(true).execute(arguments);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: one of the commands below.");
    }

    private static IExecutionExceptionHandler failureHandler() {
        return (failure, commandLine, result) -> {
            if (!(failure instanceof CommandLineException)) {
                failure.printStackTrace(commandLine.getErr());
            } else {
                commandLine.getErr().println("ferrule: " + failure.getMessage());
            }
            return FAILED;
        };
    }
}
