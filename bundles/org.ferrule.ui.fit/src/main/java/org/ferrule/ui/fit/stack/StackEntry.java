/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.Objects;
import java.util.Optional;

import org.eclipse.ui.IMemento;

/**
 * A device of a stack as it is filled in. Texts are empty where nothing is said.
 *
 * @param device its reference
 * @param ahead how far its tip lies beyond the tip of what holds it, as typed
 * @param wire reference of the wire that it runs over
 * @param used whether it has its outline after use
 * @param beside whether it lies beside the next one, in the same lumen
 */
public record StackEntry(String device, String ahead, String wire, boolean used, boolean beside) {

    /** Checks that nothing is missing. */
    public StackEntry {
        Objects.requireNonNull(device, "device");
        Objects.requireNonNull(ahead, "ahead");
        Objects.requireNonNull(wire, "wire");
    }

    /** An unused device, its tip level with that of what holds it. */
    public static StackEntry of(String device) {
        return new StackEntry(device, "", "", false, false);
    }

    /** The same with its tip elsewhere. */
    public StackEntry ahead(String other) {
        return new StackEntry(device, other, wire, used, beside);
    }

    /** The same over another wire. */
    StackEntry over(String otherWire) {
        return new StackEntry(device, ahead, otherWire, used, beside);
    }

    /** The same before use or after it. */
    StackEntry used(boolean isUsed) {
        return new StackEntry(device, ahead, wire, isUsed, beside);
    }

    /** The same beside the next one, or around it. */
    StackEntry beside(boolean isBeside) {
        return new StackEntry(device, ahead, wire, used, isBeside);
    }

    void save(IMemento memento) {
        memento.putString("device", device);
        memento.putString("ahead", ahead);
        memento.putString("wire", wire);
        memento.putBoolean("used", used);
        memento.putBoolean("beside", beside);
    }

    static StackEntry restore(IMemento memento) {
        return new StackEntry(text(memento, "device"), text(memento, "ahead"), text(memento, "wire"),
                Boolean.TRUE.equals(memento.getBoolean("used")), Boolean.TRUE.equals(memento.getBoolean("beside")));
    }

    private static String text(IMemento memento, String key) {
        return Optional.ofNullable(memento.getString(key)).orElse("");
    }
}
