/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.QuantitySyntaxException;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The options that say under which rules and conditions devices of some libraries are asked about. */
public final class QuestionOptions {

    @Mixin
    private LibraryOptions documents = new LibraryOptions();

    @Option(names = "--wire", paramLabel = "ID", description = "The wire that the inner device runs over; by default the largest it is stated to take.")
    private String wire;

    @Option(names = "--over-wire", description = "The outer device is loaded over the tail of a wire, which is the inner device.")
    private boolean overWire;

    @Option(names = "--reach", paramLabel = "LENGTH", description = "How far beyond the outer tip, such as \"12 cm\"; with --over-wire how much wire stays ahead.")
    private String reach;

    @Mixin
    private ConditionOptions conditions = new ConditionOptions();

    /** Whether libraries are named. */
    public boolean namesLibraries() {
        return documents.namesLibraries();
    }

    /** All devices of the libraries. */
    public Catalogue catalogue() {
        return documents.catalogue();
    }

    /** The rule set that is named, or the only one beside the first library. */
    public RuleSet ruleSet() {
        return documents.ruleSet();
    }

    /** A solver with all checks and the bench results of the libraries. */
    public FitSolver solver(Catalogue catalogue) {
        return documents.solver(catalogue);
    }

    /** How the device enters. */
    public Direction direction() {
        return overWire ? Direction.OVER_WIRE_TAIL : Direction.TIP_FIRST;
    }

    /** The question about one pair. */
    public FitQuestion question(Catalogue catalogue, RuleSet ruleSet, String outer, String inner) {
        if (overWire && conditions.besideOthers()) {
            throw new CommandLineException(
                    "--inside and --through are asked tip first only, and --over-wire excludes them");
        }
        LumenReference reference = LumenReference.parse(outer);
        Device around = catalogue.device(reference.device()).device();
        ReadDevice inside = ConditionOptions.device(catalogue, ruleSet, inner, Optional.ofNullable(wire));
        return new FitQuestion(ReadDevice.of(around, ruleSet), reference.lumen(around, direction()), inside,
                direction(), reachLength(), conditions.read(catalogue, ruleSet), ruleSet);
    }

    private Optional<Length> reachLength() {
        try {
            return Optional.ofNullable(reach).map(Dimension::parse).map(Dimension::label);
        } catch (QuantitySyntaxException e) {
            throw new CommandLineException("--reach \"" + reach + "\": " + e.getMessage());
        }
    }
}
