/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;
import java.util.Locale;

import org.ferrule.chart.words.AnswerLine;
import org.ferrule.chart.words.AnswerWords;
import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.chart.words.ConditionWords;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.rules.RuleSet;

/** Prints answers for people. */
public final class AnswerText {
    private final AnswerWords words;
    private final PrintWriter out;

    public AnswerText(ReasonWords words, PrintWriter out) {
        this.words = new AnswerWords(words);
        this.out = out;
    }

    /** Prints both verdicts, the conditions and all reasons. */
    public void print(FitQuestion question, FitAnswer answer) {
        out.println("in:  " + words.summary(answer.in()));
        out.println("out: " + words.summary(answer.out()));
        ConditionWords.of(question.conditions()).forEach(c -> out.println("     " + c));
        out.println();
        for (AnswerLine line : words.explain(answer, PairNames.of(question), question.direction())) {
            out.println("  " + line.phase().name().toLowerCase(Locale.ROOT) + ": " + line.text());
        }
        out.println();
    }

    /** Prints on what the answers rest, and who decides. */
    public void printBasis(RuleSet rules) {
        out.println("Rule set: " + rules.title() + ", rev. " + rules.revision()
                + ". The instructions for use decide.");
    }
}
