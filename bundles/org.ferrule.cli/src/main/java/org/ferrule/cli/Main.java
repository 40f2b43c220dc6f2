/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;

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
@Command(name = "ferrule", mixinStandardHelpOptions = true, versionProvider = VersionProvider.class, subcommands = {
    FitCommand.class, StackCommand.class, ChartCommand.class, CheckCommand.class, DemoCommand.class,
    CompareCommand.class, GrowthCommand.class,
    RequireCommand.class,
    BudgetCommand.class, SensitivityCommand.class, SecondOpinionCommand.class, BiasCommand.class,
    ValidateCommand.class, PlanCommand.class, ShelfCommand.class, PurchaseCommand.class,
    ScanCommand.class,
    CloseCommand.class }, description = "Does it pass? Compatibility of devices and the lumens around them, with reasons; what to try next when it does not.", footer = {
        "", "Exit code: 0 fits or no problems, 1 any other verdict or problems found, 2 could not run.",
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
        Charset utf8 = StandardCharsets.UTF_8;
        System.exit(run(new PrintWriter(new OutputStreamWriter(System.out, utf8), true),
                new PrintWriter(new OutputStreamWriter(System.err, utf8), true), arguments));
    }

    /** Runs a command and returns its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        boolean calculates = List.of(arguments).contains(CalcCommand.NAME);
        return new CommandLine(new Main()).addSubcommand(CalcCommand.commandLine(calculates))
                .setCaseInsensitiveEnumValuesAllowed(true).setOut(out).setErr(err)
                .setExecutionExceptionHandler(failureHandler())
                .execute(arguments);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: one of the commands below.");
    }

    private static IExecutionExceptionHandler failureHandler() {
        return (failure, commandLine, result) -> {
            commandLine.getErr().println("ferrule: " + failure.getMessage());
            if (!(failure instanceof CommandLineException)) {
                commandLine.getErr().println("This is a fault of the program; please report it with these lines:");
                failure.printStackTrace(commandLine.getErr());
            }
            return FAILED;
        };
    }
}
