/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

/**
 * A value that a part is to have.
 *
 * @param part the part, which may be inherited
 * @param feature one of its attributes
 * @param value the value
 */
public record PartValue(Shown part, EAttribute feature, Object value) {

    /** Tells whether a line states the value, and not the part itself. */
    public static boolean overrides(Shown part, EAttribute feature) {
        return part.isInherited() || Optional.ofNullable(part.hints()).filter(hints -> hints.eIsSet(feature))
                .isPresent() && !part.own().orElseThrow().eIsSet(feature);
    }
}
