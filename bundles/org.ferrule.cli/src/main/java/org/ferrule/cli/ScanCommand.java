/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.CodeJson;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.shelf.code.CodeException;
import org.ferrule.shelf.code.CodeReader;
import org.ferrule.shelf.code.ProductCode;

import com.fasterxml.jackson.databind.node.ObjectNode;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads the code on a box. */
@Command(name = "scan", mixinStandardHelpOptions = true, description = "Reads the code on a box (GS1 or HIBC), as it is scanned, typed or pasted: device identifier, lot, serial number, dates.")
final class ScanCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CODE", arity = "1..*", description = "The code. A second one is of the same box.")
    private List<String> codes = new ArrayList<>();

    @Option(names = "--json", description = "Writes JSON: scheme, di, lot, serial, expiry, made, quantity, others.")
    private boolean json;

    @Override
    public Integer call() {
        ObjectNode read = CodeJson.write(read());
        if (json) {
            spec.commandLine().getOut().println(read.toPrettyString());
        } else {
            read.fields().forEachRemaining(field -> spec.commandLine().getOut()
                    .println(field.getKey() + ": " + (field.getValue().isValueNode() ? field.getValue().asText()
                            : field.getValue().toString())));
        }
        return Main.FITS;
    }

    private ProductCode read() {
        try {
            ProductCode all = CodeReader.read(codes.get(0), LocalDate.now());
            for (String more : codes.subList(1, codes.size())) {
                all = all.join(CodeReader.read(more, LocalDate.now()));
            }
            return all;
        } catch (CodeException e) {
            throw new CommandLineException(e.getMessage());
        }
    }
}
