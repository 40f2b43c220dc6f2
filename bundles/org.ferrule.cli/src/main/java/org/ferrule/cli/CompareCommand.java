/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.CompareJson;
import org.ferrule.cli.internal.CompareRun;
import org.ferrule.cli.internal.CompareText;
import org.ferrule.cli.internal.LibraryOptions;
import org.ferrule.cli.internal.UnitOption;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.profile.words.ProfileWords;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays two to eight devices over each other along their length. */
@Command(name = "compare", mixinStandardHelpOptions = true, description = "Compares the profiles of two to eight devices along their length: diameters, ports, rigid parts, lumens that they are to pass.")
final class CompareCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "ID", arity = "1..*", description = "The devices, two to eight.")
    private List<String> devices = new ArrayList<>();

    @Mixin
    private LibraryOptions documents = new LibraryOptions();

    @Option(names = "--from", paramLabel = "LANDMARK", description = "Where stations count from: tip (default), marker, marker 2, exit port, largest part, rigid end, rigid end 2.")
    private String from = "tip";

    @Option(names = "--lumen", paramLabel = "ID[#LUMEN]", description = "A lumen that the devices are to pass, without a lumen the main one; may be given several times.")
    private List<String> lumens = new ArrayList<>();

    @Option(names = "--wire", paramLabel = "DIAMETER", description = "Tells what a wire of this diameter, such as \"0.014 in\", leaves of each lumen.")
    private String wire;

    @Option(names = "--whole", description = "Plots the whole length, not only the part where the devices differ most.")
    private boolean whole;

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write pages with the plot, as .pdf, .svg or .png; may be given several times.")
    private List<Path> outputs = new ArrayList<>();

    @Mixin
    private UnitOption unit = new UnitOption();

    @Option(names = "--json", description = "Writes the comparison as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        try {
            CompareRun run = CompareRun.of(documents, devices, from, lumens, wire);
            ProfileWords words = ProfileWords.english(unit.preferences());
            for (Path output : outputs) {
                run.export(output, whole, words).forEach(file -> spec.commandLine().getErr().println("wrote " + file));
            }
            PrintWriter out = spec.commandLine().getOut();
            if (json) {
                out.println(new CompareJson(run.comparison()).write().toPrettyString());
            } else {
                new CompareText(run.comparison(), words).lines().forEach(out::println);
            }
            return Main.FITS;
        } catch (ReferenceException | RuleSetException e) {
            throw new CommandLineException(e.getMessage());
        }
    }
}
