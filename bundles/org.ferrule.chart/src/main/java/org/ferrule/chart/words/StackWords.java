/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.words;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.stack.Crossing;
import org.ferrule.fit.stack.LevelAnswer;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.fit.stack.Tip;
import org.ferrule.fit.verdict.ReasonCode;

/** Says what was found for a stack in words, a line each, without full stops. Immutable. */
public final class StackWords {
    private final AnswerWords answers;
    private final ReasonWords reasons;
    private final Phrases phrases;

    /** Words that say answers and reasons the same way. */
    public StackWords(ReasonWords reasons) {
        this.reasons = reasons;
        this.answers = new AnswerWords(reasons);
        this.phrases = reasons.phrases();
    }

    /** The whole answer for one phase: the weakest level, the vessel, every crossing with why, chances, tips. */
    public List<String> explain(StackAnswer answer, Phase phase) {
        List<String> lines = new ArrayList<>(whole(answer, phase));
        for (LevelAnswer level : answer.levels()) {
            level.crossings().forEach(crossing -> addCrossing(lines, crossing, phase));
        }
        lines.addAll(ends(answer));
        return List.copyOf(lines);
    }

    /** What is said of the whole rather than of a level: the weakest, the vessel, chances, tips. */
    public List<String> summary(StackAnswer answer, Phase phase) {
        List<String> lines = new ArrayList<>(whole(answer, phase));
        lines.addAll(ends(answer));
        return List.copyOf(lines);
    }

    private List<String> whole(StackAnswer answer, Phase phase) {
        List<String> lines = new ArrayList<>();
        answer.weakest(phase).flatMap(level -> level.deciding(phase))
                .ifPresent(crossing -> lines.add(phrases.fill("stack.weakest", pair(crossing.question()))));
        answer.access().ifPresent(ratio -> lines.add(phrases.fill("stack.access",
                ShareWords.atLeast(ratio.low()), ShareWords.atMost(ratio.high()), ratio.vessel())));
        Device outermost = answer.levels().get(0).level().device().device().device();
        answer.reasons().forEach(reason -> lines.add(reasons.say(reason, PairNames.of(outermost, outermost))));
        return lines;
    }

    private List<String> ends(StackAnswer answer) {
        List<String> lines = new ArrayList<>();
        answer.chance().ifPresent(joint -> lines.add(phrases.fill("stack.chance", ShareWords.atLeast(joint.low()),
                ShareWords.atMost(joint.high()))));
        answer.tips().forEach(tip -> lines.add(tip(tip, answer)));
        return lines;
    }

    private void addCrossing(List<String> lines, Crossing crossing, Phase phase) {
        FitQuestion question = crossing.question();
        PhaseAnswer found = crossing.answer().in(phase);
        PairNames names = PairNames.of(question);
        lines.add(phrases.fill("stack.crossing", pair(question), answers.summary(found)));
        found.reasons().stream().filter(reason -> reason.code().weight() != ReasonCode.Weight.NOTE)
                .forEach(reason -> lines.add(phrases.fill("stack.why", reasons.say(reason, found, names))));
    }

    /** What lies in what: "Microcatheter in Guide catheter, through Extension, beside Wire". */
    public String pair(FitQuestion question) {
        String pair = phrases.fill("stack.pair", name(question.inner().device()), name(question.outer().device()));
        String through = question.conditions().through()
                .map(t -> phrases.fill("stack.through", name(t.extension().device()))).orElse("");
        List<String> others = question.conditions().inside().stream().map(Occupant::device)
                .map(device -> name(device.device())).toList();
        return pair + through + (others.isEmpty() ? "" : phrases.fill("stack.beside", String.join(", ", others)));
    }

    private String tip(Tip tip, StackAnswer answer) {
        String fromHub = reasons.lengths().length(tip.fromHub());
        String name = devices(answer).stream().filter(device -> device.id().equals(tip.device())).findFirst()
                .map(StackWords::name).orElse(tip.device());
        return tip.outside().filter(outside -> !outside.isNegative())
                .map(outside -> phrases.fill("stack.tip.outside", name, fromHub, reasons.lengths().room(outside)))
                .orElseGet(() -> phrases.fill("stack.tip", name, fromHub));
    }

    private static List<Device> devices(StackAnswer answer) {
        List<Device> devices = new ArrayList<>();
        for (LevelAnswer level : answer.levels()) {
            level.level().beside().forEach(placed -> devices.add(placed.device().device()));
            devices.add(level.level().device().device().device());
        }
        return devices;
    }

    /** What a device is called. */
    public static String name(Device device) {
        return device.name().isEmpty() ? device.id() : device.name();
    }
}
