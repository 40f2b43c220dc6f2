/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.stack.Access;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.Placed;
import org.ferrule.fit.stack.Stack;
import org.ferrule.fit.stack.StackAnswer;
import org.ferrule.fit.stack.StackSolver;

/** A stack in the making, outermost first. */
public final class SampleStack {
    private final RuleSet rules;
    private final List<Level> levels = new ArrayList<>();
    private final List<Placed> beside = new ArrayList<>();
    private Optional<Access> access = Optional.empty();

    private SampleStack(RuleSet rules) {
        this.rules = rules;
    }

    public static SampleStack under(TestRules rules) {
        return new SampleStack(rules.rules());
    }

    public SampleStack in(String vessel, String diameter) {
        access = Optional.of(new Access(vessel, Texts.printed(diameter)));
        return this;
    }

    /** Another level, its tip that far beyond the tip of the one before it. */
    public SampleStack level(SampleDevice device, String ahead) {
        levels.add(new Level(beside, placed(device, ahead)));
        beside.clear();
        return this;
    }

    /** A device that lies beside the level that is named next. */
    public SampleStack beside(SampleDevice device, String ahead) {
        beside.add(placed(device, ahead));
        return this;
    }

    private Placed placed(SampleDevice device, String ahead) {
        return new Placed(ReadDevice.of(device.device(), rules), Texts.length(ahead));
    }

    public Stack stack() {
        return new Stack(access, levels, rules);
    }

    public StackAnswer answer() {
        return StackSolver.answer(stack(), FitSolver.standard(List.of()));
    }
}
