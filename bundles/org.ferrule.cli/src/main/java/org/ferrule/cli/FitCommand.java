/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.ferrule.chart.words.AnswerLine;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.ConditionWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.cli.internal.AnswerJson;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.ConditionOptions;
import org.ferrule.cli.internal.DocumentFiles;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.QuantitySyntaxException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Answers one question. */
@Command(name = "fit", mixinStandardHelpOptions = true, description = "Tells whether one device goes through one lumen, in and out, and why.")
final class FitCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--library", required = true, paramLabel = "FILE", description = "A device library; may be given several times.")
    private List<Path> libraries = new ArrayList<>();

    @Option(names = "--outer", required = true, paramLabel = "ID[#LUMEN]", description = "The device around, and which of its lumens if not the main one.")
    private String outer;

    @Option(names = "--inner", required = true, paramLabel = "ID", description = "The device inside.")
    private String inner;

    @Option(names = "--rules", paramLabel = "FILE", description = "The rule set; by default the only one beside the first library.")
    private Path rules;

    @Option(names = "--wire", paramLabel = "ID", description = "The wire that the inner device runs over; by default the largest it is stated to take.")
    private String wire;

    @Option(names = "--over-wire", description = "The outer device is loaded over the tail of a wire, which is the inner device.")
    private boolean overWire;

    @Option(names = "--reach", paramLabel = "LENGTH", description = "How far beyond the outer tip, such as \"12 cm\"; with --over-wire how much wire stays ahead.")
    private String reach;

    @Mixin
    private ConditionOptions conditions = new ConditionOptions();

    @Option(names = "--json", description = "Writes the answer as JSON.")
    private boolean json;

    private final DocumentFiles files = new DocumentFiles();

    @Override
    public Integer call() {
        try {
            FitAnswer answer = answer();
            return answer.in().verdict() == Verdict.FITS ? Main.FITS : Main.OTHER;
        } catch (ReferenceException | RuleSetException e) {
            throw new CommandLineException(e.getMessage());
        }
    }

    private FitAnswer answer() {
        Catalogue catalogue = Catalogue.of(readers());
        FitQuestion question = question(catalogue);
        FitSolver solver = FitSolver.with(Extensions.ofClassPath(FitCommand.class.getClassLoader()).checks(),
                catalogue.bench());
        FitAnswer answer = solver.answer(question);
        print(question, answer);
        return answer;
    }

    private List<LibraryReader> readers() {
        return libraries.stream().map(file -> files.library(file, file.getFileName().toString())).toList();
    }

    private FitQuestion question(Catalogue catalogue) {
        RuleSet ruleSet = ruleSet();
        if (overWire && conditions.besideOthers()) {
            throw new CommandLineException(
                    "--inside and --through are asked tip first only, and --over-wire excludes them");
        }
        Direction direction = overWire ? Direction.OVER_WIRE_TAIL : Direction.TIP_FIRST;
        LumenReference reference = LumenReference.parse(outer);
        Device around = catalogue.device(reference.device()).device();
        ReadDevice inside = ConditionOptions.device(catalogue, ruleSet, inner, Optional.ofNullable(wire));
        return new FitQuestion(ReadDevice.of(around, ruleSet), reference.lumen(around, direction), inside, direction,
                reachLength(), conditions.read(catalogue, ruleSet), ruleSet);
    }

    private RuleSet ruleSet() {
        Path file = rules != null ? rules
                : files.onlyRuleSetIn(libraries.get(0).toAbsolutePath().getParent());
        return RuleTranslator.translate(files.rules(file));
    }

    private Optional<Length> reachLength() {
        try {
            return Optional.ofNullable(reach).map(Dimension::parse).map(Dimension::label);
        } catch (QuantitySyntaxException e) {
            throw new CommandLineException("--reach \"" + reach + "\": " + e.getMessage());
        }
    }

    private void print(FitQuestion question, FitAnswer answer) {
        ReasonWords words = ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE).with(LengthUnit.INCH));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(new AnswerJson(words).write(question, answer).toPrettyString());
            return;
        }
        PairNames pair = PairNames.of(question);
        AnswerWords answers = new AnswerWords(words);
        out.println("in:  " + answers.summary(answer.in()));
        out.println("out: " + answers.summary(answer.out()));
        ConditionWords.of(question.conditions()).forEach(c -> out.println("     " + c));
        out.println();
        for (AnswerLine line : answers.explain(answer, pair, question.direction())) {
            out.println("  " + line.phase().name().toLowerCase(java.util.Locale.ROOT) + ": " + line.text());
        }
        out.println();
        out.println("Rule set: " + question.rules().title() + ", rev. " + question.rules().revision()
                + ". The instructions for use decide.");
    }
}
