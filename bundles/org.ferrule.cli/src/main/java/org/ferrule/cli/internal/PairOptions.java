/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.fit.passage.FitQuestion;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options that ask about one pair. */
public final class PairOptions {

    @Option(names = "--outer", paramLabel = "ID[#LUMEN]", description = "The device around, and which of its lumens if not the main one.")
    private String outer;

    @Option(names = "--inner", paramLabel = "ID", description = "The device inside.")
    private String inner;

    @Mixin
    private QuestionOptions options = new QuestionOptions();

    /** How the devices are asked about. */
    public QuestionOptions options() {
        return options;
    }

    /** Whether anything is said of a pair. */
    public boolean isGiven() {
        return outer != null || inner != null || options.namesLibraries();
    }

    /** The question about the pair. */
    public FitQuestion question(Catalogue catalogue) {
        if (outer == null || inner == null) {
            throw new CommandLineException("say which pair with --outer and --inner");
        }
        return options.question(catalogue, options.ruleSet(), outer, inner);
    }
}
