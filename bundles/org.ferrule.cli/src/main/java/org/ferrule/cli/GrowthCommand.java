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
import org.ferrule.cli.internal.GrowthReport;
import org.ferrule.cli.internal.LibraryOptions;
import org.ferrule.cli.internal.PageFiles;
import org.ferrule.cli.internal.UnitOption;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.profile.growth.GrowthComparison;
import org.ferrule.profile.words.ProfileWords;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lays the growth curves of balloons over each other. */
@Command(name = "growth", mixinStandardHelpOptions = true, description = "Compares how up to eight balloons grow with pressure, by their printed tables, up to the rated burst pressure.")
final class GrowthCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "ID", arity = "1..*", description = "The balloons, one to eight.")
    private List<String> balloons = new ArrayList<>();

    @Mixin
    private LibraryOptions documents = new LibraryOptions();

    @Mixin
    private UnitOption unit = new UnitOption();

    @Option(names = "--out", paramLabel = "FILE", description = "Where to write the plot, as .pdf, .svg or .png; may be given several times.")
    private List<Path> outputs = new ArrayList<>();

    @Option(names = "--json", description = "Writes the tables as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        GrowthReport report = new GrowthReport(growth(), ProfileWords.english(unit.preferences()),
                documents.editions());
        for (Path output : outputs) {
            PageFiles.write(report.page(), output).forEach(f -> spec.commandLine().getErr().println("wrote " + f));
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(report.json().toPrettyString());
        } else {
            report.lines().forEach(out::println);
        }
        return report.isComplete() ? Main.FITS : Main.OTHER;
    }

    private GrowthComparison growth() {
        Catalogue catalogue = documents.catalogue();
        try {
            return GrowthComparison.of(balloons.stream().map(id -> catalogue.device(id).device()).toList());
        } catch (ReferenceException | IllegalArgumentException e) {
            throw new CommandLineException(e.getMessage());
        }
    }
}
