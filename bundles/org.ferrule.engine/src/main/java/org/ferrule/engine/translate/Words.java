/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.device.Phase;

/** Turns the model's enumerated words into the kernel's. */
public final class Words {
    private Words() {
    }

    static DeviceKind kind(org.ferrule.model.DeviceKind kind) {
        return DeviceKind.ofWord(kind.getLiteral());
    }

    /** The kinds that a list of the model names. */
    public static Set<DeviceKind> kinds(List<org.ferrule.model.DeviceKind> kinds) {
        return kinds.stream().map(Words::kind).collect(Collectors.toUnmodifiableSet());
    }

    static Set<Phase> phases(List<org.ferrule.model.Phase> phases) {
        return phases.stream().map(p -> p == org.ferrule.model.Phase.OUT ? Phase.OUT : Phase.IN)
                .collect(Collectors.toUnmodifiableSet());
    }

    static Lumen.Use use(org.ferrule.model.LumenUse use) {
        return switch (use) {
            case WORKING -> Lumen.Use.WORKING;
            case WIRE -> Lumen.Use.WIRE;
            case INFLATION -> Lumen.Use.INFLATION;
            case FLUSH -> Lumen.Use.FLUSH;
            case IMAGING -> Lumen.Use.IMAGING;
        };
    }

    static Lumen.Opening opening(org.ferrule.model.LumenOpening opening) {
        return switch (opening) {
            case HUB -> Lumen.Opening.HUB;
            case SIDE_PORT -> Lumen.Opening.SIDE_PORT;
            case COLLAR -> Lumen.Opening.COLLAR;
        };
    }
}
