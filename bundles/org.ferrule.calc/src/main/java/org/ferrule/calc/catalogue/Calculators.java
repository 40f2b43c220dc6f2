/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc.catalogue;

import java.util.List;
import java.util.Optional;

import org.ferrule.calc.Calculator;

/** The calculators that there are, in the order in which they are best listed. */
public final class Calculators {
    private final List<Calculator> all = List.of(new PackCalculator(), new BendCalculator(), new FlowCalculator(),
            new ReachCalculator(),
            new ExchangeCalculator(), new ConvertCalculator(), new InflateCalculator(), new RatioCalculator(),
            new BurstCalculator(), new FactorCalculator(), new SamplesCalculator(), new StackCalculator(),
            new InterferenceCalculator(), new JointCalculator(), new StiffnessCalculator(), new ColumnCalculator(),
            new BuckleCalculator(), new CapstanCalculator(), new HoopCalculator(), new CreatinineClearanceCalculator(),
            new ContrastLimitCalculator(), new ContrastPointsCalculator(), new DoseNoticeCalculator(),
            new OcclusionScoreCalculator(), new CalciumScoreCalculator(), new LesionClassCalculator(),
            new OrderCalculator());

    /** Returns all of them. */
    public List<Calculator> all() {
        return all;
    }

    /** Returns the one with that name, if there is one. */
    public Optional<Calculator> find(String name) {
        return all.stream().filter(calculator -> calculator.name().equals(name)).findFirst();
    }
}
