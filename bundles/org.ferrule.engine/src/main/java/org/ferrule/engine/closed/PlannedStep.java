/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.util.List;
import java.util.Objects;

/**
 * A step of the plan as it was before anything was logged.
 *
 * @param move id of the technique or the set-up
 * @param name its name then
 * @param endings how what was logged for it ended, in the order of the log; empty where it was not tried
 * @param equipment with what it was planned
 */
public record PlannedStep(String move, String name, List<Ending> endings, List<Equipment> equipment) {

    /**
     * A device that a step was planned with.
     *
     * @param device its id
     * @param name its name today, or its id
     * @param opened the boxes of it that were opened for that step
     */
    public record Equipment(String device, String name, List<UsedDevice> opened) {
        public Equipment {
            Objects.requireNonNull(device, "device");
            Objects.requireNonNull(name, "name");
            opened = List.copyOf(opened);
        }
    }

    public PlannedStep {
        Objects.requireNonNull(move, "move");
        Objects.requireNonNull(name, "name");
        endings = List.copyOf(endings);
        equipment = List.copyOf(equipment);
    }
}
