/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;

import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.UnitPreferences;
import org.ferrule.cli.internal.AnswerJson;
import org.ferrule.cli.internal.AnswerText;
import org.ferrule.cli.internal.CommandLineException;
import org.ferrule.cli.internal.QuestionOptions;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.fit.verdict.Verdict;
import org.ferrule.quantity.LengthUnit;

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

    @Option(names = "--outer", required = true, paramLabel = "ID[#LUMEN]", description = "The device around, and which of its lumens if not the main one.")
    private String outer;

    @Option(names = "--inner", required = true, paramLabel = "ID", description = "The device inside.")
    private String inner;

    @Mixin
    private QuestionOptions options = new QuestionOptions();

    @Option(names = "--json", description = "Writes the answer as JSON.")
    private boolean json;

    @Override
    public Integer call() {
        try {
            Catalogue catalogue = options.catalogue();
            FitQuestion question = options.question(catalogue, options.ruleSet(), outer, inner);
            FitAnswer answer = options.solver(catalogue).inDetail().answer(question);
            print(question, answer);
            return answer.in().verdict() == Verdict.FITS ? Main.FITS : Main.OTHER;
        } catch (ReferenceException | RuleSetException e) {
            throw new CommandLineException(e.getMessage());
        }
    }

    private void print(FitQuestion question, FitAnswer answer) {
        ReasonWords words = ReasonWords.english(UnitPreferences.in(LengthUnit.MILLIMETRE).with(LengthUnit.INCH));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(new AnswerJson(words).write(question, answer).toPrettyString());
            return;
        }
        AnswerText text = new AnswerText(words, out);
        text.print(question, answer);
        text.printBasis(question.rules());
    }
}
