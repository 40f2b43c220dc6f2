/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.find;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.ferrule.ui.devices.sheet.CellReading;

/**
 * A field in which the text was found.
 *
 * @param device the id of the device
 * @param object the device or its part that states the field
 * @param feature the field
 * @param index the entry of a field that lists several, from 0; {@link #WHOLE} for a field with one value
 * @param where the field in words
 * @param before what stands there
 * @param after what would stand there
 * @param reading what the new text is
 * @param named how many other entries name the object by this text, and would not any more
 */
public record Hit(String device, EObject object, EAttribute feature, int index, String where, String before,
        String after, CellReading reading, int named) {

    /** The field has one value. */
    public static final int WHOLE = -1;

    /** Tells whether replacing would change something that can be read. */
    public boolean replaceable() {
        return reading.readable() && !after.equals(before);
    }

    /** Tells whether nothing speaks against replacing. */
    public boolean harmless() {
        return replaceable() && named == 0;
    }

    /** Returns what is to be said about it; empty for nothing. */
    public String remark() {
        if (!reading.readable()) {
            return "Cannot be read: " + reading.error().orElse("");
        }
        String others = named == 0 ? "" : named == 1 ? "1 other entry names it" : named + " other entries name it";
        return reading.doubt().map(doubt -> "Doubtful: " + doubt + (others.isEmpty() ? "" : "; " + others))
                .orElse(others);
    }
}
