/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.stack.Access;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.Placed;
import org.ferrule.fit.stack.Stack;
import org.ferrule.fit.stack.StackSolver;
import org.ferrule.quantity.Dimension;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;
import org.ferrule.ui.fit.passage.ProjectDevices;

/** Answers a stack by the devices and rule sets of a project. */
final class StackAnswerer {

    private static final String VESSEL = "vessel of access";

    private final ProjectDevices project;
    private final StackRequest request;
    private final List<ReadDevice> devices = new ArrayList<>();
    private final List<Integer> numbers = new ArrayList<>();

    StackAnswerer(ProjectDevices project, StackRequest request) {
        this.project = project;
        this.request = request;
    }

    /**
     * Returns the answer.
     *
     * @throws IllegalArgumentException saying what cannot be read, or why the devices cannot lie in each other
     * @throws org.ferrule.engine.catalogue.ReferenceException when a device is not found
     */
    AnsweredStack answer() {
        RuleSet rules = rules();
        List<Level> levels = levels(rules);
        Optional<Access> access = request.vessel().isBlank() ? Optional.empty()
                : Optional.of(new Access(VESSEL, Optional.of(Dimension.parse(request.vessel().strip()))));
        FitSolver solver = FitSolver.with(Extensions.ofPlatform().checks(), project.catalogue().bench());
        return new AnsweredStack(devices, numbers, StackSolver.answer(new Stack(access, levels, rules), solver), rules,
                solver);
    }

    private RuleSet rules() {
        RuleSet chosen = project.rules().size() == 1 ? project.rules().values().iterator().next()
                : project.rules().get(request.rules());
        if (chosen == null) {
            throw new IllegalArgumentException(project.rules().isEmpty() ? "The project has no rule set to answer by"
                    : "Choose a rule set to answer by");
        }
        return chosen;
    }

    private List<Level> levels(RuleSet rules) {
        List<Level> levels = new ArrayList<>();
        List<Placed> beside = new ArrayList<>();
        for (int i = 0; i < request.entries().size(); i++) {
            StackEntry entry = request.entries().get(i);
            Placed placed = placed(entry, rules);
            devices.add(placed.device());
            numbers.add(levels.size());
            if (entry.beside() && i + 1 < request.entries().size()) {
                beside.add(placed);
            } else {
                levels.add(new Level(beside, placed));
                beside.clear();
            }
        }
        return levels;
    }

    private Placed placed(StackEntry entry, RuleSet rules) {
        Device device = project.catalogue().device(entry.device()).device();
        ReadDevice read = entry.wire().isEmpty() ? ReadDevice.of(device, rules)
                : ReadDevice.over(device, rules, OwnWire.ofDevice(
                        project.catalogue().device(entry.wire()).device(), new FigureReader(rules)));
        Length ahead = entry.ahead().isBlank() ? Length.ZERO : Offset.parse(entry.ahead().strip()).value();
        return new Placed(read, ahead, entry.used(), Optional.empty());
    }
}
