/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.List;
import java.util.Optional;

import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.ui.fit.answer.AskedPair;

/** Answers the daily question with the devices and rules of a project, just as a chart would. */
public final class PassageAnswerer {

    private final ProjectDevices devices;
    private final List<FitCheck> checks;

    /** Answers with these devices and checks. */
    public PassageAnswerer(ProjectDevices devices, List<FitCheck> checks) {
        this.devices = devices;
        this.checks = List.copyOf(checks);
    }

    /**
     * Answers a question.
     *
     * @throws IllegalArgumentException saying what cannot be used as it stands
     * @throws org.ferrule.engine.catalogue.ReferenceException when a device or lumen is not found
     * @throws org.ferrule.fit.rules.RuleSetException when a rule is missing that the question needs
     */
    public AskedPair answer(PassageQuestion asked) {
        RuleSet rules = rules(asked);
        Device outer = devices.catalogue().device(asked.outer()).device();
        Device inner = devices.catalogue().device(asked.inner()).device();
        Optional<String> named = Optional.of(asked.lumen()).filter(name -> !name.isEmpty());
        Lumen lumen = new LumenReference(asked.outer(), named).lumen(outer, asked.direction());
        FitQuestion question = new FitQuestion(ReadDevice.of(outer, rules), lumen, inner(asked, inner, rules),
                asked.direction(), reach(asked),
                new ConditionReading(devices.catalogue(), rules).read(asked.conditions()),
                rules);
        FitSolver solver = FitSolver.with(checks, devices.catalogue().bench());
        return new AskedPair(question, solver.answer(question), solver);
    }

    private RuleSet rules(PassageQuestion asked) {
        RuleSet chosen = devices.rules().get(asked.rules());
        if (chosen == null) {
            throw new IllegalArgumentException(devices.rules().isEmpty() ? "The project has no rule set to answer by"
                    : "Choose a rule set to answer by");
        }
        return chosen;
    }

    private ReadDevice inner(PassageQuestion asked, Device inner, RuleSet rules) {
        if (asked.wire().isEmpty()) {
            return ReadDevice.of(inner, rules);
        }
        Device wire = devices.catalogue().device(asked.wire()).device();
        return ReadDevice.over(inner, rules, OwnWire.ofDevice(wire, new FigureReader(rules)));
    }

    private static Optional<Length> reach(PassageQuestion asked) {
        return asked.reach().isBlank() ? Optional.empty() : Optional.of(Dimension.parse(asked.reach()).label());
    }
}
