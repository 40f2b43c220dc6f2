/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;

import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.StackWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.cli.internal.AnswerText;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.LevelReader;
import org.ferrule.cli.internal.LibraryOptions;
import org.ferrule.cli.internal.StackJson;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.stack.Access;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.Stack;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.fit.stack.StackSolver;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.quantity.QuantitySyntaxException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Asks devices that lie in each other. */
@Command(name = "stack", mixinStandardHelpOptions = true, description = "Tells level by level whether devices go into each other, how far each reaches, and how thick the outermost is beside its vessel.")
final class StackCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private LibraryOptions documents = new LibraryOptions();

    @Option(names = "--access", paramLabel = "VESSEL=DIAMETER", description = "The vessel round the outermost device, such as \"radial artery=2.4 mm\".")
    private String access;

    @Option(names = "--json", description = "Writes the answer as JSON.")
    private boolean json;

    @Parameters(paramLabel = "LEVEL", arity = "1..*", description = "ID[#LUMEN][,wire=ID][,ahead=LENGTH][,used], outermost first. ahead: how far its tip lies beyond the tip of the level around it, negative when inside, by default 0. Devices side by side stand in one LEVEL with \" and \" between them, in the order in which they went in; the last one holds the next level. A haemostasis valve follows the device at whose hub it sits.")
    private List<String> levels = new ArrayList<>();

    @Override
    public Integer call() {
        try {
            Catalogue catalogue = documents.catalogue();
            RuleSet rules = documents.ruleSet();
            LevelReader reader = new LevelReader(catalogue, rules);
            List<Level> read = levels.stream().map(reader::read).toList();
            return answer(read, rules, documents.solver(catalogue).inDetail());
        } catch (RuleSetException e) {
            throw new CommandLineException(e.getMessage());
        }
    }

    private int answer(List<Level> read, RuleSet rules, FitSolver solver) {
        try {
            Stack stack = new Stack(accessVessel(), read, rules);
            StackAnswer answer = StackSolver.answer(stack, solver);
            print(stack, answer);
            boolean fits = answer.weakest(Phase.IN).flatMap(l -> l.verdict(Phase.IN))
                    .filter(verdict -> verdict != Verdict.FITS).isEmpty();
            return fits ? Main.FITS : Main.OTHER;
        } catch (IllegalArgumentException e) {
            throw new CommandLineException("the levels cannot lie in each other: " + e.getMessage());
        }
    }

    private Optional<Access> accessVessel() {
        if (access == null) {
            return Optional.empty();
        }
        int equals = access.indexOf('=');
        if (equals < 1) {
            throw new CommandLineException("--access \"" + access + "\": expected a vessel, = and its diameter");
        }
        try {
            return Optional.of(new Access(access.substring(0, equals).strip(),
                    Optional.of(Dimension.parse(access.substring(equals + 1).strip()))));
        } catch (QuantitySyntaxException e) {
            throw new CommandLineException("--access \"" + access + "\": " + e.getMessage());
        }
    }

    private void print(Stack stack, StackAnswer answer) {
        ReasonWords words = ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE).with(LengthUnit.INCH));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(new StackJson(words).write(answer).toPrettyString());
            return;
        }
        StackWords lines = new StackWords(words);
        for (Phase phase : Phase.values()) {
            out.println(phase.name().toLowerCase(Locale.ROOT) + ":");
            lines.explain(answer, phase).forEach(line -> out.println("  " + line));
            out.println();
        }
        new AnswerText(words, out).printBasis(stack.rules());
    }
}
