/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.ferrule.chart.page.Edition;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.rules.RuleSet;

import picocli.CommandLine.Option;

/** The options that say where devices and rules stand. */
public final class LibraryOptions {

    @Option(names = "--library", paramLabel = "FILE", description = "A device library; may be given several times.")
    private List<Path> libraries = new ArrayList<>();

    @Option(names = "--rules", paramLabel = "FILE", description = "The rule set; by default the only one beside the first library.")
    private Path rules;

    private final DocumentFiles files = new DocumentFiles();

    /** Whether libraries are named. */
    public boolean namesLibraries() {
        return !libraries.isEmpty();
    }

    /** All devices and bench results of the libraries. */
    public Catalogue catalogue() {
        if (libraries.isEmpty()) {
            throw new CommandLineException("say where the devices stand with --library");
        }
        return Catalogue.of(libraries.stream().map(f -> files.library(f, f.getFileName().toString())).toList());
    }

    /** Title and revision of each library. */
    public List<Edition> editions() {
        return libraries.stream().map(f -> files.library(f, f.getFileName().toString()).library())
                .map(library -> new Edition(text(library.getTitle()), text(library.getRevision()))).toList();
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }

    /** The rule set that is named, or the only one beside the first library. */
    public RuleSet ruleSet() {
        Path file = rules != null ? rules : files.onlyRuleSetIn(libraries.get(0).toAbsolutePath().getParent());
        return RuleTranslator.translate(files.rules(file));
    }

    /** A solver with all checks and the bench results of the libraries. */
    public FitSolver solver(Catalogue catalogue) {
        return FitSolver.with(Extensions.ofClassPath(LibraryOptions.class.getClassLoader()).checks(),
                catalogue.bench());
    }
}
