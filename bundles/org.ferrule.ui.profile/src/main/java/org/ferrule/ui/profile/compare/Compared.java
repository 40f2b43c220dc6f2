/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.engine.catalogue.ReferenceException;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.figure.Figure;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.FigureClass;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.picture.Caption;
import org.ferrule.profile.LumenLine;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.ProfiledDevice;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.fit.passage.ProjectDevices;

/**
 * What came of a request: a comparison, or what stands in its way.
 *
 * @param comparison absent when there is none
 * @param problem in words; empty when there is a comparison
 * @param libraries the paths of those that the devices come from
 */
public record Compared(Optional<ProfileComparison> comparison, String problem, List<String> libraries) {

    /** Too few devices are chosen. */
    public static final String FIRST = "Choose two to eight devices: with Add..., or with Compare profiles in the menu "
            + "of a device.";

    /** Compares the devices of a project as they stand. */
    public static Compared of(ProjectDevices project, CompareRequest asked) {
        if (asked.devices().size() < ProfileComparison.LEAST) {
            return problem(FIRST);
        }
        try {
            return compare(project, asked);
        } catch (ReferenceException | RuleSetException | IllegalArgumentException e) {
            return problem(e.getMessage());
        }
    }

    /** What is told below a plot when it leaves the program; nothing where there is no comparison. */
    Caption caption() {
        return comparison.map(found -> {
            String names = String.join(", ", found.devices().stream().map(ProfiledDevice::name).toList());
            String revision = found.rules().revision().isEmpty() ? "" : ", rev. " + found.rules().revision();
            return Caption.of("Profiles compared: " + names, "Libraries: " + String.join(", ", libraries),
                    "Rule set: " + found.rules().title() + revision,
                    ComparePlot.words().phrases().get("page.caution"));
        }).orElse(Caption.NONE);
    }

    private static Compared problem(String words) {
        return new Compared(Optional.empty(), words, List.of());
    }

    private static Compared compare(ProjectDevices project, CompareRequest asked) {
        RuleSet rules = rules(project, asked.rules());
        List<CataloguedDevice> devices = asked.devices().stream().map(project.catalogue()::device).toList();
        List<CataloguedDevice> around = asked.lumens().stream().map(project.catalogue()::device).toList();
        ProfileComparison comparison = ProfileComparison.of(
                devices.stream().map(found -> ReadDevice.of(found.device(), rules)).toList(), asked.landmark(),
                around.stream().map(found -> line(found.device(), rules)).toList(), wire(asked.wire(), rules), rules);
        return new Compared(Optional.of(comparison), "", Stream.concat(devices.stream(), around.stream())
                .map(CataloguedDevice::library).distinct().sorted().toList());
    }

    private static RuleSet rules(ProjectDevices project, String path) {
        RuleSet chosen = path.isEmpty() ? project.rules().values().stream().findFirst().orElse(null)
                : project.rules().get(path);
        if (chosen == null) {
            throw new IllegalArgumentException(project.rules().isEmpty()
                    ? "The project has no rule set by which labels could be read"
                    : "The rule set " + path + " is not in the project");
        }
        return chosen;
    }

    private static LumenLine line(Device around, RuleSet rules) {
        return new LumenLine(ReadDevice.of(around, rules),
                LumenReference.parse(around.id()).lumen(around, Direction.TIP_FIRST));
    }

    private static Optional<Figure> wire(String typed, RuleSet rules) {
        return typed.isBlank() ? Optional.empty() : Optional.of(new FigureReader(rules)
                .read(Dimension.parse(typed), FigureClass.WIRE_DIAMETER, DeviceKind.GUIDEWIRE).figure());
    }
}
