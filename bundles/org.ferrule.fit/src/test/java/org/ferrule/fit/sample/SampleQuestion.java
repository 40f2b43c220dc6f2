/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.Bend;
import org.ferrule.fit.passage.Conditions;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.Occupant;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.passage.Through;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Length;

/** A question in the making: by default tip first, hub to hub, through the lumen that is usually meant. */
public final class SampleQuestion {
    private final Device inner;
    private final Device outer;
    private final List<BenchResult> bench = new ArrayList<>();
    private RuleSet rules = TestRules.exact().rules();
    private Direction direction = Direction.TIP_FIRST;
    private Optional<String> lumen = Optional.empty();
    private Optional<Length> reach = Optional.empty();
    private Optional<Device> wire = Optional.empty();
    private final List<Bend> bends = new ArrayList<>();
    private final List<Still> inside = new ArrayList<>();
    private Optional<Still> through = Optional.empty();
    private boolean afterInflation;

    /** A device that lies still with its tip beyond that of the outer device. */
    private record Still(Device device, String ahead, boolean used) {
        Occupant occupant(RuleSet rules) {
            return new Occupant(ReadDevice.of(device, rules), Texts.length(ahead), used);
        }

        Through through(RuleSet rules) {
            return new Through(ReadDevice.of(device, rules), device.mainLumen().orElseThrow(), Texts.length(ahead));
        }
    }

    private SampleQuestion(Device inner, Device outer) {
        this.inner = inner;
        this.outer = outer;
    }

    /** Does {@code inner} go through {@code outer}? */
    public static SampleQuestion passage(SampleDevice inner, SampleDevice outer) {
        return passage(inner.device(), outer.device());
    }

    /** Does {@code inner} go through {@code outer}? */
    public static SampleQuestion passage(Device inner, Device outer) {
        return new SampleQuestion(inner, outer);
    }

    public SampleQuestion under(TestRules other) {
        return under(other.rules());
    }

    public SampleQuestion under(RuleSet other) {
        rules = other;
        return this;
    }

    public SampleQuestion lumen(String name) {
        lumen = Optional.of(name);
        return this;
    }

    public SampleQuestion reach(String length) {
        reach = Optional.of(Texts.length(length));
        return this;
    }

    /** The outer device is loaded over the tail of the wire inside. */
    public SampleQuestion overTail() {
        direction = Direction.OVER_WIRE_TAIL;
        return this;
    }

    /** The inner device runs over a plain wire of that diameter. */
    public SampleQuestion wire(String diameter) {
        wire = Optional.of(SampleDevice.rod("wire", DeviceKind.GUIDEWIRE, "300 cm", diameter).device());
        return this;
    }

    /** The inner device runs over that wire. */
    public SampleQuestion over(SampleDevice guidewire) {
        wire = Optional.of(guidewire.device());
        return this;
    }

    /** On the way there is a bent lumen of that radius. */
    public SampleQuestion bentLumen(String radius) {
        return bend(new Bend(Bend.Where.LUMEN, Texts.length(radius), Optional.empty()));
    }

    /** On the way there is a bend. */
    public SampleQuestion bend(Bend bend) {
        bends.add(bend);
        return this;
    }

    /** Beside a device that lies in the lumen, its tip that far beyond the lumen's distal opening. */
    public SampleQuestion beside(SampleDevice occupant, String tipAhead) {
        inside.add(new Still(occupant.device(), tipAhead, false));
        return this;
    }

    /** The same of a device with its outline after use. */
    public SampleQuestion besideUsed(SampleDevice occupant, String tipAhead) {
        inside.add(new Still(occupant.device(), tipAhead, true));
        return this;
    }

    /** Through an extension whose tip protrudes that far beyond the lumen's distal opening. */
    public SampleQuestion through(SampleDevice extension, String protrusion) {
        through = Optional.of(new Still(extension.device(), protrusion, false));
        return this;
    }

    /** The inner device was inflated before it goes in. */
    public SampleQuestion afterInflation() {
        afterInflation = true;
        return this;
    }

    public SampleQuestion bench(SampleBench... results) {
        for (SampleBench result : results) {
            bench.add(result.result());
        }
        return this;
    }

    public FitQuestion question() {
        ReadDevice within = wire.map(w -> ReadDevice.over(inner, rules, OwnWire.ofDevice(w, new FigureReader(rules))))
                .orElseGet(() -> ReadDevice.of(inner, rules));
        return new FitQuestion(ReadDevice.of(outer, rules), asked(), within, direction, reach, conditions(), rules);
    }

    private Conditions conditions() {
        return new Conditions(inside.stream().map(still -> still.occupant(rules)).toList(),
                through.map(still -> still.through(rules)), bends, afterInflation);
    }

    private Lumen asked() {
        Optional<Lumen> usual = direction == Direction.OVER_WIRE_TAIL ? outer.wireLumen() : outer.mainLumen();
        return lumen.map(outer::lumen).or(() -> usual)
                .orElseThrow(() -> new IllegalArgumentException("no lumen in " + outer.id()));
    }

    public FitAnswer answer() {
        return FitSolver.standard(bench).answer(question());
    }

    /** The answer going in. */
    public PhaseAnswer in() {
        return answer().in();
    }

    /** The answer coming out. */
    public PhaseAnswer out() {
        return answer().out();
    }
}
