/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.ferrule.fit.sample.SampleQuestion.passage;

import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.laws.RandomSection.Use;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.sample.Texts;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;

/**
 * A random question.
 *
 * @param shaft sections of the inner device, from its tip
 * @param bore sections of the lumen, from its proximal entry
 * @param port station of the exit port in steps; {@code NONE}: the device has no wire of its own
 * @param wire the wire beside the shaft proximal to the port
 * @param direction how it enters
 * @param beyond reach, or wire that stays ahead, in steps; {@code NONE}: hub to hub
 * @param rules in force
 */
record RandomPassage(List<RandomSection> shaft, List<RandomSection> bore, int port, RandomFigure wire,
        Direction direction, int beyond, RandomRules rules) {
    static final int NONE = Integer.MIN_VALUE;
    /** Half an inch. */
    static final Length STEP = Texts.length("0.5 in");

    int shaftLength() {
        return shaft.get(shaft.size() - 1).to();
    }

    int boreLength() {
        return bore.get(bore.size() - 1).to();
    }

    /** How far the leading end travels, in steps. */
    int travel() {
        if (direction == Direction.OVER_WIRE_TAIL) {
            return Math.max(0, shaftLength() - beyond);
        }
        return beyond == NONE ? shaftLength() : boreLength() + beyond;
    }

    RandomPassage withShaft(UnaryOperator<RandomFigure> change) {
        return new RandomPassage(shaft.stream().map(s -> s.with(change)).toList(), bore, port, change.apply(wire),
                direction, beyond, rules);
    }

    RandomPassage withBore(UnaryOperator<RandomFigure> change) {
        return new RandomPassage(shaft, bore.stream().map(s -> s.with(change)).toList(), port, wire, direction, beyond,
                rules);
    }

    RandomPassage withPort(int other) {
        return new RandomPassage(shaft, bore, other, wire, direction, beyond, rules);
    }

    RandomPassage withRules(RandomRules other) {
        return new RandomPassage(shaft, bore, port, wire, direction, beyond, other);
    }

    /** The mirror image: what was entered tip first is entered by the tail. */
    RandomPassage mirrored() {
        return new RandomPassage(mirrored(shaft, shaftLength()), mirrored(bore, boreLength()), NONE, wire,
                Direction.OVER_WIRE_TAIL, 0, rules);
    }

    private static List<RandomSection> mirrored(List<RandomSection> sections, int whole) {
        return sections.stream().map(s -> s.mirrored(whole))
                .sorted((a, b) -> Integer.compare(a.from(), b.from())).toList();
    }

    FitAnswer answer() {
        return question(LengthUnit.MILLIMETRE).answer();
    }

    /** The question with every figure printed in that unit. */
    SampleQuestion question(LengthUnit unit) {
        return question(inner(unit), outer(unit), unit);
    }

    /** The same question of these devices. */
    SampleQuestion question(SampleDevice inner, SampleDevice outer, LengthUnit unit) {
        SampleQuestion question = passage(inner, outer).under(rules.rules(unit));
        SampleQuestion asked = beyond == NONE ? question : question.reach(station(beyond, unit));
        return direction == Direction.OVER_WIRE_TAIL ? asked.overTail() : asked;
    }

    static String station(int steps, LengthUnit unit) {
        String text = Texts.text(STEP.times(Math.abs(steps)), unit);
        return steps < 0 ? "-" + text : text;
    }

    SampleDevice inner(LengthUnit unit) {
        return device("inner", shaft, port, wire, unit);
    }

    static SampleDevice device(String id, List<RandomSection> shaft, int port, RandomFigure wire, LengthUnit unit) {
        SampleDevice device = SampleDevice.device(id, DeviceKind.BALLOON_CATHETER)
                .length(station(shaft.get(shaft.size() - 1).to(), unit));
        shaft.forEach(section -> add(device, section, unit));
        return port == NONE ? device
                : device.takesWire(wire.text(unit)).sidePort(station(port, unit), "1 mm");
    }

    private static void add(SampleDevice device, RandomSection section, LengthUnit unit) {
        String from = station(section.from(), unit);
        String to = station(section.to(), unit);
        String start = section.start().text(unit);
        switch (section.use()) {
            case PLAIN -> device.taper("section", from, to, start, section.end().text(unit));
            case GROWS -> device.folded("section", from, to, start);
            case STATED -> device.folded("section", from, to, start, section.end().text(unit));
            case NOT_STATED -> device.section("section", from, to, "?");
        }
    }

    SampleDevice outer(LengthUnit unit) {
        String whole = station(boreLength(), unit);
        SampleDevice device = SampleDevice.device("outer", DeviceKind.GUIDE_CATHETER).length(whole).lumen("lumen",
                Lumen.Use.WORKING, Lumen.Opening.HUB, "0 mm", whole);
        for (RandomSection section : bore) {
            boolean known = section.use() != Use.NOT_STATED;
            device.taperedBore(station(section.from(), unit), station(section.to(), unit),
                    known ? section.start().text(unit) : "?", known ? section.end().text(unit) : "?");
        }
        return device;
    }

    /** The rules of a passage: spans in grains, growth in percent. */
    record RandomRules(int spanBelow, int spanAbove, int required, int growthPercent) {
        TestRules rules(LengthUnit unit) {
            return TestRules.silent()
                    .spans(RandomFigure.length(spanBelow).toString(), RandomFigure.length(spanAbove).toString())
                    .required(Texts.text(RandomFigure.length(required), unit)).wireAhead("0 mm")
                    .growth("1.05", "1.1", "1." + (10 + growthPercent));
        }

        RandomRules wider(int grains) {
            return new RandomRules(spanBelow + grains, spanAbove + grains, required, growthPercent);
        }

        static RandomRules any(Random random) {
            return new RandomRules(random.nextInt(150), random.nextInt(150), random.nextInt(300),
                    random.nextInt(30));
        }
    }
}
