/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.escalation.technique;

import java.util.Objects;

/**
 * What a technique or a set-up needs one device, or several alike, for.
 *
 * @param id unique within its technique
 * @param name in words
 * @param selection which devices may play it
 * @param task whether it only passes, or must fill
 * @param carrier what it runs on
 * @param goal how far it has to come
 * @param count how many are used up, 1 or more
 * @param onlyIfWireIsShort whether it is needed only where the main wire is too short to exchange over it
 */
public record Role(String id, String name, Selection selection, Task task, Carrier carrier, Goal goal, int count,
        boolean onlyIfWireIsShort) {
    public Role {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(selection, "selection");
        Objects.requireNonNull(task, "task");
        Objects.requireNonNull(carrier, "carrier");
        Objects.requireNonNull(goal, "goal");
        if (count < 1) {
            throw new IllegalArgumentException("the role \"" + id + "\" asks for " + count + " devices");
        }
    }
}
