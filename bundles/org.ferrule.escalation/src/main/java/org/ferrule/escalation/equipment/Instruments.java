/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.equipment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.ferrule.fit.FitSolver;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.figure.FigureReader;
import org.ferrule.fit.passage.FitAnswer;
import org.ferrule.fit.passage.FitQuestion;
import org.ferrule.fit.passage.OwnWire;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;

/**
 * All devices that the libraries describe, the rules in force, and the solver that asks whether one passes another. What
 * was read and answered once is kept; so one of these serves for many plans, from any thread.
 */
public final class Instruments {
    private final Map<String, Device> devices = new LinkedHashMap<>();
    private final RuleSet rules;
    private final FitSolver solver;
    private final Map<List<String>, ReadDevice> read = new ConcurrentHashMap<>();
    private final Map<List<Object>, FitAnswer> answers = new ConcurrentHashMap<>();

    /**
     * Takes devices and rules.
     *
     * @throws IllegalArgumentException naming the id that two devices have
     */
    public Instruments(List<Device> devices, RuleSet rules, FitSolver solver) {
        for (Device device : devices) {
            if (this.devices.put(device.id(), device) != null) {
                throw new IllegalArgumentException("two devices are called \"" + device.id() + "\"");
            }
        }
        this.rules = Objects.requireNonNull(rules, "rules");
        this.solver = Objects.requireNonNull(solver, "solver");
    }

    /** All devices, in the order of the libraries. */
    public List<Device> devices() {
        return new ArrayList<>(devices.values());
    }

    /** The device of that id, if a library describes it. */
    public Optional<Device> find(String id) {
        return Optional.ofNullable(devices.get(id));
    }

    /**
     * The device of that id.
     *
     * @throws IllegalArgumentException naming it when no library describes it
     */
    public Device device(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no library describes \"" + id + "\""));
    }

    /** The rules in force. */
    public RuleSet rules() {
        return rules;
    }

    /** Reads a device that runs over the largest wire it is stated to take. */
    ReadDevice read(Device device) {
        return read.computeIfAbsent(List.of(device.id()), key -> ReadDevice.of(device, rules));
    }

    /** Reads a device that runs over that wire. */
    ReadDevice over(Device device, Device wire) {
        return read.computeIfAbsent(List.of(device.id(), wire.id()),
                key -> ReadDevice.over(device, rules, OwnWire.ofDevice(wire, new FigureReader(rules))));
    }

    /** Answers a question, from memory where it was asked before. */
    FitAnswer answer(FitQuestion question) {
        List<Object> key = List.of(question.outer(), question.lumen().name(), question.inner(), question.direction(),
                question.reach(), question.conditions());
        return answers.computeIfAbsent(key, k -> solver.answer(question));
    }
}
