/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.CodeText;
import org.ferrule.cli.internal.DayConverter;
import org.ferrule.shelf.code.CodeException;
import org.ferrule.shelf.code.CodeReader;
import org.ferrule.shelf.code.ProductCode;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads the codes on a box. */
@Command(name = "scan", mixinStandardHelpOptions = true, description = "Reads the code on a box (GS1 or HIBC), as scanned, typed or pasted: product, lot, dates.", footer = {
    "", "Exit code: 0 read, 2 no such code; the message tells the character where something else was expected." })
final class ScanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CODE", arity = "1..2", description = "The code; two where a box bears a second one with lot and expiry.")
    private List<String> codes = new ArrayList<>();

    @Option(names = "--day", paramLabel = "DAY", converter = DayConverter.class, description = "The day from which years of two digits are counted; by default today.")
    private LocalDate day = LocalDate.now();

    @Option(names = "--json", description = "Writes the parts as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        ProductCode code = read();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(CodeText.json(code).toPrettyString());
        } else {
            CodeText.lines(code).forEach(out::println);
        }
        return Main.FITS;
    }

    private ProductCode read() {
        try {
            ProductCode first = CodeReader.read(codes.get(0), day);
            return codes.size() == 1 ? first : first.join(CodeReader.read(codes.get(1), day));
        } catch (CodeException e) {
            throw new CommandLineException("the code cannot be read: " + e.getMessage());
        }
    }
}
