/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.util.concurrent.Callable;

import org.ferrule.calc.catalogue.Calculators;
import org.ferrule.cli.internal.CalculatorCommand;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Calculates; each calculator is a command below this one, made from what it says of itself. */
@Command(name = CalcCommand.NAME, mixinStandardHelpOptions = true, description = "Calculates: sections, bends, reach, balloons, tolerances. Name a calculator.", commandListHeading = "%nCalculators:%n", footer = {
    "", "calc NAME --help tells what a calculator asks for.",
    "Exit code: 0 answered, 1 refused with the reason, 2 wrong words or values." })
final class CalcCommand implements Callable<Integer> {
    /** The word for it. */
    static final String NAME = "calc";

    @Spec
    private CommandSpec spec;

    /** The command with one below it for each calculator; making those takes a while, so only when they are wanted. */
    static CommandLine commandLine(boolean withCalculators) {
        CommandLine commandLine = new CommandLine(new CalcCommand());
        if (withCalculators) {
            new Calculators().all()
                    .forEach(calculator -> commandLine.addSubcommand(new CalculatorCommand(calculator).spec()));
        }
        return commandLine;
    }

    /** Without a calculator: lists them. */
    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return Main.FITS;
    }
}
