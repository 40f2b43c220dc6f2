/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.passage;

import java.util.Objects;

import org.eclipse.ui.IMemento;
import org.ferrule.fit.passage.Direction;

/**
 * The daily question, as it is filled in: what is in place, and what is to be passed through it. Texts are empty where
 * nothing is said.
 *
 * @param outer reference of the outer device
 * @param lumen the name of its lumen; empty for the one that is usually meant
 * @param wire reference of the wire in place
 * @param inner reference of the device inside
 * @param direction how it enters
 * @param reach the distance beyond the outer's distal end, as typed; empty for hub to hub
 * @param rules the rule set, as a path in the project
 * @param conditions what else holds
 */
public record PassageQuestion(String outer, String lumen, String wire, String inner, Direction direction, String reach,
        String rules, PassageConditions conditions) {

    /** Nothing is filled in yet. */
    public static final PassageQuestion EMPTY = new PassageQuestion("", "", "", "", Direction.TIP_FIRST, "", "",
            PassageConditions.NONE);

    /** Checks that nothing is missing. */
    public PassageQuestion {
        Objects.requireNonNull(outer, "outer");
        Objects.requireNonNull(lumen, "lumen");
        Objects.requireNonNull(wire, "wire");
        Objects.requireNonNull(inner, "inner");
        Objects.requireNonNull(direction, "direction");
        Objects.requireNonNull(reach, "reach");
        Objects.requireNonNull(rules, "rules");
        Objects.requireNonNull(conditions, "conditions");
    }

    /** The question about a device that passes alone, straight and unused. */
    public PassageQuestion(String outer, String lumen, String wire, String inner, Direction direction, String reach,
            String rules) {
        this(outer, lumen, wire, inner, direction, reach, rules, PassageConditions.NONE);
    }

    /** Tells whether both devices are named. */
    public boolean isComplete() {
        return !outer.isEmpty() && !inner.isEmpty();
    }

    /** Tells whether the same devices are asked about. */
    boolean isAboutSamePair(PassageQuestion other) {
        return outer.equals(other.outer) && inner.equals(other.inner);
    }

    /** Returns the question with the devices in each other's place. */
    public PassageQuestion swapped() {
        return new PassageQuestion(inner, "", wire, outer, direction, reach, rules, conditions);
    }

    void save(IMemento memento) {
        memento.putString("outer", outer);
        memento.putString("lumen", lumen);
        memento.putString("wire", wire);
        memento.putString("inner", inner);
        memento.putString("direction", direction.name());
        memento.putString("reach", reach);
        memento.putString("rules", rules);
        conditions.save(memento);
    }

    static PassageQuestion restore(IMemento memento) {
        boolean overWire = Direction.OVER_WIRE_TAIL.name().equals(memento.getString("direction"));
        return new PassageQuestion(text(memento, "outer"), text(memento, "lumen"), text(memento, "wire"),
                text(memento, "inner"), overWire ? Direction.OVER_WIRE_TAIL : Direction.TIP_FIRST,
                text(memento, "reach"), text(memento, "rules"), PassageConditions.restore(memento));
    }

    private static String text(IMemento memento, String key) {
        String value = memento.getString(key);
        return value == null ? "" : value;
    }
}
