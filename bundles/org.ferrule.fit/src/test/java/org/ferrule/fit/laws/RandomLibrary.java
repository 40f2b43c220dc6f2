/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.matrix.MatrixLine;
import org.ferrule.fit.matrix.MatrixQuestion;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.Limits;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.quantity.Length;

/** Random devices that are edited, and the question that is asked of them. */
final class RandomLibrary {
    private static final int LEAST = 3;

    private final Random random;
    private final List<Device> outer = new ArrayList<>();
    private final List<Device> inner = new ArrayList<>();
    private final Map<Device, ReadDevice> read = new HashMap<>();
    private final FitSolver solver;
    private final Direction direction;
    private RuleSet rules;
    private Optional<Length> reach;
    private int made;

    RandomLibrary(Random random) {
        this.random = random;
        this.direction = random.nextInt(3) == 0 ? Direction.OVER_WIRE_TAIL : Direction.TIP_FIRST;
        this.reach = reach();
        this.rules = rules("0.0" + random.nextInt(5) + " mm");
        this.solver = FitSolver.standard(new RandomClaims(random).bench());
        for (int i = 0; i <= LEAST; i++) {
            outer.add(anOuter("g" + made++));
            inner.add(anInner("b" + made++));
        }
    }

    /** A library in which the inner devices are many sizes of few. */
    static RandomLibrary ofLines(Random random) {
        RandomLibrary library = new RandomLibrary(random);
        library.inner.clear();
        library.inner.addAll(new RandomLine(random).devices(45));
        return library;
    }

    private Device anOuter(String id) {
        return alike(id, outer).orElseGet(() -> RandomDevice.outer(id, random));
    }

    private Device anInner(String id) {
        return alike(id, inner).orElseGet(() -> RandomDevice.inner(id, random));
    }

    /** Often a device is like another one in all but its name, as those of one line are. */
    private Optional<Device> alike(String id, List<Device> others) {
        if (others.isEmpty() || random.nextInt(3) == 0) {
            return Optional.empty();
        }
        Device d = others.get(random.nextInt(others.size()));
        return Optional.of(new Device(id, id, d.kind(), d.size(), d.effectiveLength(), d.takesWire(), d.sections(),
                d.lumens(), d.deploys(), d.claims(), d.parts()));
    }

    private Optional<Length> reach() {
        int steps = direction == Direction.TIP_FIRST ? random.nextInt(15) - 5 : random.nextInt(6);
        return random.nextInt(3) == 0 ? Optional.empty() : Optional.of(new Length(5_000_000L * steps));
    }

    /** Changes one device, the order, the number of devices, or what is asked. */
    void edit() {
        int place = random.nextInt(LEAST);
        switch (random.nextInt(9)) {
            case 0 -> outer.set(place, anOuter(outer.get(place).id()));
            case 1 -> outer.add(place, anOuter("g" + made++));
            case 2 -> Collections.shuffle(outer, random);
            case 3 -> inner.remove(place);
            case 4 -> inner.add(place, anInner("b" + made++));
            case 5 -> reach = reach();
            case 6 -> changeRules();
            case 7 -> inner.set(place, retitled(inner.get(place)));
            default -> inner.set(place, anInner(inner.get(place).id()));
        }
        if (inner.size() < LEAST) {
            inner.add(anInner("b" + made++));
        }
    }

    private void changeRules() {
        rules = rules("0.0" + random.nextInt(5) + " mm");
        read.clear();
    }

    private RuleSet rules(String required) {
        TestRules usual = TestRules.usual().required(required);
        return (random.nextBoolean() ? usual.allow(Limits.Purpose.HUB_AND_VALVE, random.nextInt(9) + " mm") : usual)
                .rules();
    }

    private static Device retitled(Device d) {
        return new Device(d.id(), d.name() + "'", d.kind(), d.size(), d.effectiveLength(), d.takesWire(),
                d.sections(), d.lumens(), d.deploys(), d.claims(), d.parts());
    }

    /** Unchanged devices stay the same objects, as the matrix expects. */
    MatrixQuestion question() {
        List<MatrixLine> lines = outer.stream()
                .flatMap(d -> d.lumens().stream().map(lumen -> new MatrixLine(read(d), lumen))).toList();
        return new MatrixQuestion(lines, inner.stream().map(this::read).toList(), direction, reach, rules, solver);
    }

    private ReadDevice read(Device device) {
        return read.computeIfAbsent(device, d -> ReadDevice.of(d, rules));
    }
}
