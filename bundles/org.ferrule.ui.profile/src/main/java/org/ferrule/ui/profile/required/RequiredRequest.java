/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.required;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.ui.IMemento;
import org.ferrule.fit.device.Phase;

/**
 * What is asked about a section. References are paths in the project with ids behind.
 *
 * @param devices the device, if one is chosen
 * @param section by its place in the list of sections that can be moved, from 0
 * @param partners that it is to go with
 * @param rules the rule set, as a path in the project; empty for the first there is
 * @param phase going in or coming out
 */
public record RequiredRequest(List<String> devices, int section, List<String> partners, String rules, Phase phase) {

    /** Nothing is filled in yet. */
    public static final RequiredRequest EMPTY = new RequiredRequest(List.of(), 0, List.of(), "", Phase.IN);

    private static final String DEVICE = "device";
    private static final String PARTNER = "partner";
    private static final String SECTION = "section";
    private static final String RULES = "rules";
    private static final String PHASE = "phase";

    /** Copies the lists. */
    public RequiredRequest {
        devices = List.copyOf(devices);
        partners = List.copyOf(partners);
    }

    void save(IMemento memento) {
        devices.forEach(device -> memento.createChild(DEVICE, device));
        partners.forEach(partner -> memento.createChild(PARTNER, partner));
        memento.putInteger(SECTION, section);
        memento.putString(RULES, rules);
        memento.putBoolean(PHASE, phase == Phase.OUT);
    }

    static RequiredRequest restore(IMemento memento) {
        return new RequiredRequest(ids(memento, DEVICE), Optional.ofNullable(memento.getInteger(SECTION)).orElse(0),
                ids(memento, PARTNER), Optional.ofNullable(memento.getString(RULES)).orElse(""),
                Boolean.TRUE.equals(memento.getBoolean(PHASE)) ? Phase.OUT : Phase.IN);
    }

    private static List<String> ids(IMemento memento, String type) {
        return Stream.of(memento.getChildren(type)).map(IMemento::getID).toList();
    }
}
