/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.PrintWriter;
import java.util.Locale;

import org.ferrule.chart.words.PairNames;
import org.ferrule.chart.words.ReasonWords;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.stack.AccessRatio;
import org.ferrule.fit.stack.Crossing;
import org.ferrule.fit.stack.Stack;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.fit.stack.Tip;
import org.ferrule.quantity.Length;

/** Prints a stack's answer for people. */
public final class StackText {
    private final ReasonWords words;
    private final PrintWriter out;

    public StackText(ReasonWords words, PrintWriter out) {
        this.words = words;
        this.out = out;
    }

    /** Prints every crossing, what decides, how far each device reaches, and the access. */
    public void print(Stack stack, StackAnswer answer) {
        AnswerText text = new AnswerText(words, out);
        answer.levels().forEach(level -> level.crossings().forEach(crossing -> {
            out.println(title(crossing.question()));
            text.print(crossing.question(), crossing.answer());
        }));
        answer.weakest(Phase.IN).flatMap(l -> l.deciding(Phase.IN)).map(Crossing::question)
                .ifPresent(question -> out.println("Decides: " + title(question)));
        answer.tips().forEach(this::print);
        answer.access().ifPresent(this::print);
        Device outermost = stack.levels().get(0).device().device().device();
        answer.reasons().forEach(r -> out.println(words.say(r, PairNames.of(outermost, outermost))));
        out.println();
        text.printBasis(stack.rules());
    }

    private static String title(FitQuestion question) {
        return question.inner().device().id() + " in " + question.outer().device().id();
    }

    private void print(Tip tip) {
        out.println(tip.device() + ": its tip lies " + words.lengths().length(tip.fromHub())
                + (tip.fromHub().isNegative() ? " outside" : " beyond") + " the outermost hub"
                + tip.outside().map(this::outside).orElse(""));
    }

    private String outside(Length length) {
        return ", " + words.lengths().length(length)
                + (length.isNegative() ? " are missing to get there" : " of it stay outside");
    }

    /** Both ends of the ratio are rounded outward. */
    private void print(AccessRatio ratio) {
        out.println(String.format(Locale.ROOT, "%s: %.2f to %.2f times as thick as the vessel is wide", ratio.vessel(),
                Math.floor(ratio.low() * 100) / 100, Math.ceil(ratio.high() * 100) / 100));
    }
}
